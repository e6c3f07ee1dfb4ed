/**
 * Names of files that lie in one folder. A part may be called as another part's piece is; the files of the later one then
 * lie in a folder of its own. Some systems do not tell capitals apart.
 */
export function apart<T extends { readonly name: string }>(
  files: readonly T[],
  ownerOf: (file: T) => string,
): (T & { readonly path: string })[] {
  const owners = new Map<string, string>();
  const clash = new Set<string>();
  for (const file of files) {
    const key = file.name.toLowerCase();
    const owner = owners.get(key);
    if (owner === undefined) owners.set(key, ownerOf(file));
    else if (owner !== ownerOf(file)) clash.add(ownerOf(file));
  }
  return files.map((file) => {
    const owner = ownerOf(file);
    return { ...file, path: clash.has(owner) ? `${owner}/${file.name}` : file.name };
  });
}

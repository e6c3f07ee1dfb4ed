import { strToU8, zipSync, type Zippable } from "fflate";

/** The earliest that an archive can say, on every clock alike. */
const noTime = (): Date => new Date(1980, 0, 1);

/** Texts in an archive, in the order given: the same texts give the same bytes, on every machine and at any time. */
export function zipTexts(
  texts: readonly { readonly path: string; readonly text: string }[],
): Uint8Array<ArrayBuffer> {
  const files: Zippable = Object.fromEntries(texts.map(({ path, text }) => [path, strToU8(text)]));
  return zipSync(files, { mtime: noTime(), level: 9 });
}

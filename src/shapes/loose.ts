/** A value of which any piece may be missing: what is right in a file that has mistakes. */
export type Loose<T> = T extends readonly (infer Item)[]
  ? readonly (Loose<Item> | undefined)[]
  : T extends object
    ? { readonly [Key in keyof T]?: Loose<T[Key]> | undefined }
    : T;

/** Does the file say anything about a field, right or wrong? */
export type Given = (path: readonly (string | number)[]) => boolean;

/** The same asked of a value that has been read whole. */
export const givenIn =
  (value: unknown): Given =>
  (path) => {
    let here = value;
    for (const step of path)
      here = typeof here === "object" && here !== null ? Reflect.get(here, step) : undefined;
    return here !== undefined;
  };

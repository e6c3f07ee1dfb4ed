/** What this browser keeps under a name; storage may be forbidden, full or written by something else. */
export interface Keeper<T> {
  readonly read: () => T | undefined;
  /** False where it could not be kept. */
  readonly write: (value: T | undefined) => boolean;
}

/**
 * Several binders may lie on one server: each keeps its own.
 * @param root the way to the binder's root from the page at hand
 */
export const keyOf = (root: string, what: string): string =>
  `slantwork ${new URL(root, location.href).pathname} ${what}`;

/** Under which the work on a part is kept. */
export const draftKey = (root: string, part: string): string => keyOf(root, `draft ${part}`);

/** @param isOne is it a thing that was kept here? What is not counts as nothing kept */
export function keeper<T>(key: string, isOne: (value: unknown) => value is T): Keeper<T> {
  return {
    read: () => {
      try {
        const value: unknown = JSON.parse(localStorage.getItem(key) ?? "null");
        return isOne(value) ? value : undefined;
      } catch {
        return undefined;
      }
    },
    write: (value) => {
      try {
        if (value === undefined) localStorage.removeItem(key);
        else localStorage.setItem(key, JSON.stringify(value));
        return true;
      } catch {
        return false;
      }
    },
  };
}

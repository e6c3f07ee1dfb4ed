/** What this browser keeps under a name; storage may be forbidden, full or written by something else. */
export interface Keeper<T> {
  readonly read: () => T | undefined;
  /** False where it could not be kept. */
  readonly write: (value: T | undefined) => boolean;
}

/** Names of all that is kept begin with this. */
const OURS = "slantwork ";

/**
 * Several binders may lie on one server: each keeps its own.
 * @param root the way to the binder's root from the page at hand
 */
export const keyOf = (root: string, what: string): string =>
  `${OURS}${new URL(root, location.href).pathname} ${what}`;

/** Under which the work on a part is kept. */
export const draftKey = (root: string, part: string): string => keyOf(root, `draft ${part}`);

/** Under which that lies what was kept under a name and could not be read or shown. */
export const asideKey = (key: string): string => `${key}, set aside`;

/** Names under which something lies that can be neither read nor moved: nothing is written over it while this page stands. */
const held = new Set<string>();
export const hold = (key: string): void => void held.add(key);
export const letGo = (key: string): void => void held.delete(key);
export const isHeld = (key: string): boolean => held.has(key);

/** Does anything lie under a name? */
export function isKept(key: string): boolean {
  try {
    return localStorage.getItem(key) !== null;
  } catch {
    return false;
  }
}

/** Has anybody been at work in this browser before, whatever came of it? */
export function keepsAnything(): boolean {
  try {
    return [localStorage, sessionStorage].some((storage) =>
      Object.keys(storage).some((key) => key.startsWith(OURS)),
    );
  } catch {
    return false;
  }
}

/**
 * @param understood what was kept here, from what lies there now; undefined where it is something else
 * @param storage all windows' own, or that of this window alone
 */
export function keeper<T>(
  key: string,
  understood: (value: unknown) => T | undefined,
  storage: () => Storage = () => localStorage,
): Keeper<T> {
  return {
    read: () => {
      try {
        return understood(JSON.parse(storage().getItem(key) ?? "null"));
      } catch {
        return undefined;
      }
    },
    write: (value) => {
      if (isHeld(key)) return false;
      try {
        if (value === undefined) storage().removeItem(key);
        else storage().setItem(key, JSON.stringify(value));
        return true;
      } catch {
        return false;
      }
    },
  };
}

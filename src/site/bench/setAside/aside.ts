import { asideKey, hold, isHeld, letGo } from "../keep.ts";

/** Texts that were set aside under a name, the first one first, and last what there was no room to set aside. */
export function asides(key: string): readonly string[] {
  return [...movedAside(key), ...(isHeld(key) ? [localStorage.getItem(key) ?? ""] : [])];
}

function movedAside(key: string): readonly string[] {
  try {
    const texts: unknown = JSON.parse(localStorage.getItem(asideKey(key)) ?? "[]");
    return Array.isArray(texts) ? texts.filter((text) => typeof text === "string") : [];
  } catch {
    return [];
  }
}

/**
 * Moves what lies under a name beside it, where nothing writes over it: it was typed by somebody, and can only not be used.
 * The same text is there once.
 *
 * @param from where it lies; set aside it is for all windows
 * @returns false where it could not be moved: then it lies where it lay, and nothing is written over it
 */
export function setAside(key: string, from: () => Storage = () => localStorage): boolean {
  try {
    const text = from().getItem(key);
    if (text === null) return true;
    const all = [...new Set([...movedAside(key), text])];
    // Both may be too much for what room there is.
    from().removeItem(key);
    try {
      localStorage.setItem(asideKey(key), JSON.stringify(all));
      return true;
    } catch {
      from().setItem(key, text);
      if (from() === localStorage) hold(key);
      return false;
    }
  } catch {
    return false;
  }
}

/** Whoever works here wants it no more. */
export function dropAsides(key: string): void {
  try {
    if (isHeld(key)) localStorage.removeItem(key);
    letGo(key);
    localStorage.removeItem(asideKey(key));
  } catch {
    // Where nothing may be kept, nothing is.
  }
}

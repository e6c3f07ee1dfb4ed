import { asideKey, isHeld, isKept } from "../bench/keep.ts";
import { setAside } from "../bench/setAside/aside.ts";

/** A list without an entry that a form shows, wherever that stands in it by now; the very list where it has gone already. */
export function without<T>(all: readonly T[], shown: readonly T[], at: number): readonly T[] {
  const text = JSON.stringify(shown[at]);
  const isIt = (other: T | undefined) => JSON.stringify(other) === text;
  const place = isIt(all[at]) ? at : all.findIndex(isIt);
  return place < 0 ? all : all.filter((_, i) => i !== place);
}

/**
 * Sets aside what is kept under a name where not all of it can be read, before anything is written over it; it is told above
 * the form until somebody throws it away.
 */
export function keepUnread(
  form: Element,
  { key, part, isSound }: { readonly key: string; readonly part: string; readonly isSound: boolean },
): void {
  if (!isSound) setAside(key);
  if (!isKept(asideKey(key)) && !isHeld(key)) return;
  import("../bench/setAside/trialsAside.ts").then(
    ({ tellTrialsAside }) => tellTrialsAside(form, key, part),
    // It is told at the next visit.
    () => undefined,
  );
}

/**
 * Keeps a text under a name.
 *
 * @throws where the browser has no room, keeps nothing, or has something there that must not be written over
 */
export function keepText(key: string, text: string): void {
  if (isHeld(key)) throw new Error(`${key} holds what could not be read or moved`);
  localStorage.setItem(key, text);
}

/** Does something whenever another window of this browser has changed what is kept under a name. */
export function whenOthersChange(key: string, act: () => void): void {
  addEventListener("storage", (event) => {
    // No key: everything was cleared.
    if (event.key === key || event.key === null) act();
  });
}

/** Said where that has happened. */
export const CHANGED_ELSEWHERE =
  "Another window of this browser has changed these trials: they stand here as they are now.";

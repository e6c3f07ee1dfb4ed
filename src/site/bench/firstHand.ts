import { keepsAnything } from "./keep.ts";

/** What a page is told when somebody lays a hand on it; whoever dictates may come by "input" alone. */
const SIGNS = [
  "pointermove",
  "pointerdown",
  "touchstart",
  "click",
  "wheel",
  "scroll",
  "keydown",
  "input",
  "change",
  "focusin",
  "dragenter",
  "hashchange",
] as const;

/**
 * The first sign of a hand on the page. Where somebody has been at work before, or comes to a place on the page or with a
 * part in the address, there is nothing to wait for: the bench may have to show something else than was published.
 */
export function firstHand(): Promise<void> {
  if (location.hash !== "" || scrollY > 0 || keepsAnything()) return Promise.resolve();
  return new Promise((resolve) => {
    const signs = new AbortController();
    const seen = (): void => {
      signs.abort();
      resolve();
    };
    for (const sign of SIGNS)
      addEventListener(sign, seen, { capture: true, passive: true, signal: signs.signal });
  });
}

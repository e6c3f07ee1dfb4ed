import { siteHref } from "../bits/siteHref.ts";
import { keyOf } from "../bench/keep.ts";

/** What a work sheet keeps of a part on a machine. */
type Kept = "trials" | "brake hits" | "scale at 0" | "bearings at 0" | "set by";

/**
 * Under which this browser keeps it: several binders may lie on one server, each with its own. What an earlier version kept
 * without saying of which binder goes to the one that asks first.
 */
export function ownKey(what: Kept, part: string, machine: string): string {
  const name = `${what} ${JSON.stringify([part, machine])}`;
  const key = keyOf(siteHref("/"), name);
  try {
    const earlier = `slantwork ${name}`;
    const text = localStorage.getItem(earlier);
    if (text !== null && localStorage.getItem(key) === null) {
      // Both may be too much for what room there is.
      localStorage.removeItem(earlier);
      try {
        localStorage.setItem(key, text);
      } catch {
        localStorage.setItem(earlier, text);
      }
    }
  } catch {
    // Where nothing may be kept, nothing is.
  }
  return key;
}

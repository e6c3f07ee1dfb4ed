import type { Units } from "../../drawing/format.ts";
import { find, LARGEST_MM, lengthHow, lengthIn } from "./find.ts";
import { scaleKey, typed } from "./keptTrials.ts";

/** The setting of a trial as it is typed: a raise, or what the scale shows together with what it shows on the flat plate. */
export interface RaiseField {
  readonly input: HTMLInputElement;
  /** The raise, or what is wrong with it. [mm] */
  readonly read: () => number | string;
}

/** The raise that a reading of the scale is, the reading on the flat plate taken off; what is wrong as a sentence. [mm] */
export function raiseIn(text: string, zeroText: string, units: Units): number | string {
  const how = lengthHow(units);
  const any = [-LARGEST_MM, LARGEST_MM] as const;
  if (zeroText.trim() === "") {
    const raiseMm = lengthIn(text, units, [0, LARGEST_MM]);
    return raiseMm || `Write the raise at the large edge as ${how}, above 0.`;
  }
  const zeroMm = lengthIn(zeroText, units, any);
  if (zeroMm === undefined)
    return `Write the scale’s reading at 0 as ${how}, or leave it empty where the raise itself is written.`;
  const readingMm = lengthIn(text, units, any);
  if (readingMm === undefined) return `Write the scale’s reading as ${how}.`;
  return readingMm > zeroMm
    ? readingMm - zeroMm
    : `A reading of ${typed(readingMm, units)} ${units} is no raise where the scale shows ${typed(zeroMm, units)} ${units} on the flat plate. Where the raise itself is written, leave the reading at 0 empty.`;
}

/**
 * Brings to life the field of the setting and that of the scale's reading at 0, which this browser keeps for the part on this
 * roll; the label says which of both is typed, and the raise that comes of it is shown.
 */
export function raiseField(
  root: Element,
  units: Units,
  { part, machine }: { part: string; machine: string },
): RaiseField {
  const input = find(root, "setting", HTMLInputElement);
  const zero = find(root, "zero", HTMLInputElement);
  const label = find(root, "setting-label", HTMLSpanElement);
  const raise = find(root, "raise", HTMLSpanElement);
  const key = scaleKey(part, machine);
  try {
    zero.value = localStorage.getItem(key) ?? "";
  } catch {
    // A browser that keeps nothing says so at the first trial.
  }
  const read = () => raiseIn(input.value, zero.value, units);
  const show = () => {
    const byScale = zero.value.trim() !== "";
    label.textContent = `${byScale ? "Scale’s reading" : "Raise"} at the large edge, ${units}`;
    const raiseMm = read();
    raise.textContent =
      byScale && typeof raiseMm === "number" ? `: raise ${typed(raiseMm, units)} ${units}` : "";
  };
  input.addEventListener("input", show);
  zero.addEventListener("input", () => {
    try {
      if (zero.value.trim() === "") localStorage.removeItem(key);
      else localStorage.setItem(key, zero.value);
    } catch {
      // The reading stands in its field all the same.
    }
    show();
  });
  show();
  return { input, read };
}

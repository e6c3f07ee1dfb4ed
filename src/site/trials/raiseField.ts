import type { SetAt } from "../../forming/bearingsRead.ts";
import type { Units } from "../../drawing/format.ts";
import { settable } from "../../forming/rollPlaces.ts";
import { bearingFields } from "./bearingFields.ts";
import { find, LARGEST_MM, lengthHow, lengthIn, wrongWith } from "./find.ts";
import { bearingsKey, scaleKey, setByKey, typed } from "./keptTrials.ts";

/** The setting of a trial as it is typed: a raise, or what the scale shows together with what it shows on the flat plate; or both bearings. */
export interface RaiseField {
  /** How the roll was set, or what is wrong with it. [mm] */
  readonly read: () => SetAt | string;
  /** Makes room for another setting. */
  readonly clear: () => void;
  /** Tells anew what is typed, once another zone is chosen. */
  readonly show: () => void;
}

interface Around {
  readonly part: string;
  readonly machine: string;
  /** What a setting comes to on this roll, in the zone that is chosen, in words. */
  readonly comes: (set: SetAt) => string;
}

/** The raise that a reading of the scale is, the reading on the flat plate taken off; what is wrong as a sentence. [mm] */
export function raiseIn(text: string, zeroText: string, units: Units): number | string {
  const how = lengthHow(units);
  const any = [-LARGEST_MM, LARGEST_MM] as const;
  if (zeroText.trim() === "") {
    const raiseMm = lengthIn(text, units, [0, LARGEST_MM]);
    return raiseMm || wrongWith(`Write the raise at the large edge as ${how}, above 0.`, text);
  }
  const zeroMm = lengthIn(zeroText, units, any);
  if (zeroMm === undefined)
    return wrongWith(
      `Write the scale’s reading at 0 as ${how}, or leave it empty where the raise itself is written.`,
      zeroText,
    );
  const readingMm = lengthIn(text, units, any);
  if (readingMm === undefined) return wrongWith(`Write the scale’s reading as ${how}.`, text);
  return settable(readingMm - zeroMm, units) > 0
    ? readingMm - zeroMm
    : `A reading of ${typed(readingMm, units)} ${units} is no raise where the scale shows ${typed(zeroMm, units)} ${units} on the flat plate. Where the raise itself is written, leave the reading at 0 empty.`;
}

/**
 * Brings to life the choice of where the setting is read, and the fields of either.
 */
export function raiseField(root: Element, units: Units, around: Around): RaiseField {
  const edge = edgeField(root, units, around);
  const by = find(root, "by", HTMLSelectElement);
  // Not there where the shop gives no bearings.
  if (!root.querySelector("[data-set-by=bearings]")) return edge;
  const { part, machine, comes } = around;
  const bearings = bearingFields(root, units, { key: bearingsKey(part, machine), comes });
  const key = setByKey(part, machine);
  const chosen = () => (by.value === "bearings" ? bearings : edge);
  const shown = () => {
    for (const one of root.querySelectorAll<HTMLElement>("[data-set-by]"))
      one.hidden = one.dataset["setBy"] !== by.value;
  };
  try {
    if (localStorage.getItem(key) === "bearings") by.value = "bearings";
  } catch {
    // It is chosen anew.
  }
  by.addEventListener("change", () => {
    try {
      localStorage.setItem(key, by.value);
    } catch {
      // It stands in its field all the same.
    }
    shown();
  });
  shown();
  return {
    read: () => chosen().read(),
    clear: () => {
      edge.clear();
      bearings.clear();
    },
    show: () => bearings.show(),
  };
}

/**
 * Brings to life the field of the setting and that of the scale's reading at 0, which this browser keeps for the part on this
 * roll; the label says which of both is typed, and the raise that comes of it is shown.
 */
function edgeField(root: Element, units: Units, { part, machine }: Around): RaiseField {
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
  return {
    read: () => {
      const settingMm = read();
      return typeof settingMm === "string" ? settingMm : { settingMm };
    },
    clear: () => (input.value = ""),
    show,
  };
}

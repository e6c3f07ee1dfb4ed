import type { Units } from "../../drawing/format.ts";
import type { SetAt } from "../../forming/bearingsRead.ts";
import { deepest, radiusOfDepth, type ZoneOutcome } from "../../forming/zoneSeen.ts";
import { find, lengthHow, lengthIn, LARGEST_MM, wrongWith } from "./find.ts";
import type { RaiseField } from "./raiseField.ts";
import type { Fields } from "./wholeFields.ts";

/** The fields of an eccentric cone or leaning pipe: the zone, its setting, and the curve that came out at both ends. */
export function zoneFields(root: Element, units: Units, raise: RaiseField): Fields<SetAt & ZoneOutcome> {
  const field = (name: string) => find(root, name, HTMLInputElement);
  const zone = find(root, "zone", HTMLSelectElement);
  const kind = find(root, "kind", HTMLSelectElement);
  const [large, small, chord] = [field("large"), field("small"), field("chord")];
  const all = [large, small];
  const shown = () => {
    for (const one of all) one.disabled = kind.value === "flat";
    const label = chord.closest("label");
    if (label) label.hidden = kind.value !== "depth";
  };
  kind.addEventListener("change", shown);
  // The next zone has another length along the roll.
  zone.addEventListener("change", () => raise.show());
  shown();

  const sizeIn = (input: HTMLInputElement): number | undefined =>
    lengthIn(input.value, units, [0, LARGEST_MM]) || undefined;
  const ends = (): { largeMm?: number; smallMm?: number } | string => {
    const chordMm = kind.value === "depth" ? sizeIn(chord) : undefined;
    if (kind.value === "depth" && chordMm === undefined)
      return wrongWith(`Write the length of the straightedge as ${lengthHow(units)}, above 0.`, chord.value);
    const read: { largeMm?: number; smallMm?: number } = {};
    for (const [key, input] of [
      ["largeMm", large],
      ["smallMm", small],
    ] as const) {
      if (input.value.trim() === "") continue;
      const value = sizeIn(input);
      if (value === undefined)
        return wrongWith(`Write what was measured as ${lengthHow(units)}, above 0.`, input.value);
      if (chordMm !== undefined && value > deepest(chordMm))
        return "A depth is more than half the straightedge: measure again.";
      read[key] = chordMm === undefined ? value : radiusOfDepth({ chordMm, depthMm: value });
    }
    return read;
  };
  return {
    clear: () => {
      for (const one of all) one.value = "";
      // The next zone has a setting of its own.
      zone.selectedIndex = (zone.selectedIndex + 1) % zone.length;
      if (zone.length > 1) raise.clear();
    },
    read: () => {
      const set = raise.read();
      if (typeof set === "string") return set;
      const at = { zone: Number(zone.value), ...set };
      if (kind.value === "flat") return { ...at, flat: true };
      const came = ends();
      return typeof came === "string" ? came : { ...at, ...came };
    },
  };
}

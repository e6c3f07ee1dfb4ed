import { MM_PER_INCH, type Units } from "../../drawing/format.ts";
import { MOST_TOLD, type TrialSeen } from "../../forming/trialSeen.ts";
import { find, LARGEST_MM, numberIn } from "./find.ts";

const PER_CENT = 100;

/** What is typed of one trial. */
export interface Fields<Seen> {
  /** The trial, or what is wrong with it. */
  readonly read: () => Seen | string;
  /** Makes room for what the next one comes to. */
  readonly clear: () => void;
}

/** The fields of a right cone or pipe: one setting, and one thing that came out. */
export function wholeFields(root: Element, units: Units): Fields<TrialSeen> {
  const perUnit = units === "mm" ? 1 : MM_PER_INCH;
  const setting = find(root, "setting", HTMLInputElement);
  const kind = find(root, "kind", HTMLSelectElement);
  const outcome = find(root, "outcome", HTMLInputElement);
  kind.addEventListener("change", () => (outcome.disabled = kind.value === "flat"));
  return {
    clear: () => (outcome.value = ""),
    read: () => {
      const at = numberIn(setting.value, [0, LARGEST_MM]);
      if (at === undefined || at === 0)
        return `Write the raise at the large edge as a number of ${units}, above 0.`;
      if (kind.value === "flat") return { settingMm: at * perUnit, flat: true };
      const closed = kind.value === "closed";
      const out = numberIn(outcome.value, closed ? [0, MOST_TOLD * PER_CENT] : [-LARGEST_MM, LARGEST_MM]);
      if (out === undefined)
        return closed
          ? `Write how far it closed as 0 to ${MOST_TOLD * PER_CENT} per cent of the turn; above 100 where the edges overlap.`
          : `Write the gap as a number of ${units}, with a minus in front where the edges overlap.`;
      return closed
        ? { settingMm: at * perUnit, closed: out / PER_CENT }
        : { settingMm: at * perUnit, gapMm: out * perUnit };
    },
  };
}

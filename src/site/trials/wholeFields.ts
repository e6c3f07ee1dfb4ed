import type { Units } from "../../drawing/format.ts";
import type { SetAt } from "../../forming/bearingsRead.ts";
import { MOST_TOLD, type TrialOutcome } from "../../forming/trialSeen.ts";
import { find, lengthIn, LARGEST_MM, lengthHow, numberIn, wrongWith } from "./find.ts";
import type { RaiseField } from "./raiseField.ts";

const PER_CENT = 100;

/** What is typed of one trial. */
export interface Fields<Seen> {
  /** The trial, or what is wrong with it. */
  readonly read: () => Seen | string;
  /** Makes room for what the next one comes to. */
  readonly clear: () => void;
}

/** The fields of a right cone or pipe: one setting, and one thing that came out. */
export function wholeFields(root: Element, units: Units, raise: RaiseField): Fields<SetAt & TrialOutcome> {
  const kind = find(root, "kind", HTMLSelectElement);
  const outcome = find(root, "outcome", HTMLInputElement);
  kind.addEventListener("change", () => (outcome.disabled = kind.value === "flat"));
  return {
    clear: () => (outcome.value = ""),
    read: () => {
      const set = raise.read();
      if (typeof set === "string") return set;
      if (kind.value === "flat") return { ...set, flat: true };
      if (kind.value === "closed") {
        const out = numberIn(outcome.value, [0, MOST_TOLD * PER_CENT]);
        return out === undefined
          ? wrongWith(
              `Write how far it closed as 0 to ${MOST_TOLD * PER_CENT} per cent of the turn; above 100 where the edges overlap.`,
              outcome.value,
            )
          : { ...set, closed: out / PER_CENT };
      }
      const gapMm = lengthIn(outcome.value, units, [-LARGEST_MM, LARGEST_MM]);
      return gapMm === undefined
        ? wrongWith(
            `Write the gap as ${lengthHow(units)}, with a minus in front where the edges overlap.`,
            outcome.value,
          )
        : { ...set, gapMm };
    },
  };
}

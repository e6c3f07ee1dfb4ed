import type { Units } from "../../drawing/format.ts";
import { raisesOf, type SetAt } from "../../forming/bearingsRead.ts";
import type { AnyTold } from "../../forming/settleTrials.ts";
import { typed } from "./keptTrials.ts";

const PER_CENT = 100;

function came(trial: AnyTold, units: Units): string {
  const length = (mm: number) => `${typed(mm, units)} ${units}`;
  if ("flat" in trial) return "sprang back flat";
  if ("gapMm" in trial) return `${trial.gapMm < 0 ? "overlap" : "gap"} ${length(Math.abs(trial.gapMm))}`;
  if ("closed" in trial) return `${Math.round(PER_CENT * trial.closed)} % closed`;
  const ends = [
    ...(trial.largeMm === undefined ? [] : [`${length(trial.largeMm)} large end`]),
    ...(trial.smallMm === undefined ? [] : [`${length(trial.smallMm)} small end`]),
  ];
  return `inside radius ${ends.join(", ")}`;
}

/** "set 22.5 mm", "set 31 mm at the drop end and 12 mm at the fixed end (scales 181 and 162 mm; 22.5 mm at the large edge)". */
function setWords({ settingMm, bearings }: SetAt, units: Units): string {
  const length = (mm: number) => `${typed(mm, units)} ${units}`;
  if (!bearings) return `set ${length(settingMm ?? 0)}`;
  const { dropMm, fixedMm } = raisesOf(bearings);
  const scales =
    bearings.dropAt0Mm === undefined
      ? []
      : [`scales ${typed(bearings.dropMm, units)} and ${length(bearings.fixedMm)}`];
  const edge = settingMm === undefined ? [] : [`${length(settingMm)} at the large edge`];
  const beside = [...scales, ...edge].join("; ");
  return `set ${length(dropMm)} at the drop end and ${length(fixedMm)} at the fixed end${beside === "" ? "" : ` (${beside})`}`;
}

/** A trial as it stands in the form's list: "set 22.5 mm: gap 840 mm ", "zone 2, set 60 mm: inside radius … ". */
export function trialWords(
  trial: AnyTold,
  { units, zones }: { readonly units: Units; readonly zones: boolean },
): string {
  const where = zones && "zone" in trial ? `zone ${trial.zone}, ` : "";
  return `${where}${setWords(trial, units)}: ${came(trial, units)} `;
}

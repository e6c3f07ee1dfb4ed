import type { Units } from "../../drawing/format.ts";
import type { AnySeen } from "../../forming/anyTrials.ts";
import { typed } from "./keptTrials.ts";

const PER_CENT = 100;

function came(trial: AnySeen, units: Units): string {
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

/** A trial as it stands in the form's list: "set 22.5 mm: gap 840 mm ", "zone 2, set 60 mm: inside radius … ". */
export function trialWords(
  trial: AnySeen,
  { units, zones }: { readonly units: Units; readonly zones: boolean },
): string {
  const where = zones && "zone" in trial ? `zone ${trial.zone}, ` : "";
  return `${where}set ${typed(trial.settingMm, units)} ${units}: ${came(trial, units)} `;
}

import type { TrialSeen } from "../../forming/trialSeen.ts";
import { MM_PER_INCH, plain, type Units } from "../../drawing/format.ts";

const PER_CENT = 100;

/** A length as somebody types it in the part's units, to a hundredth of a millimetre or a thousandth of an inch. */
export const typed = (mm: number, units: Units): string =>
  units === "mm" ? plain(mm, 2) : plain(mm / MM_PER_INCH, 3);

/** What came out of a trial, as its row in a file says it: "gap: 840". */
function outcome(trial: TrialSeen, units: Units): string {
  if ("gapMm" in trial) return `gap: ${typed(trial.gapMm, units)}`;
  return "closed" in trial ? `closed: ${plain(PER_CENT * trial.closed, 1)}` : "flat: true";
}

/** A file of trials, as it is kept next to the part's own file. */
export function trialsYaml(
  trials: readonly TrialSeen[],
  { units, machine }: { readonly units: Units; readonly machine: string },
): string {
  const rows = trials.map(
    (trial) => `  - { setting: ${typed(trial.settingMm, units)}, ${outcome(trial, units)} }`,
  );
  // A name in JSON is one in YAML too, whatever stands in it.
  return [`units: ${units}`, `machine: ${JSON.stringify(machine)}`, "trials:", ...rows, ""].join("\n");
}

const isTrial = (value: unknown): value is TrialSeen => {
  if (typeof value !== "object" || value === null) return false;
  const { settingMm, gapMm, closed, flat } = value as Record<string, unknown>;
  const number = (one: unknown): one is number => typeof one === "number" && Number.isFinite(one);
  const size = (one: unknown) => number(one) && one >= 0;
  // A gap may be an overlap.
  return size(settingMm) && (number(gapMm) || size(closed) || flat === true);
};

/** What the browser kept of a part's trials; nothing where what it kept is no list of trials. */
export function keptIn(text: string | null): readonly TrialSeen[] | undefined {
  if (text === null) return undefined;
  try {
    const kept: unknown = JSON.parse(text);
    return Array.isArray(kept) && kept.every(isTrial) ? kept : undefined;
  } catch {
    return undefined;
  }
}

import type { SetAt } from "../../forming/bearingsRead.ts";
import type { AnyTold } from "../../forming/settleTrials.ts";
import { MM_PER_INCH, plain, type Units } from "../../drawing/format.ts";
import { ownKey } from "./ownKey.ts";

const PER_CENT = 100;

/** A length as somebody types it in the part's units, to a hundredth of a millimetre or a thousandth of an inch. */
export const typed = (mm: number, units: Units): string =>
  units === "mm" ? plain(mm, 2) : plain(mm / MM_PER_INCH, 3);

/** Under which this browser keeps the trials of a part on a roll. */
export const trialsKey = (part: string, roll: string): string => ownKey("trials", part, roll);

/** Under which this browser keeps what the roll's scale shows on the flat plate, as it was typed. */
export const scaleKey = (part: string, roll: string): string => ownKey("scale at 0", part, roll);

/** The same for both bearings. */
export const bearingsKey = (part: string, roll: string): string => ownKey("bearings at 0", part, roll);

/** Under which this browser keeps whether settings are read at the large edge or at both bearings. */
export const setByKey = (part: string, roll: string): string => ownKey("set by", part, roll);

/** What came out of a trial, as its row in a file says it: "gap: 840". */
function outcome(trial: AnyTold, units: Units): string {
  if ("gapMm" in trial) return `gap: ${typed(trial.gapMm, units)}`;
  if ("zone" in trial && !("flat" in trial))
    return (["large", "small"] as const)
      .flatMap((end) => {
        const mm = trial[`${end}Mm`];
        return mm === undefined ? [] : [`${end}: ${typed(mm, units)}`];
      })
      .join(", ");
  return "closed" in trial ? `closed: ${plain(PER_CENT * trial.closed, 1)}` : "flat: true";
}

/** How the roll was set, as a row in a file says it: "setting: 22.5", "drop: 31, fixed: 12". */
function setRow({ settingMm, bearings }: SetAt, units: Units): string {
  const keys = [
    ["setting", bearings ? undefined : settingMm],
    ["drop", bearings?.dropMm],
    ["fixed", bearings?.fixedMm],
    ["dropAt0", bearings?.dropAt0Mm],
    ["fixedAt0", bearings?.fixedAt0Mm],
  ] as const;
  return keys.flatMap(([key, mm]) => (mm === undefined ? [] : [`${key}: ${typed(mm, units)}`])).join(", ");
}

/** A file of trials, as it is kept next to the part's own file. */
export function trialsYaml(
  trials: readonly AnyTold[],
  { units, machine }: { readonly units: Units; readonly machine: string },
): string {
  const rows = trials.map(
    (trial) =>
      `  - { ${"zone" in trial ? `zone: ${trial.zone}, ` : ""}${setRow(trial, units)}, ${outcome(trial, units)} }`,
  );
  // A name in JSON is one in YAML too, whatever stands in it.
  return [`units: ${units}`, `machine: ${JSON.stringify(machine)}`, "trials:", ...rows, ""].join("\n");
}

const number = (one: unknown): one is number => typeof one === "number" && Number.isFinite(one);

/** Is this a trial, from whatever was kept? */
export const isSeen = (value: unknown): value is AnyTold => {
  if (typeof value !== "object" || value === null) return false;
  const { gapMm, closed, flat, zone, largeMm, smallMm } = value as Record<string, unknown>;
  const { settingMm, bearings, tiltMm = 0 } = value as Record<string, unknown>;
  const read = typeof bearings === "object" && bearings !== null ? Object.values(bearings) : [];
  if (!(number(settingMm) && settingMm >= 0 && number(tiltMm) && read.every(number))) return false;
  const size = (one: unknown) => number(one) && one >= 0;
  const radius = (one: unknown) => one === undefined || (number(one) && one > 0);
  if (zone !== undefined)
    return (
      number(zone) &&
      Number.isInteger(zone) &&
      zone >= 1 &&
      (flat === true || (radius(largeMm) && radius(smallMm) && (number(largeMm) || number(smallMm))))
    );
  // A gap may be an overlap.
  return number(gapMm) || size(closed) || flat === true;
};

/** What the browser kept of a part's trials: those that are trials; nothing where it kept none that is. */
export function keptIn(text: string | null): readonly AnyTold[] | undefined {
  const kept = listIn(text);
  const sound = kept?.filter(isSeen);
  return sound && (sound.length > 0 || kept?.length === 0) ? sound : undefined;
}

/** Is all that was kept a list of trials, so that nothing is lost where it is written anew? */
export const isSoundIn = (text: string | null): boolean =>
  text === null || listIn(text)?.every(isSeen) === true;

function listIn(text: string | null): readonly unknown[] | undefined {
  if (text === null) return undefined;
  try {
    const kept: unknown = JSON.parse(text);
    return Array.isArray(kept) ? kept : undefined;
  } catch {
    return undefined;
  }
}

/** What this browser kept of a part's trials on a roll; undefined where it kept nothing, or may not be asked. */
export function keptHere(part: string, machine: string): readonly AnyTold[] | undefined {
  try {
    return keptIn(localStorage.getItem(trialsKey(part, machine)));
  } catch {
    return undefined;
  }
}

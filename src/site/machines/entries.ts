import type { Forming, MachineAnswer } from "../../forming/answer.ts";
import { brakeRegion, rollLimits, rollRegion } from "../../forming/capacityChart.ts";
import { type Check, type Verdict, worst } from "../../forming/check.ts";
import type { PlateRoll, PressBrake } from "../../forming/machine.ts";
import type { BinderPart, Binder } from "../binder/binder.ts";
import { plateOf } from "./plates.ts";

/** A part on a machine's card: its number on the chart, and what the machine says of it. */
export interface Entry {
  readonly one: BinderPart;
  /** Its dot's number; null where the chart has no place for it. */
  readonly number: string | null;
  /** What the chart measures: the slant on a roll, the longest bend line on a brake. [mm] */
  readonly lengthMm: number;
  /** Where it lies on the chart. */
  readonly region: Verdict;
  /** All questions, those of the chart and those that no machine is asked included. */
  readonly verdict: Verdict;
  /** Every question that stands in the way. */
  readonly because: string | null;
}

const find = ({ checks }: MachineAnswer, id: string): Check | undefined =>
  checks.find((check) => check.id === id);

/** What is asked of the part itself, whatever machine makes it: strain, mass of a blank, plate in stock. */
const ownChecks = ({ checks, machines }: Forming): Check[] =>
  checks.filter(({ id }) => !machines.some((one) => one.checks.some((check) => check.id === id)));

/** The machine's questions and the part's own together, and those of them that stand in the way. */
function whole(answer: MachineAnswer, forming: Forming): Pick<Entry, "verdict" | "because"> {
  const checks = [...answer.checks, ...ownChecks(forming)];
  const verdict = worst(checks.map((check) => check.verdict));
  const titles = checks.filter((check) => check.verdict === verdict).map(({ title }) => title);
  return { verdict, because: verdict === "pass" ? null : titles.join("; ") };
}

const numbered = (
  entries: readonly Omit<Entry, "number">[],
  shown: (entry: Omit<Entry, "number">) => boolean,
) => {
  let last = 0;
  return entries.map((entry): Entry => ({ ...entry, number: shown(entry) ? String(++last) : null }));
};

/** The job's round parts on a roll. Machines answer in the order of the shop file. A pipe has no place among cones. */
export function rollEntries({ parts, tables }: Binder, index: number, roll: PlateRoll): Entry[] {
  const pipes = new Set<BinderPart>();
  const entries = parts.flatMap((one) => {
    const answer = one.report.forming.machines[index];
    const capacity = answer && find(answer, "capacity");
    const width = answer && find(answer, "working-width");
    if (!answer || !capacity || width?.value == null) return [];
    if (capacity.unit === "mm") pipes.add(one);
    const plate = plateOf(one.report, tables.catalogue, "by certificate");
    if (!plate) return [];
    const { thickness } = one.report.part;
    return {
      one,
      lengthMm: width.value,
      region: rollRegion(rollLimits(plate.strength, roll), { thicknessMm: thickness, slantMm: width.value }),
      ...whole(answer, one.report.forming),
    };
  });
  return numbered(entries, ({ one }) => !pipes.has(one));
}

/** The job's parts that are bent on a brake. */
export function brakeEntries({ parts }: Binder, index: number, brake: PressBrake): Entry[] {
  const entries = parts.flatMap((one) => {
    const { forming, part } = one.report;
    const answer = forming.machines[index];
    const bed = answer && find(answer, "brake-bed");
    if (!answer || bed?.value == null || forming.route !== "brake") return [];
    const { tensileMPa } = one.material;
    return {
      one,
      lengthMm: bed.value,
      region: brakeRegion({ tensileMPa, thicknessMm: part.thickness, lineMm: bed.value }, brake),
      ...whole(answer, one.report.forming),
    };
  });
  return numbered(entries, () => true);
}

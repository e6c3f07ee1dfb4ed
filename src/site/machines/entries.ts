import type { MachineAnswer } from "../../forming/answer.ts";
import { brakeRegion, rollLimits, rollRegion } from "../../forming/capacityChart.ts";
import type { Check, Verdict } from "../../forming/check.ts";
import type { PlateRoll, PressBrake } from "../../forming/machine.ts";
import { ownChecks } from "../../forming/ownChecks.ts";
import type { Report } from "../../report/report.ts";
import type { BinderPart, Binder } from "../binder/binder.ts";
import { refusal } from "../words/forming.ts";
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

/** The part on this machine, and why: what refuses it with its figures, what wants care by its name; what is asked of the part itself is named so. */
function whole(answer: MachineAnswer, { forming, part }: Report): Pick<Entry, "verdict" | "because"> {
  const { verdict } = answer;
  if (verdict === "pass") return { verdict, because: null };
  const worst = (checks: readonly Check[]) => checks.filter((check) => check.verdict === verdict);
  const said = (checks: readonly Check[]) =>
    verdict === "fail" ? refusal(checks, part.units) : checks.map(({ title }) => title).join("; ");
  const [its, own] = [worst(answer.checks), worst(ownChecks(forming))];
  const reasons = [
    ...(its.length > 0 ? [said(its)] : []),
    ...(own.length > 0 ? [`on any machine: ${said(own)}`] : []),
  ];
  return { verdict, because: reasons.join("; ") };
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
      ...whole(answer, one.report),
    };
  });
  return numbered(entries, ({ one }) => !pipes.has(one));
}

/** The job's parts that are bent on a brake, or can be. */
export function brakeEntries({ parts }: Binder, index: number, brake: PressBrake): Entry[] {
  const entries = parts.flatMap((one) => {
    const { forming, part } = one.report;
    const answer = forming.machines[index];
    const bed = answer && find(answer, "brake-bed");
    if (!answer || bed?.value == null) return [];
    if (forming.route !== "brake" && answer.verdict === "fail") return [];
    const { tensileMPa } = one.material;
    return {
      one,
      lengthMm: bed.value,
      region: brakeRegion({ tensileMPa, thicknessMm: part.thickness, lineMm: bed.value }, brake),
      ...whole(answer, one.report),
    };
  });
  return numbered(entries, () => true);
}

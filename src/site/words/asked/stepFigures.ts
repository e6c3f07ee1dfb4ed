import type { FormingPlan } from "../../../forming/plan.ts";
import { zoneName, zoneOfLabel } from "../../../forming/zoneWords.ts";
import { SAME_POINT_MM } from "../../../geometry/tolerance.ts";
import type { Report } from "../../../report/report.ts";
import type { TableAnswers } from "./answers.ts";
import { bendKey } from "./bendKey.ts";
import { closureRow } from "./closureColumns.ts";

type Step = FormingPlan["steps"][number];
type Figure = Pick<Step["figures"][number], "label" | "value">;

/** Tables whose answers tell how figures of the steps were worked out too. */
export type AskedTable = "checks" | "settings" | "closure" | "bends" | "inspection";

/** Where a figure of a step is answered already. */
interface AnsweredAt {
  readonly table: AskedTable;
  /** Under which it is asked there. */
  readonly of: string;
  /** The row that it stands in; the first where that is left out. */
  readonly row?: string;
}

/** The moment of rolling that a step sets. */
const MOMENTS: Readonly<Record<string, string>> = { "first-raise": "trial", "second-raise": "finished" };
/** Groups of columns of the settings, by how a figure begins. */
const SETTINGS: readonly (readonly [RegExp, string])[] = [
  [/^(?:start at|tilt, |raise to start|half the slant)/, "start"],
  [/^bearing beyond/, "bearings"],
  [/^(?:large end, |low$|high$)/, "large"],
  [/^small end, /, "small"],
];
/** Checks that a figure of the set-up is a number of. */
const CHECKS: readonly (readonly [RegExp, string])[] = [
  [/^(?:stop from|reach past the stop)/, "room-beyond-stop"],
  [/^greatest force of a hit/, "brake-force"],
  [/^die opening$/, "die-opening"],
];

/** Where this figure was worked out; undefined where nothing answers for it yet. */
function answeredAt(
  report: Report,
  plan: FormingPlan,
  step: Pick<Step, "id">,
  figure: Figure,
): AnsweredAt | undefined {
  const zoned = zoneOfLabel(figure.label);
  const label = zoned?.label ?? figure.label;
  const { forming } = report;
  const check = CHECKS.find(([begins]) => begins.test(label))?.[1];
  if (check !== undefined)
    return forming.checks.some(({ id }) => id === check) ? { table: "checks", of: check } : undefined;
  const moment = MOMENTS[step.id];
  if (moment !== undefined) return settingAt(plan, { moment, label, zone: zoned?.zone });
  return templateAt(report, label, figure.value) ?? bendAt(plan, label);
}

function settingAt(
  { settings }: FormingPlan,
  {
    moment,
    label,
    zone,
  }: { readonly moment: string; readonly label: string; readonly zone: string | undefined },
): AnsweredAt | undefined {
  const of = SETTINGS.find(([begins]) => begins.test(label))?.[1];
  const zones = settings?.zones ?? [];
  const at =
    zone === undefined ? 0 : zones.findIndex((one) => zoneName(one, zones.length) === `plan ${zone}: `);
  const pass = zones[at]?.passes.find(({ id }) => id === moment);
  if (of === undefined || !pass) return undefined;
  return { table: "settings", of, row: zones.length > 1 ? `zone ${at + 1}, ${pass.label}` : pass.label };
}

const isSame = (mm: number, other: number | undefined): boolean =>
  other !== undefined && Math.abs(mm - other) < SAME_POINT_MM;

/** A template or a gap: in the closure table where it has one, else on the inspection sheet. */
function templateAt({ forming }: Report, label: string, mm: number): AnsweredAt | undefined {
  if (!/^(?:template radius inside|gap at the|window)/.test(label)) return undefined;
  const end = label.includes("small end") ? "small" : "large";
  const row = forming.closure.find((one) =>
    isSame(mm, label.startsWith("gap") ? one[end]?.insideGapMm : one[end]?.insideSquareRadiusMm),
  );
  if (row) return { table: "closure", of: end, row: closureRow(row) };
  const own = forming.inspection?.rows.find(
    ({ id, nominalMm }) => id === "template" && isSame(mm, nominalMm),
  );
  return own && { table: "inspection", of: own.what };
}

/** How much of a line is not bent: at the line that is left the most. */
function bendAt({ brake }: FormingPlan, label: string): AnsweredAt | undefined {
  if (!label.startsWith("lines stop short")) return undefined;
  const [line] = (brake?.lines ?? []).toSorted((p, q) => q.stopsShortMm - p.stopsShortMm);
  return line && { table: "bends", of: bendKey(line.piece, "bent"), row: `Line ${line.number}` };
}

/** What the table of bend lines answers that the step of bending speaks of, by the name it is asked under. */
const OF_BENDS = {
  "bend angle of each line": "bend",
  "depth letter of each line": "depth",
  "force of each hit": "force",
} as const;

/** Everything of a step that can be asked: its figures by their names, those of several zones together; and the bend lines it goes by. */
export function askedOfStep(
  report: Report,
  plan: FormingPlan,
  step: Step,
): ReadonlyMap<string, readonly AnsweredAt[]> {
  const all = new Map<string, AnsweredAt[]>();
  for (const figure of step.figures) {
    const at = answeredAt(report, plan, step, figure);
    const name = zoneOfLabel(figure.label)?.label ?? figure.label;
    if (at) all.set(name, [...(all.get(name) ?? []), at]);
  }
  const piece = plan.brake?.lines[0]?.piece;
  if (step.id === "bend" && piece !== undefined)
    for (const [name, column] of Object.entries(OF_BENDS))
      all.set(name, [{ table: "bends", of: bendKey(piece, column) }]);
  return all;
}

/** The answers of a step, taken from those of the tables. */
export function answersOfStep(
  asked: ReadonlyMap<string, readonly AnsweredAt[]>,
  tables: Readonly<Partial<Record<AskedTable, TableAnswers>>>,
): TableAnswers {
  return new Map(
    [...asked].map(([name, places]) => [
      name,
      {
        name: `${name[0]?.toUpperCase()}${name.slice(1)}`,
        rows: places.flatMap(({ table, of, row }) => {
          const rows = tables[table]?.get(of)?.rows ?? [];
          return row === undefined ? rows : rows.filter((one) => one.row === row);
        }),
      },
    ]),
  );
}

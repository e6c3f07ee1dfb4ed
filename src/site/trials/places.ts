import type { BearingsSet } from "../../forming/bearingsNext.ts";
import type { ToldAnswer, WholeTold } from "../../forming/correctTold.ts";
import { type RollPlaces, settable } from "../../forming/rollPlaces.ts";
import type { Units } from "../../drawing/format.ts";
import { cell, fillTable } from "./fillTable.ts";
import { typed } from "./keptTrials.ts";

/** One row of the table under the answer: what for, and the roll's places. */
export interface PlacesRow {
  readonly what: string;
  readonly places: readonly (readonly [string, number | null])[];
}

/** What the scales at the bearings show, as far as somebody wrote down what they show at 0. */
const scalesOf = (set: BearingsSet | null | undefined): PlacesRow["places"] => [
  ["scale, drop end", set?.dropScaleMm ?? null],
  ["scale, fixed end", set?.fixedScaleMm ?? null],
];

function named(places: RollPlaces, pipe: boolean): PlacesRow["places"] {
  if (pipe) return [["raise", places.largeMm]];
  const { largeMm, smallMm, smallBearingMm, largeBearingMm } = places;
  const all = [
    ["large edge", largeMm],
    ["small edge", smallMm],
    ["bearing, small edge", smallBearingMm],
    ["bearing, large edge", largeBearingMm],
  ] as const;
  return all.flatMap(([name, mm]) => (mm === null ? [] : [[name, mm] as const]));
}

const WHAT = {
  raise: "first pass, next",
  overshot: "first pass, next blank",
  done: "first pass, keep",
  check: "",
  taught: "first pass, by the other zones",
  plan: "first pass, by the plan",
} as const;

type Set = Pick<WholeTold, "set" | "secondPass" | "bearings"> & {
  readonly kind: keyof typeof WHAT;
  readonly nextBlank?: boolean;
};

function rowsOf(one: Set, pipe: boolean, head = ""): PlacesRow[] {
  const { kind, set, secondPass, bearings, nextBlank = false } = one;
  const row = (what: string, places: RollPlaces, read: BearingsSet | null | undefined): PlacesRow => ({
    what: `${head}${what}`,
    places: [...named(places, pipe), ...scalesOf(read)],
  });
  return [
    ...(set ? [row(nextBlank ? WHAT.overshot : WHAT[kind], set, bearings?.set)] : []),
    ...(secondPass ? [row("second pass, start", secondPass, bearings?.secondPass)] : []),
  ];
}

/** Without the columns that nobody has a number for. */
function filled(rows: readonly PlacesRow[]): PlacesRow[] {
  const has = (column: number) => rows.some(({ places }) => places[column]?.[1] != null);
  return rows.map((row) => ({ ...row, places: row.places.filter((_, column) => has(column)) }));
}

type Answered = Exclude<ToldAnswer, { kind: "none" }>;

/** Where the roll is set by the trials: in this pass, and to start the second; in every zone. */
export function placesOf(answer: Answered | null, pipe: boolean): PlacesRow[] {
  if (!answer) return [];
  if (answer.kind === "correction") return filled(rowsOf(answer.correction, pipe));
  const { zones } = answer.correction;
  return filled(zones.flatMap((one) => rowsOf(one, pipe, zones.length === 1 ? "" : `zone ${one.zone}: `)));
}

/** Fills the table under the answer; it stays away where there is nothing to set. */
export function showPlaces(table: HTMLTableElement, rows: readonly PlacesRow[], units: Units): void {
  const [first] = rows;
  const lines = rows.map(({ what, places }) => [
    cell("th", what, "row"),
    ...places.map(([, mm]) => cell("td", mm === null ? "" : typed(settable(mm, units), units))),
  ]);
  const head = first
    ? [cell("th", `Raise, ${units}`, "col"), ...first.places.map(([name]) => cell("th", name, "col"))]
    : [];
  fillTable(table, head, lines);
}

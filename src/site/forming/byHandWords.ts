import type { Units } from "../../drawing/format.ts";
import type { ByHand } from "../../forming/byHand.ts";
import { settable } from "../../forming/rollPlaces.ts";
import { sayIn } from "../../forming/say.ts";
import type { ModelTable } from "../../forming/sheet/modelTable.ts";
import type { PlanStep } from "../../forming/sheet/step.ts";
import { capital } from "../../forming/words.ts";
import { listedZones } from "../../forming/zoneWords.ts";
import type { ZoneByHand } from "../../forming/zoneByHand.ts";

/** One row of a table to work by without a screen. */
export interface ByHandRow {
  readonly name: string;
  readonly cells: readonly string[];
}

/** A range of numbers that fall: from the widest to the narrowest; null where it has no end. */
type Range = readonly [from: number | null, to: number | null];

function wordsIn(units: Units) {
  const say = sayIn(units);
  const bare = (mm: number) => say.bare(mm);
  // A roll is set to a tenth of a millimetre at the best; a raise is never rounded up.
  const down = (mm: number) => bare(Math.floor(mm * 10) / 10);
  const set = (mm: number) => bare(settable(mm, units));
  return {
    down,
    set,
    range: ([from, to]: Range, { flat }: { flat: boolean }): string => {
      if (from === null) return to === null ? "any" : `over ${set(to)}${flat ? ", flat" : ""}`;
      return to === null ? `under ${set(from)}` : `${set(from)} to ${set(to)}`;
    },
    /** The same where the widest has the least number. */
    rising: ([from, to]: Range): string => {
      if (from === null) return to === null ? "any" : `under ${set(to)}`;
      return to === null ? `over ${set(from)}` : `${set(from)} to ${set(to)}`;
    },
    raise: (moreMm: number, isFirst: boolean): string => {
      if (moreMm === 0) return isFirst ? "look for the cause" : "right: leave it";
      if (moreMm < 0) return `next blank −${down(-moreMm)}`;
      return isFirst ? `${down(moreMm)}, check 0 first` : down(moreMm);
    },
  };
}

/** The table to correct the first pass of a right cone by. */
function gapRows(rows: readonly ByHand[], units: Units): ByHandRow[] {
  const { range, raise } = wordsIn(units);
  return [
    {
      name: `Gap less chalk, ${units}`,
      cells: rows.map(({ fromMm, toMm }) => range([fromMm, toMm], { flat: true })),
    },
    { name: "Raise both ends by", cells: rows.map(({ fromMm, moreMm }) => raise(moreMm, fromMm === null)) },
  ];
}

/** Before what is said of the zones of one setting; nothing where one serves all round. */
const head = (zones: readonly number[], several: boolean): string => {
  const name = listedZones(zones);
  return several ? `${capital(name)}: ` : "";
};

/** What the same radius leaves under a straightedge of this length. */
const depthName = (long: string, units: Units): string => `or depth, ${long} ${units} straightedge`;

/** The same for the zones of an uneven skin, setting by setting. */
function zoneRows(tables: readonly ZoneByHand[], units: Units): ByHandRow[] {
  const { range, rising, raise, down, set } = wordsIn(units);
  return tables.flatMap(({ zones, chordMm, highMm, ranges }) => [
    {
      name: `${head(zones, tables.length > 1)}R, large end, ${units}`,
      cells: ranges.map(({ openMm, tightMm }) => range([openMm, tightMm], { flat: true })),
    },
    ...(chordMm === null
      ? []
      : [
          {
            name: depthName(set(chordMm), units),
            cells: ranges.map(({ openDepthMm, tightDepthMm }) => rising([openDepthMm, tightDepthMm])),
          },
        ]),
    {
      name: `Raise both ends by (large edge never over ${down(highMm)})`,
      cells: ranges.map(({ openMm, moreMm }) => raise(moreMm, openMm === null)),
    },
  ]);
}

/** Long enough for a number by hand. */
const BLANK = "______";
const SHORT_BLANK = "____";

/** What the model asks for what came out of the first pass, and the sum that carries it over. */
function modelRows(tables: readonly ModelTable[], units: Units): ByHandRow[] {
  const { set } = wordsIn(units);
  return tables.flatMap(({ zones, chordMm, at }) => {
    const before = head(zones, tables.length > 1);
    const gaps = at.flatMap(({ gapMm }) => (gapMm === null ? [] : [set(gapMm)]));
    const radii = at.flatMap(({ insideMm }) => (insideMm === null ? [] : [set(insideMm)]));
    const depths = at.flatMap(({ depthMm }) => (depthMm === null ? [] : [set(depthMm)]));
    return [
      ...(gaps.length > 0
        ? [{ name: `Gap less chalk, ${units}`, cells: gaps }]
        : [{ name: `${before}R left, large end, ${units}`, cells: radii }]),
      ...(chordMm === null ? [] : [{ name: depthName(set(chordMm), units), cells: depths }]),
      {
        name: "Table, raise at the large edge",
        cells: at.map(({ largeMm }) => set(largeMm)),
      },
    ].map((row, i, { length }) => ({ ...row, cells: [...row.cells, ...sumBeside(zones, i, length)] }));
  });
}

/** The sum of each zone beside the rows of its table, the last beside the last; one where a gap tells all round. */
function sumBeside(zones: readonly number[], row: number, rows: number): string[] {
  const sum = (blank: string) => `last raise ${blank} − table ${blank} = ± ${blank}`;
  if (zones.length < 2) return row === rows - 1 ? [sum(BLANK)] : [];
  const zone = zones[row - rows + zones.length];
  return zone === undefined ? [] : [`zone ${zone}: ${sum(SHORT_BLANK)}`];
}

/** The tables of a step to work by without a screen, row by row: the same words on the page, on paper and in a PDF. */
export function byHandRows(
  { byHand, byHandZones, model }: Pick<PlanStep, "byHand" | "byHandZones" | "model">,
  units: Units,
): ByHandRow[] {
  return [
    ...(byHand ? gapRows(byHand, units) : []),
    ...zoneRows(byHandZones ?? [], units),
    ...modelRows(model ?? [], units),
  ];
}

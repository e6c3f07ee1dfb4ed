import { thickness } from "../drawing/thickness.ts";
import type { Shop } from "../forming/machine.ts";
import { plateToOrder } from "../forming/plateToOrder.ts";
import type { Units } from "../geometry/units.ts";
import { boxesRound, hull } from "../geometry/polygon.ts";
import { SAME_POINT_MM } from "../geometry/tolerance.ts";
import { enclose } from "../nesting/enclose.ts";
import { layPlates } from "../nesting/layPlates.ts";
import type { FreeRectangle, LaidPlate, LaidPlates, LayItem, Stock } from "../nesting/model.ts";
import { contourOf, cutPatterns } from "../output/contour.ts";
import type { BlankOnPlate, PlateSheet } from "../output/plateSheet.ts";
import { slug } from "../output/slug.ts";
import type { Blank, Report } from "../report/report.ts";
import { type Cutting, cuttingOf } from "../forming/cutting.ts";
import type { JobPart, JobParts } from "./job.ts";

/** A plate with its number among those of its material and thickness. */
export interface JobPlate {
  readonly sheet: PlateSheet;
  readonly utilisation: number;
  readonly free: FreeRectangle | null;
  readonly stock: Stock;
}

/** All blanks of one material and thickness, and the plates that they are cut from. */
export interface PlateGroup {
  readonly material: string;
  readonly thicknessMm: number;
  /** Material and thickness in words: "S235, 3 mm". */
  readonly name: string;
  readonly units: Units;
  readonly blanks: number;
  readonly cutting: Cutting;
  readonly stock: readonly Stock[];
  readonly laid: LaidPlates;
  readonly plates: readonly JobPlate[];
  /** Of each part with blanks on no plate, the plate that takes every one of those. [mm] */
  readonly toOrder: ReadonlyMap<
    string,
    Pick<Stock, "lengthMm" | "widthMm"> & {
      /** Those of the part, as its own sheet tells it. */
      readonly units: Units;
    }
  >;
}

/** The seed of every build: the same files give the same plates. */
const SEED = 1;

/**
 * The plates of a job: its blanks sorted by material and thickness, and laid on the plates of the shop's rack.
 *
 * @param effort how long to search; 1 takes a few seconds for a job of twenty parts
 */
export function platesOf({ parts, shop }: JobParts, effort: number): PlateGroup[] {
  const sorted = new Map<string, JobPart[]>();
  for (const one of parts) {
    const key = `${one.report.part.material} ${one.report.part.thickness.toFixed(2)}`;
    sorted.set(key, [...(sorted.get(key) ?? []), one]);
  }
  return [...sorted.values()]
    .map((members) => groupOf(members, shop, effort))
    .toSorted((a, b) => a.material.localeCompare(b.material, "en") || a.thicknessMm - b.thicknessMm);
}

/** One form of blank with the part that it belongs to. */
interface Cut {
  readonly report: Report;
  readonly blank: Blank;
  readonly item: LayItem;
}

function groupOf(members: readonly JobPart[], shop: Shop | undefined, effort: number): PlateGroup {
  const [{ report, material, gauge }] = members as [JobPart, ...JobPart[]];
  const { part } = report;
  // In the shop's own units, as its plates are.
  const units = shop?.units ?? part.units;
  const cutting = cuttingOf(shop, part.thickness);
  const cuts = members.flatMap((one) =>
    cutPatterns(one.report).map(({ blank, count }): Cut => {
      const item = {
        part: one.report.part.name,
        piece: blank.piece,
        count,
        areaMm2: blank.areaMm2,
        outline: enclose(contourOf(blank)),
      };
      return { report: one.report, blank, item };
    }),
  );
  const stock = (shop?.stock ?? [])
    .filter((one) => one.material === part.material || one.material === material.name)
    .filter((one) => Math.abs(one.thickness - part.thickness) <= SAME_POINT_MM)
    .map(({ length, width, grain = false }): Stock => ({ lengthMm: length, widthMm: width, grain }));
  const laid = layPlates(
    cuts.map(({ item }) => item),
    stock,
    { ...cutting, effort, seed: SEED },
  );
  const name = `${material.name}, ${thickness(part.thickness, part.units, gauge).value}`;
  const file = slug(`${part.material} ${thickness(part.thickness, part.units, gauge).value}`);
  return {
    material: material.name,
    thicknessMm: part.thickness,
    name,
    units,
    blanks: cuts.reduce((sum, { item }) => sum + item.count, 0),
    cutting,
    stock,
    laid,
    toOrder: toOrder(laid, cuts, cutting.edgeMm),
    plates: numbered(laid.plates).map(({ plate, first, last }) => {
      const which = first === last ? `plate ${first}` : alike(first, last);
      const sheet: PlateSheet = {
        name: `${file}-plate-${first}`,
        title: `${name}, ${which}`,
        lengthMm: plate.stock.lengthMm,
        widthMm: plate.stock.widthMm,
        copies: plate.count,
        units,
        blanks: blanksOn(plate, cuts),
      };
      const { utilisation, free, stock: size } = plate;
      return { sheet, utilisation, free, stock: size };
    }),
  };
}

function toOrder({ left }: LaidPlates, cuts: readonly Cut[], edgeMm: number): PlateGroup["toOrder"] {
  return new Map(
    left.map(({ part }) => {
      const pieces = new Set(left.filter((one) => one.part === part).map(({ piece }) => piece));
      const own = cuts.filter(({ item }) => item.part === part && pieces.has(item.piece));
      const units = own[0]?.report.part.units ?? "mm";
      const boxes = own.map(({ blank }) => boxesRound(hull(blank.outline)));
      return [part, { ...plateToOrder(boxes, { edgeMm, units }), units }];
    }),
  );
}

const alike = (first: number, last: number): string =>
  last === first + 1 ? `plates ${first} and ${last}, alike` : `plates ${first} to ${last}, all alike`;

function numbered(plates: readonly LaidPlate[]): { plate: LaidPlate; first: number; last: number }[] {
  let last = 0;
  return plates.map((plate) => {
    const first = last + 1;
    last += plate.count;
    return { plate, first, last };
  });
}

/** Numbered as the job names them: all blanks of one form have one number on all plates of their kind. */
const blanksOn = ({ placings }: LaidPlate, cuts: readonly Cut[]): BlankOnPlate[] =>
  placings.map(({ part, piece, rotationDeg, at }) => {
    const index = cuts.findIndex(({ item }) => item.part === part && item.piece === piece);
    const cut = cuts[index];
    if (!cut) throw new RangeError(`no blank ${part}, piece ${piece}`);
    return { report: cut.report, blank: cut.blank, number: index + 1, rotationDeg, at };
  });

import type { Shop } from "../../forming/machine.ts";
import type { Job } from "../../input/readJob.ts";
import type { Report } from "../../report/report.ts";
import { numbersIn, thickness } from "./numbers.ts";
import { SHAPE_NAMES } from "./shapes.ts";

/** One cell of a title block; a wide one takes the room of two. */
export interface Cell {
  readonly label: string;
  readonly value: string;
  readonly wide?: boolean;
  /** On paper the pages are counted in the margin, where a long table's own pages count too. */
  readonly screenOnly?: boolean;
}

/** What a part's title block tells besides the part. */
export interface PartAround {
  readonly shop: Shop | undefined;
  readonly job: Job | undefined;
  readonly material: string;
  readonly gauge: string | null;
  /** Which version and files the sheets are made from; left out where they are of none. */
  readonly mark?: string;
  /** What sets these sheets apart from the binder's own, in sentences. */
  readonly remarks?: readonly string[];
}

interface SheetOf extends PartAround {
  readonly sheet: number;
  readonly sheets: number;
}

const optional = (label: string, value: string | undefined): Cell[] =>
  value === undefined ? [] : [{ label, value }];

/** The title block of a part's sheet: whose page it is, and which of how many. */
export function partCells(
  { part, massKg }: Report,
  { sheet, sheets, shop, job, material, gauge, remarks = [] }: SheetOf,
): Cell[] {
  const say = numbersIn(part.units);
  return [
    { label: "Title", value: part.title, wide: true },
    { label: "Part", value: part.name, wide: true },
    { label: "Shape", value: SHAPE_NAMES[part.shape] },
    { label: "Material", value: material },
    { label: "Thickness", value: thickness(part.thickness, part.units, gauge).value },
    { label: "Quantity", value: String(part.quantity ?? 1) },
    { label: "Mass of one", value: say.mass(massKg) },
    ...optional("Tolerance", part.tolerance && `ISO 13920-${part.tolerance}`),
    ...optional("Job", job?.title).map((cell) => ({ ...cell, wide: true })),
    ...optional("Reference", job?.reference),
    ...optional("Date", job?.date),
    ...optional("Shop", shop?.name).map((cell) => ({ ...cell, wide: true })),
    ...optional("Note", remarks.length > 0 ? remarks.join(" ") : undefined).map((cell) => ({
      ...cell,
      wide: true,
    })),
    { label: "Sheet", value: `${sheet} of ${sheets}`, screenOnly: true },
  ];
}

/** The same for paper, where pages are counted beside the frame, however many there come to be. */
export const printedCells = (report: Report, around: PartAround): Cell[] =>
  partCells(report, { ...around, sheet: 1, sheets: 1 }).filter(({ screenOnly }) => !screenOnly);

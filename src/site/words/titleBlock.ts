import type { Report } from "../../report/report.ts";
import { numbersIn, thickness } from "./numbers.ts";
import { SHAPE_NAMES } from "./shapes.ts";

interface Cell {
  readonly label: string;
  readonly value: string;
  readonly wide?: boolean;
}

/** The title block of a part's sheet: whose page it is, and which of how many. */
export function partCells(
  { part, massKg }: Report,
  {
    sheet,
    sheets,
    shop,
    material,
  }: { sheet: number; sheets: number; shop: string | undefined; material: string },
): Cell[] {
  const say = numbersIn(part.units);
  return [
    { label: "Title", value: part.title, wide: true },
    { label: "Part", value: part.name },
    { label: "Shape", value: SHAPE_NAMES[part.shape] },
    { label: "Material", value: material },
    { label: "Thickness", value: thickness(part.thickness, part.units).value },
    { label: "Quantity", value: String(part.quantity ?? 1) },
    { label: "Mass of one", value: say.mass(massKg) },
    ...(part.tolerance ? [{ label: "Tolerance", value: `ISO 13920-${part.tolerance}` }] : []),
    ...(shop ? [{ label: "Shop", value: shop }] : []),
    { label: "Sheet", value: `${sheet} of ${sheets}` },
  ];
}

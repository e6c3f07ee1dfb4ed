import { fixed, plain } from "../drawing/format.ts";
import { perThickness } from "./coneForm.ts";
import type { ConeTableOrder } from "./coneTable.ts";
import type { ReckonerTable } from "./table.ts";

/** Where each figure stands; a length in inches takes two columns, decimals and the nearest fraction. */
function placesOf(entries: number, width: number) {
  return {
    angle: entries,
    slant: entries + 1,
    outer: entries + 1 + width,
    inner: entries + 1 + 2 * width,
    sector: entries + 1 + 3 * width,
    outerChord: entries + 2 + 3 * width,
    innerChord: entries + 2 + 4 * width,
    thickness: entries + 2 + 5 * width,
  };
}

/** One row of a table of cones by hand, from its diameters and height alone. */
export function coneWorked(
  { units, worked, plate }: ConeTableOrder,
  {
    cells,
    row,
    entries,
  }: { readonly cells: readonly string[]; readonly row: number; readonly entries: number },
): ReckonerTable["worked"] {
  const at = placesOf(entries, units === "in" ? 2 : 1);
  const cell = (column: number) => cells[column] as string;
  const length = (column: number) => `${cell(column)} ${units}`;
  const { large, small, height } = worked;
  const taper = (large - small) / 2;
  const alpha = Math.atan2(taper, height);
  // Carried on with more figures than the table prints, so that whoever keys it in gets the table's own.
  const half = plain(taper, 4);
  const sine = fixed(Math.sin(alpha), 6);
  const inside = plate.face === "inside";
  const moved = Number(fixed(perThickness(alpha), 3)) * plate.thickness;
  const outer = Number(cell(at.outer));
  return {
    row,
    columns: Object.values(at),
    steps: [
      { what: "Half the difference of the ends", sum: `(${large} − ${small}) ÷ 2`, is: `${half} ${units}` },
      { what: "Half angle", sum: `arctan(${half} ÷ ${height})`, is: `${cell(at.angle)}°` },
      { what: "Its sine", sum: `${half} ÷ √(${height}² + ${half}²)`, is: sine },
      { what: "Slant", sum: `√(${height}² + ${half}²)`, is: length(at.slant) },
      { what: "Radius of the large edge", sum: `${large} ÷ (2 × ${sine})`, is: length(at.outer) },
      { what: "Radius of the small edge", sum: `${small} ÷ (2 × ${sine})`, is: length(at.inner) },
      { what: "Sector angle", sum: `360° × ${sine}`, is: `${cell(at.sector)}°` },
      {
        what: "Chord of the large edge",
        sum: `${large} ÷ ${sine} × sin(360° × ${sine} ÷ 2)`,
        is: length(at.outerChord),
      },
      {
        what: "Chord of the small edge",
        sum: `${small} ÷ ${sine} × sin(360° × ${sine} ÷ 2)`,
        is: length(at.innerChord),
      },
      {
        what: "For each 1 of thickness",
        sum: `1 ÷ sin(2 × arctan(${half} ÷ ${height}))`,
        is: cell(at.thickness),
      },
      {
        what: `With ${plate.face} diameters and plate of ${plate.thickness} ${units} the radius of the large edge is`,
        sum: `${cell(at.outer)} ${inside ? "+" : "−"} ${plate.thickness} × ${cell(at.thickness)}`,
        is: `${fixed(inside ? outer + moved : outer - moved, units === "mm" ? 1 : 3)} ${units}`,
      },
    ],
  };
}

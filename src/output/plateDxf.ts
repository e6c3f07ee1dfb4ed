import type { Vec2 } from "../geometry/vector.ts";
import type { FileUnits } from "./contour.ts";
import { drawBlank, notes, unitsNote } from "./dxf.ts";
import { dxfFile } from "./dxfFile.ts";
import { notGoing, notToCut } from "./notToCut.ts";
import type { PlateSheet } from "./plateSheet.ts";

/**
 * A whole plate for the cutting table: every blank's cut contour where it lies, with true arcs, its bend and element
 * lines and its mark turned with it. The plate's own edge stands on the layer PLATE and is never cut.
 */
export function printPlateDxf(sheet: PlateSheet, units: FileUnits = "mm"): string {
  const { lengthMm, widthMm } = sheet;
  const file = dxfFile({ units, size: [lengthMm, widthMm], hasPlate: true });
  const corners: readonly Vec2[] = [
    [0, 0],
    [lengthMm, 0],
    [lengthMm, widthMm],
    [0, widthMm],
  ];
  const [start, ...others] = corners as [Vec2, ...Vec2[]];
  file.contour({ start, pieces: [...others, start].map((to) => ({ to, bulge: 0 })) }, "PLATE");
  for (const one of sheet.blanks) drawBlank(file, one);
  const bad = notGoing(sheet.blanks.map(({ report }) => report));
  notes(file, [
    unitsNote(units),
    `${sheet.title}: ${sheet.copies} to cut like this${bad.length > 0 ? ", once what stands below is settled" : ""}`,
    ...notToCut(bad),
  ]);
  return file.end();
}

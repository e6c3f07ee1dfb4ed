import type { Vec2 } from "../geometry/vector.ts";
import type { FileUnits } from "./contour.ts";
import { drawBlank, NOTE_CAP_MM, unitsNote } from "./dxf.ts";
import { dxfFile } from "./dxfFile.ts";
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
  const note = (row: number, words: string) =>
    file.text({ at: [0, -2 * NOTE_CAP_MM * row], capMm: NOTE_CAP_MM, words }, "NOTE");
  note(1, unitsNote(units));
  note(2, `${sheet.title}: ${sheet.copies} to cut like this`);
  return file.end();
}

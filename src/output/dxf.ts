import type { Vec2 } from "../geometry/vector.ts";
import type { Blank, Report } from "../report/report.ts";
import { contourOf, type FileUnits, markPlace, markWords } from "./contour.ts";
import { dxfFile } from "./dxfFile.ts";

/** Height of what is etched, unless the blank is small. */
const MARK_CAP_MM = 8;
export const NOTE_CAP_MM = 5;

/**
 * One blank for the cutting table: cut contour closed, with true arcs; bend and element lines, and what is etched, on
 * layers of their own.
 *
 * @param units what the numbers are in; told in the header and as words on the layer NOTE
 */
export function printDxf(report: Report, blank: Blank, units: FileUnits = "mm"): string {
  const file = dxfFile({ units, size: [blank.asDrawn.xMm, blank.asDrawn.yMm] });
  file.contour(contourOf(blank), "CUT");
  for (const { kind, from, to } of blank.lines) file.line(from, to, kind === "bend" ? "BEND" : "ELEMENT");
  const { at, longMm } = markPlace(blank);
  const words = markWords(report, blank);
  file.text({ at, capMm: markCap(longMm), words, middle: { turnDeg: 0 } }, "MARK");
  const foot = (row: number): Vec2 => [0, -2 * NOTE_CAP_MM * row];
  const note = (row: number, text: string) =>
    file.text({ at: foot(row), capMm: NOTE_CAP_MM, words: text }, "NOTE");
  note(1, unitsNote(units));
  note(2, `${report.part.title}: ${words}`);
  return file.end();
}

/** Small blanks have small marks. [mm] */
export const markCap = (longMm: number): number => Math.min(MARK_CAP_MM, longMm / 4 || MARK_CAP_MM);

/** Some readers pass over the units in the header. */
export const unitsNote = (units: FileUnits): string => `UNITS ${units === "mm" ? "MM" : "INCHES"}`;

import { readable } from "../drawing/lettering.ts";
import { type Placed, placer } from "../geometry/placed.ts";
import type { Vec2 } from "../geometry/vector.ts";
import type { Blank, Report } from "../report/report.ts";
import { brakeBends, layoutLines, numberPlace } from "./bendLines.ts";
import { contourOf, type FileUnits, markPlace, markWords, placedContour } from "./contour.ts";
import { type DxfFile, dxfFile } from "./dxfFile.ts";
import { uprightNumber } from "./uprightNumber.ts";

const MARK_CAP_MM = 8;
export const NOTE_CAP_MM = 5;

/** As it is drawn. */
const AS_DRAWN: Placed = { rotationDeg: 0, at: [0, 0] };

/**
 * One blank for the cutting table: cut contour closed, with true arcs; bend and element lines, and what is etched, on
 * layers of their own. Bend lines are those of the brake's plan as far as its hits go, with their numbers beside them,
 * where the part goes to the brake.
 *
 * @param units what the numbers are in; told in the header and as words on the layer NOTE
 */
export function printDxf(report: Report, blank: Blank, units: FileUnits = "mm"): string {
  const file = dxfFile({ units, size: [blank.asDrawn.xMm, blank.asDrawn.yMm] });
  drawBlank(file, { report, blank, ...AS_DRAWN });
  const foot = (row: number): Vec2 => [0, -2 * NOTE_CAP_MM * row];
  const note = (row: number, text: string) =>
    file.text({ at: foot(row), capMm: NOTE_CAP_MM, words: text }, "NOTE");
  note(1, unitsNote(units));
  note(2, `${report.part.title}: ${markWords(report, blank)}`);
  return file.end();
}

/** A blank where it lies: contour, lines, their numbers, and its mark, turned so that it reads without turning over. */
export function drawBlank(
  file: DxfFile,
  one: Placed & { readonly report: Report; readonly blank: Blank },
): void {
  const { report, blank, rotationDeg } = one;
  const place = placer(one);
  const turn = (alongDeg: number) => ({ turnDeg: readable(alongDeg + rotationDeg) });
  file.contour(placedContour(contourOf(blank), place), "CUT");
  const bends = brakeBends(report, blank);
  for (const { kind, from, to } of layoutLines(blank, bends))
    file.line(place(from), place(to), kind === "bend" ? "BEND" : "ELEMENT");
  for (const bend of bends ?? []) {
    file.line(place(bend.from), place(bend.to), "BEND");
    const { at, capMm, alongDeg } = numberPlace(bend, bends ?? []);
    const words = uprightNumber(bend.line.number);
    file.text({ at: place(at), capMm, words, middle: turn(alongDeg) }, "MARK");
  }
  const { at, longMm } = markPlace(blank);
  const capMm = Math.min(MARK_CAP_MM, longMm / 4 || MARK_CAP_MM);
  file.text({ at: place(at), capMm, words: markWords(report, blank), middle: turn(0) }, "MARK");
}

/** Some readers pass over the units in the header. */
export const unitsNote = (units: FileUnits): string => `UNITS ${units === "mm" ? "MM" : "INCHES"}`;

import { readable } from "../drawing/lettering.ts";
import { type Placed, placer } from "../geometry/placed.ts";
import type { Blank, Report } from "../report/report.ts";
import { brakeBends, linesOn } from "./bendLines.ts";
import { contourOf, type FileUnits, markPlace, markWords, placedContour } from "./contour.ts";
import { type DxfFile, dxfFile } from "./dxfFile.ts";
import { lineNumbers } from "./lineNumbers.ts";
import { notGoing, notToCut } from "./notToCut.ts";

const MARK_CAP_MM = 8;
const NOTE_CAP_MM = 5;

/** As it is drawn. */
const AS_DRAWN: Placed = { rotationDeg: 0, at: [0, 0] };

/**
 * One blank for the cutting table: cut contour closed, with true arcs; bend and element lines, and what is etched, on
 * layers of their own. Bend lines are those of the brake's plan as far as its hits go, with their numbers beside them,
 * where the part goes to the brake; else the lines have their numbers in the marking table.
 *
 * @param units what the numbers are in; told in the header and as words on the layer NOTE
 */
export function printDxf(report: Report, blank: Blank, units: FileUnits = "mm"): string {
  const file = dxfFile({ units, size: [blank.asDrawn.xMm, blank.asDrawn.yMm] });
  drawBlank(file, { report, blank, ...AS_DRAWN });
  notes(file, [
    unitsNote(units),
    `${report.part.title}: ${markWords(report, blank)}`,
    ...notToCut(notGoing([report])),
  ]);
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
  for (const { kind, from, to } of linesOn(blank, bends))
    file.line(place(from), place(to), kind === "bend" ? "BEND" : "ELEMENT");
  for (const { of, words, at, capMm, alongDeg } of lineNumbers(report, blank, bends))
    file.text({ at: place(at), capMm, words, middle: turn(alongDeg) }, of === "bend" ? "MARK" : "NUMBER");
  const { at, longMm } = markPlace(blank);
  const capMm = Math.min(MARK_CAP_MM, longMm / 4 || MARK_CAP_MM);
  file.text({ at: place(at), capMm, words: markWords(report, blank), middle: turn(0) }, "MARK");
}

/** Words below what is cut, one under the other. */
export const notes = (file: DxfFile, rows: readonly string[]): void => {
  for (const [i, words] of rows.entries())
    file.text({ at: [0, -2 * NOTE_CAP_MM * (i + 1)], capMm: NOTE_CAP_MM, words }, "NOTE");
};

/** Some readers pass over the units in the header. */
export const unitsNote = (units: FileUnits): string => `UNITS ${units === "mm" ? "MM" : "INCHES"}`;

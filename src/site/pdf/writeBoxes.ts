import type { Units } from "../../geometry/units.ts";
import type { NoteBox } from "../../forming/sheet/step.ts";
import type { Block } from "../../output/pdf/block.ts";
import type { Lettering, Pdf } from "../../output/pdf/document.ts";
import { joined } from "../forming/joined.ts";
import {
  addedWords,
  boxName,
  carriedBlank,
  isSum,
  openBox,
  plannedWords,
  sumStart,
} from "../forming/planned.ts";

/** A name and a line to write on: letters, their row, what stays free before the line, and the least of the line. [mm] */
const BOX = { capMm: 1.85, rowMm: 3.9, gapMm: 1.2, lineMm: 7 };
/** Between columns. [mm] */
const BETWEEN_MM = 2.5;

/** What is written on a step's lines, in rows of so many. */
export function boxesBlock(
  pdf: Pdf,
  boxes: readonly NoteBox[],
  { units, columns }: { units: Units; columns: number },
): Block {
  return {
    height: () => Math.ceil(boxes.length / columns) * BOX.rowMm,
    draw: (x, y, width) => {
      const each = (width - BETWEEN_MM * (columns - 1)) / columns;
      boxes.forEach((one, i) => {
        const at = { x: x + (i % columns) * (each + BETWEEN_MM), y: y + Math.floor(i / columns) * BOX.rowMm };
        drawBox(pdf, one, { ...at, widthMm: each, units });
      });
    },
  };
}

function drawBox(
  pdf: Pdf,
  box: NoteBox,
  { x, y, widthMm, units }: { x: number; y: number; widthMm: number; units: Units },
): void {
  const { label, unit, planned, inShop } = box;
  const to = x + widthMm;
  const foot = y + BOX.rowMm - 0.5;
  let at = x;
  const line = (end: number): void => {
    pdf.line([at, foot], [end, foot], { widthMm: 0.25 });
    at = end + BOX.gapMm;
  };
  const sum = isSum(box);
  const before =
    planned === undefined ? openBox(label, unit, units) : sum ? sumStart(label) : `${boxName(label)}:`;
  const number =
    planned === undefined
      ? ""
      : joined(sum ? addedWords(planned, unit, units) : plannedWords(planned, unit, units, inShop));
  const tail = `${carriedBlank(box)}${sum || box.carried ? " =" : ""}`;
  // A long name is set in smaller letters, so that room to write on stays.
  const gaps = BOX.gapMm * (sum ? 3 : 2);
  const asked =
    pdf.width(before, { capMm: BOX.capMm }) +
    pdf.width(number, { capMm: BOX.capMm, bold: true }) +
    pdf.width(tail, { capMm: BOX.capMm }) +
    gaps;
  const capMm = BOX.capMm * Math.min(1, (widthMm - BOX.lineMm * (sum ? 2 : 1)) / asked);
  const write = (text: string, isBold = false): void => {
    const how: Lettering = { capMm, bold: isBold };
    pdf.write(text, [at, foot - 1.3], how);
    at += pdf.width(text, how);
  };
  write(before);
  at += BOX.gapMm;
  if (sum) line(at + BOX.lineMm);
  if (number !== "") {
    write(number, true);
    write(tail);
    at += BOX.gapMm;
  }
  line(to);
}

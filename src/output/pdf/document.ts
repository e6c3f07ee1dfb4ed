import { jsPDF } from "jspdf";
import { radians } from "../../geometry/angle.ts";
import { MM_PER_INCH } from "../../geometry/units.ts";
import type { Vec2 } from "../../geometry/vector.ts";
import { CAP_PER_SIZE } from "../../drawing/lettering.ts";
import type { Label, Shape } from "../../drawing/model.ts";
import { trace } from "../../drawing/pen.ts";
import { type Frame, pdfPen } from "./pen.ts";
import { escapedText, hexText } from "./textString.ts";

/** The binder's font as TrueType files: a page's own formats cannot be put into a PDF. */
export interface PdfFonts {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}

export interface PdfAbout {
  readonly title: string;
  readonly subject: string;
  /** When it was made, as PDF writes it, with its zone: D:20260131120000+00'00'. The same date gives the same file. */
  readonly date: string;
  readonly fonts: PdfFonts;
  /** Decimals of a point in the file; a full-size pattern is drawn as finely as the format goes. */
  readonly decimals?: number;
}

/** An entry in the list of contents, for others to stand under. */
export type Bookmark = ReturnType<jsPDF["outline"]["add"]>;

/** A box on a sheet that leads to a named place of the file. */
interface Link {
  readonly sheet: number;
  readonly at: Vec2;
  readonly size: Vec2;
  readonly to: string;
}

/** How a line is drawn. Millimetres of paper; ink from 0 black to 1 white. */
export interface LineStyle {
  readonly widthMm: number;
  readonly dashMm?: readonly number[];
  readonly ink?: number;
  readonly fill?: boolean;
  /** Ends that meet at a corner are round; what is measured ends where it ends. */
  readonly round?: boolean;
}

/** How something is written: height of its capitals, weight, which end stands at the place, and how it is turned. */
export interface Lettering {
  readonly capMm: number;
  readonly bold?: boolean;
  readonly anchor?: Label["anchor"];
  /** Counter-clockwise. [degrees] */
  readonly rotationDeg?: number;
  readonly ink?: number;
}

const FAMILY = "Binder Sans";
const POINTS_PER_MM = 72 / MM_PER_INCH;
/** Decimals of a number in the file: 0.000001 point. */
const DECIMALS = 6;
/** What is read and not measured needs no more: a hundredth of a point. */
export const READING_DECIMALS = 2;
const DATE = /^D:\d{14}[+-]\d\d'\d\d'$/;
/** A file id belongs in the format; a fixed one keeps files of the same content the same. */
const FILE_ID = "0".repeat(31) + "1";

/** jsPDF reads a font from text, one sign a byte. */
function binary(bytes: Uint8Array): string {
  let text = "";
  for (let i = 0; i < bytes.length; i += 4096) text += String.fromCharCode(...bytes.subarray(i, i + 4096));
  return text;
}

/**
 * A PDF file that is the same, byte for byte, for the same content and date; to be printed at 100 %, as its own settings ask.
 * Places are millimetres from a sheet's top left, y down; parts of a drawing come through a frame.
 *
 * @throws RangeError for a sign that the font has not: it would print as a gap or as another sign, and nobody would see it
 */
export function createPdf({ title, subject, date, fonts, decimals = DECIMALS }: PdfAbout) {
  if (!DATE.test(date)) throw new RangeError(`date of a PDF: ${date}`);
  const doc = new jsPDF({ unit: "mm", precision: decimals, compress: true, putOnlyUsedFonts: true });
  doc.deletePage(1);
  doc.setFileId(FILE_ID);
  doc.setCreationDate(date);
  doc.setLanguage("en");
  doc.setProperties({ title: escapedText(title), subject: escapedText(subject), creator: "Slantwork" });
  // The outline writes its titles by this, which its types leave out.
  Object.assign(doc.outline, { makeString: hexText });
  const here = (): number => doc.getCurrentPageInfo().pageNumber;
  const places = new Map<string, { readonly sheet: number; readonly y: number }>();
  const links: Link[] = [];
  const lost = new Map<string, string>();
  doc.viewerPreferences({ PrintScaling: "None", PickTrayByPDFSize: true, DisplayDocTitle: true });
  for (const [style, bytes] of [
    ["normal", fonts.regular],
    ["bold", fonts.bold],
  ] as const) {
    doc.addFileToVFS(`${style}.ttf`, binary(bytes));
    doc.addFont(`${style}.ttf`, FAMILY, style, undefined, "Identity-H");
  }
  doc.setFont(FAMILY, "normal");

  const grey = (ink: number): [number, number, number] => {
    const one = Math.round(ink * 255);
    return [one, one, one];
  };
  const style = ({ widthMm, dashMm = [], ink = 0, round = false }: LineStyle): void => {
    doc.setLineCap(round ? "round" : "butt");
    doc.setLineWidth(widthMm);
    doc.setLineDashPattern([...dashMm], 0);
    doc.setDrawColor(...grey(ink));
    doc.setFillColor(...grey(ink));
  };
  const letters = ({ capMm, bold = false, ink = 0 }: Lettering): void => {
    doc.setFont(FAMILY, bold ? "bold" : "normal");
    doc.setFontSize((capMm / CAP_PER_SIZE) * POINTS_PER_MM);
    doc.setTextColor(...grey(ink));
  };

  return {
    /** A new sheet of paper; what follows is drawn on it. */
    sheet: (widthMm: number, heightMm: number): void => {
      settle(doc);
      doc.addPage([widthMm, heightMm], widthMm > heightMm ? "landscape" : "portrait");
      doc.setLineJoin("round");
    },
    sheets: (): number => doc.getNumberOfPages(),
    /** Back to a sheet that is there already. */
    turnTo: (sheet: number): void => void doc.setPage(sheet),
    /** An entry in the list of contents, under another one or on its own, for the sheet at hand or another. */
    bookmark: (name: string, under: Bookmark | null = null, sheet = here()): Bookmark =>
      doc.outline.add(under, name, { pageNumber: sheet }),
    /** Names a place of the sheet at hand for links to lead to: its top, or so far down. [mm] */
    place: (name: string, y = 0): void => void places.set(name, { sheet: here(), y }),
    /** The sheet of a named place. */
    sheetOf: (name: string): number | undefined => places.get(name)?.sheet,
    /** A box that leads to a named place, which may come later; where there is none in this file, it leads nowhere. */
    link: (to: string, at: Vec2, size: Vec2): void => void links.push({ sheet: here(), at, size, to }),
    /** Signs that somebody typed and that the font has not, each with the words that it stood in first. */
    lost: (): ReadonlyMap<string, string> => lost,
    lose(sign: string, words: string): void {
      if (!lost.has(sign)) lost.set(sign, words);
    },
    draw(shapes: readonly Shape[], frame: Frame, how: LineStyle): void {
      if (shapes.length === 0) return;
      style(how);
      const pen = pdfPen(doc, frame);
      for (const shape of shapes) trace(shape, pen);
      if (how.fill) doc.fill();
      else doc.stroke();
    },
    line([x1, y1]: Vec2, [x2, y2]: Vec2, how: LineStyle): void {
      style(how);
      doc.line(x1, y1, x2, y2);
    },
    box([x, y]: Vec2, [widthMm, heightMm]: Vec2, how: LineStyle): void {
      style(how);
      doc.rect(x, y, widthMm, heightMm, how.fill ? "F" : "S");
    },
    /** Length of a line of lettering. [mm of paper] */
    width(text: string, how: Lettering): number {
      letters(how);
      return doc.getTextWidth(text);
    },
    /** One line of lettering; `at` lies at half the height of its capitals. */
    write(text: string, at: Vec2, how: Lettering): void {
      if (text === "") return;
      letters(how);
      for (const sign of text)
        if (!holds(doc, sign)) throw new RangeError(`no sign ${sign} in the font: ${text}`);
      const long = doc.getTextWidth(text);
      const along = { start: 0, middle: -long / 2, end: -long }[how.anchor ?? "start"];
      const down = how.capMm / 2;
      const turn = radians(how.rotationDeg ?? 0);
      const [c, s] = [Math.cos(turn), Math.sin(turn)];
      doc.text(text, at[0] + c * along + s * down, at[1] - s * along + c * down, {
        angle: how.rotationDeg ?? 0,
      });
    },
    /** Does the font have this sign? */
    holds: (sign: string): boolean => holds(doc, sign),
    /** What is drawn meanwhile shows only within a box. */
    within([x, y]: Vec2, [widthMm, heightMm]: Vec2, draw: () => void): void {
      doc.saveGraphicsState();
      doc.rect(x, y, widthMm, heightMm, null);
      doc.clip();
      doc.discardPath();
      draw();
      doc.restoreGraphicsState();
    },
    bytes(): Uint8Array<ArrayBuffer> {
      for (const { sheet, at, size, to } of links.splice(0)) {
        const place = places.get(to);
        if (!place) continue;
        doc.setPage(sheet);
        doc.link(...at, ...size, { pageNumber: place.sheet, top: place.y });
      }
      return new Uint8Array(doc.output("arraybuffer"));
    },
  };
}
export type Pdf = ReturnType<typeof createPdf>;

/** jsPDF keeps every stroke of a sheet as a text of its own, and joins them at last; a sheet that is done is joined at once. */
function settle(doc: jsPDF): void {
  if (doc.getNumberOfPages() === 0) return;
  const { pageNumber } = doc.getCurrentPageInfo();
  const strokes = (doc.internal as unknown as { pages: (string[] | undefined)[] }).pages[pageNumber];
  strokes?.splice(0, strokes.length, strokes.join("\n"));
}

/** jsPDF's table of a font: 0 is the sign for what is missing. */
function holds(doc: jsPDF, sign: string): boolean {
  const { metadata } = doc.getFont() as unknown as {
    metadata: { characterToGlyph: (code: number) => number };
  };
  return metadata.characterToGlyph(sign.codePointAt(0) ?? 0) !== 0;
}

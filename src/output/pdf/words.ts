import type { Vec2 } from "../../geometry/vector.ts";
import type { Block } from "./block.ts";
import type { Lettering, Pdf } from "./document.ts";
import { lettering, type Line, linesOf } from "./wordLines.ts";

/** A stretch of words in one kind of lettering. */
export interface Run {
  readonly text: string;
  readonly bold?: boolean;
  readonly ink?: number;
  /** Height of its capitals; the paragraph's own if left out. [mm] */
  readonly capMm?: number;
  /** The name of a place in the file that it leads to. */
  readonly to?: string | undefined;
  /** Stands above the line: the letter of a footnote. */
  readonly raised?: boolean;
}

/** From line to line, over the height of the capitals. [-] */
const LEADING = 1.68;
/** How far a raised letter stands above the others, over the height of their capitals. [-] */
const RAISED = 0.45;

/** A box to tick, in the place of a number. */
export const TICK = Symbol("a box to tick");

export interface ParagraphOptions {
  readonly capMm?: number;
  readonly align?: "left" | "right";
  /** What stands before the first line, in the margin of the others: a number, a box to tick. */
  readonly mark?: string | typeof TICK;
  readonly indentMm?: number;
  /** From line to line, over the height of the capitals. [-] */
  readonly leading?: number;
  /** So much is kept free at the right for something else; further down lines are whole again. */
  readonly aside?: Aside | undefined;
}

/** Room beside the first lines of a paragraph. [mm] */
interface Aside {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** Words broken into lines at their spaces, never at one that does not break. */
export function paragraph(pdf: Pdf, runs: readonly Run[] | string, options: ParagraphOptions = {}): Block {
  const { capMm = 2, align = "left", mark, indentMm = mark === undefined ? 0 : 4, aside } = options;
  const all = typeof runs === "string" ? [{ text: runs }] : runs;
  const known = new Map<number, readonly Line[]>();
  const step = Math.max(capMm, ...all.map((one) => one.capMm ?? 0)) * (options.leading ?? LEADING);
  const lines = (width: number): readonly Line[] => {
    const narrow = aside ? Math.ceil(aside.heightMm / step) : 0;
    const wide = width - indentMm;
    const widthMm = (line: number) => (line < narrow ? wide - (aside?.widthMm ?? 0) : wide);
    const found = known.get(width) ?? linesOf(pdf, all, { capMm, widthMm });
    known.set(width, found);
    return found;
  };
  return {
    height: (width) => lines(width).length * step,
    draw: (x, y, width) => {
      const first = y + step / 2;
      if (mark === TICK) pdf.box([x, first - capMm * 0.7], [capMm * 1.4, capMm * 1.4], { widthMm: 0.2 });
      else if (mark !== undefined) pdf.write(mark, [x, first], { capMm, bold: true });
      lines(width).forEach(({ words, longMm }, i) => {
        const left = x + indentMm + (align === "right" ? width - indentMm - longMm : 0);
        for (const one of words) {
          const at: Vec2 = [left + one.x, first + i * step - (one.raised ? RAISED * capMm : 0)];
          const how = lettering(one, capMm);
          pdf.write(one.text, at, how);
          if (one.to !== undefined)
            pdf.link(one.to, [at[0], at[1] - step / 2], [pdf.width(one.text, how), step]);
        }
      });
    },
  };
}

/** So nearly the whole room that rounding does not carry the last letter over its end. [-] */
const WITHIN = 0.999;

/** A line of lettering, smaller where it would not fit; never so small that it cannot be read, rather cut short. */
export function fitted(pdf: Pdf, text: string, at: Vec2, how: Lettering, roomMm: number): void {
  const least = 1.4;
  const long = pdf.width(text, how);
  if (long <= roomMm) {
    pdf.write(text, at, how);
    return;
  }
  const smaller = { ...how, capMm: Math.max(least, (WITHIN * how.capMm * roomMm) / long) };
  let words = text;
  while (words.length > 1 && pdf.width(words, smaller) > roomMm) words = `${words.slice(0, -2).trimEnd()}…`;
  pdf.write(words, at, smaller);
}

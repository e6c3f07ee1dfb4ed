import type { Vec2 } from "../../geometry/vector.ts";
import type { Block } from "./block.ts";
import type { Lettering, Pdf } from "./document.ts";
import { breakable } from "./numberRuns.ts";
import { printable } from "./printable.ts";

/** A stretch of words in one kind of lettering. */
export interface Run {
  readonly text: string;
  readonly bold?: boolean;
  readonly ink?: number;
  /** Height of its capitals; the paragraph's own if left out. [mm] */
  readonly capMm?: number;
  /** The name of a place in the file that it leads to. */
  readonly to?: string | undefined;
}

/** From line to line, over the height of the capitals. [-] */
const LEADING = 1.68;

interface Placed extends Run {
  readonly x: number;
}
interface Line {
  readonly words: readonly Placed[];
  readonly longMm: number;
}

/** A box to tick, in the place of a number. */
export const TICK = Symbol("a box to tick");

export interface ParagraphOptions {
  readonly capMm?: number;
  readonly align?: "left" | "right";
  /** What stands before the first line, in the margin of the others: a number, a box to tick. */
  readonly mark?: string | typeof TICK;
  readonly indentMm?: number;
}

/** Words broken into lines at their spaces, never at one that does not break. */
export function paragraph(pdf: Pdf, runs: readonly Run[] | string, options: ParagraphOptions = {}): Block {
  const { capMm = 2, align = "left", mark, indentMm = mark === undefined ? 0 : 4 } = options;
  const all = typeof runs === "string" ? [{ text: runs }] : runs;
  const known = new Map<number, readonly Line[]>();
  const lines = (width: number): readonly Line[] => {
    const found = known.get(width) ?? linesOf(pdf, all, { capMm, widthMm: width - indentMm });
    known.set(width, found);
    return found;
  };
  const step = Math.max(capMm, ...all.map((one) => one.capMm ?? 0)) * LEADING;
  return {
    height: (width) => lines(width).length * step,
    draw: (x, y, width) => {
      const first = y + step / 2;
      if (mark === TICK) pdf.box([x, first - capMm * 0.7], [capMm * 1.4, capMm * 1.4], { widthMm: 0.2 });
      else if (mark !== undefined) pdf.write(mark, [x, first], { capMm, bold: true });
      lines(width).forEach(({ words, longMm }, i) => {
        const left = x + indentMm + (align === "right" ? width - indentMm - longMm : 0);
        for (const one of words) {
          const at: Vec2 = [left + one.x, first + i * step];
          const how = lettering(one, capMm);
          pdf.write(one.text, at, how);
          if (one.to !== undefined)
            pdf.link(one.to, [at[0], at[1] - step / 2], [pdf.width(one.text, how), step]);
        }
      });
    },
  };
}

const lettering = ({ bold, ink, capMm }: Run, usual: number): Lettering => ({
  capMm: capMm ?? usual,
  ...(bold && { bold }),
  ...(ink !== undefined && { ink }),
});

/** Stretches of one lettering stay one piece of text, so that words can be found and copied. */
function linesOf(
  pdf: Pdf,
  runs: readonly Run[],
  { capMm, widthMm }: { capMm: number; widthMm: number },
): Line[] {
  const lines: { words: (Run & { x: number })[]; longMm: number }[] = [{ words: [], longMm: 0 }];
  for (const run of runs) {
    const how = lettering(run, capMm);
    const pieces = printable(run.text, pdf)
      .split(" ")
      .flatMap((word, i) =>
        broken(pdf, word, how, widthMm).map((piece, k) => ({ piece, after: i > 0 && k === 0 ? " " : "" })),
      );
    pieces.forEach(({ piece, after }, i) => {
      const line = lines[lines.length - 1];
      if (!line) return;
      const last = line.words.at(-1);
      const added = line.words.length > 0 ? after + piece : piece;
      const long = pdf.width(added, how);
      if (line.longMm + long > widthMm && line.words.length > 0 && piece !== "") {
        lines.push({ words: [{ ...run, text: piece, x: 0 }], longMm: pdf.width(piece, how) });
        return;
      }
      // A word of the same stretch goes on where the last one ended.
      if (last && i > 0) line.words[line.words.length - 1] = { ...last, text: last.text + added };
      else line.words.push({ ...run, text: added, x: line.longMm });
      line.longMm += long;
    });
  }
  return lines;
}

/** A word longer than a line is broken wherever the line ends, never within a number: half of one misleads. */
function broken(pdf: Pdf, word: string, how: Lettering, widthMm: number): string[] {
  if (pdf.width(word, how) <= widthMm) return [word];
  const parts = [""];
  for (const sign of breakable(word)) {
    const last = parts.at(-1) ?? "";
    if (last !== "" && pdf.width(last + sign, how) > widthMm) parts.push(sign);
    else parts[parts.length - 1] = last + sign;
  }
  return parts;
}

/** A line of lettering, smaller where it would not fit; never so small that it cannot be read, rather cut short. */
export function fitted(pdf: Pdf, text: string, at: Vec2, how: Lettering, roomMm: number): void {
  const least = 1.4;
  const long = pdf.width(text, how);
  if (long <= roomMm) {
    pdf.write(text, at, how);
    return;
  }
  const smaller = { ...how, capMm: Math.max(least, (how.capMm * roomMm) / long) };
  let words = text;
  while (words.length > 1 && pdf.width(words, smaller) > roomMm) words = `${words.slice(0, -2).trimEnd()}…`;
  pdf.write(words, at, smaller);
}

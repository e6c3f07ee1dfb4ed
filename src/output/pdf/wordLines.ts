import type { Lettering, Pdf } from "./document.ts";
import { breakable } from "./numberRuns.ts";
import { printable } from "./printable.ts";
import type { Run } from "./words.ts";

interface Placed extends Run {
  /** From the start of its line. [mm] */
  readonly x: number;
}
/** A line of a paragraph. */
export interface Line {
  readonly words: readonly Placed[];
  readonly longMm: number;
}

export const lettering = ({ bold, ink, capMm }: Run, usual: number): Lettering => ({
  capMm: capMm ?? usual,
  ...(bold && { bold }),
  ...(ink !== undefined && { ink }),
});

/** What stays on one line: pieces of one or more stretches without a space between them. */
interface Word {
  /** The stretch whose space stands before it; undefined at the start, and where a long word was cut. */
  readonly after: Run | undefined;
  readonly pieces: { readonly run: Run; readonly text: string }[];
}

/**
 * Stretches of words broken into lines at their spaces. A comma or the letter of a footnote stays with the word before it, and
 * words of one stretch stay one piece of text, so that they can be found and copied.
 * @param widthMm how long a line may be, counted from 0
 */
export function linesOf(
  pdf: Pdf,
  runs: readonly Run[],
  { capMm, widthMm }: { capMm: number; widthMm: (line: number) => number },
): Line[] {
  const long = (run: Run, text: string): number => pdf.width(text, lettering(run, capMm));
  const lines: { words: (Run & { x: number })[]; longMm: number }[] = [];
  const turn = () => {
    const made = { words: [], longMm: 0 };
    lines.push(made);
    return made;
  };
  let line: (typeof lines)[number] = turn();
  let last: Run | undefined;
  const put = (run: Run, text: string): void => {
    const before = line.words.at(-1);
    // A stretch goes on where its last piece ended.
    if (before && last === run) line.words[line.words.length - 1] = { ...before, text: before.text + text };
    else if (text !== "") line.words.push({ ...run, text, x: line.longMm });
    else return;
    line.longMm += long(run, text);
    last = run;
  };
  for (const { after, pieces } of wordsOf(pdf, runs, { capMm, widthMm: Math.min(widthMm(0), widthMm(1)) })) {
    const own = pieces.reduce((sum, { run, text }) => sum + long(run, text), 0);
    const space = after && line.words.length > 0 ? long(after, " ") : 0;
    if (line.words.length > 0 && own > 0 && line.longMm + space + own > widthMm(lines.length - 1)) {
      line = turn();
      last = undefined;
    } else if (after && line.words.length > 0) put(after, " ");
    for (const { run, text } of pieces) put(run, text);
  }
  return lines;
}

function wordsOf(
  pdf: Pdf,
  runs: readonly Run[],
  { capMm, widthMm }: { capMm: number; widthMm: number },
): Word[] {
  const words: Word[] = [{ after: undefined, pieces: [] }];
  for (const run of runs)
    printable(run.text, pdf)
      .split(" ")
      .forEach((word, i) => {
        broken(pdf, word, lettering(run, capMm), widthMm).forEach((text, k) => {
          if (k > 0) words.push({ after: undefined, pieces: [] });
          else if (i > 0) words.push({ after: run, pieces: [] });
          words.at(-1)?.pieces.push({ run, text });
        });
      });
  return words;
}

/** Where words that belong together are parted first, if one line is too short for them: before a bracket, then at any space. */
const SEAMS = [/\u00a0(?=\()/u, /\u00a0/u];

/** What is longer than a line is broken at its spaces; a single word wherever the line ends, never within a number: half of one misleads. */
function broken(pdf: Pdf, word: string, how: Lettering, widthMm: number, seams = SEAMS): string[] {
  const fits = (text: string): boolean => pdf.width(text, how) <= widthMm;
  if (fits(word)) return [word];
  const [seam, ...finer] = seams;
  const pieces = seam
    ? word.split(seam).flatMap((piece) => {
        const own = broken(pdf, piece, how, widthMm, finer);
        return own.map((text, i) => ({ text, glue: i === 0 ? "\u00a0" : "" }));
      })
    : breakable(word).map((text) => ({ text, glue: "" }));
  const parts: string[] = [];
  for (const { text, glue } of pieces) {
    const last = parts.at(-1);
    if (last !== undefined && (last === "" || fits(last + glue + text)))
      parts[parts.length - 1] = last + glue + text;
    else parts.push(text);
  }
  return parts;
}

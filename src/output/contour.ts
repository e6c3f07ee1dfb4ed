import { edgePaths } from "../drawing/pattern/edges.ts";
import { type ArcPiece, fitArcs } from "../geometry/arcFit.ts";
import { MM_PER_INCH } from "../geometry/units.ts";
import type { Vec2 } from "../geometry/vector.ts";
import type { Blank, Report } from "../report/report.ts";

/** Pieces lie this near to the points of the outline, which lie as near to the exact one: 0.02 mm together. [mm] */
export const WITHIN_MM = 0.01;

/** Units that a cutting file is written in. */
export type FileUnits = "mm" | "in";
export const perUnit = (units: FileUnits): number => (units === "mm" ? 1 : MM_PER_INCH);

/** A blank's outline as arcs and lines, counter-clockwise and closed. [mm] */
export interface Contour {
  readonly start: Vec2;
  readonly pieces: readonly ArcPiece[];
}

/** Arcs where an edge is one, else as few as keep to it; corners stay corners. */
export function contourOf(blank: Blank): Contour {
  const start = blank.outline[blank.edges[0]?.start ?? 0] as Vec2;
  return { start, pieces: edgePaths(blank).flatMap(({ points }) => fitArcs(points, WITHIN_MM)) };
}

/** A contour turned and shifted; its arcs keep their bulge. */
export const placedContour = ({ start, pieces }: Contour, place: (p: Vec2) => Vec2): Contour => ({
  start: place(start),
  pieces: pieces.map(({ to, bulge }) => ({ to: place(to), bulge })),
});

/** Every pattern that differs from the others, with the name of its files. */
export function cutPatterns({
  part,
  blanks,
}: Report): { readonly name: string; readonly blank: Blank; readonly count: number }[] {
  const own = blanks.filter(({ sameAs }) => sameAs === null);
  return own.map((blank) => ({
    name: own.length === 1 ? part.name : `${part.name}-piece-${blank.piece}`,
    blank,
    count:
      (part.quantity ?? 1) *
      blanks.filter(({ piece, sameAs }) => piece === blank.piece || sameAs === blank.piece).length,
  }));
}

/** Where the part's mark goes, and how it lies: on the middle element line, which is plate all along. */
export function markPlace({ lines, outline }: Blank): { readonly at: Vec2; readonly longMm: number } {
  const middle = lines[lines.length >> 1];
  if (!middle) {
    const [x, y] = outline.reduce<Vec2>(
      (sum, p) => [sum[0] + p[0] / outline.length, sum[1] + p[1] / outline.length],
      [0, 0],
    );
    return { at: [x, y], longMm: 0 };
  }
  return {
    at: [(middle.from[0] + middle.to[0]) / 2, (middle.from[1] + middle.to[1]) / 2],
    longMm: middle.lengthMm,
  };
}

/** The pieces of a part that are cut by the same pattern as this blank, itself among them. */
export const piecesAlike = ({ blanks }: Report, blank: Blank): number[] => {
  const own = blank.sameAs ?? blank.piece;
  return blanks.flatMap(({ piece, sameAs }) => ((sameAs ?? piece) === own ? [piece] : []));
};

/** Several numbers in words: "1 to 4" where none is missing, else "1, 3 and 5". */
export function numbersInWords(numbers: readonly number[]): string {
  const [first = 0, last = first] = [numbers[0], numbers.at(-1)];
  if (numbers.length > 2 && last - first === numbers.length - 1) return `${first} to ${last}`;
  return numbers.length < 2 ? String(first) : `${numbers.slice(0, -1).join(", ")} and ${last}`;
}

/**
 * The words that are etched on the plate: which part, which piece, which face is up. All pieces of one form are cut by
 * one file and carry the same words, so that no two of them claim one place.
 */
export function markWords(report: Report, blank: Blank): string {
  const { part, blanks } = report;
  const alike = piecesAlike(report, blank);
  const piece =
    blanks.length === 1
      ? ""
      : alike.length === 1
        ? ` piece ${blank.piece}`
        : ` pieces ${numbersInWords(alike)} alike`;
  return `${part.name}${piece}, ${blank.faceUp} up`;
}

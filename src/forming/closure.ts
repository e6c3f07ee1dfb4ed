import type { ClosureEnd, ClosureRow } from "./answer.ts";
import type { FormingCase } from "./case.ts";
import { firstPass, shareOfClosure } from "./firstPass.ts";
import { isPipe, isPointed } from "./skin.ts";

/** Closures that the table always shows. [-] */
const ROWS = [0.65, 0.7, 0.75, 0.8, 0.85, 1] as const;

interface PartRolled {
  readonly radiusMm: number;
  readonly closed: number;
  readonly halfAngleRad: number;
  readonly thicknessMm: number;
  readonly edges: "level" | "square";
  readonly pieces: number;
  /** Taken off the seam edges for the weld, half off each; below 0 where a lap is added. [mm] */
  readonly seamGapMm?: number | undefined;
}

/** Straight across from seam edge to seam edge of one blank at a level radius; below 0 where they overlap. [mm] */
export function gapAcross({
  closed,
  pieces,
  seamGapMm = 0,
}: Pick<PartRolled, "closed" | "pieces" | "seamGapMm">): (levelMm: number) => number {
  const turn = pieces === 1 ? Math.PI * (1 - closed) : (Math.PI * closed) / pieces;
  const weld = (pieces === 1 ? 1 : -1) * seamGapMm * Math.cos(turn);
  return (levelMm) => 2 * levelMm * Math.sin(turn) + weld;
}

/** k cos a_k, of which the radius square to the element is r/(k cos a_k). [-] */
function bendOf({ closed, halfAngleRad }: Pick<PartRolled, "closed" | "halfAngleRad">): number {
  const flat = Math.sin(halfAngleRad);
  return Math.sqrt((closed - flat) * (closed + flat));
}

/** Level radius of the inside in the plane of the middle rim, or at square edges; never below 0. [mm] */
function insideLevelMm(rolled: PartRolled): number {
  const { radiusMm, closed, thicknessMm, edges } = rolled;
  const cosine = bendOf(rolled) / closed;
  const half = thicknessMm / 2;
  return Math.max(0, radiusMm / closed - (edges === "square" ? half * cosine : half / cosine));
}

/** Straight across from inside corner to inside corner; below 0 where the edges overlap. [mm] */
export const insideAcrossMm = (rolled: PartRolled): number => gapAcross(rolled)(insideLevelMm(rolled));

/**
 * One end of a right cone's blank when it is rolled to sweep k of the turn. Its sector is that of a cone of half angle
 * a_k, sin a_k = sin α/k, so with the final middle radius r:
 *
 *   level radius r/k,   radius square to the element r/√(k² − sin²α),   gap 2 (r/k) sin(π (1 − k))
 *
 * One of n pieces sweeps k/n of the turn, and its seam edges stand 2 (r/k) sin(π k/n) apart.
 * A gap g left for the weld takes half of itself off each edge, along the plate: it widens the gap of one piece by
 * g cos(π (1 − k)) and narrows one of several by g cos(π k/n). A lap is such a gap below 0.
 * Inside: level r/k − (t/2) cos a_k at square edges, r/k − (t/2)/cos a_k in the plane of the middle rim at level ones;
 * square to the element R − t/2; the gap between inside corners likewise. Never below 0: no inside is left there. [mm]
 *
 * @param rolled k above sin α; radius and thickness in mm, half angle in rad
 * @see derived here
 */
export function partRolled(rolled: PartRolled): ClosureEnd {
  const { radiusMm, closed, thicknessMm } = rolled;
  const level = radiusMm / closed;
  const square = radiusMm / bendOf(rolled);
  return {
    levelRadiusMm: level,
    squareRadiusMm: square,
    gapMm: gapAcross(rolled)(level),
    insideLevelRadiusMm: insideLevelMm(rolled),
    insideSquareRadiusMm: Math.max(0, square - thicknessMm / 2),
    insideGapMm: Math.max(0, insideAcrossMm(rolled)),
  };
}

/** What the seam takes off both edges of a blank for the weld; below 0 what a lap adds to them. [mm] */
export const takenAtSeamMm = ({
  seamGapMm = 0,
  seamLapMm = 0,
}: Pick<FormingCase, "seamGapMm" | "seamLapMm">): number => seamGapMm - seamLapMm;

/** An end of this right cone's blank, rolled so far. */
export function endRolled(
  item: FormingCase,
  { halfAngleRad }: { readonly halfAngleRad: number },
  { radiusMm, closed }: { readonly radiusMm: number; readonly closed: number },
): ClosureEnd {
  const { thicknessMm, edges, pieces } = item;
  const seamGapMm = takenAtSeamMm(item);
  return partRolled({ radiusMm, closed, halfAngleRad, thicknessMm, edges, pieces, seamGapMm });
}

/** What template and tape show while a right cone closes, row by row; no rows for other shapes and for pipes. */
export function closureTable(item: FormingCase): ClosureRow[] {
  const { cone } = item;
  if (!cone || isPipe(item)) return [];
  const { halfAngleRad, largeRadiusMm, smallRadiusMm } = cone;
  const window = firstPass(halfAngleRad);
  const marks = [
    [window.from, "start of the window"],
    [window.to, "end of the window"],
    [window.cap, "cap of the first pass"],
    [1, "closed"],
  ] as const;
  const closures = [...new Set([...ROWS, ...marks.map(([closed]) => closed)])].sort((a, b) => a - b);

  return closures.map((closed) => {
    const share = shareOfClosure({ halfAngleRad, closed });
    const end = (radiusMm: number) => endRolled(item, cone, { radiusMm, closed });
    const mark = marks.filter(([at]) => at === closed).map(([, words]) => words);
    return {
      closed,
      mark: mark.length > 0 ? mark.join(", ") : null,
      share,
      large: share === null ? null : end(largeRadiusMm),
      small: share === null || isPointed(item) ? null : end(smallRadiusMm),
    };
  });
}

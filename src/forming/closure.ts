import { TURN } from "../geometry/angle.ts";
import type { ClosureEnd, ClosureRow } from "./answer.ts";
import type { FormingCase } from "./case.ts";
import { firstPass, shareOfClosure } from "./firstPass.ts";
import { isPipe, isPointed } from "./skin.ts";
import { acrossLedMm } from "../geometry/straightLead.ts";

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
  /** Left straight at one of the seam edges, along the rim. [mm] */
  readonly leadMm?: number | undefined;
}

type Rolled = Pick<PartRolled, "closed" | "pieces" | "seamGapMm">;

/** Half of the turn that the gap of one piece takes, or that one of several pieces sweeps. [rad] */
const halfTurn = ({ closed, pieces }: Rolled): number =>
  pieces === 1 ? Math.PI * (1 - closed) : (Math.PI * closed) / pieces;

/** What the weld takes off the seam edges, where it widens the gap. [mm] */
const weldWidensMm = (rolled: Rolled): number =>
  (rolled.pieces === 1 ? 1 : -1) * (rolled.seamGapMm ?? 0) * Math.cos(halfTurn(rolled));

/** Straight across from seam edge to seam edge of one blank at a level radius, bent alike all along; below 0 where they overlap. [mm] */
export const gapAcross =
  (rolled: Rolled) =>
  (levelMm: number): number =>
    2 * levelMm * Math.sin(halfTurn(rolled)) + weldWidensMm(rolled);

/** The same with its straight lead, between corners so far in from the middle. [mm] */
function acrossMm(rolled: PartRolled, nearerMm: number): number {
  const { radiusMm, closed, halfAngleRad, pieces, leadMm = 0 } = rolled;
  const levelMm = radiusMm / closed;
  if (leadMm === 0) return gapAcross(rolled)(levelMm - nearerMm);
  const end = { levelMm, sweepRad: (TURN * closed) / pieces, sine: Math.sin(halfAngleRad) / closed, leadMm };
  return acrossLedMm(end, nearerMm) + weldWidensMm(rolled);
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
export const insideAcrossMm = (rolled: PartRolled): number =>
  acrossMm(rolled, rolled.radiusMm / rolled.closed - insideLevelMm(rolled));

/**
 * One end of a right cone's blank when it is rolled to sweep k of the turn. Its sector is that of a cone of half angle
 * a_k, sin a_k = sin α/k, so with the final middle radius r:
 *
 *   level radius r/k,   radius square to the element r/√(k² − sin²α),   gap 2 (r/k) sin(π (1 − k))
 *
 * One of n pieces sweeps k/n of the turn, and its seam edges stand 2 (r/k) sin(π k/n) apart.
 * A gap g left for the weld takes half of itself off each edge, along the plate: it widens the gap of one piece by
 * g cos(π (1 − k)) and narrows one of several by g cos(π k/n). A lap is such a gap below 0.
 * A straight lead at one edge stands off the round and widens the gap: radii are those of the part that is bent.
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
    gapMm: acrossMm(rolled, 0),
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

/** How far an end is rolled, and what is left straight of it at one seam edge. */
export interface SoFar {
  readonly radiusMm: number;
  readonly closed: number;
  readonly leadMm: number;
}

/** An end of this right cone's blank, rolled so far. */
export function endRolled(
  item: FormingCase,
  { halfAngleRad }: { readonly halfAngleRad: number },
  soFar: SoFar,
): ClosureEnd {
  const { thicknessMm, edges, pieces } = item;
  return partRolled({
    ...soFar,
    ...{ halfAngleRad, thicknessMm, edges, pieces },
    seamGapMm: takenAtSeamMm(item),
  });
}

/**
 * What template and tape show while a right cone closes, row by row; no rows for other shapes and for pipes.
 *
 * @param leadMm what the first pass leaves straight at one seam edge; closed, nothing is
 */
export function closureTable(item: FormingCase, leadMm: number): ClosureRow[] {
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
    const leftMm = closed < 1 ? leadMm : 0;
    const end = (radiusMm: number) => endRolled(item, cone, { radiusMm, closed, leadMm: leftMm });
    const mark = marks.filter(([at]) => at === closed).map(([, words]) => words);
    return {
      closed,
      mark: mark.length > 0 ? mark.join(", ") : null,
      share,
      leadMm: leftMm,
      large: share === null ? null : end(largeRadiusMm),
      small: share === null || isPointed(item) ? null : end(smallRadiusMm),
    };
  });
}

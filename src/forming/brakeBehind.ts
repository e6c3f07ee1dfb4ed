import { SAME_POINT_MM } from "../geometry/tolerance.ts";
import type { BrakeBends } from "./brakeBends.ts";
import { bentReaches } from "./brakeBent.ts";
import { fromSeam1 } from "./brakeLines.ts";
import type { FormingCase } from "./case.ts";

/** How much plate lies behind the punch, at the hit where it is most. */
export interface BehindPunch {
  /** The shallower side of the blank behind the line, measured flat and square to it. [mm] */
  readonly depthMm: number;
  /** The most on the other side of any line: what would lie behind the wrong way round. [mm] */
  readonly otherMm: number;
  /** The hit of `depthMm`. */
  readonly piece: number;
  readonly line: number;
  /**
   * The most that is behind in the order of hits, where the side of the seam edge that is come from is behind, bent by the
   * lines that were hit before. Never more than `depthMm`.
   */
  readonly inOrder: { readonly depthMm: number; readonly piece: number; readonly line: number };
  /** Lines at which the piece is turned the other way round, because that side would reach deeper than `depthMm`. */
  readonly turned: readonly { readonly piece: number; readonly line: number }[];
}

type Point = readonly [number, number];

interface Line {
  readonly from: Point;
  readonly to: Point;
}

/**
 * How far a blank reaches to both sides of a line that is carried on beyond both its ends. Every corner is looked at for
 * every hit, so the corners are laid out in one row of numbers first.
 */
function reachOf(corners: readonly Point[]): (line: Line) => readonly [left: number, right: number] {
  const row = new Float64Array(2 * corners.length);
  corners.forEach(([x, y], i) => {
    row[2 * i] = x;
    row[2 * i + 1] = y;
  });
  return ({ from, to }) => {
    const length = Math.sqrt((to[0] - from[0]) ** 2 + (to[1] - from[1]) ** 2);
    const [x, y] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
    const foot = x * from[1] - y * from[0];
    let [most, least] = [0, 0];
    for (let i = 0; i < row.length; i += 2) {
      const off = x * (row[i + 1] as number) - y * (row[i] as number) - foot;
      if (off > most) most = off;
      else if (off < least) least = off;
    }
    return [most, -least];
  };
}

/** How far a piece reaches to both sides of one of its lines. */
interface LineSides {
  readonly piece: number;
  readonly line: number;
  /** On the side of seam edge 1, and on that of seam edge 2, flat and square to the line. [mm] */
  readonly seam1Mm: number;
  readonly seam2Mm: number;
  /** On the side that is behind in the order of hits, as far as it is bent then. [mm] */
  readonly inOrderMm: number;
}

/** How deep the side that is come from reaches behind a line of a piece, bent by the lines that were hit before. */
function inOrderOf(
  { blanks, faceUp }: Laid,
  hits: BrakeBends["hits"],
): (piece: number, line: number) => number {
  const pieces = blanks.map(({ hull = [] }, i) => {
    const lines = hits.filter(({ piece }) => piece === i + 1);
    return bentReaches(lines, {
      hull,
      hand: faceUp === "outside" ? 1 : -1,
      half: fromSeam1(lines.length),
    });
  });
  return (piece, line) => pieces[piece - 1]?.[line - 1] ?? 0;
}

/**
 * Both sides of every hit, in the order of lines; null where the blanks or their lines are not known. Inside face up seam
 * edge 1 is right of whoever looks from end A to end B; outside up it is left.
 */
function sidesOf(item: FormingCase, { hits }: BrakeBends): LineSides[] | null {
  const { blanks, faceUp } = item;
  const reaches = blanks.map(({ hull }) => hull && reachOf(hull));
  const lines = new Map<number, number>();
  const sides: LineSides[] = [];
  const inOrder = inOrderOf(item, hits);
  for (const hit of hits) {
    const line = (lines.get(hit.piece) ?? 0) + 1;
    lines.set(hit.piece, line);
    const reach = reaches[hit.piece - 1];
    if (!reach) return null;
    const [left, right] = reach(hit);
    const [seam1Mm, seam2Mm] = faceUp === "outside" ? [left, right] : [right, left];
    sides.push({ piece: hit.piece, line, seam1Mm, seam2Mm, inOrderMm: inOrder(hit.piece, line) });
  }
  return sides;
}

/** The checks and the plan ask for the same hits: by the hits, as long as the blanks are the same. */
const known = new WeakMap<BrakeBends, { readonly item: Laid; readonly behind: BehindPunch | null }>();

type Laid = Pick<FormingCase, "blanks" | "faceUp">;

/**
 * What stands in the throat of a brake: at each hit the plate lies on both sides of the punch, and the piece can be turned
 * so that its shallower side is behind. For a line through p with unit normal n, over the corners c of the blank's hull:
 *
 *   depth = min( max (c − p)·n, max −(c − p)·n ),   the worst of all hits counts.
 *
 * Both sides together are the width square to the line, so the depth is never more than half the greatest distance
 * across the blank (half its longest side would be too little where a line runs aslant). Bends already made only shorten it.
 *
 * In the order of hits the side that is behind is that of the seam edge that is come from, and bent already: near the
 * middle of a piece it may be the deeper one flat. Where it would reach deeper than the worst depth even so, the piece is
 * turned.
 *
 * @returns null where the blanks or their lines are not known, or nothing is hit
 * @see derived here
 */
export function behindPunch(item: FormingCase, bends: BrakeBends): BehindPunch | null {
  const made = known.get(bends);
  if (made && made.item.blanks === item.blanks && made.item.faceUp === item.faceUp) return made.behind;
  const behind = worstBehind(sidesOf(item, bends));
  known.set(bends, { item, behind });
  return behind;
}

function worstBehind(sides: readonly LineSides[] | null): BehindPunch | null {
  if (!sides) return null;
  const depth = ({ seam1Mm, seam2Mm }: LineSides) => Math.min(seam1Mm, seam2Mm);
  const depthMm = Math.max(...sides.map(depth));
  // Of pieces that are alike, and lines alike from both seams, the first is named.
  const worst = sides.find((one) => depth(one) >= depthMm - SAME_POINT_MM);
  if (!worst) return null;
  const otherMm = Math.max(...sides.flatMap(({ seam1Mm, seam2Mm }) => [seam1Mm, seam2Mm]));
  const isTurned = ({ inOrderMm }: LineSides) => inOrderMm > depthMm + SAME_POINT_MM;
  const turned = sides.filter(isTurned).map(({ piece, line }) => ({ piece, line }));
  const laid = sides.map((one) => ({ ...one, depthMm: isTurned(one) ? depth(one) : one.inOrderMm }));
  const most = Math.max(...laid.map((one) => one.depthMm));
  const at = laid.find((one) => one.depthMm >= most - SAME_POINT_MM) ?? worst;
  return {
    depthMm,
    otherMm,
    piece: worst.piece,
    line: worst.line,
    inOrder: { depthMm: most, piece: at.piece, line: at.line },
    turned,
  };
}

import type { PartAsked } from "./asked.ts";
import { brakeEnds } from "./brakeEnds.ts";
import { type BrakeLine, fromSeam1 } from "./brakeLines.ts";
import type { PressBrake } from "./machine.ts";
import { bentOf, closesRound } from "./offThePunch.ts";
import { type MorePieces, morePieces } from "./piecesToClear.ts";
import { isPointed } from "./skin.ts";
import { radians } from "../geometry/angle.ts";

/** A part of which a piece closes round the punch, and what is done about it. */
export interface ClosesRound {
  /** What the piece that is bent most turns by. [°] */
  readonly turnDeg: number;
  /** The better way: so many pieces that each come off. Null where no number is known. */
  readonly better: MorePieces | null;
  /** As drawn: the last lines of each such piece, which the brake leaves out so that its seam stays open. */
  readonly left: readonly { readonly piece: number; readonly line: number }[];
  /** How far its seam edges then stand apart, at the least, and at which end. [mm] */
  readonly openMm: number;
  readonly openAt: string;
}

/** An open seam as wide as this share of the end lets punch and holder through. Derived here: as wide as what stands open at 330°. [-] */
const OPEN_SHARE = 0.25;

/**
 * How wide a seam stands open while its last lines are not bent: both halves turn about those lines, which lie opposite it,
 *
 *   gap = 2 d cos(lean) sin(φ/2),   d across the inside of the end, φ what the lines left would turn by
 *
 * @see derived here
 */
const gapShare = (leftDeg: number): number => 2 * Math.sin(radians(Math.min(180, leftDeg)) / 2);

/** The lines of a piece that are hit last, as many as hold its seam open, the same on both sides of its middle. */
function leftOf(lines: readonly BrakeLine[]): readonly BrakeLine[] {
  const middle = fromSeam1(lines.length);
  const even = lines.length % 2 === 0;
  for (let more = 0; more < middle; more++) {
    const left = lines.slice(middle - 1 - more, middle + (even ? 1 : 0) + more);
    if (gapShare(left.reduce((sum, { bendDeg }) => sum + bendDeg, 0)) >= OPEN_SHARE) return left;
  }
  return lines;
}

/**
 * What is done where a piece closes round the punch: the better number of pieces, and the lines that the brake leaves out
 * where it has to stay as it is drawn. Null where every piece comes off.
 *
 * @param lines all bend lines of the plan
 */
export function closesOf(
  { item }: PartAsked,
  { lines, brake }: { readonly lines: readonly BrakeLine[]; readonly brake: PressBrake | undefined },
): ClosesRound | null {
  const closing = [...bentOf(item)].filter(([, turnDeg]) => closesRound(turnDeg, item.pieces));
  if (closing.length === 0 || lines.length === 0) return null;
  const left = closing.map(([piece]) => leftOf(lines.filter((one) => one.piece === piece)));
  const narrowest = Math.min(
    ...left.map((own) => gapShare(own.reduce((sum, { bendDeg }) => sum + bendDeg, 0))),
  );
  const { large, small } = item.insideDiameterMm;
  const ends = brakeEnds(item);
  const cornered = item.tightestRadiusMm === null;
  return {
    turnDeg: Math.max(...closing.map(([, turnDeg]) => turnDeg)),
    better: morePieces(item, brake?.throat ?? Infinity),
    left: left.flat().map(({ piece, number }) => ({ piece, line: number })),
    openMm: narrowest * (isPointed(item) ? large : small) * Math.cos(item.leanRad),
    openAt: cornered || isPointed(item) ? ends.from : ends.towards,
  };
}

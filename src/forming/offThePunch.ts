import { degrees } from "../geometry/angle.ts";
import type { PartAsked } from "./asked.ts";
import type { FormingCase } from "./case.ts";
import type { Check } from "./check.ts";
import { COMMON_PRACTICE, judge } from "./judge.ts";
import type { PressBrake } from "./machine.ts";
import { LITTLE_MORE_DEG, morePieces } from "./piecesToClear.ts";

const FULL_TURN_DEG = 360;
/** Bent further round than this, a piece closes in behind the punch. */
const HALF_TURN_DEG = 180;

/**
 * From here on up to half a turn it takes care: while the last bend is pressed the piece stands further round by what springs
 * back, a few degrees of that one bend. Derived here; a share of the limit as of a force would say nothing of an angle.
 */
const NEARLY_HALF_DEG = 175;
/** Bent further round than this, its edges meet behind the punch. Derived here: they stand a quarter of the width apart. */
const NEARLY_CLOSED_DEG = 330;

/** What all bends of each piece come to, where its lines are known, from piece 1. [°] */
export function bentOf({ bendZones }: Pick<FormingCase, "bendZones">): ReadonlyMap<number, number> {
  const sums = new Map<number, number>();
  for (const zone of bendZones ?? [])
    sums.set(zone.piece, (sums.get(zone.piece) ?? 0) + degrees(zone.turnedRad(zone.toRad)));
  return sums;
}

/** What all bends of the piece that is bent most come to; without known lines a full turn shared by the pieces, at most. [°] */
export function bentDeg(item: Pick<FormingCase, "bendZones" | "pieces">): number {
  const sums = bentOf(item);
  return sums.size > 0 ? Math.max(...sums.values()) : FULL_TURN_DEG / item.pieces;
}

/** Does a piece that is bent so far close round the punch? A little over half a turn it still comes off, one of several being open on its seam side. */
export const closesRound = (turnDeg: number, pieces: number): boolean =>
  turnDeg > (pieces > 1 ? LITTLE_MORE_DEG : HALF_TURN_DEG);

/** Of every number of pieces that the shape can be made in beyond those it has. */
const NONE_CLEAR = "in no greater number of pieces that its shape takes does it come off";

/** Half of what a part is wide across its wider end, at least, outside. [mm] */
const halfAcrossMm = ({ insideDiameterMm: { large, small }, thicknessMm }: FormingCase): number =>
  Math.max(large, small) / 2 + thicknessMm;

/**
 * Does the bent piece come off the punch? Bent by up to half a turn it lifts off; further it embraces the punch and its
 * holder, and comes off only at the end of the bed, if at all. Nearly closed it stands round the ram, half of it behind:
 * a part that is wider than twice the throat cannot pass the frame. [°, all bends of a piece together]
 *
 * @param asked `brake` undefined where no machine is described
 */
export function offThePunch({
  item,
  say,
  brake,
}: PartAsked & { readonly brake?: Pick<PressBrake, "throat"> | undefined }): Check {
  const value = bentDeg(item);
  const throatMm = brake?.throat ?? Infinity;
  const nearlyClosed = value > NEARLY_CLOSED_DEG;
  const halfMm = halfAcrossMm(item);
  const caught = nearlyClosed && halfMm > throatMm;
  const turns = `${item.pieces === 1 ? "In one piece it" : "A piece"} turns by ${Math.round(value)}°`;
  const more = morePieces(item, throatMm);
  const many = more && `${more.pieces} pieces (${more.keys})`;
  const beyond = caught
    ? `Not in one piece on this brake: turning by ${Math.round(value)}° it closes round the ram, and half its width, ${say.length(halfMm)}, does not pass the frame with a throat of ${say.shops(throatMm)}; ${many ? `make it in ${many}` : `${NONE_CLEAR}, so use a brake with a deeper throat, or the roll`}.`
    : closesRound(value, item.pieces)
      ? `${turns} and closes round the punch: ${many ? `make it in ${many}, or` : `${NONE_CLEAR}, so`} leave out its last lines, take it off through its open seam and pull it shut.`
      : `${turns}, a little more than half a turn: tilt it off the punch, or slide it off the free end.`;
  return judge({
    id: "off-the-punch",
    title: "All bends of a piece together",
    value,
    limit: HALF_TURN_DEG,
    sense: "at most",
    unit: "°",
    beyond: caught ? "fail" : "caution",
    nearShare: NEARLY_HALF_DEG / HALF_TURN_DEG,
    basis: COMMON_PRACTICE,
    rule: `bends of a piece ≤ 180°: bent by up to half a turn it lifts off the punch; beyond ${NEARLY_CLOSED_DEG}° half its width has to pass the throat`,
    advice: (verdict) =>
      verdict === "pass"
        ? "The bent piece lifts off the punch; in the last bends see that its edges clear punch and ram."
        : value <= HALF_TURN_DEG
          ? "It lifts off when it is released, but while the last bends are pressed it stands further round by what springs back: see before them that its edges go past punch, holder and ram."
          : beyond,
  });
}

import { add2, direction, scale2, type Vec2 } from "../../geometry/vector.ts";

/** A plate that runs through the pinch line under the top roll: bent behind it, flat or bent less before it. */
export interface BentPlate {
  /** The lowest point of the top roll. */
  readonly pinchLine: Vec2;
  readonly thicknessMm: number;
  /** Inside radius behind the pinch, and how much of the plate is drawn there along its inside. [mm] */
  readonly insideMm: number;
  readonly afterMm: number;
  /** Inside radius before the pinch, null where flat, and how much is drawn. [mm] */
  readonly incomingMm: number | null;
  readonly beforeMm: number;
}

/** Points along a drawn arc. */
const STEPS = 64;
/** The bent plate is not drawn further round than this: it would hide the machine. [rad] */
const FURTHEST = (5 / 6) * Math.PI;

/** Points of an arc that starts at the pinch line and bends up, `outMm` outside its inside; to the right, or the left. */
function arcFrom(
  { pinchLine, insideMm, longMm, side }: { pinchLine: Vec2; insideMm: number; longMm: number; side: 1 | -1 },
  outMm: number,
): Vec2[] {
  const centre: Vec2 = [pinchLine[0], pinchLine[1] + insideMm];
  const turn = Math.min(FURTHEST, longMm / insideMm);
  return Array.from({ length: STEPS + 1 }, (_, i) =>
    add2(centre, scale2(direction(-Math.PI / 2 + (side * turn * i) / STEPS), insideMm + outMm)),
  );
}

/** The line so far outside the inside of the plate, behind the pinch. [mm] */
export function concentric({ pinchLine, insideMm, afterMm }: BentPlate, outMm: number): Vec2[] {
  return arcFrom({ pinchLine, insideMm, longMm: afterMm, side: 1 }, outMm);
}

function before({ pinchLine, incomingMm, beforeMm }: BentPlate, outMm: number): Vec2[] {
  return incomingMm === null
    ? [
        [pinchLine[0] - beforeMm, pinchLine[1] - outMm],
        [pinchLine[0], pinchLine[1] - outMm],
      ]
    : arcFrom({ pinchLine, insideMm: incomingMm, longMm: beforeMm, side: -1 }, outMm).reverse();
}

/** The plate's outline, counter-clockwise from its outside before the pinch. */
export function bentPlate(plate: BentPlate): Vec2[] {
  const face = (outMm: number) => [...before(plate, outMm), ...concentric(plate, outMm).slice(1)];
  return [...face(plate.thicknessMm), ...face(0).reverse()];
}

/** How far the plate has turned from the pinch to where it touches a roll with this centre (top roll's centre at nought). [rad] */
export function turnOf({ insideMm, topMm }: { insideMm: number; topMm: number }, [x, y]: Vec2): number {
  return Math.atan2(x, insideMm - topMm - y);
}

import { distance2, length2, scale2, sub2, type Vec2 } from "./vector.ts";

/** Area of a closed outline, positive counter-clockwise; the first point is not repeated. [mm²] */
export function polygonArea(outline: readonly Vec2[]): number {
  const origin = outline[0];
  if (!origin) return 0;
  const [x, y] = origin;
  let twice = 0;
  for (let i = 1; i + 1 < outline.length; i++) {
    const [p, q] = [outline[i] as Vec2, outline[i + 1] as Vec2];
    twice += (p[0] - x) * (q[1] - y) - (p[1] - y) * (q[0] - x);
  }
  return twice / 2;
}

/** Length of an open path. [mm] */
export function pathLength(path: readonly Vec2[]): number {
  let sum = 0;
  for (let i = 1; i < path.length; i++) sum += distance2(path[i - 1] as Vec2, path[i] as Vec2);
  return sum;
}

/** Which way does the path p, q, r turn? Above 0 to the left. */
const turnAt = (p: Vec2, q: Vec2, r: Vec2): number =>
  (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);

/** Convex hull, counter-clockwise. A. M. Andrew, Inf. Proc. Letters 9 (1979), from memory. */
export function hull(points: readonly Vec2[]): Vec2[] {
  const sorted = [...points].sort((p, q) => p[0] - q[0] || p[1] - q[1]);
  const half = (list: readonly Vec2[]): Vec2[] => {
    const chain: Vec2[] = [];
    let last = -1;
    for (const p of list) {
      while (last > 0 && turnAt(chain[last - 1] as Vec2, chain[last] as Vec2, p) <= 0) last -= 1;
      last += 1;
      chain[last] = p;
    }
    return chain.slice(0, last);
  };
  return [...half(sorted), ...half(sorted.reverse())];
}

/** A rectangle round a pattern: its long and short side, and how far the pattern is turned counter-clockwise to lie along it. [mm, rad] */
export interface TurnedBox {
  readonly lengthMm: number;
  readonly widthMm: number;
  /** Above −π/2, at most π/2; the long side lies level. */
  readonly turnRad: number;
}

/** The box of sides so long along and across a direction, the pattern being turned back by that direction's angle. */
function turnedBox(along: number, across: number, angle: number): TurnedBox {
  const turn = across > along ? Math.PI / 2 - angle : -angle;
  const half = Math.PI / 2;
  const turnRad = turn > half ? turn - Math.PI : turn <= -half ? turn + Math.PI : turn;
  return { lengthMm: Math.max(along, across), widthMm: Math.min(along, across), turnRad };
}

/** The upright rectangle round points as they lie: x by y. [mm] */
export function uprightBox(points: readonly Vec2[]): { readonly xMm: number; readonly yMm: number } {
  const range = (pick: 0 | 1) => {
    let low = Infinity;
    let high = -Infinity;
    for (const p of points) {
      low = Math.min(low, p[pick]);
      high = Math.max(high, p[pick]);
    }
    return high - low;
  };
  return { xMm: range(0), yMm: range(1) };
}

/**
 * The smallest rectangle, at any angle, that holds all points; one of its sides lies along the hull. [mm, rad]
 *
 * @param round hull of the points, counter-clockwise
 */
export function smallestBox(round: readonly Vec2[]): TurnedBox {
  let best: TurnedBox = { lengthMm: Infinity, widthMm: Infinity, turnRad: 0 };
  const count = round.length;
  // Calipers: as the side turns, the points furthest along, across and back only move forward round the hull.
  const far = { along: 1, across: 1, back: 1 };
  const along = (at: number, x: number, y: number): number => {
    const q = round[at % count] as Vec2;
    return q[0] * x + q[1] * y;
  };
  const seek = (from: number, x: number, y: number): number => {
    let at = from;
    let reach = along(at, x, y);
    for (let i = 0; i < count; i++) {
      const next = along(at + 1, x, y);
      if (next <= reach) break;
      at += 1;
      reach = next;
    }
    return at;
  };
  for (let i = 0; i < count; i++) {
    const p = round[i] as Vec2;
    const side = sub2(round[(i + 1) % count] as Vec2, p);
    const length = length2(side);
    if (length === 0) continue;
    const [x, y] = scale2(side, 1 / length);
    far.along = seek(Math.max(far.along, i + 1), x, y);
    far.across = seek(Math.max(far.across, far.along), -y, x);
    far.back = seek(Math.max(far.back, far.across), -x, -y);
    const width = along(far.along, x, y) - along(far.back, x, y);
    const height = along(far.across, -y, x) - along(i, -y, x);
    if (width * height < best.lengthMm * best.widthMm) best = turnedBox(width, height, Math.atan2(y, x));
  }
  return best;
}

/** Angles tried over a quarter turn: to each half degree. */
const TRIED_ANGLES = 180;
/** Every hull is asked in the same directions. */
const TRIED = Array.from({ length: TRIED_ANGLES }, (_, i) => {
  const angle = (i / TRIED_ANGLES) * (Math.PI / 2);
  return { angle, x: Math.cos(angle), y: Math.sin(angle) };
});

/**
 * How far a hull reaches in a direction that turns counter-clockwise from call to call: the furthest point only moves
 * forward round the hull, so each search goes on from where the last one ended.
 */
function reachRound(round: readonly Vec2[]): (x: number, y: number) => number {
  const count = round.length;
  const along = (k: number, x: number, y: number): number => {
    const p = round[k] as Vec2;
    return p[0] * x + p[1] * y;
  };
  let index = -1;
  return (x, y) => {
    if (index < 0) {
      index = 0;
      for (let k = 1; k < count; k++) if (along(k, x, y) > along(index, x, y)) index = k;
    }
    let most = along(index, x, y);
    for (let k = 0; k < count; k++) {
      const next = index + 1 === count ? 0 : index + 1;
      const further = along(next, x, y);
      if (further < most) break;
      index = next;
      most = further;
    }
    return most;
  };
}

/**
 * Rectangles that hold all points, at every half degree and at the smallest's own angle: those that no other betters in
 * both length and width, the narrowest first. A plate that holds one of them holds the points; one that holds none might
 * still, by a hair. [mm, rad]
 *
 * @param round hull of the points, counter-clockwise
 * @param smallest their smallest box
 */
export function boxesRound(round: readonly Vec2[], smallest = smallestBox(round)): TurnedBox[] {
  const [right, up, left, down] = [
    reachRound(round),
    reachRound(round),
    reachRound(round),
    reachRound(round),
  ];
  const boxes = [smallest];
  for (const { angle, x, y } of TRIED)
    boxes.push(turnedBox(right(x, y) + left(-x, -y), up(-y, x) + down(y, -x), angle));
  boxes.sort((p, q) => p.widthMm - q.widthMm || p.lengthMm - q.lengthMm);
  let shortest = Infinity;
  return boxes.filter(({ lengthMm }) => {
    if (lengthMm >= shortest) return false;
    shortest = lengthMm;
    return true;
  });
}

/** The same for points of which no hull is known yet. */
export const boxesAtAngles = (points: readonly Vec2[]): TurnedBox[] => boxesRound(hull(points));

/** Which side of the line from p to q does r lie on? +1 left, −1 right, 0 on it. */
const sideOf = (p: Vec2, q: Vec2, r: Vec2): number => Math.sign(turnAt(p, q, r));

/** Do two segments cross, touching not counted? */
const cross = (p: Vec2, q: Vec2, r: Vec2, s: Vec2): boolean =>
  sideOf(p, q, r) * sideOf(p, q, s) < 0 && sideOf(r, s, p) * sideOf(r, s, q) < 0;

/** A side of an outline: its place in it, and from where to where it reaches. */
interface Side {
  readonly i: number;
  readonly p: Vec2;
  readonly q: Vec2;
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Does a closed outline cross itself? Sides are gone through from left to right, and each is held against those alone
 * that it shares some width with.
 */
export function crossesItself(outline: readonly Vec2[]): boolean {
  const count = outline.length;
  const sides = outline.map((p, i): Side => {
    const q = outline[i + 1 === count ? 0 : i + 1] as Vec2;
    const [left, right] = p[0] < q[0] ? [p[0], q[0]] : [q[0], p[0]];
    const [low, high] = p[1] < q[1] ? [p[1], q[1]] : [q[1], p[1]];
    return { i, p, q, left, right, low, high };
  });
  sides.sort((one, other) => one.left - other.left);
  for (let k = 0; k < count; k++) {
    const one = sides[k] as Side;
    for (let m = k + 1; m < count; m++) {
      const other = sides[m] as Side;
      if (other.left > one.right) break;
      if (other.low > one.high || other.high < one.low) continue;
      const apart = Math.abs(one.i - other.i);
      const areNeighbours = apart === 1 || apart === count - 1;
      if (!areNeighbours && cross(one.p, one.q, other.p, other.q)) return true;
    }
  }
  return false;
}

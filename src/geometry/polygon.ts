import { cross2, distance2, dot2, length2, scale2, sub2, type Vec2 } from "./vector.ts";

/** Area of a closed outline, positive counter-clockwise; the first point is not repeated. [mm²] */
export function polygonArea(outline: readonly Vec2[]): number {
  const origin = outline[0];
  if (!origin) return 0;
  let twice = 0;
  for (let i = 1; i + 1 < outline.length; i++)
    twice += cross2(sub2(outline[i] as Vec2, origin), sub2(outline[i + 1] as Vec2, origin));
  return twice / 2;
}

/** Length of an open path. [mm] */
export function pathLength(path: readonly Vec2[]): number {
  let sum = 0;
  for (let i = 1; i < path.length; i++) sum += distance2(path[i - 1] as Vec2, path[i] as Vec2);
  return sum;
}

/** Convex hull, counter-clockwise. A. M. Andrew, Inf. Proc. Letters 9 (1979), from memory. */
export function hull(points: readonly Vec2[]): Vec2[] {
  const sorted = [...points].sort((p, q) => p[0] - q[0] || p[1] - q[1]);
  const half = (list: readonly Vec2[]): Vec2[] => {
    const chain: Vec2[] = [];
    for (const p of list) {
      while (chain.length > 1) {
        const [q, r] = [chain.at(-1) as Vec2, chain.at(-2) as Vec2];
        if (cross2(sub2(q, r), sub2(p, r)) > 0) break;
        chain.pop();
      }
      chain.push(p);
    }
    chain.pop();
    return chain;
  };
  return [...half(sorted), ...half(sorted.reverse())];
}

/** The smallest rectangle, at any angle, that holds all points; one of its sides lies along the hull. [mm] */
export function smallestBox(points: readonly Vec2[]): {
  readonly lengthMm: number;
  readonly widthMm: number;
} {
  const round = hull(points);
  let best = { lengthMm: Infinity, widthMm: Infinity };
  const count = round.length;
  // Calipers: as the side turns, the points furthest along, across and back only move forward round the hull.
  const far = { along: 1, across: 1, back: 1 };
  const seek = (from: number, reach: (p: Vec2) => number): number => {
    let at = from;
    for (let i = 0; i < count; i++) {
      if (reach(round[(at + 1) % count] as Vec2) <= reach(round[at % count] as Vec2)) break;
      at += 1;
    }
    return at;
  };
  for (let i = 0; i < count; i++) {
    const p = round[i] as Vec2;
    const side = sub2(round[(i + 1) % count] as Vec2, p);
    const length = length2(side);
    if (length === 0) continue;
    const u = scale2(side, 1 / length);
    const along = (q: Vec2) => dot2(sub2(q, p), u);
    const across = (q: Vec2) => cross2(u, sub2(q, p));
    far.along = seek(Math.max(far.along, i + 1), along);
    far.across = seek(Math.max(far.across, far.along), across);
    far.back = seek(Math.max(far.back, far.across), (q) => -along(q));
    const width = along(round[far.along % count] as Vec2) - along(round[far.back % count] as Vec2);
    const height = across(round[far.across % count] as Vec2);
    if (width * height < best.lengthMm * best.widthMm)
      best = { lengthMm: Math.max(width, height), widthMm: Math.min(width, height) };
  }
  return best;
}

/** Do two segments cross, touching not counted? */
function cross(p: Vec2, q: Vec2, r: Vec2, s: Vec2): boolean {
  const side = (a: Vec2, b: Vec2, c: Vec2) => Math.sign(cross2(sub2(b, a), sub2(c, a)));
  return side(p, q, r) * side(p, q, s) < 0 && side(r, s, p) * side(r, s, q) < 0;
}

/** Does a closed outline cross itself? Looks at every pair, so give it a few hundred points at most. */
export function crossesItself(outline: readonly Vec2[]): boolean {
  const count = outline.length;
  const at = (i: number) => outline[i % count] as Vec2;
  for (let i = 0; i < count; i++)
    for (let j = i + 2; j < count; j++) {
      if (i === 0 && j === count - 1) continue;
      if (cross(at(i), at(i + 1), at(j), at(j + 1))) return true;
    }
  return false;
}

import type { Station } from "./station.ts";
import { NO_LENGTH_MM } from "./tolerance.ts";
import { add3, cross3, distance3, dot3, length3, middle3, scale3, sub3, type Vec3 } from "./vector.ts";

/** A strip of plate in space: both ends of each of its lines. [mm] */
export interface Strip3 {
  readonly a: readonly Vec3[];
  readonly b: readonly Vec3[];
}

/** A triangle of the strip, hinged on the one before it along the line from `from` to `to`. */
interface Hinged {
  readonly from: number;
  readonly to: number;
  /** The corner of the triangle before that is not on the hinge, and the new one. */
  readonly back: number;
  readonly tip: number;
  /** Where the tip lies seen from the hinge: along it, off it, and turned out of the plane of the triangle before. */
  readonly alongMm: number;
  readonly offMm: number;
  readonly foldRad: number;
}

/** A strip ready to be unrolled: its triangles, rigid, and the angles they are folded by. */
export interface Unrolling {
  readonly count: number;
  readonly first: readonly [Vec3, Vec3, Vec3];
  readonly firstCorners: readonly [number, number, number];
  readonly hinged: readonly Hinged[];
  /** Corner of each end that stands for another at the very same place. */
  readonly same: ReadonlyMap<number, number>;
  readonly middle: number;
  readonly middleNormal: Vec3;
  readonly points: readonly Vec3[];
}

/** Place within the plane of a triangle: along the hinge, and off it away from the corner behind. */
function axes(from: Vec3, to: Vec3, back: Vec3): { u: Vec3; e: Vec3; n: Vec3 } {
  const u = scale3(sub3(to, from), 1 / distance3(from, to));
  const behind = sub3(back, from);
  const off = sub3(scale3(u, dot3(behind, u)), behind);
  const e = scale3(off, 1 / length3(off));
  return { u, e, n: cross3(u, e) };
}

/** Corners are numbered 2i for end A of station i and 2i + 1 for end B. */
export function unrolling(stations: readonly Station[]): Unrolling {
  const points = stations.flatMap(({ a, b }) => [a, b]);
  const same = new Map<number, number>();
  const at = (i: number) => points[i] as Vec3;
  const own = (i: number) => same.get(i) ?? i;
  for (let i = 2; i < points.length; i++)
    if (distance3(at(i), at(own(i - 2))) <= NO_LENGTH_MM) same.set(i, own(i - 2));
  const triangles: (readonly [number, number, number])[] = [];
  for (let i = 0; i + 3 < points.length; i += 2) {
    const [a, b, nextA, nextB] = [own(i), own(i + 1), own(i + 2), own(i + 3)] as const;
    if (nextA !== a && a !== b) triangles.push([a, b, nextA]);
    if (nextB !== b && nextA !== nextB) triangles.push([nextA, b, nextB]);
  }
  const [start, ...rest] = triangles;
  if (!start) throw new RangeError(`a strip of ${stations.length} stations has no triangle`);
  let before = start;
  const hinged = rest.map((triangle): Hinged => {
    const tip = triangle.find((corner) => !before.includes(corner)) ?? triangle[2];
    const [from, to] = triangle.filter((corner) => corner !== tip) as [number, number];
    const back = before.find((corner) => corner !== from && corner !== to) ?? before[0];
    const { u, e, n } = axes(at(from), at(to), at(back));
    const run = sub3(at(tip), at(from));
    const alongMm = dot3(run, u);
    const out = sub3(run, scale3(u, alongMm));
    before = triangle;
    return {
      from,
      to,
      back,
      tip,
      alongMm,
      offMm: length3(out),
      foldRad: Math.atan2(dot3(out, n), dot3(out, e)),
    };
  });
  const middle = stations.length >> 1;
  return {
    count: stations.length,
    first: [at(start[0]), at(start[1]), at(start[2])],
    firstCorners: start,
    hinged,
    same,
    middle,
    middleNormal: (stations[middle] as Station).normal,
    points,
  };
}

/**
 * The strip at one step of unrolling: every triangle as it was, every fold opened by that share. At 0 it is the part; at 1
 * the flat pattern, lying on the floor below where it stood, inside face up and end B away. Between, the skin is a
 * developable surface all the way: no length in it ever changes.
 *
 * @param share 0 rolled up … 1 flat
 */
export function unrolledAt(strip: Unrolling, share: number): Strip3 {
  const { count, first, firstCorners, hinged, same } = strip;
  const placed = Array.from({ length: 2 * count }, (): Vec3 => [0, 0, 0]);
  firstCorners.forEach((corner, i) => (placed[corner] = first[i] as Vec3));
  for (const { from, to, back, tip, alongMm, offMm, foldRad } of hinged) {
    const origin = placed[from] as Vec3;
    const { u, e, n } = axes(origin, placed[to] as Vec3, placed[back] as Vec3);
    const fold = (1 - share) * foldRad;
    const off = add3(scale3(e, offMm * Math.cos(fold)), scale3(n, offMm * Math.sin(fold)));
    placed[tip] = add3(add3(origin, scale3(u, alongMm)), off);
  }
  for (const [corner, one] of same) placed[corner] = placed[one] as Vec3;
  const still = settled(strip, placed, share);
  return { a: still.filter((_, i) => i % 2 === 0), b: still.filter((_, i) => i % 2 === 1) };
}

/** Right-handed axes of a strip at its middle line: along it, outward, and the third; with a point to turn about. */
interface Frame {
  readonly at: Vec3;
  readonly axes: readonly [Vec3, Vec3, Vec3];
}

function frameAt({ middle, middleNormal, points }: Unrolling, placed: readonly Vec3[]): Frame {
  const i = 2 * middle;
  const before = (of: readonly Vec3[]) => [of[i] as Vec3, of[i + 1] as Vec3] as const;
  const [a, b] = before(placed);
  const y = scale3(sub3(b, a), 1 / distance3(a, b));
  // The facet before the middle line, whichever of its corners is not on it, tells how the line has been turned about itself.
  const [wasA, wasB] = before(points);
  const wasY = scale3(sub3(wasB, wasA), 1 / distance3(wasA, wasB));
  const aside = cornerAside(points, i, wasA, wasY);
  const off = (from: Vec3, along: Vec3, p: Vec3): Vec3 => {
    const run = sub3(p, from);
    const out = sub3(run, scale3(along, dot3(run, along)));
    return scale3(out, 1 / length3(out));
  };
  const was = off(wasA, wasY, points[aside] as Vec3);
  const is = off(a, y, placed[aside] as Vec3);
  // The facet's own normal, on the side that is outward: flat, all facets share it.
  const outward = Math.sign(dot3(middleNormal, cross3(wasY, was))) || 1;
  const n = scale3(cross3(y, is), outward);
  return { at: middle3(a, b), axes: [cross3(y, n), y, n] };
}

/** The nearest corner before the middle line that does not lie on it. */
function cornerAside(points: readonly Vec3[], i: number, a: Vec3, y: Vec3): number {
  for (let k = i - 1; k >= 0; k--) {
    const run = sub3(points[k] as Vec3, a);
    if (length3(sub3(run, scale3(y, dot3(run, y)))) > NO_LENGTH_MM) return k;
  }
  return i;
}

/** Moved as one piece so that its middle goes from where it stood to the floor, the inside turning up. */
function settled(strip: Unrolling, placed: readonly Vec3[], share: number): Vec3[] {
  const is = frameAt(strip, placed);
  const was = frameAt(strip, strip.points);
  // On the floor: x to the right is minus the way in which normal angles grow; y away; outward is down.
  const down: Frame = {
    at: [was.at[0], was.at[1], 0],
    axes: [
      [-1, 0, 0],
      [0, 1, 0],
      [0, 0, -1],
    ],
  };
  const to = between(was, down, share);
  return placed.map((p) => {
    const run = sub3(p, is.at);
    return is.axes.reduce<Vec3>(
      (sum, axis, k) => add3(sum, scale3(to.axes[k] as Vec3, dot3(run, axis))),
      to.at,
    );
  });
}

/** A frame on the way from one to another: turned about the one axis that takes the first to the second. */
function between(from: Frame, to: Frame, share: number): Frame {
  const matrix = [0, 1, 2].map((r) =>
    [0, 1, 2].map((c) =>
      from.axes.reduce((sum, axis, k) => sum + (to.axes[k] as Vec3)[r as 0] * axis[c as 0], 0),
    ),
  );
  const m = (r: number, c: number) => (matrix[r] as number[])[c] as number;
  const angle = Math.acos(Math.min(1, Math.max(-1, (m(0, 0) + m(1, 1) + m(2, 2) - 1) / 2)));
  const raw: Vec3 = [m(2, 1) - m(1, 2), m(0, 2) - m(2, 0), m(1, 0) - m(0, 1)];
  const long = length3(raw);
  // Half a turn, or none: any axis of the plane serves the first, and the second needs none.
  const axis: Vec3 = long > NO_LENGTH_MM ? scale3(raw, 1 / long) : halfTurnAxis(m);
  const turn = share * angle;
  const turned = (p: Vec3): Vec3 =>
    add3(
      add3(scale3(p, Math.cos(turn)), scale3(cross3(axis, p), Math.sin(turn))),
      scale3(axis, dot3(axis, p) * (1 - Math.cos(turn))),
    );
  const [x, y, z] = from.axes;
  return {
    at: add3(from.at, scale3(sub3(to.at, from.at), share)),
    axes: [turned(x), turned(y), turned(z)],
  };
}

/** Of half a turn the axis: the longest column of M + 1. */
function halfTurnAxis(m: (r: number, c: number) => number): Vec3 {
  const columns = [0, 1, 2].map((c): Vec3 => [
    m(0, c) + (c === 0 ? 1 : 0),
    m(1, c) + (c === 1 ? 1 : 0),
    m(2, c) + (c === 2 ? 1 : 0),
  ]);
  const longest = columns.reduce((p, q) => (length3(q) > length3(p) ? q : p));
  return scale3(longest, 1 / length3(longest));
}

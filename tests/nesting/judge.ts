import polygonClipping from "polygon-clipping";
import type { Vec2 } from "../../src/geometry/vector.ts";

/** An outline turned about its origin and shifted, worked out apart from the code under test. */
export function placed(outline: readonly Vec2[], rotationDeg: number, at: Vec2): Vec2[] {
  const turn = (rotationDeg / 180) * Math.PI;
  return outline.map(([x, y]) => [
    x * Math.cos(turn) - y * Math.sin(turn) + at[0],
    x * Math.sin(turn) + y * Math.cos(turn) + at[1],
  ]);
}

const box = (points: readonly Vec2[]) => ({
  left: Math.min(...points.map(([x]) => x)),
  right: Math.max(...points.map(([x]) => x)),
  low: Math.min(...points.map(([, y]) => y)),
  top: Math.max(...points.map(([, y]) => y)),
});

/** Distance from a point to a straight piece. */
function pointToPiece([x, y]: Vec2, [ax, ay]: Vec2, [bx, by]: Vec2): number {
  const long = (bx - ax) ** 2 + (by - ay) ** 2;
  const t = long === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / long));
  return Math.hypot(x - ax - t * (bx - ax), y - ay - t * (by - ay));
}

/**
 * Least distance between the outlines of two shapes that do not overlap: of all ends of straight pieces to all pieces of
 * the other. Pairs further apart than `most` are not looked at. [mm]
 */
export function distanceApart(p: readonly Vec2[], q: readonly Vec2[], most: number): number {
  const [one, other] = [box(p), box(q)];
  const gap = Math.max(
    one.left - other.right,
    other.left - one.right,
    one.low - other.top,
    other.low - one.top,
  );
  if (gap > most) return gap;
  let least = Infinity;
  const sweep = (points: readonly Vec2[], pieces: readonly Vec2[], room: ReturnType<typeof box>) => {
    const near = points.filter(
      ([x, y]) => x > room.left - most && x < room.right + most && y > room.low - most && y < room.top + most,
    );
    for (let i = 0; i < pieces.length; i++) {
      const [a, b] = [pieces[i]!, pieces[(i + 1) % pieces.length]!];
      const [west, east] = [Math.min(a[0], b[0]) - most, Math.max(a[0], b[0]) + most];
      const [south, north] = [Math.min(a[1], b[1]) - most, Math.max(a[1], b[1]) + most];
      for (const point of near) {
        if (point[0] < west || point[0] > east || point[1] < south || point[1] > north) continue;
        least = Math.min(least, pointToPiece(point, a, b));
      }
    }
  };
  sweep(p, q, other);
  sweep(q, p, one);
  return least;
}

/** On a grid of 0.001 mm: sides that all but coincide are more than the library can tell apart. */
const ring = (points: readonly Vec2[], shift = 0): [number, number][] =>
  points.map(([x, y]) => [Math.round(1000 * x + shift) / 1000, Math.round(1000 * y + shift) / 1000]);

/** What two shapes share, by another library. [mm²] */
export function sharedArea(p: readonly Vec2[], q: readonly Vec2[]): number {
  const [one, other] = [box(p), box(q)];
  if (one.left > other.right || other.left > one.right || one.low > other.top || other.low > one.top)
    return 0;
  let shared: ReturnType<typeof polygonClipping.intersection>;
  try {
    shared = polygonClipping.intersection([ring(p)], [ring(q)]);
  } catch {
    // It gives up on some shapes that touch all along; moved by a hair they are judged as well.
    shared = polygonClipping.intersection([ring(p)], [ring(q, 1)]);
  }
  return shared.flat().reduce((sum, points) => sum + area(points as Vec2[]), 0);
}

/** By the trapezoids under it, without sign. [mm²] */
export function area(points: readonly Vec2[]): number {
  let sum = 0;
  for (const [i, [x, y]] of points.entries()) {
    const [nx, ny] = points[(i + 1) % points.length]!;
    sum += ((x - nx) * (y + ny)) / 2;
  }
  return Math.abs(sum);
}

/** How far a shape reaches out of an upright rectangle; negative within it. [mm] */
export function beyond(
  points: readonly Vec2[],
  rectangle: { left: number; low: number; right: number; top: number },
): number {
  const own = box(points);
  return Math.max(
    rectangle.left - own.left,
    own.right - rectangle.right,
    rectangle.low - own.low,
    own.top - rectangle.top,
  );
}

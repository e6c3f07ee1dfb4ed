import { add2, scale2, sub2, type Vec2 } from "../../geometry/vector.ts";

/** The pieces of a curve that lie within heights of a plot, cut where it leaves them. */
export function within(points: readonly Vec2[], [low, high]: readonly [number, number]): Vec2[][] {
  const pieces: Vec2[][] = [];
  let open: Vec2[] = [];
  const inside = ([, y]: Vec2): boolean => y >= low && y <= high;
  const cut = (p: Vec2, q: Vec2): Vec2 => {
    const level = Math.max(p[1], q[1]) > high ? high : low;
    return add2(p, scale2(sub2(q, p), (level - p[1]) / (q[1] - p[1])));
  };
  for (const [i, q] of points.entries()) {
    const p = points[i - 1];
    if (inside(q)) {
      if (p && !inside(p)) open.push(cut(p, q));
      open.push(q);
    } else if (open.length > 0) {
      open.push(cut(open.at(-1) as Vec2, q));
      pieces.push(open);
      open = [];
    }
  }
  if (open.length > 0) pieces.push(open);
  return pieces;
}

/** So many places are tried for the tip of a leader. */
const TIPS = 7;

/** Some points of a curve, from its middle outwards. */
export function spaced(curve: readonly Vec2[]): Vec2[] {
  const last = curve.length - 1;
  const shares = Array.from({ length: TIPS }, (_, i) => (i + 0.5) / TIPS);
  return shares
    .toSorted((p, q) => Math.abs(p - 0.5) - Math.abs(q - 0.5))
    .flatMap((share) => curve.slice(Math.round(share * last)).slice(0, 1));
}

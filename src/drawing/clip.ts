import { cross2, length2, sub2, type Vec2 } from "../geometry/vector.ts";

/**
 * The part of a straight line that lies within a convex outline, as shares of its length; undefined where there is none.
 *
 * @param outline counter-clockwise, first point not repeated
 * @param depth how far inside it has to lie to count; negative counts what lies just outside [mm]
 */
export function clip(
  from: Vec2,
  to: Vec2,
  { outline, depth = 0 }: { outline: readonly Vec2[]; depth?: number },
): readonly [number, number] | undefined {
  let [enter, leave] = [0, 1];
  const run = sub2(to, from);
  for (const [i, p] of outline.entries()) {
    const side = sub2(outline[(i + 1) % outline.length] as Vec2, p);
    const [inside, turn] = [cross2(side, sub2(from, p)) - depth * length2(side), cross2(side, run)];
    if (turn === 0) {
      if (inside < 0) return undefined;
    } else if (turn > 0) enter = Math.max(enter, -inside / turn);
    else leave = Math.min(leave, -inside / turn);
  }
  return enter < leave ? [enter, leave] : undefined;
}

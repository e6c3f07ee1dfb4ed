import { radians } from "./angle.ts";
import type { Vec2 } from "./vector.ts";

/** Where a flat shape lies: turned about its own origin, counter-clockwise, then shifted. */
export interface Placed {
  readonly rotationDeg: number;
  readonly at: Vec2;
}

/** Cosine and sine of a turn, exact at quarter turns. */
export function turnOf(turnDeg: number): Vec2 {
  const quarters = turnDeg / 90;
  if (!Number.isInteger(quarters)) return [Math.cos(radians(turnDeg)), Math.sin(radians(turnDeg))];
  const exact = [
    [1, 0],
    [0, 1],
    [-1, 0],
    [0, -1],
  ] as const;
  return exact[(((quarters % 4) + 4) % 4) as 0 | 1 | 2 | 3];
}

/** Takes points of a shape to where it lies. */
export function placer({ rotationDeg, at }: Placed): (p: Vec2) => Vec2 {
  const [c, s] = turnOf(rotationDeg);
  return ([x, y]) => [c * x - s * y + at[0], s * x + c * y + at[1]];
}

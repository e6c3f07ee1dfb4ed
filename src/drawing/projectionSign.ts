import type { Vec2 } from "../geometry/vector.ts";
import { circle, closed, line, type Stroke } from "./model.ts";

/** Where the views stand: first angle as on metric drawings, third angle as is the custom in inches (ISO 5456-2). */
export type Projection = "first" | "third";

/** Room the sign takes. [mm of paper] */
export const SIGN_WIDTH = 22;

/**
 * The sign of the projection (ISO 5456-2): a cone from the side, and what is seen from its left; in first angle that stands
 * to the cone's right, in third angle to its left.
 */
export function projectionSign([x, y]: Vec2, unit: number, projection: Projection): Stroke[] {
  const cone = projection === "first" ? -6 : 6;
  const at = (dx: number, dy: number): Vec2 => [x + dx * unit, y + dy * unit];
  const [large, small] = [3, 1.5];
  return [
    closed("outline", [at(cone - 3, -small), at(cone + 3, -large), at(cone + 3, large), at(cone - 3, small)]),
    circle("outline", at(-cone, 0), large * unit),
    circle("outline", at(-cone, 0), small * unit),
    line("centre", at(-10.5, 0), at(-1.5, 0)),
    line("centre", at(1.5, 0), at(10.5, 0)),
    line("centre", at(-cone, -4.5), at(-cone, 4.5)),
  ];
}

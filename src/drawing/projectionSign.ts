import type { Vec2 } from "../geometry/vector.ts";
import { circle, closed, line, type Stroke } from "./model.ts";

/** Room the sign takes. [mm of paper] */
export const SIGN_WIDTH = 22;

/** The sign of first-angle projection (ISO 5456-2): a cone's side view, and to its right what is seen from its left. */
export function firstAngleSign([x, y]: Vec2, unit: number): Stroke[] {
  const at = (dx: number, dy: number): Vec2 => [x + dx * unit, y + dy * unit];
  const [large, small] = [3, 1.5];
  return [
    closed("outline", [at(-9, -small), at(-3, -large), at(-3, large), at(-9, small)]),
    circle("outline", at(6, 0), large * unit),
    circle("outline", at(6, 0), small * unit),
    line("centre", at(-10.5, 0), at(-1.5, 0)),
    line("centre", at(1.5, 0), at(10.5, 0)),
    line("centre", at(6, -4.5), at(6, 4.5)),
  ];
}

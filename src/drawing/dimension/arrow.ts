import { add2, left2, scale2, sub2, type Vec2 } from "../../geometry/vector.ts";
import { closed, type Stroke } from "../model.ts";

/** Arrowheads are closed and filled, three to one (ISO 129-1). [mm of paper] */
export const ARROW_LONG = 3;
const ARROW_HALF = 0.5;

/** An arrowhead with its point at `tip`, pointing along `dir` (a unit vector). */
export function arrowhead(tip: Vec2, dir: Vec2, unit: number): Stroke {
  const foot = sub2(tip, scale2(dir, ARROW_LONG * unit));
  const half = scale2(left2(dir), ARROW_HALF * unit);
  return closed("arrow", [tip, add2(foot, half), sub2(foot, half)]);
}

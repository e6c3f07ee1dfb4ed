import { radians } from "../geometry/angle.ts";
import { leanRange } from "../geometry/measure.ts";
import type { Skin } from "../geometry/skin.ts";
import type { Refusal } from "./refusal.ts";

/** Nearer to level than this a wall is a disc, and no strip of few millimetres' height can be laid out truly. [rad] */
const LEVEL = radians(89.001);

/**
 * Why a wall cannot be laid out that lies level anywhere round the part. Asked before anything of it is measured: where a
 * tangent plane is level to rounding, so are all lengths lost in it.
 */
export function levelProblem(skin: Skin, field: "height" | "slant" | "halfAngle"): Refusal | undefined {
  const { least, greatest } = leanRange(skin);
  if (Math.max(-least, greatest) <= LEVEL) return undefined;
  return {
    path: [field],
    problem: "the wall lies within 1° of level",
    remedy: "check height and offset: such a part is a flat plate",
  };
}

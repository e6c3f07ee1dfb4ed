import * as z from "zod/mini";
import { angle, common, Edges, RoundEnd, RoundOrPoint, size } from "../fields.ts";

/** A right cone, whole or cut off level: two round ends on one axis. Exactly one of height, slant, halfAngle. */
export const RightCone = z.strictObject({
  shape: z.literal("right-cone"),
  ...common,
  largeEnd: RoundEnd,
  smallEnd: RoundOrPoint,
  /** Between the end planes; with square edges over all. [mm] */
  height: z.optional(size()),
  /** Along the middle of the wall. [mm] */
  slant: z.optional(size()),
  /** Between the axis and the wall. [degrees] */
  halfAngle: z.optional(angle().check(z.positive(), z.maximum(89))),
  edges: z.optional(Edges),
});
export type RightCone = z.infer<typeof RightCone>;

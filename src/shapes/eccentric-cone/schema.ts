import * as z from "zod/mini";
import { common, Edges, Measured, Offset, RoundEnd, size, sizeOrNone } from "../fields.ts";

/** Two round ends in parallel planes, their centres offset: an oblique cone, or an oblique pipe with equal ends. */
export const EccentricCone = z.strictObject({
  shape: z.literal("eccentric-cone"),
  ...common,
  largeEnd: RoundEnd,
  smallEnd: z.strictObject({ diameter: sizeOrNone(), measured: z.optional(Measured), offset: Offset }),
  /** Between the end planes. [mm] */
  height: size(),
  edges: z.optional(Edges),
});
export type EccentricCone = z.infer<typeof EccentricCone>;

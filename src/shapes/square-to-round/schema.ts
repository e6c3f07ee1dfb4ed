import * as z from "zod/mini";
import { common, Edges, Measured, Offset, size } from "../fields.ts";

/** A rectangular end below, a round end above, in parallel planes. */
export const SquareToRound = z.strictObject({
  shape: z.literal("square-to-round"),
  ...common,
  /** Length along x, width along y. */
  rectangularEnd: z.strictObject({ length: size(), width: size(), measured: Measured }),
  roundEnd: z.strictObject({ diameter: size(), measured: Measured, offset: z.optional(Offset) }),
  /** Between the end planes. [mm] */
  height: size(),
  edges: z.optional(Edges),
});
export type SquareToRound = z.infer<typeof SquareToRound>;

import * as z from "zod/mini";
import { EccentricCone } from "./eccentric-cone/schema.ts";
import { RightCone } from "./right-cone/schema.ts";
import { SquareToRound } from "./square-to-round/schema.ts";

/** A part file once read: lengths in mm, angles in degrees, whatever the file's own units were. */
export const Part = z.discriminatedUnion("shape", [RightCone, EccentricCone, SquareToRound]);
export type Part = z.infer<typeof Part>;
export type ShapeId = Part["shape"];

import * as z from "zod/mini";
import { MAX_LENGTH_MM, MIN_THICKNESS_MM } from "./limits.ts";
import { MOST_PIECES } from "./pieces.ts";

/** What kind of quantity a field holds, so that a reader can convert "12-3/8" or "10 ga" before it checks. */
export type Quantity = "length" | "thickness" | "angle" | "direction" | "force" | "strength" | "mass";

/**
 * Marks the fields that carry a quantity; once read lengths and thicknesses are mm, angles and directions degrees,
 * forces kN, strengths MPa, masses kg.
 */
export const quantities = z.registry<{
  quantity: Quantity;
  /** A key without a unit in its name, under which the same value may be given with its unit: force for forceKN. */
  plainKey?: string;
  /** From this on a bare number in a file in inches is likelier millimetres, and is asked about. [in] */
  askFromIn?: number;
}>();

/** Two numbers in square brackets: what they are, and how that looks. */
export interface Pair {
  readonly words: string;
  readonly example: string;
}
export const pairs = z.registry<Pair>();

/** [mm] */
const MAX_THICKNESS_MM = 200;

const length = () => z.number().register(quantities, { quantity: "length" });

/** A size that must be more than nothing. [mm] */
export const size = () => length().check(z.positive(), z.maximum(MAX_LENGTH_MM));
/** The mouth of a die: 12 without a unit is a common one in millimetres, and none in inches that many have. [mm] */
export const dieSize = () =>
  z
    .number()
    .register(quantities, { quantity: "length", askFromIn: 6 })
    .check(z.positive(), z.maximum(MAX_LENGTH_MM));
/** A size that may be nothing. [mm] */
export const sizeOrNone = () => length().check(z.nonnegative(), z.maximum(MAX_LENGTH_MM));
/** A position or a distance that may go either way. [mm] */
export const distance = () => length().check(z.minimum(-MAX_LENGTH_MM), z.maximum(MAX_LENGTH_MM));
/** [degrees] */
export const angle = () => z.number().register(quantities, { quantity: "angle" });

/** A direction in plan, from degrees or from right, back, left, front. [degrees] */
const direction = () => z.number().register(quantities, { quantity: "direction" });

/** A yield strength: MPa, or with its unit under the key `yield`. [MPa] */
export const strength = () => z.number().register(quantities, { quantity: "strength", plainKey: "yield" });
/** A machine's force: kN, or with its unit under the key `force`. [kN] */
export const force = () => z.number().register(quantities, { quantity: "force", plainKey: "force" });
/** A mass that is lifted: kg, or with its unit under the key `handLift`. [kg] */
export const lift = () => z.number().register(quantities, { quantity: "mass", plainKey: "handLift" });

/** Plate thickness, from a number or a sheet gauge. [mm] */
export const thickness = () =>
  z
    .number()
    .register(quantities, { quantity: "thickness" })
    .check(z.minimum(MIN_THICKNESS_MM), z.maximum(MAX_THICKNESS_MM));

/** Which face of the wall a size is measured to. */
export const Measured = z.enum(["inside", "outside", "middle"]);
export type Measured = z.infer<typeof Measured>;

const text = (max: number) => z.string().check(z.minLength(1), z.maxLength(max));

export const Seam = z.strictObject({
  /** Where the seam lies: direction of the outward normal in plan, counter-clockwise from +x. [degrees] */
  at: z.optional(direction().check(z.minimum(-360), z.maximum(360))),
  joint: z.optional(z.enum(["butt", "lap"])),
  /** Butt joint: the opening left for the weld, half taken off each edge. [mm] */
  gap: z.optional(sizeOrNone()),
  /** Lap joint: how far the plate runs on past the seam. [mm] */
  lap: z.optional(size()),
});

export type Seam = z.infer<typeof Seam>;

/** The keys that every shape shares. */
export const common = {
  title: text(120),
  /** How the numbers of the file are read. */
  units: z.enum(["mm", "in"]),
  /** An id in the catalogue of materials. */
  material: text(60),
  thickness: thickness(),
  seam: z.optional(Seam),
  /** Equal number of blanks round the part. */
  pieces: z.optional(z.int().check(z.minimum(1), z.maximum(MOST_PIECES))),
  quantity: z.optional(z.int().check(z.minimum(1), z.maximum(10_000))),
  /** Draw the pattern outside face up. */
  mirror: z.optional(z.boolean()),
  /** Divisions of the round for layout by hand. */
  divisions: z.optional(z.int().check(z.minimum(4), z.maximum(96), z.multipleOf(2))),
  /** Where the neutral surface lies: 0 at the inside face, 1 at the outside face. */
  neutral: z.optional(z.number().check(z.minimum(0), z.maximum(1))),
  /** Add the height that is lost when an edge cut square to the plate is dressed level. */
  trimAllowance: z.optional(z.boolean()),
  /** How far a flat between two bends may stand off the true curve, on a brake. [mm] */
  facetError: z.optional(length().check(z.minimum(0.05), z.maximum(100))),
  notes: z.optional(z.string().check(z.maxLength(2000))),
  /** From the mill certificate. */
  certificate: z.optional(z.strictObject({ yieldMPa: strength().check(z.minimum(20), z.maximum(2000)) })),
  /** Tolerance class for lengths, ISO 13920. */
  tolerance: z.optional(z.enum(["A", "B", "C", "D"])),
};

/** How the plate edges are left at the ends. */
export const Edges = z.enum(["level", "square"]);

/** A round end as large as it is drawn; nought is a point. */
export const RoundEnd = z.strictObject({ diameter: size(), measured: Measured });
export const RoundOrPoint = z.strictObject({ diameter: sizeOrNone(), measured: z.optional(Measured) });
/** Plan distance from the centre of end A to the centre of end B: x to the right, y away. [mm] */
export const Offset = z.tuple([distance(), distance()]).register(pairs, {
  words: "how far the upper end's centre lies from the lower end's, [right, away]",
  example: "[0, 150]",
});

import * as z from "zod/mini";
import { angle, distance, size, thickness } from "../shapes/fields.ts";

const megapascals = () => z.number().check(z.positive(), z.maximum(3000));
const name = () => z.string().check(z.minLength(1), z.maxLength(80));

/** A plate roll as its own plate and handbook describe it. */
export const PlateRoll = z.strictObject({
  kind: z.literal("plate roll"),
  name: name(),
  /** How the rolls stand to each other. */
  arrangement: z.enum(["initial-pinch", "double-pinch", "pyramid", "four-roll"]),
  /** Usable length of the rolls. */
  workingWidth: size(),
  /** Greatest plate it forms at full width as a cylinder, and the yield strength that rating is for. */
  rating: z.strictObject({ thickness: thickness(), yieldMPa: megapascals() }),
  /** The maker's own rating for cones, where there is one: greatest thickness, and the slant it goes with. */
  coneRating: z.optional(z.strictObject({ thickness: thickness(), slant: size() })),
  rolls: z.strictObject({ topDiameter: size(), pinchDiameter: z.optional(size()), bendingDiameter: size() }),
  /** The bending roll's slide: where its centre stands when it touches a flat plate's underside, and how it moves. */
  slide: z.optional(
    z.strictObject({
      /** From the top roll's centre: x towards the bending side, y up. */
      origin: z.tuple([distance(), distance()]),
      /** How steeply it rises above level, towards the top roll. */
      angle: angle().check(z.minimum(0), z.maximum(90)),
      /** How far it moves up from the origin. */
      travel: size(),
      greatestTilt: z.optional(angle().check(z.minimum(0), z.maximum(20))),
    }),
  ),
  /** From the end of the roll face to the centre of each bearing: drop end, fixed end. */
  bearings: z.optional(z.tuple([size(), size()])),
  /** The hardened stop that the small edge bears and slides on; leave it out where there is none. */
  coneAttachment: z.optional(
    z.strictObject({
      /** Reach of the stop along the rolls, from the drop end. */
      range: z.optional(z.tuple([distance(), distance()])),
      /** Clear room beyond the stop before the frame or yoke. */
      clearRoom: z.optional(size()),
    }),
  ),
  /** Can the pinch roll be set out of parallel? */
  pinchTrim: z.optional(z.boolean()),
  /** Smallest inside diameter it closes. */
  smallestDiameter: z.optional(size()),
  /** Smallest radius it bends to, of the middle of the wall. */
  smallestRadius: z.optional(size()),
});
export type PlateRoll = z.infer<typeof PlateRoll>;

export const PressBrake = z.strictObject({
  kind: z.literal("press brake"),
  name: name(),
  bedLength: size(),
  forceKN: z.number().check(z.positive(), z.maximum(100_000)),
  /** Die openings in the rack. */
  dies: z.array(size()).check(z.minLength(1)),
  /** Deepest the plate reaches behind the bend line before it meets the frame. */
  throat: z.optional(size()),
});
export type PressBrake = z.infer<typeof PressBrake>;

const StockPlate = z.strictObject({
  material: z.string(),
  thickness: thickness(),
  length: size(),
  width: size(),
});

/** The shop file: its machines and plates, in its own words and numbers. */
export const Shop = z.strictObject({
  name: name(),
  units: z.enum(["mm", "in"]),
  machines: z.array(z.discriminatedUnion("kind", [PlateRoll, PressBrake])),
  stock: z.optional(z.array(StockPlate)),
  /** Above this a piece is lifted by machine; the shop's own rule. */
  handLiftKg: z.optional(z.number().check(z.positive(), z.maximum(200))),
});
export type Shop = z.infer<typeof Shop>;
export type Machine = Shop["machines"][number];

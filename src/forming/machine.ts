import * as z from "zod/mini";
import {
  angle,
  dieSize,
  distance,
  force,
  lift,
  pairs,
  size,
  sizeOrNone,
  strength,
  thickness,
} from "../shapes/fields.ts";

const megapascals = () => strength().check(z.positive(), z.maximum(3000));
const name = () => z.string().check(z.minLength(1), z.maxLength(80));

/**
 * A plate roll as its own plate and handbook describe it. What a shop does not know it leaves out, and the checks that
 * need it say so.
 */
export const PlateRoll = z.strictObject({
  kind: z.literal("plate roll"),
  name: name(),
  /** How the rolls stand to each other. */
  arrangement: z.optional(z.enum(["initial-pinch", "double-pinch", "pyramid", "four-roll"])),
  /** Usable length of the rolls. */
  workingWidth: size(),
  /** Greatest plate it forms at full width as a cylinder, and the yield strength that rating is for. */
  rating: z.strictObject({ thickness: thickness(), yieldMPa: z.optional(megapascals()) }),
  /** The maker's own rating for cones, where there is one: greatest thickness, and the slant it goes with. */
  coneRating: z.optional(z.strictObject({ thickness: thickness(), slant: size() })),
  rolls: z.strictObject({
    topDiameter: size(),
    pinchDiameter: z.optional(size()),
    bendingDiameter: z.optional(size()),
  }),
  /** The bending roll's slide: where its centre stands when it touches a flat plate's underside, and how it moves. */
  slide: z.optional(
    z.strictObject({
      /** From the top roll's centre: x towards the bending side, y up. */
      origin: z.tuple([distance(), distance()]).register(pairs, {
        words: "its place from the centre of the top roll, [towards the bending side, up]",
        example: "[150, -129]",
      }),
      /** How steeply it rises above level, towards the top roll. */
      angle: angle().check(z.minimum(0), z.maximum(90)),
      /** How far it moves up from the origin. */
      travel: size(),
      /** How far it goes down from there. */
      below: z.optional(sizeOrNone()),
      greatestTilt: z.optional(angle().check(z.minimum(0), z.maximum(20))),
    }),
  ),
  /** At which hand the drop end is, for whoever stands where the plate goes in and looks along its way. */
  dropEnd: z.optional(z.enum(["left", "right"])),
  /** From the end of the roll face to the centre of each bearing: drop end, fixed end. */
  bearings: z.optional(
    z.tuple([size(), size()]).register(pairs, {
      words: "the distance to the bearing at the drop end and at the fixed end",
      example: "[140, 160]",
    }),
  ),
  /** The hardened stop that the small edge bears and slides on; false where there is none, left out where nobody knows. */
  coneAttachment: z.optional(
    z.strictObject({
      /** Is it there? Yes, unless it says no. In a file `coneAttachment: false` says the same. */
      fitted: z.optional(z.boolean()),
      /** Reach of the stop along the rolls, from the drop end. */
      range: z.optional(
        z.tuple([distance(), distance()]).register(pairs, {
          words: "the nearest and the farthest place of the stop from the drop end",
          example: "[20, 300]",
        }),
      ),
      /** Clear room beyond the stop, at its nearest to the drop end, before the frame or yoke. */
      clearRoom: z.optional(size()),
      /** The same at the fixed end of the rolls, where the stop stands for the second pass. */
      clearRoomFixedEnd: z.optional(size()),
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
  forceKN: force().check(z.positive(), z.maximum(100_000)),
  /** Die openings in the rack. */
  dies: z.optional(z.array(dieSize()).check(z.minLength(1))),
  /** Deepest the plate reaches behind the bend line before it meets the frame. */
  throat: z.optional(size()),
});
export type PressBrake = z.infer<typeof PressBrake>;

const StockPlate = z.strictObject({
  material: z.string(),
  thickness: thickness(),
  length: size(),
  width: size(),
  /** Keep blanks as drawn or turned by half, so that element lines run across the plate's length. */
  grain: z.optional(z.boolean()),
});

/** How blanks are kept apart on a plate. */
const Cutting = z.strictObject({
  /** Least distance between blanks: the kerf and the bridge that is left beside it. */
  spacing: z.optional(sizeOrNone()),
  /** What is left along the edges of the plate. */
  edge: z.optional(sizeOrNone()),
});

/** The shop file: its machines and plates, in its own words and numbers. */
export const Shop = z.strictObject({
  name: name(),
  units: z.enum(["mm", "in"]),
  machines: z.array(z.discriminatedUnion("kind", [PlateRoll, PressBrake])),
  stock: z.optional(z.array(StockPlate)),
  cutting: z.optional(Cutting),
  /** Above this a piece is lifted by machine; the shop's own rule. */
  handLiftKg: z.optional(lift().check(z.positive(), z.maximum(200))),
});
export type Shop = z.infer<typeof Shop>;
export type Machine = Shop["machines"][number];

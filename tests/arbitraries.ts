import fc from "fast-check";
import type { Skin } from "../src/geometry/skin.ts";
import { circleRim, pointRim, rectangleRim } from "../src/geometry/rim.ts";
import type { Measured } from "../src/shapes/fields.ts";
import { even } from "./even.ts";
import { named } from "./parts.ts";

/** The same parts every time, so that a red test always means a change. */
export const runs = (numRuns: number) => ({ seed: 7, numRuns });

export const share = even(0, 1);

/** A length, spread evenly over its orders of magnitude, so that small and large are tried alike. [mm] */
export const mm = (least: number, most: number) => share.map((s) => least * (most / least) ** s);

const measured = fc.constantFrom<Measured>("inside", "middle", "outside");
const angleDeg = even(-360, 360);

/** Two round ends: anything from a pipe to a disc with a hole, offset by up to one and a half large diameters. */
export const roundSkin: fc.Arbitrary<Skin> = fc
  .record({
    small: mm(5, 5000),
    extra: mm(0.1, 5000),
    height: mm(20, 10_000),
    offset: share,
    turn: share,
    point: share,
  })
  .map(({ small, extra, height, offset, turn, point }) => {
    const reach = offset < 0.2 ? 0 : 3 * (offset - 0.2) * (small + extra);
    const c: [number, number] = [reach * Math.cos(2 * Math.PI * turn), reach * Math.sin(2 * Math.PI * turn)];
    return {
      a: circleRim([0, 0], small + extra),
      b: point < 0.15 ? pointRim(c) : circleRim(c, point < 0.3 ? small + extra : small),
      baseMm: 0,
      heightMm: Math.max(height, reach / 20),
    };
  });

/** A rectangle below a circle, offset both ways. */
const corneredSkin: fc.Arbitrary<Skin> = fc
  .record({
    length: mm(20, 5000),
    width: mm(20, 5000),
    radius: mm(10, 2500),
    height: mm(20, 10_000),
    x: share,
    y: share,
  })
  .map(({ length, width, radius, height, x, y }) => ({
    a: rectangleRim(length, width),
    b: circleRim([(x - 0.5) * length * 2, (y - 0.5) * width * 2], radius),
    baseMm: 0,
    heightMm: Math.max(height, (length + width) / 20),
  }));

export const anySkin = fc.oneof(roundSkin, corneredSkin);

const wall = fc.record({
  t: share,
  neutral: fc.option(even(0.3, 0.6), { nil: undefined }),
  mirror: fc.boolean(),
  at: fc.option(angleDeg, { nil: undefined }),
  gap: fc.constantFrom(0, 1, 3),
});

/** Thickness from foil to about a sixth of what there is room for. [mm] */
const thicknessFor = (room: number, t: number) => Math.min(60, Math.max(0.2, 0.005 * room + t * 0.15 * room));

const common = (
  room: number,
  w: { t: number; neutral: number | undefined; mirror: boolean; at: number | undefined; gap: number },
) => ({
  thickness: thicknessFor(room, w.t),
  ...(w.neutral !== undefined && { neutral: w.neutral }),
  mirror: w.mirror,
  seam: { ...(w.at !== undefined && { at: w.at }), gap: Math.min(w.gap, room / 50) },
});

export const rightCone = fc
  .record({
    small: mm(20, 3000),
    extra: mm(8, 3000),
    height: mm(30, 6000),
    largeFace: measured,
    smallFace: measured,
    square: fc.boolean(),
    pieces: fc.integer({ min: 1, max: 12 }),
    w: wall,
  })
  .map(({ small, extra, height, largeFace, smallFace, square, pieces, w }) => {
    const walls = common(Math.min(small, height, 2 * extra), w);
    // The middle surface has to taper too, so the ends differ by more than the wall can take back.
    const large = small + extra + 4 * walls.thickness;
    return named({
      shape: "right-cone",
      ...walls,
      pieces,
      largeEnd: { diameter: large, measured: largeFace },
      smallEnd: { diameter: small, measured: smallFace },
      height: height + (large - small) / 20,
      edges: square ? "square" : "level",
    });
  });

export const eccentricCone = fc
  .record({
    small: mm(20, 3000),
    extra: mm(1, 3000),
    height: mm(30, 6000),
    reach: share,
    turn: share,
    face: measured,
    equal: fc.boolean(),
    w: wall,
  })
  .map(({ small, extra, height, reach, turn, face, equal, w }) => {
    const large = equal ? small : small + extra;
    const offset = reach * large;
    return named({
      shape: "eccentric-cone",
      ...common(Math.min(small, height) / 4, w),
      largeEnd: { diameter: large, measured: face },
      smallEnd: {
        diameter: small,
        measured: face,
        offset: [offset * Math.cos(2 * Math.PI * turn), offset * Math.sin(2 * Math.PI * turn)],
      },
      height: height + (large + offset) / 4,
    });
  });

export const squareToRound = fc
  .record({
    length: mm(40, 4000),
    width: mm(40, 4000),
    diameter: mm(30, 4000),
    height: mm(50, 6000),
    x: share,
    y: share,
    rectangleFace: measured,
    roundFace: measured,
    pieces: fc.constantFrom(1, 2, 4),
    w: wall,
  })
  .map(({ length, width, diameter, height, x, y, rectangleFace, roundFace, pieces, w }) => {
    const walls = common(Math.min(length, width, diameter, height) / 4, w);
    const at =
      walls.seam.at === undefined || pieces === 1 ? walls.seam.at : 90 * Math.round(walls.seam.at / 90);
    const seam = { gap: walls.seam.gap };
    return named({
      shape: "square-to-round",
      ...walls,
      seam: { ...seam, ...(at !== undefined && { at }) },
      pieces,
      rectangularEnd: { length, width, measured: rectangleFace },
      roundEnd: { diameter, measured: roundFace, offset: [(x - 0.5) * length, (y - 0.5) * width] },
      height: height + (length + width + diameter) / 8,
    });
  });

export const anyPart = fc.oneof(rightCone, eccentricCone, squareToRound);

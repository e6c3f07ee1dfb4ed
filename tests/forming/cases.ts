import fc from "fast-check";
import type { FormingCase } from "../../src/forming/case.ts";
import { PlateRoll, PressBrake, Shop } from "../../src/forming/machine.ts";
import type { Material } from "../../src/shapes/material.ts";
import { even } from "../even.ts";

/** Deterministic: a red run means the change, not the draw. */
export const RUNS = { seed: 7, numRuns: 300 };

const sources = { strength: "en-10025-2", density: "en-1993-1-1-memory", elastic: "en-1993-1-1-memory" };
const plain = { family: "steel", densityKgM3: 7850, youngsGPa: 210, poisson: 0.3, sources } as const;
export const s235: Material = { ...plain, name: "S235", yieldMPa: 235, tensileMPa: 360 };
export const a36: Material = { ...plain, name: "A36", yieldMPa: 250, tensileMPa: 400 };
export const s355: Material = { ...plain, name: "S355", yieldMPa: 355, tensileMPa: 470 };
export const stainless: Material = {
  ...plain,
  name: "304",
  family: "stainless",
  yieldMPa: 210,
  tensileMPa: 520,
};
export const aluminium: Material = {
  ...plain,
  name: "5083",
  family: "aluminium",
  densityKgM3: 2660,
  yieldMPa: 125,
  tensileMPa: 275,
  youngsGPa: 70,
};

export interface RightCone {
  largeRadiusMm: number;
  smallRadiusMm: number;
  heightMm: number;
  thicknessMm: number;
}

/** The case of a right cone or pipe given by its middle surface, with level ends. */
export function coneCase(cone: RightCone, more: Partial<FormingCase> = {}): FormingCase {
  const { largeRadiusMm, smallRadiusMm, heightMm, thicknessMm } = cone;
  const slantMm = Math.hypot(heightMm, largeRadiusMm - smallRadiusMm);
  const halfAngleRad = Math.atan2(largeRadiusMm - smallRadiusMm, heightMm);
  const wall = thicknessMm / Math.cos(halfAngleRad);
  const inside = (radius: number) => Math.max(0, 2 * radius - wall);
  const areaMm2 = Math.PI * (largeRadiusMm + smallRadiusMm) * slantMm;
  const pieces = more.pieces ?? 1;
  return {
    shape: "right-cone",
    usualRoute: "roll",
    thicknessMm,
    material: s235,
    materialId: "s235",
    pieces,
    quantity: 1,
    edges: "level",
    slantMm: { longest: slantMm, shortest: slantMm },
    rimsMm: { large: 2 * Math.PI * largeRadiusMm, small: 2 * Math.PI * smallRadiusMm },
    insideDiameterMm: { large: inside(largeRadiusMm), small: inside(smallRadiusMm) },
    leanRad: halfAngleRad,
    tightestRadiusMm: {
      large: largeRadiusMm / Math.cos(halfAngleRad),
      small: smallRadiusMm / Math.cos(halfAngleRad),
    },
    cone: { halfAngleRad, slantMm, largeRadiusMm, smallRadiusMm },
    blanks: Array.from({ length: pieces }, () => ({
      lengthMm: (2 * Math.PI * largeRadiusMm) / pieces,
      widthMm: slantMm,
      massKg: (areaMm2 * thicknessMm * 7.85e-6) / pieces,
    })),
    ...more,
  };
}

/** A reducer 900 to 400 over 700 in 6 mm, which the rolls below take with nothing to remark. */
export const reducer: RightCone = { largeRadiusMm: 450, smallRadiusMm: 200, heightMm: 700, thicknessMm: 6 };

/** The case without the numbers that only a right cone has. */
export function coneless(item: FormingCase): FormingCase {
  const rest = { ...item };
  delete (rest as { cone?: unknown }).cone;
  return rest;
}

/** A square-to-round: folded, with flats, so nothing for a roll. */
export const hood: FormingCase = {
  ...coneless(coneCase(reducer)),
  shape: "square-to-round",
  usualRoute: "brake",
  tightestRadiusMm: null,
  bendLines: [
    { lengthMm: 720, bendRad: 0.1, wideSpacingMm: null },
    { lengthMm: 760, bendRad: 0.2, wideSpacingMm: 60 },
    { lengthMm: 740, bendRad: 0.1, wideSpacingMm: 52 },
  ],
};

/** A roll that gives every number the checks ask for. */
export const roll = (more: Partial<PlateRoll> = {}): PlateRoll => ({
  kind: "plate roll",
  name: "Roll",
  arrangement: "initial-pinch",
  workingWidth: 2000,
  rating: { thickness: 10, yieldMPa: 250 },
  rolls: { topDiameter: 200, bendingDiameter: 180 },
  coneAttachment: { range: [0, 300], clearRoom: 400 },
  pinchTrim: true,
  smallestDiameter: 260,
  smallestRadius: 130,
  ...more,
});

export const brake = (more: Partial<PressBrake> = {}): PressBrake => ({
  kind: "press brake",
  name: "Brake",
  bedLength: 3000,
  forceKN: 1600,
  dies: [16, 25, 50, 80, 120],
  ...more,
});

export const shop = (machines: Shop["machines"], more: Partial<Shop> = {}): Shop => ({
  name: "Shop",
  units: "mm",
  machines,
  ...more,
});

const length = (min: number, max: number) => even(min, max);
const thickness = length(0.2, 200);
const material = fc.constantFrom(s235, a36, s355, stainless, aluminium);
const maybe = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined });

/** Leave out the keys whose value is undefined. */
function present<T extends object>(record: T): { [K in keyof T]: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined)) as never;
}

const common = fc
  .record({
    material,
    certificateYieldMPa: maybe(length(20, 2000)),
    pieces: fc.integer({ min: 1, max: 12 }),
    edges: fc.constantFrom("level" as const, "square" as const),
    units: maybe(fc.constantFrom("mm" as const, "in" as const)),
  })
  .map((record) => present(record) as Partial<FormingCase>);

/** Any right cone: steep, wide, to a point, or a pipe, up to half angles of 89°. */
export const anyCone = fc
  .record({
    largeRadiusMm: length(1, 10_000),
    share: fc.oneof(fc.constant(0), fc.constant(1), length(0, 1)),
    halfAngleRad: length(0.0001, (89 * Math.PI) / 180),
    thicknessMm: thickness,
    more: common,
  })
  .map(({ largeRadiusMm, share, halfAngleRad, thicknessMm, more }) => {
    const smallRadiusMm = share * largeRadiusMm;
    const taper = largeRadiusMm - smallRadiusMm;
    const heightMm = taper > 0.001 ? taper / Math.tan(halfAngleRad) : 500;
    return coneCase({ largeRadiusMm, smallRadiusMm, heightMm, thicknessMm }, more);
  });

/** Any eccentric cone, by the few numbers that forming knows of it. */
const anyEccentric = fc
  .record({ item: anyCone, spread: length(0, 1), tight: length(0.2, 1) })
  .map(({ item, spread, tight }): FormingCase => {
    const { cone } = item;
    return {
      ...coneless(item),
      shape: "eccentric-cone",
      slantMm: { longest: item.slantMm.longest * (1 + spread), shortest: item.slantMm.shortest },
      tightestRadiusMm: {
        large: tight * (cone?.largeRadiusMm ?? 0),
        small: tight * (cone?.smallRadiusMm ?? 0),
      },
    };
  });

const anyHood = fc
  .record({
    item: anyCone,
    lines: fc.array(
      fc.record({
        lengthMm: length(1, 5000),
        bendRad: length(0, 1.6),
        wideSpacingMm: fc.option(length(0, 500)),
      }),
      { maxLength: 20 },
    ),
  })
  .map(({ item, lines }): FormingCase => ({
    ...coneless(item),
    shape: "square-to-round",
    usualRoute: "brake",
    tightestRadiusMm: null,
    bendLines: lines,
  }));

export const anyCase = fc.oneof(anyCone, anyEccentric, anyHood);

const size = length(1, 20_000);

/** Any roll that a shop file may describe. */
export const anyRoll = fc
  .record({
    kind: fc.constant("plate roll" as const),
    name: fc.constant("Roll"),
    arrangement: maybe(fc.constantFrom("initial-pinch", "double-pinch", "pyramid", "four-roll")),
    workingWidth: size,
    rating: fc.record({ thickness, yieldMPa: maybe(length(20, 3000)) }).map(present),
    coneRating: maybe(fc.record({ thickness, slant: size })),
    rolls: fc.record({ topDiameter: size, bendingDiameter: maybe(size) }).map(present),
    coneAttachment: maybe(
      fc
        .record({
          fitted: maybe(fc.boolean()),
          range: maybe(fc.tuple(length(-500, 2000), length(-500, 2000))),
          clearRoom: maybe(size),
          clearRoomFixedEnd: maybe(size),
        })
        .map(present),
    ),
    pinchTrim: maybe(fc.boolean()),
    smallestDiameter: maybe(size),
    smallestRadius: maybe(size),
  })
  .map((record) => PlateRoll.parse(present(record)));

export const anyBrake = fc
  .record({
    kind: fc.constant("press brake" as const),
    name: fc.constant("Brake"),
    bedLength: size,
    forceKN: length(1, 100_000),
    dies: maybe(fc.array(size, { minLength: 1, maxLength: 8 })),
    throat: maybe(size),
  })
  .map((record) => PressBrake.parse(present(record)));

const anyStock = fc.record({
  material: fc.constantFrom("s235", "304"),
  thickness: fc.oneof(fc.constant(6), thickness),
  length: size,
  width: size,
});

export const anyShop = fc
  .record({
    name: fc.constant("Shop"),
    units: fc.constantFrom("mm", "in"),
    machines: fc.array(fc.oneof(anyRoll, anyBrake), { maxLength: 4 }),
    stock: maybe(fc.array(anyStock, { maxLength: 3 })),
    handLiftKg: maybe(length(1, 200)),
  })
  .map((record) => Shop.parse(present(record)));

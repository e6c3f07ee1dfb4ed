import { radians } from "../geometry/angle.ts";
import { MM_PER_INCH, type Units } from "../geometry/units.ts";
import { layRightCone } from "../shapes/right-cone/lay.ts";
import type { Size } from "./coneSizes.ts";

/** What is joined to what. Lengths in the table's own units. */
export interface Cone {
  readonly large: Size;
  readonly small: Size;
  readonly height: number;
}

/** Ends further apart in size make a long piece. [-] */
export const GREATEST_RATIO = 2;
/** The shortest height of the list is taken that keeps the half angle to these: a short cone and a long one. [degrees] */
export const STEEPEST: readonly number[] = [30, 15];

/** Every pair of sizes worth a cone, in one or two heights, small steps first. */
export function conesBetween({
  sizes,
  heights,
  leastRatio,
}: {
  readonly sizes: readonly Size[];
  readonly heights: readonly number[];
  readonly leastRatio: number;
}): Cone[] {
  return sizes.flatMap((large) =>
    sizes
      .filter(({ diameter }) => {
        const ratio = large.diameter / diameter;
        return ratio >= leastRatio && ratio <= GREATEST_RATIO;
      })
      .toReversed()
      .flatMap((small) => {
        const taper = (large.diameter - small.diameter) / 2;
        const found = STEEPEST.flatMap(
          (deg) => heights.find((height) => height * Math.tan(radians(deg)) >= taper) ?? [],
        );
        return [...new Set(found)].map((height) => ({ large, small, height }));
      }),
  );
}

/** The pattern's closed form, from the same layout as a part file's. [mm, rad] */
export function coneForm({ large, small, height }: Cone, units: Units) {
  const mm = (length: number) => (units === "mm" ? length : length * MM_PER_INCH);
  const laid = layRightCone({
    shape: "right-cone",
    title: "A cone of the table",
    units,
    material: "any",
    thickness: 1,
    largeEnd: { diameter: mm(large.diameter), measured: "middle" },
    smallEnd: { diameter: mm(small.diameter), measured: "middle" },
    height: mm(height),
  });
  const cone = laid.kind === "layout" ? laid.cone : undefined;
  if (!cone || cone.outerRadiusMm === null || cone.innerRadiusMm === null)
    throw new RangeError(`no cone: ${large.diameter} to ${small.diameter}, ${height} high`);
  const { outerRadiusMm: outerMm, innerRadiusMm: innerMm, sectorRad, slantMm, halfAngleRad } = cone;
  const half = Math.sin(sectorRad / 2);
  return {
    halfAngleRad,
    slantMm,
    outerMm,
    innerMm,
    sectorRad,
    outerChordMm: 2 * outerMm * half,
    innerChordMm: 2 * innerMm * half,
  };
}

/**
 * How far both radii of the pattern move for each unit of plate thickness, from middle to inside or outside sizes with
 * the ends level: half the thickness square to the wall is t/2 ÷ cos α in the end plane, and that ÷ sin α on the pattern.
 *
 * @see derived here
 */
export const perThickness = (halfAngleRad: number): number => 1 / Math.sin(2 * halfAngleRad);

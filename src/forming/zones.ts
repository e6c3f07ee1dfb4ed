import { radians, TURN } from "../geometry/angle.ts";
import { SAME_ANGLE, SAME_RADIUS_REL } from "../geometry/tolerance.ts";
import type { CurvatureSample, FormingCase } from "./case.ts";
import { cutEvenly, type Stretch } from "./zoneCut.ts";

/** Where a zone begins on the plate: along both edges of its blank, from seam edge 1. [mm] */
interface ZoneMark {
  readonly piece: number;
  readonly largeMm: number;
  readonly smallMm: number;
}

/** A stretch of the skin that is rolled with one setting. Middle radii square to the element. */
export interface RollZone {
  /** Plan angles of its first and last element, counter-clockwise; the last may pass 360. */
  readonly fromDeg: number;
  readonly toDeg: number;
  readonly largeRadiusMm: number;
  readonly smallRadiusMm: number;
  readonly slantMm: number;
  /** Slackest over tightest radius within it, at the worse end. */
  readonly spread: number;
  /** Null for the first zone, which begins at seam edge 1, and where the blanks are not known. */
  readonly begins: ZoneMark | null;
}

const FULL_TURN_DEG = 360;

/** How long a zone is along one edge of the blank, by the length of that rim all round. [mm] */
export const alongZoneMm = ({ fromDeg, toDeg }: Pick<RollZone, "fromDeg" | "toDeg">, rimMm: number): number =>
  (rimMm * (toDeg - fromDeg)) / FULL_TURN_DEG;

/** Radii of one zone may differ by this factor: an eighth to either side of what it is set for. Derived here. [-] */
export const WITHIN_ZONE = 1.25;
/** More changes of radius and tilt than this in one turn are not worth setting up for. Derived here. [-] */
export const MOST_ZONES = 8;

/** Tightest and slackest radius at both ends of a stretch. [mm] */
interface Extremes {
  readonly large: readonly [number, number];
  readonly small: readonly [number, number];
}

const NONE: Extremes = { large: [Infinity, -Infinity], small: [Infinity, -Infinity] };

/** The extremes of a stretch and one more element. */
function extremes(sample: CurvatureSample, { large, small }: Extremes = NONE): Extremes {
  const wider = ([least, most]: readonly [number, number], one: number) =>
    [Math.min(least, one), Math.max(most, one)] as const;
  return { large: wider(large, sample.largeRadiusMm), small: wider(small, sample.smallRadiusMm) };
}

/** Slackest over tightest, at the end where it is worse. [-] */
const spreadWithin = ({ large, small }: Extremes): number =>
  Math.max(large[1] / large[0], small[1] / small[0]);

/** The radius of the mean curvature: what a roll set once bends the stretch to on the whole. */
function meanRadius(radii: readonly number[]): number {
  return radii.length / radii.reduce((sum, radius) => sum + 1 / radius, 0);
}

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

function zoneOf(
  samples: readonly CurvatureSample[],
  fromDeg: number,
  stepDeg: number,
): Omit<RollZone, "begins"> {
  return {
    fromDeg,
    toDeg: fromDeg + stepDeg * (samples.length - 1),
    largeRadiusMm: meanRadius(samples.map((one) => one.largeRadiusMm)),
    smallRadiusMm: meanRadius(samples.map((one) => one.smallRadiusMm)),
    slantMm: mean(samples.map((one) => one.slantMm)),
    spread: spreadWithin(samples.reduce((all, one) => extremes(one, all), NONE)),
  };
}

/** Is the skin the same on both sides of its seam, so that its zones should be as well? */
function isMirrored(samples: readonly CurvatureSample[]): boolean {
  const alike = (a: number, b: number) =>
    Math.abs(a - b) <= SAME_RADIUS_REL * Math.max(Math.abs(a), Math.abs(b));
  return samples.every((one, i) => {
    const other = samples[(samples.length - i) % samples.length] ?? one;
    return alike(one.largeRadiusMm, other.largeRadiusMm) && alike(one.smallRadiusMm, other.smallRadiusMm);
  });
}

/** Stretches of half a turn, carried on over the middle to the other half; the last one lies across the middle. */
function bothHalves(half: readonly Stretch[], count: number): Stretch[] {
  const [middle] = half.at(-1) ?? [0, 0];
  const before = half.slice(0, -1);
  const after = before.map(([from, to]): Stretch => [count - to, count - from]).toReversed();
  return [...before, [middle, count - middle], ...after];
}

/**
 * A skin that is curved unevenly, cut into zones from the seam round: as few as keep the radii of each within a factor of
 * 1.25, evenly shared out, and alike on both sides of the seam where the skin is. Neighbours share their border.
 *
 * @see derived here
 */
function unevenZones(item: FormingCase, samples: readonly CurvatureSample[]): RollZone[] {
  const [first] = samples;
  if (!first) return [];
  const count = samples.length;
  const closed = [...samples, first];
  const reach = closed.map((_, from) => {
    let all = NONE;
    return closed.slice(from).map((one) => spreadWithin((all = extremes(one, all))));
  });
  const costOf = (from: number, to: number) => reach[from]?.[to - from] ?? Infinity;
  const cut = (last: number) => cutEvenly({ last, limit: WITHIN_ZONE, costOf });
  const stretches = isMirrored(samples) && count % 2 === 0 ? bothHalves(cut(count / 2), count) : cut(count);
  const stepDeg = FULL_TURN_DEG / count;
  return stretches.map(([from, to], i) => {
    const fromDeg = first.planDeg + from * stepDeg;
    return {
      ...zoneOf(closed.slice(from, to + 1), fromDeg, stepDeg),
      begins: i === 0 ? null : markAt(item, fromDeg),
    };
  });
}

/** Where the element at a plan angle lies along the edges of its blank. */
function markAt({ bendZones = [] }: FormingCase, planDeg: number): ZoneMark | null {
  const angle = radians(planDeg);
  for (const zone of bendZones) {
    const { piece, fromRad, toRad } = zone;
    const at = angle + TURN * Math.ceil((fromRad - SAME_ANGLE - angle) / TURN);
    if (at > toRad + SAME_ANGLE) continue;
    const { a, b } = zone.place(Math.min(toRad, Math.max(fromRad, at))).alongMm;
    return { piece, largeMm: a, smallMm: b };
  }
  return null;
}

/** The zones of a round skin: one all round for right cones and pipes, and none where it is folded or runs to a point. */
export function zonesOf(item: FormingCase): readonly RollZone[] {
  const zones = known.get(item) ?? cutZones(item);
  known.set(item, zones);
  return zones;
}

/** Every roll, every template and the inspection ask for the zones of the same part. */
const known = new WeakMap<FormingCase, readonly RollZone[]>();

function cutZones(item: FormingCase): RollZone[] {
  const { cone, curvature, rimsMm } = item;
  if (cone) {
    const square = (level: number) => level / Math.cos(cone.halfAngleRad);
    return cone.smallRadiusMm > 0
      ? [
          {
            fromDeg: 0,
            toDeg: FULL_TURN_DEG,
            largeRadiusMm: square(cone.largeRadiusMm),
            smallRadiusMm: square(cone.smallRadiusMm),
            slantMm: cone.slantMm,
            spread: 1,
            begins: null,
          },
        ]
      : [];
  }
  return curvature && rimsMm.small > 0 ? unevenZones(item, curvature) : [];
}

import type { CurvatureSample, FormingCase } from "./case.ts";

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
}

/** Radii of one zone may differ by this factor: an eighth to either side of what it is set for. Derived here. [-] */
const WITHIN_ZONE = 1.25;
const FULL_TURN_DEG = 360;

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

function zoneOf(samples: readonly CurvatureSample[], fromDeg: number, stepDeg: number): RollZone {
  return {
    fromDeg,
    toDeg: fromDeg + stepDeg * (samples.length - 1),
    largeRadiusMm: meanRadius(samples.map((one) => one.largeRadiusMm)),
    smallRadiusMm: meanRadius(samples.map((one) => one.smallRadiusMm)),
    slantMm: mean(samples.map((one) => one.slantMm)),
    spread: spreadWithin(samples.reduce((all, one) => extremes(one, all), NONE)),
  };
}

/**
 * A skin that is curved unevenly, cut into zones from the seam round, each as long as its radii differ by no more than a
 * factor of 1.25; neighbours share their border.
 *
 * @see derived here
 */
function unevenZones(samples: readonly CurvatureSample[]): RollZone[] {
  const [first] = samples;
  if (!first) return [];
  const stepDeg = FULL_TURN_DEG / samples.length;
  const closed = [...samples, first];
  const zones: RollZone[] = [];
  let start = 0;
  let reach = extremes(first);
  closed.forEach((sample, i) => {
    const wider = extremes(sample, reach);
    if (i - start > 1 && spreadWithin(wider) > WITHIN_ZONE) {
      // The border belongs to both zones, so the one before ends with the sample before.
      zones.push(zoneOf(closed.slice(start, i), first.planDeg + start * stepDeg, stepDeg));
      start = i - 1;
      reach = extremes(sample, extremes(closed[start] ?? first));
    } else reach = wider;
  });
  zones.push(zoneOf(closed.slice(start), first.planDeg + start * stepDeg, stepDeg));
  return zones;
}

/** The zones of a round skin: one all round for right cones and pipes, and none where it is folded or runs to a point. */
export function zonesOf({ cone, curvature, rimsMm }: FormingCase): RollZone[] {
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
          },
        ]
      : [];
  }
  return curvature && rimsMm.small > 0 ? unevenZones(curvature) : [];
}

/** How figures of one of several zones begin: "plan 155° to 260°: "; nothing where one setting serves all round. */
export function zoneName({ fromDeg, toDeg }: Pick<RollZone, "fromDeg" | "toDeg">, zones: number): string {
  const deg = (angle: number) => `${Math.round(angle % FULL_TURN_DEG)}°`;
  return zones === 1 ? "" : `plan ${deg(fromDeg)} to ${deg(toDeg)}: `;
}

const NAMED = /^plan (\d+° to \d+°): (.+)$/;

/** A figure's zone and what it is without it; null where it is of no zone. */
export function zoneOfLabel(label: string): { readonly zone: string; readonly label: string } | null {
  const [, zone, own] = NAMED.exec(label) ?? [];
  return zone === undefined || own === undefined ? null : { zone, label: own };
}

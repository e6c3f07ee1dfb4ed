import { degrees, radians } from "../geometry/angle.ts";

/** The die and the plate that a hit's geometry is worked out by. [mm] */
export interface AirBendGeometry {
  /** Opening, between the places where the flat plate rests. */
  readonly dieMm: number;
  readonly thicknessMm: number;
  /** Inside radius that the bend takes by itself. */
  readonly insideRadiusMm: number;
  /** Radius of the die's shoulders; 0 for edges, and where nobody knows. */
  readonly shoulderMm?: number;
}

/** One hit, or a corner of several alike: ram depth below the place where the punch just touches the flat plate, and what came out. */
export interface BrakeTrial {
  readonly depthMm: number;
  /** What the plate turned by at one hit, released: 180° less the angle between its sides; 0 where it sprang back flat. [°] */
  readonly bendDeg: number;
}

/** A die bends no further in air than this share of where the plate would slip off its shoulders. Derived here. [-] */
const REACH = 0.9;
/** No V die bends much further than a square corner in air. [°] */
const MOST_DEG = 100;

/** Inside, wall and shoulder in one: the plate's underside lies on an arc about the punch and rolls off one about the shoulder. [mm] */
const radiiMm = ({ insideRadiusMm, thicknessMm, shoulderMm = 0 }: AirBendGeometry): number =>
  insideRadiusMm + thicknessMm + shoulderMm;

/** Most that the plate turns by under load over this die. [°] */
export function mostLoadedDeg(geometry: AirBendGeometry): number {
  const sin = (REACH * geometry.dieMm) / (2 * radiiMm(geometry));
  return Math.min(MOST_DEG, 2 * degrees(Math.asin(Math.min(1, sin))));
}

/**
 * Ram depth below touching at which the plate, under load, turns by an angle over a V die: its sides lie on the shoulders
 * and on the arc that it is bent to about the punch, tangent to all three. With α half the angle,
 *
 *   d = (V/2) tan α − (r + t + s)(1/cos α − 1)
 *
 * @param geometry opening V, inside radius r, thickness t, shoulder radius s; with s = 0 the plate lies on edges
 * @returns [mm]
 * @see derived here: tangents to three arcs
 * @example depthOfAngle({ dieMm: 100, thicknessMm: 8, insideRadiusMm: 16 }, 90) // → 40.058875
 */
export function depthOfAngle(geometry: AirBendGeometry, loadedDeg: number): number {
  const half = radians(loadedDeg) / 2;
  return (geometry.dieMm / 2) * Math.tan(half) - radiiMm(geometry) * (1 / Math.cos(half) - 1);
}

/**
 * The way back, in closed form: with c = r + t + s and D = c − d, (V/2) sin α + D cos α = c.
 *
 * @returns angle under load [°]
 * @throws RangeError for a depth beyond what the die bends in air
 * @see derived here
 */
export function angleOfDepth(geometry: AirBendGeometry, depthMm: number): number {
  const most = depthOfAngle(geometry, mostLoadedDeg(geometry));
  if (!(depthMm >= 0 && depthMm <= most)) throw new RangeError(`ram depth ${depthMm} of 0 to ${most} mm`);
  const [half, radii] = [geometry.dieMm / 2, radiiMm(geometry)];
  const up = radii - depthMm;
  return 2 * degrees(Math.atan2(half, up) - Math.acos(Math.min(1, radii / Math.hypot(half, up))));
}

/** How trials are gone on from. */
export type BrakeNext =
  /** Ram depths below touching, for every angle that was asked for, in their order; null where the die does not bend so far. [mm] */
  | {
      readonly kind: "depths";
      readonly depthsMm: readonly (number | null)[];
      /** What the last trial sprang back by, the give of the frame and all else in it. [°] */
      readonly sprangDeg: number;
      /** Angle that comes out for each degree under load. [-] */
      readonly slope: number;
      readonly by: "one trial" | "two trials";
    }
  | { readonly kind: "none"; readonly why: string };

/** From two trials nearer than this under load no slope can be told: a template shows half a degree. Derived here. [°] */
const APART_DEG = 2;
/** A degree more under load brings no less and no more than this. Derived here, by simulated brakes. [-] */
const LEAST_SLOPE = 0.7;
const MOST_SLOPE = 1.2;
/**
 * Shoulders and inside radius that nobody knows bend it sharper than was reckoned by this share at the most, and a touch
 * read wrong by these degrees; what came out sharper yet was read wrong, or the depth was. Derived here, by simulated brakes.
 */
const SHARPER = { share: 0.2, deg: 3 };

const none = (why: string): BrakeNext => ({ kind: "none", why });

/**
 * Next ram depths after trials over one die. Springback is an angle that the bend loses, about the same for bends of one plate:
 *
 *   loaded = loaded₁ + (wanted − came out₁)/m,   m = Δ came out/Δ loaded of two trials, else 1, held within 0.7 … 1.2
 *
 * What is not known of shoulders, frame and touching goes into the same offset. A plate that sprang back flat says "more
 * than this": that offset is the least there is, so that the next hit comes from below.
 *
 * @param trials in order, at least one; the last counts, and the one before it that was hit elsewhere
 * @param wantedDeg what the plate is to turn by at one hit, released [°]
 * @throws RangeError without a trial
 * @see derived here
 */
export function nextDepths(
  geometry: AirBendGeometry,
  trials: readonly BrakeTrial[],
  wantedDeg: readonly number[],
): BrakeNext {
  const last = trials.at(-1);
  if (!last) throw new RangeError(`trials: ${trials.length}`);
  const mostDeg = mostLoadedDeg(geometry);
  const mostMm = depthOfAngle(geometry, mostDeg);
  if (trials.some(({ depthMm }) => !(depthMm > 0 && depthMm <= mostMm)))
    return none("a ram depth lies above touching, or deeper than this die bends in air");
  const loaded = trials.map(({ depthMm }) => angleOfDepth(geometry, depthMm));
  const lastDeg = loaded.at(-1) ?? 0;
  if (trials.some(({ bendDeg }, i) => bendDeg > (1 + SHARPER.share) * (loaded[i] ?? 0) + SHARPER.deg))
    return none(
      "a trial came out sharper than the die bends at that depth: look at the opening, at where the punch touches the flat plate, and at what was measured",
    );
  const before = trials.findLastIndex(
    ({ bendDeg }, i) => bendDeg > 0 && Math.abs((loaded[i] ?? 0) - lastDeg) >= APART_DEG,
  );
  const other = trials[before];
  const own =
    other && last.bendDeg > 0 ? (last.bendDeg - other.bendDeg) / (lastDeg - (loaded[before] ?? 0)) : null;
  const slope = own === null ? 1 : Math.min(MOST_SLOPE, Math.max(LEAST_SLOPE, own));
  return {
    kind: "depths",
    depthsMm: wantedDeg.map((deg) => {
      const at = lastDeg + (deg - last.bendDeg) / slope;
      return at > 0 && at <= mostDeg ? depthOfAngle(geometry, at) : null;
    }),
    sprangDeg: lastDeg - last.bendDeg,
    slope,
    by: own === null ? "one trial" : "two trials",
  };
}

import type { Hit } from "./brakeLines.ts";
import { type AirBendGeometry, depthOfAngle } from "./brakeTrial.ts";

/** Lines of nearly the same angle, which are bent by the same ram depth. */
export interface BrakeDepth {
  /** "A" for the smallest angle, and so on. */
  readonly letter: string;
  /** Least and greatest angle among its lines. [°] */
  readonly fromDeg: number;
  readonly toDeg: number;
  /** Only borders beside a flat, only lines within, or both. */
  readonly kind: "border" | "inner" | "both";
  readonly lines: number;
  /** How much deeper a degree more is. [mm] */
  readonly perDegreeMm: number;
  /** Depth from touching at which plate that springs back by nothing has the least of these angles: a strip begins no deeper. [mm] */
  readonly beginMm: number;
}

/** Angles this near to each other are bent by one depth: less than a template on plate shows. Derived here. [°] */
const ONE_DEPTH_DEG = 0.5;
/** Nobody tries more strips than these: where angles are many they are taken in wider groups. Derived here. */
const MOST_DEPTHS = 6;
/** Angles that differ by rounding alone are one. [°] */
const SAME_DEG = 0.001;
const LETTER_A = 65;

/** Groups of rising angles, each no wider than this. */
function grouped(rising: readonly number[], widthDeg: number): number[][] {
  const groups: number[][] = [];
  for (const deg of rising) {
    const last = groups.at(-1);
    if (last && deg - (last[0] ?? deg) <= widthDeg + SAME_DEG) last.push(deg);
    else groups.push([deg]);
  }
  return groups;
}

/**
 * The different angles of a plan's lines, rising, each to be tried on a strip: within half a degree, or within as much as
 * leaves six of them.
 *
 * @see derived here
 */
export function depthsOf(
  hits: readonly Pick<Hit, "bendDeg" | "kind">[],
): Omit<BrakeDepth, "perDegreeMm" | "beginMm">[] {
  const rising = hits.map(({ bendDeg }) => bendDeg).toSorted((a, b) => a - b);
  let width = ONE_DEPTH_DEG;
  while (grouped(rising, width).length > MOST_DEPTHS) width += ONE_DEPTH_DEG;
  return grouped(rising, width).map((group, i) => {
    const [fromDeg, toDeg] = [group[0] as number, group.at(-1) as number];
    const own = hits.filter(({ bendDeg }) => bendDeg >= fromDeg && bendDeg <= toDeg);
    const kinds = new Set(own.map(({ kind }) => kind));
    return {
      letter: String.fromCharCode(LETTER_A + i),
      fromDeg,
      toDeg,
      kind: kinds.size > 1 ? "both" : (own[0]?.kind ?? "inner"),
      lines: own.length,
    };
  });
}

/**
 * How much deeper the ram goes for a degree more, about the middle of a depth's angles: what springs back is the same for
 * both, and falls out. The shoulders of the die are taken as edges. [mm]
 *
 * @see derived here
 */
export function perDegreeMm(
  geometry: AirBendGeometry,
  { fromDeg, toDeg }: Pick<BrakeDepth, "fromDeg" | "toDeg">,
): number {
  const middle = (fromDeg + toDeg) / 2;
  return depthOfAngle(geometry, middle + 0.5) - depthOfAngle(geometry, middle - 0.5);
}

/**
 * How deep a strip is bent at first: plate that springs back by nothing turns by the least of a depth's angles there, and
 * plate that does by less. The shoulders of the die are taken as edges. [mm]
 *
 * @see derived here
 */
export const beginMm = (geometry: AirBendGeometry, { fromDeg }: Pick<BrakeDepth, "fromDeg">): number =>
  depthOfAngle(geometry, fromDeg);

/** Are lines of one depth so unlike that a template on plate shows it? */
export const isUnlike = ({ fromDeg, toDeg }: Pick<BrakeDepth, "fromDeg" | "toDeg">): boolean =>
  toDeg - fromDeg > ONE_DEPTH_DEG;

/**
 * How much deeper than its letter says a line is bent, less deep where negative; nought where all of that letter are alike. [mm]
 *
 * @see derived here
 */
export function besideLetterMm(
  depths: readonly BrakeDepth[],
  { bendDeg, depth }: Pick<Hit, "bendDeg"> & { readonly depth: string },
): number {
  const own = depths.find(({ letter }) => letter === depth);
  return own && isUnlike(own) ? (bendDeg - (own.fromDeg + own.toDeg) / 2) * own.perDegreeMm : 0;
}

/** The depth that a line is bent by. */
export function depthOf(
  depths: readonly Pick<BrakeDepth, "toDeg" | "letter">[],
  { bendDeg }: Pick<Hit, "bendDeg">,
): string {
  const own = depths.find(({ toDeg }) => bendDeg <= toDeg);
  if (!own) throw new RangeError(`no depth for ${bendDeg}°`);
  return own.letter;
}

import { degrees } from "../geometry/angle.ts";
import type { BendZone } from "./bendZone.ts";
import { spacesFor } from "./brakeSpaces.ts";

/** One hit of the brake. */
export interface BrakeLine {
  readonly piece: number;
  /** From seam 1, from 1, on each piece. */
  readonly number: number;
  /** Which curved stretch of the piece it belongs to, from 1. */
  readonly zone: number;
  /** "border": beside a flat; it takes about half of what a line within takes. */
  readonly kind: "border" | "inner";
  readonly bendDeg: number;
  readonly planDeg: number;
  readonly lengthMm: number;
  /** How far short of the narrow end it stops, where lines run nearer than half the die opening. */
  readonly stopsShortMm: number;
  readonly alongMm: { readonly a: number; readonly b: number };
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  /** In which place it is hit, from 1, on each piece. */
  readonly order: number;
  /** Letter of the ram depth that it is bent by: that of the trial strip of its angle. */
  readonly depth: string;
  /** Force of its hit over its bent length. [kN] */
  readonly forceKN: number;
}

/** How one curved stretch is shared out. */
export interface BrakeZone {
  readonly piece: number;
  readonly zone: number;
  readonly spaces: number;
  readonly hits: number;
  readonly turnDeg: number;
  /** Angle between the two flats beside it, measured inside and square to the corner; null where a seam edge adjoins. [°] */
  readonly flatsDeg: number | null;
  /** Left to the seam edges, which no punch bends: half a space at each. [°] */
  readonly seamDeg: number;
  readonly spacingMm: { readonly wide: number; readonly narrow: number };
  /** Height of a facet's middle under the true curve, at the wide end. [mm] */
  readonly facetMm: number;
  /** Does the die leave room for as many hits as the facet error asks? */
  readonly roomForAll: boolean;
}

export type Hit = Omit<BrakeLine, "number" | "order" | "depth" | "forceKN">;

/**
 * Hits of one curved stretch. n equal spaces of the normal angle (equal steps along a round end) have n + 1 lines where
 * flats adjoin on both sides; each bends by the turning between the middles of the spaces beside it, a border by half a
 * space, so that they sum to the zone's turning. At a seam edge nothing is bent and half a space is left to the seam.
 *
 *   facet error  e = R (1 − cos ψ/2),  R square to the element at the wide end, ψ the turning of one space
 *   stops short  where the spacing, in a straight line from narrow to wide end, falls below half the die opening
 *
 * @see derived here; metalforming-step-bending for half the die opening as the least spacing
 */
export function hitsOf(
  zone: BendZone,
  { index, permittedMm, dieMm }: { index: number; permittedMm: number; dieMm: number },
): { readonly hits: Hit[]; readonly zone: BrakeZone } {
  const wideMm = Math.max(zone.edgeMm.a, zone.edgeMm.b);
  const narrowMm = Math.min(zone.edgeMm.a, zone.edgeMm.b);
  const room = Math.max(1, Math.floor(wideMm / (dieMm / 2)));
  const { halves, facet, places } = spacesFor(zone, permittedMm, room);
  const spaces = halves.length / 2;
  const [wide, narrow] = [wideMm / spaces, narrowMm / spaces];
  const short =
    narrow >= dieMm / 2 ? 0 : Math.min(1, (dieMm / 2 - narrow) / Math.max(wide - narrow, dieMm / 2 - narrow));

  const hits = places.flatMap((place, i): Hit[] => {
    const [first, last] = [i === 0, i === spaces];
    if ((first && !zone.afterFlat) || (last && !zone.beforeFlat)) return [];
    // Where it runs along a seam the gap has taken it off.
    if (place.lengthMm === 0) return [];
    const turn = (halves[2 * i - 1] ?? 0) + (halves[2 * i] ?? 0);
    return [
      {
        piece: zone.piece,
        zone: index,
        kind: first || last ? "border" : "inner",
        bendDeg: degrees(turn),
        stopsShortMm: short * place.lengthMm,
        ...place,
      },
    ];
  });
  const turnDeg = degrees(halves.reduce((sum, half) => sum + half, 0));
  return {
    hits,
    zone: {
      piece: zone.piece,
      zone: index,
      spaces,
      hits: hits.length,
      turnDeg,
      flatsDeg: zone.afterFlat && zone.beforeFlat ? 180 - degrees(zone.acrossRad) : null,
      seamDeg: turnDeg - hits.reduce((sum, { bendDeg }) => sum + bendDeg, 0),
      spacingMm: { wide, narrow },
      facetMm: facet,
      roomForAll: facet <= permittedMm,
    },
  };
}

/** The middle line of a corner of one piece, along which its tip is folded: one, or the two on both sides of its middle. */
export function middleLinesOf<L extends Pick<BrakeLine, "piece" | "zone">>(
  lines: readonly L[],
  corner: Pick<BrakeZone, "piece" | "zone">,
): readonly L[] {
  const own = lines.filter(({ piece, zone }) => piece === corner.piece && zone === corner.zone);
  return own.slice(Math.floor((own.length - 1) / 2), Math.floor(own.length / 2) + 1);
}

/** How many of a piece's lines are hit from seam 1. */
export const fromSeam1 = (count: number): number => Math.ceil(count / 2);

/** Places of hits in their order: from seam 1 to the middle, then from seam 2 to the middle. */
export function orderOfHits(count: number): number[] {
  const half = fromSeam1(count);
  return Array.from({ length: count }, (_, i) => (i < half ? i + 1 : half + count - i));
}

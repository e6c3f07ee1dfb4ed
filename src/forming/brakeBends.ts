import type { BendZone } from "./bendZone.ts";
import { type BrakeZone, type Hit, hitsOf } from "./brakeLines.ts";
import type { FormingCase } from "./case.ts";

/** Where a part is bent over one die: what every check of the brake looks at before a whole plan is made. */
export interface BrakeBends {
  /** Facet error the hits are chosen for. [mm] */
  readonly permittedFacetMm: number;
  readonly zones: readonly BrakeZone[];
  /** Hits of every piece, each piece from seam 1. */
  readonly hits: readonly Hit[];
}

/** A facet may stand off the true curve by half the thickness, at least by this. Derived here. [mm] */
export const LEAST_FACET_MM = 0.5;

/** The checks ask for the same die as the plan: by the stretches of a part, then by die opening. */
const known = new WeakMap<readonly BendZone[], Map<number, BrakeBends>>();

/** Hits of all curved stretches of a part over a die; null where its blanks are not known. */
export function brakeBends(item: FormingCase, dieMm: number): BrakeBends | null {
  const { bendZones } = item;
  if (!bendZones || bendZones.length === 0) return null;
  const permittedFacetMm = item.permittedFacetMm ?? Math.max(LEAST_FACET_MM, item.thicknessMm / 2);
  const byDie = known.get(bendZones) ?? new Map<number, BrakeBends>();
  known.set(bendZones, byDie);
  const made = byDie.get(dieMm);
  if (made?.permittedFacetMm === permittedFacetMm) return made;
  const places = new Map<number, number>();
  const zones = bendZones.map((zone) => {
    const index = (places.get(zone.piece) ?? 0) + 1;
    places.set(zone.piece, index);
    return hitsOf(zone, { index, permittedMm: permittedFacetMm, dieMm });
  });
  const bends = {
    permittedFacetMm,
    zones: zones.map(({ zone }) => zone),
    hits: zones.flatMap(({ hits }) => hits),
  };
  byDie.set(dieMm, bends);
  return bends;
}

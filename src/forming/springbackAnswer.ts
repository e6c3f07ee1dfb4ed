import { SAME_POINT_MM } from "../geometry/tolerance.ts";
import type { FormingCase } from "./case.ts";
import { tightestAndSlackest } from "./curvature.ts";
import { type Elastic, freeRadiusMm, loadedRadiusMm, plateOf, yieldBand } from "./springback.ts";

/** One place of the part: the radius it is to have, and what it has to be bent to. Middle radii square to the element. [mm] */
interface SpringbackPlace {
  readonly place: string;
  readonly freeMm: number;
  readonly loadedMm: number;
  /** Loaded over free radius: how much of the radius is held under load. [-] */
  readonly ratio: number;
  /** What plate at the upper end of the band has to be bent to; null where a certificate gives the yield. */
  readonly strongLoadedMm: number | null;
  /** What such plate springs back to when bent to `loadedMm`; null where it springs back flat, or a certificate gives the yield. */
  readonly strongFreeMm: number | null;
}

/** One sample of the curve; a free radius is null where the plate springs back flat. */
interface SpringbackSample {
  readonly loadedMm: number;
  readonly freeMm: number | null;
  readonly strongFreeMm: number | null;
}

export interface SpringbackAnswer {
  /** Yield strength reckoned with, and the top of the band. */
  readonly yieldMPa: number;
  readonly yieldFrom: "certificate" | "grade";
  readonly strongYieldMPa: number | null;
  /** Bent no tighter than this under load, the plate springs back flat: x = ½. Middle radius. [mm] */
  readonly flatFromMm: number;
  readonly strongFlatFromMm: number | null;
  readonly places: readonly SpringbackPlace[];
  /** Free against loaded radius round about the part's own, evenly in the loaded radius, for plotting. */
  readonly curve: readonly SpringbackSample[];
  readonly basis: string;
  readonly rule: string;
}

const SAMPLES = 48;
/** The curve is shown from half the tightest loaded radius to half as much again as the slackest. [-] */
const [SHOWN_FROM, SHOWN_TO] = [0.5, 1.5];

/** Loaded radius from which on the plate springs back flat: R = E·t/(2Y). [mm] */
function flatFrom(plate: Elastic): number {
  return loadedRadiusMm(Infinity, plate);
}

const finite = (value: number): number | null => (Number.isFinite(value) ? value : null);

/**
 * What springback asks of this part: the radius to bend to at each end of a right cone or pipe, and at the tightest and
 * slackest element of any other round skin; how far plate stronger than its grade departs from it; and the curve.
 *
 * Where no certificate gives the yield, the band runs to 1.4 times the nominal. The cubic knows no hardening: plate that
 * hardens as it bends (stainless above all) springs back more. Null where the skin is folded, not bent round.
 *
 * @see gardiner-1957-memory for the cubic, wagoner-2006 for wide plate; the band is common practice, no source
 */
export function springbackOf(item: FormingCase): SpringbackAnswer | null {
  const wanted = tightestAndSlackest(item).filter(({ radiusMm }) => radiusMm > SAME_POINT_MM);
  if (wanted.length === 0) return null;
  const certified = item.certificateYieldMPa !== undefined;
  const plate = plateOf(item);
  const strong = certified ? null : yieldBand(plate)[1];
  const strongFree = (loadedMm: number) => (strong ? finite(freeRadiusMm(loadedMm, strong)) : null);

  const places = wanted.map(({ place, radiusMm }) => {
    const loadedMm = loadedRadiusMm(radiusMm, plate);
    return {
      place,
      freeMm: radiusMm,
      loadedMm,
      ratio: loadedMm / radiusMm,
      strongLoadedMm: strong ? loadedRadiusMm(radiusMm, strong) : null,
      strongFreeMm: strongFree(loadedMm),
    };
  });
  const loaded = places.map(({ loadedMm }) => loadedMm);
  const [from, to] = [SHOWN_FROM * Math.min(...loaded), SHOWN_TO * Math.max(...loaded)];
  const curve = Array.from({ length: SAMPLES + 1 }, (_, i) => {
    const loadedMm = from + ((to - from) * i) / SAMPLES;
    return { loadedMm, freeMm: finite(freeRadiusMm(loadedMm, plate)), strongFreeMm: strongFree(loadedMm) };
  });
  const yieldMPa = item.certificateYieldMPa ?? item.material.yieldMPa;
  return {
    yieldMPa,
    yieldFrom: certified ? "certificate" : "grade",
    strongYieldMPa: strong ? (yieldMPa * strong.yieldMPa) / plate.yieldMPa : null,
    flatFromMm: flatFrom(plate),
    strongFlatFromMm: strong ? flatFrom(strong) : null,
    places,
    curve,
    basis: "gardiner-1957-memory",
    rule: "loaded / free radius = 4x³ − 3x + 1, x = loaded radius × yield / (E × thickness) below ½; wide plate: yield × 2/√3, E / (1 − ν²)",
  };
}

import { MM_PER_INCH, type Units } from "../geometry/units.ts";
import type { PassSettings } from "./passSettings.ts";
import { number, type Say } from "./say.ts";

type Start = NonNullable<PassSettings["start"]>;

/** Where the straight roll stands: raises from the flat plate at both edges and at the bearings. [mm] */
export interface RollPlaces {
  readonly largeMm: number;
  readonly smallMm: number;
  /** Null where the shop gives no bearings. */
  readonly smallBearingMm: number | null;
  readonly largeBearingMm: number | null;
}

/** The same tilt, the whole roll moved along its slide: every place by as much. */
export function movedBy(start: Start, moveMm: number): RollPlaces {
  const moved = (mm: number | null) => (mm === null ? null : mm + moveMm);
  return {
    largeMm: start.largeMm + moveMm,
    smallMm: start.smallMm + moveMm,
    smallBearingMm: moved(start.smallBearingMm),
    largeBearingMm: moved(start.largeBearingMm),
  };
}

/** The places without the bearings, for words that tell of these by themselves. */
export const edgesOnly = (places: RollPlaces | null): RollPlaces | null =>
  places && { ...places, smallBearingMm: null, largeBearingMm: null };

/**
 * The roll turned about half the slant, so that the drop end comes to stand so much higher above the fixed end: first pass.
 * All as it is where the shop gives no bearings, and where the roll stands square.
 *
 * @see derived here: the roll is straight
 */
export function tiltedBy(places: RollPlaces, tiltMm: number): RollPlaces {
  const { largeMm, smallMm, smallBearingMm: drop, largeBearingMm: fixed } = places;
  if (drop === null || fixed === null || drop === fixed) return places;
  const at = (mm: number) => mm + (tiltMm * (mm - (largeMm + smallMm) / 2)) / (drop - fixed);
  return {
    largeMm: at(largeMm),
    smallMm: at(smallMm),
    smallBearingMm: at(drop),
    largeBearingMm: at(fixed),
  };
}

/** Raises at both bearings that are nearer than this tell no shares. [mm] */
const SQUARE_MM = 0.5;

/**
 * In words for the first pass, the raise at the large edge from those at the two bearings, where the scales stand: the roll
 * is straight. Empty where the shop gives no bearings, and where the roll stands all but square.
 *
 * @see derived here
 */
export function edgeOfBearings(places: RollPlaces | null | undefined): string {
  if (places?.smallBearingMm == null || places.largeBearingMm === null) return "";
  const span = places.smallBearingMm - places.largeBearingMm;
  if (Math.abs(span) < SQUARE_MM) return "";
  const share = (places.largeMm - places.largeBearingMm) / span;
  return `In this pass the raise at the large edge is ${number(share, 3)} × that at the drop end + ${number(1 - share, 3)} × that at the fixed end; a correction moves both bearings by as much.`;
}

/** A roll is set to a tenth of a millimetre at the best, and reads as in the table of settings: inches to a thousandth. [mm] */
export const settable = (mm: number, units: Units): number =>
  units === "mm"
    ? Math.round(mm * 10) / 10 + 0
    : (Math.round((1000 * mm) / MM_PER_INCH) * MM_PER_INCH) / 1000 + 0;
export const setting = (mm: number, say: Say): string => say.length(settable(mm, say.units));

/** "21.5 mm at the large edge and 34.4 mm at the small edge (bearings: 40 mm small side, 18 mm large side)"; one number for a pipe. */
export function placesSaid({ pipe, say }: { pipe: boolean; say: Say }, places: RollPlaces): string {
  const { largeMm, smallMm, smallBearingMm, largeBearingMm } = places;
  if (pipe) return setting(largeMm, say);
  const bearings =
    smallBearingMm === null || largeBearingMm === null
      ? ""
      : ` (at the bearings ${setting(smallBearingMm, say)} beyond the small edge and ${setting(largeBearingMm, say)} beyond the large edge)`;
  return `${setting(largeMm, say)} at the large edge and ${setting(smallMm, say)} at the small edge${bearings}`;
}

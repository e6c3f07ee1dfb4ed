import { degrees, radians } from "../geometry/angle.ts";
import type { PassAsked, RollStart } from "./passSettings.ts";
import { problemsOf } from "./startProblems.ts";

/** A straight roll with the raise at the large edge kept, and less tilt than both ends ask for. */
export type LessTilt = Pick<
  RollStart,
  "largeMm" | "smallMm" | "tiltDeg" | "smallBearingMm" | "largeBearingMm"
>;

/** Halvings of the slope from square to what is asked: to a millionth of it. */
const HALVINGS = 20;

/** The roll turned about where it bears on the large edge, to so much of its slope. */
function turned(start: RollStart, share: number): RollStart {
  const { largeMm, tiltDeg } = start;
  const at = (mm: number) => largeMm + share * (mm - largeMm);
  const bearing = (mm: number | null) => (mm === null ? null : at(mm));
  return {
    ...start,
    smallMm: at(start.smallMm),
    middleMm: at(start.middleMm),
    tiltDeg: degrees(Math.atan(share * Math.tan(radians(tiltDeg)))),
    smallBearingMm: bearing(start.smallBearingMm),
    largeBearingMm: bearing(start.largeBearingMm),
  };
}

/**
 * The greatest tilt that goes on this machine where the one that both ends ask for does not: the raise at the large edge,
 * which decides the pass, is kept, and the small end stays open by what is missing. Less of the slope is less of every
 * trouble that a tilt makes, so halving finds it.
 *
 * @returns null where the start goes as it is, and where not even a roll set square does
 * @see derived here
 */
export function lessTilt(asked: PassAsked, start: RollStart): LessTilt | null {
  const goes = (share: number) =>
    problemsOf(asked, [], turned(start, share)).every(({ stops }) => stops === "nothing known");
  if (goes(1) || !goes(0)) return null;
  let [most, beyond] = [0, 1];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (most + beyond) / 2;
    if (goes(middle)) most = middle;
    else beyond = middle;
  }
  const { largeMm, smallMm, tiltDeg, smallBearingMm, largeBearingMm } = turned(start, most);
  return { largeMm, smallMm, tiltDeg, smallBearingMm, largeBearingMm };
}

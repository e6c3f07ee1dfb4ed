import { radians } from "../geometry/angle.ts";
import type { PlateRoll } from "./machine.ts";
import { type Elastic, loadedRadiusMm } from "./springback.ts";

/** An initial-pinch roll seen along its rolls, the top roll's centre at the origin, x towards the bending side, y up. */
export interface RollSection {
  readonly topRadiusMm: number;
  readonly bendingRadiusMm: number;
  /** A place of the bending roll's centre on its slide. */
  readonly originMm: readonly [number, number];
  /** The slide rises by this angle above level, towards the top roll. */
  readonly angleRad: number;
  /** How far the centre moves up the slide from `originMm`. */
  readonly travelMm: number;
  /** How far it goes down from there, where anybody has said. */
  readonly belowMm?: number;
}

/** The section of a roll that gives its slide; null where it does not (or not the diameter of its bending roll), where it is level, or where it is another arrangement. */
export function sectionOf({ arrangement, rolls, slide }: PlateRoll): RollSection | null {
  const bendingDiameter = rolls.bendingDiameter;
  if (arrangement !== "initial-pinch" || !slide || slide.angle <= 0 || bendingDiameter === undefined)
    return null;
  return {
    topRadiusMm: rolls.topDiameter / 2,
    bendingRadiusMm: bendingDiameter / 2,
    originMm: slide.origin,
    angleRad: radians(slide.angle),
    travelMm: slide.travel,
    ...(slide.below !== undefined && { belowMm: slide.below }),
  };
}

/** Where the bending roll touches a flat plate's underside: how far across from the pinch, and how far up the slide. [mm] */
export function flatContact(section: RollSection, thicknessMm: number): { acrossMm: number; upMm: number } {
  const { topRadiusMm, bendingRadiusMm, originMm, angleRad } = section;
  const upMm = (-(topRadiusMm + thicknessMm + bendingRadiusMm) - originMm[1]) / Math.sin(angleRad);
  return { acrossMm: originMm[0] - upMm * Math.cos(angleRad), upMm };
}

/** The lower end of the slide, from where the roll touches the flat plate: 0 or less; its origin where nobody says that it goes lower. [mm] */
export const lowerEndMm = (section: RollSection, thicknessMm: number): number =>
  -(flatContact(section, thicknessMm).upMm + (section.belowMm ?? 0));

/** A bend on the rolls: from its centre to the bending roll's centre, and what of that and of the way across lies along the slide. [mm] */
export function bendOnRolls(
  section: RollSection,
  { insideRadiusMm, thicknessMm }: { insideRadiusMm: number; thicknessMm: number },
): { centreMm: number; alongMm: number } {
  const { acrossMm } = flatContact(section, thicknessMm);
  const centreMm = insideRadiusMm + thicknessMm + section.bendingRadiusMm;
  return {
    centreMm,
    alongMm: acrossMm * Math.cos(section.angleRad) + centreMm * Math.sin(section.angleRad),
  };
}

/**
 * Raise of the bending roll from the flat plate at which it touches the outside of a plate bent to inside radius R.
 * The plate lies on the top roll at the pinch line, its centre of curvature on the line of the two roll centres, so the
 * bending roll's centre is M = R + t + b from it. On a slide at angle θ, across by x at the flat plate:
 *
 *   s² − 2 s (x cos θ + M sin θ) + x² = 0,   s = x²/(B + √(B² − x²)),   B = x cos θ + M sin θ,
 *
 * the first root from the flat plate, written so that it keeps its digits for gentle bends.
 *
 * @param bend inside radius [mm], Infinity for flat; plate thickness [mm]
 * @returns s [mm], 0 at the flat plate; null where the slide does not reach such a bend
 * @see derived here; for an upright slide it is the geometry of pyramid rolls, M − √(M² − x²)
 */
export function raiseMm(
  section: RollSection,
  bend: { insideRadiusMm: number; thicknessMm: number },
): number | null {
  const { acrossMm } = flatContact(section, bend.thicknessMm);
  const { alongMm: b } = bendOnRolls(section, bend);
  if (acrossMm <= 0 || b < acrossMm) return null;
  return acrossMm ** 2 / (b + Math.sqrt((b - acrossMm) * (b + acrossMm)));
}

/** The way back: inside radius that this raise bends to; Infinity at the flat plate. [mm] */
export function insideRadiusAtMm(
  section: RollSection,
  { raiseMm: s, thicknessMm }: { raiseMm: number; thicknessMm: number },
): number {
  const { acrossMm } = flatContact(section, thicknessMm);
  if (s === 0) return Infinity;
  const b = (s * s + acrossMm ** 2) / (2 * s);
  const m = (b - acrossMm * Math.cos(section.angleRad)) / Math.sin(section.angleRad);
  return m - thicknessMm - section.bendingRadiusMm;
}

export type RollSetting =
  | {
      readonly kind: "setting";
      /** As if the plate had its free curvature all the way to the bending roll. [mm] */
      readonly lowMm: number;
      /** As if it had its loaded curvature all the way. [mm] */
      readonly highMm: number;
      /** Where to start. [mm] */
      readonly bestMm: number;
    }
  | { readonly kind: "refused"; readonly why: Refused };

/** Why there is no setting: the last where the start is within reach and the high setting is not. */
export type Refused =
  "tighter than the top roll" | "out of reach of the slide" | "hardly within reach of the slide";

/** In steady rolling the plate past the pinch unloads on its way to the bending roll: the start lies this far from low to high. [-] */
const BETWEEN = 2 / 3;

/**
 * Where to set the bending roll so that the plate comes out with this middle radius: low = s(R_free), high = s(R_loaded),
 * best = low + ⅔ (high − low). None is a bound on a real machine: the pinch gives, the frame yields and the small end is
 * not gripped, all of which ask for more raise. It is a start for a trial, and the machine's manual comes first.
 *
 * @param freeMm middle radius square to the element wanted when free [mm]; Infinity for flat
 * @see derived here
 */
export function rollSetting(section: RollSection, plate: Elastic, freeMm: number): RollSetting {
  const { thicknessMm } = plate;
  const inside = (middleMm: number) => middleMm - thicknessMm / 2;
  const loaded = inside(loadedRadiusMm(freeMm, plate));
  if (loaded < section.topRadiusMm) return { kind: "refused", why: "tighter than the top roll" };
  const lowMm = raiseMm(section, { insideRadiusMm: inside(freeMm), thicknessMm });
  const highMm = raiseMm(section, { insideRadiusMm: loaded, thicknessMm });
  const room = section.travelMm - flatContact(section, thicknessMm).upMm;
  if (lowMm === null || lowMm > room) return { kind: "refused", why: "out of reach of the slide" };
  if (highMm === null) return { kind: "refused", why: "hardly within reach of the slide" };
  const bestMm = lowMm + BETWEEN * (highMm - lowMm);
  if (bestMm > room) return { kind: "refused", why: "out of reach of the slide" };
  if (highMm > room) return { kind: "refused", why: "hardly within reach of the slide" };
  return { kind: "setting", lowMm, highMm, bestMm };
}

import type { FormingCase } from "./case.ts";
import { endRolled } from "./closure.ts";
import { firstPass } from "./firstPass.ts";

/** A tape tells two gaps apart from here on. Derived here. [mm] */
export const TOLD_APART_MM = 2;

/**
 * Does the gap of a right cone grow narrower over the window of the first pass, by as much as a tape tells? Of a flat
 * cone's piece it hardly does, or grows wider: then only templates show how far it has come.
 *
 * @param leadMm what the first pass leaves straight at one seam edge
 * @see derived here
 */
export function isGapTold(item: FormingCase, leadMm: number): boolean {
  const { cone } = item;
  if (!cone) return false;
  const { from, to, cap } = firstPass(cone.halfAngleRad);
  const gap = (closed: number) =>
    endRolled(item, cone, { radiusMm: cone.largeRadiusMm, closed, leadMm }).insideGapMm;
  return gap(from) - gap(to) >= TOLD_APART_MM && gap(cap) <= gap(to);
}

import { type RollSection, type RollSetting, rollSetting } from "./rollSetting.ts";
import type { Elastic } from "./springback.ts";

export interface ClosureAsked {
  /** Level middle radius of the end when closed. [mm] */
  readonly radiusMm: number;
  readonly halfAngleRad: number;
  /** Share of the turn that the blank is to sweep. */
  readonly closed: number;
}

/**
 * Setting of the bending roll that leaves a right cone's blank closed this far, by the model: the middle radius square
 * to the element r/√(k² − sin²α); flat where the blank sweeps as much by itself.
 *
 * @see derived here
 */
export function closureSetting(
  section: RollSection,
  plate: Elastic,
  { radiusMm, halfAngleRad, closed }: ClosureAsked,
): RollSetting {
  const flat = Math.sin(halfAngleRad);
  const free = closed <= flat ? Infinity : radiusMm / Math.sqrt((closed - flat) * (closed + flat));
  return rollSetting(section, plate, free);
}

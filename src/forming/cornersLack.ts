import type { FormingCase } from "./case.ts";
import { sayIn } from "./say.ts";
import { standsOver } from "./sheet/dressing.ts";
import { isPipe, isPointed } from "./skin.ts";

/** Off by less than this a size is not read so closely. [mm] */
const READ_MM = 0.1;

/**
 * What a tape cannot find on a part whose blank was cut square and has no allowance: bevelled as far as the end's plane, one
 * corner of each end still lies short of it, h = ½ t tan α along the wall, and so 2 h sin α less or more across.
 *
 * @returns a sentence, empty where no corner lacks
 * @see derived here
 */
export function cornersLack(item: FormingCase): string {
  const { cone, edges, trimAllowance = false, thicknessMm, units = "mm" } = item;
  if (!cone || edges !== "level" || trimAllowance || isPipe(item)) return "";
  const overMm = standsOver({ thicknessMm, leanRad: cone.halfAngleRad, allowed: false });
  const acrossMm = 2 * overMm * Math.sin(cone.halfAngleRad);
  if (acrossMm < READ_MM) return "";
  const say = sayIn(units);
  const small = isPointed(item) ? "" : ", the small end’s inner one as much: it reads more";
  return `Bevelled without an allowance the large end’s outer corner lies ${say.length(overMm)} short of the end’s plane along the wall: read there it is ${say.length(acrossMm)} less across, ${say.length(Math.PI * acrossMm)} less round${small}. `;
}

import { radians } from "../../geometry/angle.ts";
import type { PlateRoll } from "../machine.ts";
import { settable, setting } from "../rollPlaces.ts";
import type { RollSettings } from "../rollSettings.ts";
import type { Say } from "../say.ts";
import { settableStart } from "../settingProblem.ts";
import { type Figure, scaled } from "./step.ts";

/**
 * The job turned round once more, the raises of the two bearings change places. Where the bearings do not stand equally far
 * outside the roll face, the straight roll would then stand elsewhere over the piece: by this much higher.
 *
 * @param slope of the roll over the piece, small end higher [-]
 * @param bearings outside the roll face, at the drop end and at the fixed end [mm]
 * @returns what is to be added to both raises so that both edges get what they had [mm]
 * @see derived here: the roll is straight, and the stop stands as far in at either end
 */
const exchangedMm = (slope: number, [drop, fixed]: readonly [number, number]): number =>
  slope * (drop - fixed);

/** The same for each zone of a plan, in words behind "its raises exchanged"; nothing where it is too little to be set. */
export function exchangedWords(
  { zones }: RollSettings,
  { bearings }: PlateRoll,
  say: Say,
): { readonly text: string; readonly figures: readonly Figure[] } {
  const more = zones.map((zone) => {
    const start = settableStart(zone.passes.find(({ id }) => id === "finished"));
    return start && bearings ? exchangedMm(Math.tan(radians(start.tiltDeg)), bearings) : 0;
  });
  if (more.every((mm) => settable(mm, say.units) === 0)) return { text: "", figures: [] };
  const said = [...new Set(more.map((mm) => setting(Math.abs(mm), say)))];
  const way = more.some((mm) => mm < 0) ? "lower" : "higher";
  return {
    text: `, both ${more.length > 1 && said.length > 1 ? `by zone ${more.map((mm) => setting(Math.abs(mm), say)).join(", ")}` : said.join(", ")} ${way}`,
    figures: more.map((mm, i) =>
      scaled(`${more.length > 1 ? `zone ${i + 1}: ` : ""}both bearings, once exchanged, moved by`, mm),
    ),
  };
}

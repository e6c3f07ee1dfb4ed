import { type RollPlaces, settable, setting } from "./rollPlaces.ts";
import type { Say } from "./say.ts";
import type { SettingProblem } from "./settingProblem.ts";

/**
 * What it means where a bearing is set below 0, and whether the slide goes so low: " Below 0: …"; nothing where none is. The
 * roll is straight and tilted, so that its lower bearing may stand lower than where the roll touches the flat plate.
 *
 * @param lowestMm lower end of the slide, counted from where the roll touches the flat plate [mm]; 0 or less
 * @see derived here
 */
export function belowZero(say: Say, places: readonly (RollPlaces | null)[], lowestMm: number): string {
  const below = places
    .flatMap((one) => (one ? [one.smallBearingMm, one.largeBearingMm] : []))
    .filter((mm) => mm !== null && settable(mm, say.units) < 0) as number[];
  if (below.length === 0) return "";
  const lowest = Math.min(...below);
  const end = setting(lowestMm, say);
  return ` Below 0: a bearing at ${setting(lowest, say)} stands lower than where the roll touches the flat plate; the slide's own lower end lies at ${end}, ${lowest < lowestMm ? "the bearing would have to go lower than that: find out whether it does" : "so it goes there"}.`;
}

/** That a bearing stands below 0, and whatever else stands in the way: how far the slide goes down is told once, from the flat plate. */
export const warned = (below: string, problems: readonly SettingProblem[]): string =>
  [
    below,
    ...problems.filter(({ id }) => below === "" || id !== "origin").map(({ words }) => ` ${words}`),
  ].join("");

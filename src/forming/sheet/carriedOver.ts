import { endRolled } from "../closure.ts";
import { setting } from "../rollPlaces.ts";
import { isPipe } from "../skin.ts";
import { trialModel } from "../trialModel.ts";
import type { RollSheetAsked } from "./asked.ts";
import { type Figure, scaled } from "./step.ts";

/** What the model asks at the large edge, at the tilt of the first trial, for one gap in the window. [mm] */
interface ModelSetting {
  readonly gapMm: number;
  readonly largeMm: number;
}

/**
 * What the model asks for the widest, the middle and the narrowest gap of the first pass's window; between them it runs
 * all but straight. By how much a roll was set over or under it, the second pass is moved.
 *
 * @returns nothing where there is no model to compare with
 * @see derived here
 */
function modelSettings({ item, roll, say }: RollSheetAsked): ModelSetting[] {
  const answer = roll ? trialModel({ item, roll, say }) : null;
  if (answer?.kind !== "model") return [];
  const { cone, window, pass, read } = answer.model;
  const start = pass("trial")?.start;
  if (!start) return [];
  return [window.from, (window.from + window.to) / 2, window.to].map((closed) => ({
    gapMm: endRolled(item, cone, { radiusMm: cone.largeRadiusMm, closed }).insideGapMm,
    largeMm: read({ settingMm: start.largeMm, closed }).modelMm - (start.middleMm - start.largeMm),
  }));
}

/** How the first pass's correction is carried over to the second, without a screen. */
export function carriedOver(asked: RollSheetAsked): {
  readonly text: string;
  readonly brief: string;
  readonly figures: readonly Figure[];
} {
  const rows = modelSettings(asked);
  if (rows.length === 0) return { text: "", brief: "", figures: [] };
  const { say } = asked;
  const where = isPipe(asked.item) ? "raise" : "setting at the large edge";
  const bare = (mm: number) => say.length(mm).replace(/ (?:mm|in)$/, "");
  const list = rows.map(({ gapMm, largeMm }) => `${setting(largeMm, say)} at ${bare(gapMm)}`).join(", ");
  return {
    text: ` Move ${isPipe(asked.item) ? "it" : "both ends"} by as much as the ${where} that ended the first pass stood over or under what the model asks${isPipe(asked.item) ? "" : ", at the tilt of the first trial,"} for the gap that came out: ${list} of gap at the large end, straight between. After two trials the trial correction comes nearer, and often asks for less.`,
    brief: ` Plus (less) what the first pass's last ${where} was over (under) the model's for its gap${isPipe(asked.item) ? "" : " at this tilt"}: ${list}.`,
    figures: rows.map(({ gapMm, largeMm }) =>
      scaled(`by the model for a gap of ${say.length(gapMm)}, ${where}`, largeMm),
    ),
  };
}

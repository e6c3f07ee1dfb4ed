import type { RollAsked } from "./asked.ts";
import { placesSaid } from "./rollPlaces.ts";
import { isPipe } from "./skin.ts";
import { aboveHigh, type Advised, adviceOn, disagreement, LAP, LOOK } from "./trialAdvice.ts";
import { expectedGapMm } from "./trialExpected.ts";
import type { TrialRead } from "./trials.ts";

/** "30 mm at the large edge …; expect a gap near 900 mm at the large end": the setting for the next blank. */
function wanted(asked: RollAsked, advised: Advised): string {
  const { item, say } = asked;
  const { places, next } = advised;
  const pipe = isPipe(item);
  const settingMm = next.kind === "raise" ? next.settingMm : 0;
  const set = places ? placesSaid({ pipe, say }, places) : `${say.length(settingMm)} at the large edge`;
  const gapMm = expectedGapMm(item, advised);
  if (gapMm === null) return set;
  const near = say.tape(say.units === "mm" ? Math.round(gapMm) : gapMm);
  return `${set}; expect a gap near ${near}${pipe ? "" : " at the large end"}`;
}

/** "58 % closed, wanted 66 % to 80 %": what the last trial was, and what became of its blank. */
function last({ say }: RollAsked, { model, trials }: Advised): string {
  const { place, closed } = trials.at(-1) as TrialRead;
  const { from, to, cap } = model.window;
  const share = `${say.percent(closed)} closed`;
  switch (place) {
    case "open":
      return `${share}, wanted ${say.percent(from)} to ${say.percent(to)}`;
    case "in the window":
      return `${share}, within ${say.percent(from)} to ${say.percent(to)}`;
    case "past the window":
      return `${share}, past the ${say.percent(to)} where this pass ends; that blank gets no further raise before its second pass`;
    case "past the cap":
      return `${share}, past the cap of ${say.percent(cap)}: do not roll on with that blank, set it aside.${closed > 1 ? LAP.replace(/\.$/, "") : ""}`;
  }
}

/**
 * What the trials say to the first raise of the next blank, for its work sheet: the setting first, what it is to leave, then
 * what it comes from. The second pass has its own step. Where something is to be looked at first, that and no setting.
 *
 * @param came what the last trial was: "Last set 30 mm, came out gap 1500 mm"
 */
export function onSheetSaid(asked: RollAsked, advised: Advised, came: string): string {
  const { say } = asked;
  const { next, trials, places, model } = advised;
  if (next.kind === "check") return `${came}. ${adviceOn(asked, advised)}`;
  if (trials.at(-1)?.sprangFlat)
    return `${came}. First make sure that ${LOOK}. Only then raise to ${wanted(asked, advised)}.${disagreement(asked, advised)}`;
  const high = places && next.kind === "raise" ? aboveHigh(say, places.largeMm, model.aim.highMm) : "";
  return `raise to ${wanted(asked, advised)}.${high} ${came}: ${last(asked, advised)}.${disagreement(asked, advised)}`;
}

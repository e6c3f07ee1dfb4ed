import type { RollAsked } from "./asked.ts";
import { closedOfGap } from "./closedOfGap.ts";
import { endRolled } from "./closure.ts";
import { closureOfShare, shareOfClosure } from "./firstPass.ts";
import { careful } from "./trialCorrection.ts";
import { trialModel, type TrialModel } from "./trialModel.ts";

/** One column of the table for a correction without a screen. */
export interface ByHand {
  /** Gap at the large end that came out; null where the blank sprang back flat. [mm] */
  readonly gapMm: number | null;
  /** Raise both ends by so much from where they were set; below 0 for the next blank, this one being closed too far. [mm] */
  readonly moreMm: number;
}

/** Shares of the bend at the start of the window for which the table has a gap: from hardly bent to where the first trial aims. */
const SHARES = [0.25, 0.5, 0.75, 0.85];
/** Gaps are round numbers that are found on a tape: 10 mm, or half an inch. [mm] */
const TAPE_MM = 10;
const TAPE_IN = 12.7;

const gapAt = ({ item }: RollAsked, { cone }: TrialModel, closed: number): number =>
  endRolled(item, cone, { radiusMm: cone.largeRadiusMm, closed }).insideGapMm;

/**
 * The first correction as a table: for some gaps, widest first, how much more to raise, by the offset alone and never
 * further than the liveliest machine may go below the cap. It serves after every trial, from the last setting; after the
 * second one the correction with both trials comes nearer. The first column is for a blank that sprang back flat at the
 * plan's own first setting, the last for one at the cap, and for the next blank.
 *
 * @returns nothing where there is no model to correct by
 * @see derived here
 */
export function byHand(asked: RollAsked): ByHand[] {
  const answer = trialModel(asked);
  if (answer.kind === "none") return [];
  const { model } = answer;
  const { aim, cone, window } = model;
  const settingMm = model.pass("trial")?.start?.largeMm;
  if (settingMm === undefined) return [];
  const { halfAngleRad } = cone;
  const tape = asked.item.units === "in" ? TAPE_IN : TAPE_MM;
  const fromShare = shareOfClosure({ halfAngleRad, closed: window.from }) ?? 0;
  const gaps = SHARES.map((share) => {
    const gap = gapAt(asked, model, closureOfShare({ halfAngleRad, share: share * fromShare }));
    return tape * Math.round(gap / tape);
  });
  const more = (closed: number) => careful(model.read({ settingMm, closed }), aim) - settingMm;
  const flatMm = careful(model.read({ settingMm, flat: true }), aim) - settingMm;
  return [
    { gapMm: null, moreMm: Math.max(0, flatMm) },
    ...[...new Set(gaps)].map((gapMm) => ({ gapMm, moreMm: more(closedOfGap(asked.item, cone, gapMm)) })),
    { gapMm: gapAt(asked, model, window.cap), moreMm: more(window.cap) },
  ];
}

import type { RollAsked } from "./asked.ts";
import { belowZero, warned } from "./belowZero.ts";
import type { FirstPass } from "./firstPass.ts";
import { DERIVED } from "./judge.ts";
import { edgesOnly, type RollPlaces } from "./rollPlaces.ts";
import { secondPass, type SecondPass } from "./secondPass.ts";
import { adviceOn, type Advised, cameOut } from "./trialAdvice.ts";
import {
  type By,
  disagreeing,
  nextSetting,
  type NextSetting,
  type Place,
  type Trial,
} from "./trialCorrection.ts";
import { trialModel } from "./trialModel.ts";
import { onSheetSaid } from "./trialOnSheet.ts";
import { impossible, type TrialSeen } from "./trialSeen.ts";

/** One trial as it is understood. */
export interface TrialRead extends Trial {
  readonly place: Place;
}

/** What to do after the trials of a first pass. */
export interface TrialCorrection {
  readonly machine: string;
  /** The window of the first pass and its cap, as shares of the turn. */
  readonly window: FirstPass;
  readonly trials: readonly TrialRead[];
  readonly kind: NextSetting["kind"];
  /** Set this next at the large edge: for the same blank, or for the next one where this one is closed too far; null when done, and where something is to be looked at first. [mm] */
  readonly nextMm: number | null;
  /** The same at both edges and at the bearings, the tilt as it was set; null where `nextMm` is, and where the plan has no start. */
  readonly next: RollPlaces | null;
  /** Where a blank of this lot is set now: `next`, or the last setting where that was right; null where something is to be looked at first, and where the plan has no start. */
  readonly set: RollPlaces | null;
  readonly by: By | null;
  /** Earlier trials that contradict the last one, counted from 1. */
  readonly disagrees: readonly number[];
  /** Where the second pass starts; null before a trial lies in the window. */
  readonly secondPass: SecondPass | null;
  /** What stands in the way of `next` on this machine, in sentences: the end of the slide, the pinch roll. */
  readonly problems: readonly string[];
  readonly advice: string;
  readonly rule: string;
  readonly basis: string;
}

export type TrialAnswer =
  | { readonly kind: "correction"; readonly correction: TrialCorrection }
  | { readonly kind: "none"; readonly why: string };

const RULE =
  "next setting = last setting + slope × (model's setting for the middle of the window − model's setting for what came out); repeats of one setting are one trial, their mean; slope 1 after one trial, from the last two settings that took set after that, held within 0.67 to 1.5; with slope 1 no further than a machine of slope 0.67 may go below the cap, nor by more than half the last setting; after a blank that took no set a quarter more at most and never past the plan's high; where trials contradict each other the lowest that any of them asks; a raise more than a quarter beyond the plan's high, or under 0.6 of the model's for what came out, is asked about before anything is named by it; settings at the large edge, the model's at half the slant";

function placeOf(closed: number, { from, to, cap }: FirstPass): Place {
  if (closed > cap) return "past the cap";
  if (closed > to) return "past the window";
  return closed < from ? "open" : "in the window";
}

/** The setting at the large edge that an answer names; null where it names none. [mm] */
function settingOf(next: NextSetting): number | null {
  if (next.kind === "raise") return next.settingMm;
  return next.kind === "overshot" ? next.nextBlankMm : null;
}

/** In words: for whoever corrects, or for the next blank's sheet. */
function said(asked: RollAsked, advised: Advised, seen: readonly TrialSeen[]): string {
  const last = seen.at(-1);
  if (!asked.onSheet || !last) return adviceOn(asked, advised);
  const { say } = asked;
  return onSheetSaid(
    asked,
    advised,
    `Last set ${say.length(last.settingMm)}, came out ${cameOut(last, say)}`,
  );
}

const none = (why: string): TrialAnswer => ({ kind: "none", why });

/**
 * Next setting of the first pass after one or more trials on this roll. The tilt stays as it was set for the last of them;
 * both ends of the roll are raised alike, and the model is asked what half the slant needs.
 *
 * @param seen in order, at least one
 * @see derived here
 */
export function correctTrials(asked: RollAsked, seen: readonly TrialSeen[]): TrialAnswer {
  const { item, roll, say } = asked;
  const answer = trialModel(asked);
  if (answer.kind === "none") return answer;
  const { model } = answer;
  const { travelMm, window } = model;
  const slip = seen.map((one) => impossible(one, { item, say, travelMm })).find((why) => why !== null);
  if (slip) return none(slip);

  const trials = seen.map((one): TrialRead => {
    const read = model.read(one);
    return { ...read, place: placeOf(read.closed, window) };
  });
  const next = nextSetting(trials, model.aim);
  const tiltMm = seen.at(-1)?.tiltMm ?? 0;
  const atPlanTilt = settingOf(next);
  const places = atPlanTilt === null ? null : model.placesAt(atPlanTilt, tiltMm);
  const nextMm = places?.largeMm ?? atPlanTilt;
  if (nextMm !== null && (nextMm <= 0 || nextMm > travelMm))
    return none(
      `by these trials the next setting would be ${say.length(nextMm)}, and the slide goes from 0 to ${say.length(travelMm)} above the flat plate: look at what was written down, and ask the machine's manual before more is set`,
    );
  const disagrees = disagreeing(trials).map((i) => i + 1);
  // Where nothing is safe to name for this pass, nothing is for the next.
  const second = next.kind === "check" ? null : secondPass(trials, model);
  const set = next.kind === "done" ? model.placesAt(trials.at(-1)?.settingMm ?? 0, tiltMm) : places;
  const problems = places ? model.problemsAt(places) : [];
  // The second pass has its own step on a sheet.
  const below = belowZero(say, asked.onSheet ? [set] : [set, second], model.lowestMm);
  const { bearings } = seen.at(-1) ?? {};
  const told = (one: RollPlaces | null) => (bearings && !asked.onSheet ? edgesOnly(one) : one);
  const advised: Advised = {
    model,
    trials,
    next,
    places: told(set),
    disagrees,
    second: second && { ...second, ...told(second) },
  };
  return {
    kind: "correction",
    correction: {
      machine: roll.name,
      window,
      trials,
      kind: next.kind,
      nextMm,
      next: places,
      set,
      by: "by" in next ? next.by : null,
      disagrees,
      secondPass: second,
      problems: problems.map(({ words }) => words),
      advice: `${said(asked, advised, seen)}${warned(below, problems)}`,
      rule: RULE,
      basis: DERIVED,
    },
  };
}

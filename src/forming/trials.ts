import type { RollAsked } from "./asked.ts";
import { closedOfGap } from "./closedOfGap.ts";
import { closureSetting } from "./closureSetting.ts";
import { type FirstPass, firstPass, shareOfClosure } from "./firstPass.ts";
import { flatContact, type RollSection, sectionOf } from "./rollSetting.ts";
import { plateOf } from "./springback.ts";
import { type Aim, nextSetting, type Trial } from "./trialCorrection.ts";

/** What was set, and what came out. Settings are raises at the large edge, from the flat plate, along the slide. */
export type TrialSeen =
  | { readonly settingMm: number; readonly gapMm: number }
  | { readonly settingMm: number; readonly closed: number }
  | { readonly settingMm: number; readonly flat: true };

/** One trial as it is understood. */
interface TrialRead {
  readonly settingMm: number;
  /** Share of the turn that came out. */
  readonly closed: number;
  readonly sprangFlat: boolean;
  /** Where the model would set half the slant for that closure. [mm] */
  readonly modelMm: number;
  readonly place: "open" | "in the window" | "past the window" | "past the cap";
}

/** What to do after the trials of a first pass. */
interface TrialCorrection {
  readonly machine: string;
  /** The window of the first pass and its cap, as shares of the turn. */
  readonly window: FirstPass;
  readonly trials: readonly TrialRead[];
  readonly kind: "done" | "raise" | "overshot";
  /** Set this next: for the same blank, or for the next one where this one is closed too far; null when done. [mm] */
  readonly nextMm: number | null;
  readonly by: "offset" | "slope" | null;
  readonly advice: string;
  readonly rule: string;
  readonly basis: string;
}

export type TrialAnswer =
  | { readonly kind: "correction"; readonly correction: TrialCorrection }
  | { readonly kind: "none"; readonly why: string };

/** Bent less than this share of the final bend a trial took no set that a slope could be read from. Derived here. [-] */
const TOOK_SET = 0.05;

const RULE =
  "next setting = last setting + slope × (model's setting for the middle of the window − model's setting for what came out); slope 1 after one trial, from the last two that took set after that, held within 0.67 to 1.5";

/** Closures of one setting may differ by this from blank to blank. Derived here. [-] */
const SCATTER = 0.05;

function closedOf(seen: TrialSeen, flat: number, ofGap: (gapMm: number) => number): number {
  if ("closed" in seen) return Math.min(1, Math.max(flat, seen.closed));
  return "gapMm" in seen ? ofGap(seen.gapMm) : flat;
}

function placeOf(closed: number, { from, to, cap }: FirstPass): TrialRead["place"] {
  if (closed > cap) return "past the cap";
  if (closed > to) return "past the window";
  return closed < from ? "open" : "in the window";
}

/** The model's setting at half the slant for a closure; null where it gives none. [mm] */
function modelOf({ item }: RollAsked, section: RollSection): ((closed: number) => number | null) | null {
  const { cone } = item;
  if (!cone) return null;
  const plate = plateOf(item);
  const radiusMm = (cone.largeRadiusMm + cone.smallRadiusMm) / 2;
  return (closed) => {
    const answer = closureSetting(section, plate, { radiusMm, halfAngleRad: cone.halfAngleRad, closed });
    return answer.kind === "setting" ? answer.bestMm : null;
  };
}

/** What cannot have been: a raise beyond the slide, a gap longer than its edge; null where it can. */
function impossible(
  one: TrialSeen,
  { asked: { item, say }, travelMm }: { asked: RollAsked; travelMm: number },
): string | null {
  if (one.settingMm > travelMm)
    return `a setting of ${say.length(one.settingMm)} lies beyond the slide, which goes to ${say.length(travelMm)} above the flat plate`;
  const { cone, pieces } = item;
  if (!("gapMm" in one) || !cone) return null;
  // A gap runs straight from end to end of an edge, so it is never longer than the edge.
  const edgeMm = (2 * Math.PI * cone.largeRadiusMm) / pieces;
  return one.gapMm > edgeMm
    ? `a gap of ${say.length(one.gapMm)} is longer than the edge itself, ${say.length(edgeMm)}`
    : null;
}

/** More raise never bends less, nor the same raise much differently: where two trials in a row say so, one of them was read or written wrong, or the plate differs. */
function contradiction(trials: readonly TrialRead[]): string {
  const [before, last] = trials.slice(-2);
  if (!before || !last || before === last) return "";
  const [raise, bend] = [last.settingMm - before.settingMm, last.closed - before.closed];
  return (raise >= 0 && bend < -SCATTER) || (raise <= 0 && bend > SCATTER)
    ? " The last two trials do not agree: measure again before going by them."
    : "";
}

const none = (why: string): TrialAnswer => ({ kind: "none", why });

/**
 * Next setting of the first pass after one or more trials on this roll. The tilt stays as it was set; both ends of the
 * roll are raised alike, and the model is asked what half the slant needs.
 *
 * @param seen in order, at least one
 * @see derived here
 */
export function correctTrials(asked: RollAsked, seen: readonly TrialSeen[]): TrialAnswer {
  const { item, roll, say } = asked;
  const section = sectionOf(roll);
  if (!section)
    return none("only an initial-pinch roll whose slide the shop file gives has settings to correct");
  const model = modelOf(asked, section);
  if (!item.cone || !model) return none("only right cones and pipes have one closure to correct by");
  const { cone } = item;
  const window = firstPass(cone.halfAngleRad);
  const flat = Math.sin(cone.halfAngleRad);
  const [fromMm, toMm, capMm] = [model(window.from), model(window.to), model(window.cap)];
  const aimMm = model((window.from + window.to) / 2);
  if (fromMm === null || toMm === null || capMm === null || aimMm === null)
    return none("the model gives no setting for this part on this roll");
  const aim: Aim = { aimMm, fromMm, toMm, capMm };
  const travelMm = section.travelMm - flatContact(section, item.thicknessMm).upMm;
  const slip = seen.map((one) => impossible(one, { asked, travelMm })).find((why) => why !== null);
  if (slip) return none(slip);

  const trials = seen.map((one): TrialRead => {
    const closed = closedOf(one, flat, (gapMm) => closedOfGap(item, cone, gapMm));
    // Past what the roll can reach at all, the setting for the closed blank's cap is the nearest that the model knows.
    const modelMm = model(closed) ?? capMm;
    const share = shareOfClosure({ halfAngleRad: cone.halfAngleRad, closed }) ?? 0;
    const sprangFlat = share < TOOK_SET;
    return { settingMm: one.settingMm, closed, sprangFlat, modelMm, place: placeOf(closed, window) };
  });
  const next = nextSetting(trials satisfies readonly Trial[], aim);
  const nextMm = next.kind === "raise" ? next.settingMm : next.kind === "overshot" ? next.nextBlankMm : null;
  if (nextMm !== null && (nextMm <= 0 || nextMm > travelMm))
    return none(
      `by these trials the next setting would be ${say.length(nextMm)}, and the slide goes from 0 to ${say.length(travelMm)} above the flat plate: look at what was written down, and ask the machine's manual before more is set`,
    );
  const out = (closed: number) => say.percent(closed);
  const last = trials.at(-1) as TrialRead;
  const against = contradiction(trials);
  const advice = {
    done: () =>
      `Closed ${out(last.closed)}, within ${out(window.from)} to ${out(window.to)}: this pass is done; keep the setting of ${say.length(last.settingMm)} for the lot.`,
    raise: (mm: number) =>
      `Closed ${out(last.closed)}, wanted ${out(window.from)} to ${out(window.to)}: set ${say.length(mm)} at the large edge, the tilt as it is, raise to it with the plate moving, and roll this blank once more.`,
    overshot: (mm: number) =>
      `Closed ${out(last.closed)}, past the ${out(window.to)} where this pass ends${last.place === "past the cap" ? ` and past its cap of ${out(window.cap)}` : ""}: no further raise on this blank in this pass. Set ${say.length(mm)} for the next blank.`,
  };
  return {
    kind: "correction",
    correction: {
      machine: roll.name,
      window,
      trials,
      kind: next.kind,
      nextMm,
      by: next.kind === "done" ? null : next.by,
      advice: `${advice[next.kind](nextMm ?? 0)}${against}`,
      rule: RULE,
      basis: "derived here",
    },
  };
}

import type { RollAsked } from "./asked.ts";
import type { Say } from "./say.ts";
import { placesSaid, type RollPlaces } from "./rollPlaces.ts";
import type { SecondPass } from "./secondPass.ts";
import { isPipe } from "./skin.ts";
import {
  atLargeEdge,
  isTooLittle,
  likeReading,
  type NextSetting,
  type Odd,
  oddOf,
  type Trial,
} from "./trialCorrection.ts";
import type { TrialModel } from "./trialModel.ts";
import type { TrialRead } from "./trials.ts";
import type { TrialOutcome } from "./trialSeen.ts";
import { listed } from "./words.ts";

export interface Advised {
  readonly model: TrialModel;
  readonly trials: readonly TrialRead[];
  readonly next: NextSetting;
  /** Where to set now. */
  readonly places: RollPlaces | null;
  readonly disagrees: readonly number[];
  readonly second: SecondPass | null;
}

/** What has to be right before a plate that sprang back flat is bent harder. */
export const LOOK =
  "the scale stands at 0 where the bending roll just touches the flat plate, the plate is of the thickness and grade of the sheet, and the bending roll bears on the plate along its whole length";

/** What is done with a blank that is past the cap of the first pass. */
export const PAST_CAP =
  "Stop: do not roll on with this blank, rolling on only closes it further. Lower the bending roll, take it out, mark it and set it aside; whoever answers for the part decides whether it is opened by the shop's own means or scrapped.";

/** What an overlap must not do. */
export const LAP = " Its edges are past each other: never let an overlap enter the pinch.";

/** What tells on a right cone or a pipe. */
const ROUND = { by: "the templates and the gap" };

type Words = Pick<RollAsked, "item" | "say">;

/** "30 mm", "40 mm at the large edge and 52 mm at the small edge …". */
function settingSaid({ item, say }: Words, nextMm: number, places: RollPlaces | null): string {
  if (places) return placesSaid({ pipe: isPipe(item), say }, places);
  return `${say.length(nextMm)} at the large edge`;
}

const tilted = ({ item }: Words): string => (isPipe(item) ? "" : ", the tilt as it is");

/** What to look at before a raise beyond the plan's own high; nothing up to it. */
export const aboveHigh = (say: Say, settingMm: number, highMm: number): string =>
  settingMm > highMm
    ? ` That is above the plan's own high for this pass, ${say.length(highMm)}: first make sure that ${LOOK}.`
    : "";

function raised(asked: Words, { model, trials, next, places }: Advised): string {
  const { say } = asked;
  const last = trials.at(-1) as TrialRead;
  const nextMm = next.kind === "raise" ? next.settingMm : 0;
  const { from, to } = model.window;
  const set = `${settingSaid(asked, nextMm, places)}${tilted(asked)}, raise to it with the plate moving, and roll this blank once more`;
  if (last.sprangFlat)
    return `The plate sprang back flat. First make sure that ${LOOK}. Only then set ${set}.`;
  const high = aboveHigh(say, places?.largeMm ?? nextMm, model.aim.highMm);
  return `Closed ${say.percent(last.closed)}, wanted ${say.percent(from)} to ${say.percent(to)}: set ${set}.${high}`;
}

function overshot(asked: Words, { model, trials, next, places, second }: Advised): string {
  const { say } = asked;
  const last = trials.at(-1) as TrialRead;
  const { to, cap } = model.window;
  const nextMm = next.kind === "overshot" ? next.nextBlankMm : 0;
  const then = `Set ${settingSaid(asked, nextMm, places)} for the next blank${tilted(asked)}.`;
  const past = `Closed ${say.percent(last.closed)}, past the ${say.percent(to)} where this pass ends`;
  if (last.place !== "past the cap")
    return `${past}: no further raise on this blank in this pass; it is kept for the second.${secondSaid(asked, second, ROUND)} ${then}`;
  const lap = last.closed > 1 ? LAP : "";
  return `${past} and past its cap of ${say.percent(cap)}. ${PAST_CAP}${lap} ${then}`;
}

/** "Set 153.3 mm: is that the scale's reading? …", for raises that are hardly raises. */
export function readingAsked(
  { item, say }: Words,
  trials: readonly Trial[],
  { highMm }: { readonly highMm: number },
): string {
  const asked = trials.filter((one) => likeReading(one, { highMm }));
  const little = asked.find(isTooLittle);
  if (little)
    return `Was it raised by no more than ${say.length(atLargeEdge(little))}, counted from the flat plate? No plate bends so far by so little: such a bend takes at least ${say.length(little.leastMm ?? 0)}${isPipe(item) ? "" : " at the large edge"} or so by the model. Find 0 again, look which way the scale counts, and write the trial again. Before that is clear no next setting is named, and this one is kept for no lot.`;
  const doubtful = asked.map((one) => say.length(atLargeEdge(one)));
  const those = doubtful.length > 1 ? "Are those the scale's readings" : "Is that the scale's reading";
  return `${those}, ${listed(doubtful)}? The raise is counted from the flat plate: take the reading at 0 off, and write the trial again. The plan's own high for this pass is ${say.length(highMm)}${isPipe(item) ? "" : " at the large edge"}, and no next setting is named by so much more. Do not raise further before that is clear. If it was the raise, make sure that ${LOOK}.`;
}

/** What becomes of the blank in hand, whatever its raise was. */
function inHand({ place, closed }: TrialRead): string {
  if (place === "past the cap") return `${PAST_CAP}${closed > 1 ? LAP : ""} `;
  return place === "open" ? "" : "No further raise on this blank in this pass. ";
}

function checked({ item, say }: Words, { model, trials, next }: Advised): string {
  if (next.kind === "check" && next.why === "reading")
    return `${inHand(trials.at(-1) as TrialRead)}${readingAsked({ item, say }, trials, model.aim)}`;
  if (next.kind === "check" && next.why === "disagree")
    return "No further raise is safe to name by these trials: measure this blank again before it is rolled on, and leave out the trial that was wrong.";
  return `The plate sprang back flat, and the plan's own high for this pass, ${say.length(model.aim.highMm)}${isPipe(item) ? "" : " at the large edge"}, leaves no more to raise. Do not raise further: make sure that ${LOOK}, and begin again from the sheet's first setting.`;
}

/** What is odd about trials that do not agree. */
const ODD: Readonly<Record<Odd, string>> = {
  less: "more raise never leaves a blank less closed",
  hardly: "so much more raise closes a blank further than that",
  unlike: "the same raise leaves blanks much alike",
};

/** "Trial 1 (45 mm, 60 % closed) and this one do not agree: …"; nothing where all agree. */
export function disagreement({ say }: Words, { trials, disagrees, next }: Advised): string {
  if (disagrees.length === 0) return "";
  const said = (one: Trial) => `${say.length(atLargeEdge(one))}, ${say.percent(one.closed)} closed`;
  const others = disagrees
    .map((number) => `trial ${number} (${said(trials[number - 1] as Trial)})`)
    .join(", ");
  const last = trials.at(-1) as Trial;
  const odd = disagrees.flatMap((number) => oddOf(trials[number - 1] as Trial, last) ?? []);
  const why = [...new Set(odd)].map((one) => ODD[one]).join(", and ");
  const by =
    next.kind === "raise" || next.kind === "overshot"
      ? " Measure again first; the setting named is the lowest that any of them asks."
      : "";
  return ` The trials do not agree: ${others} and the last one (${said(last)}); ${why}.${by}`;
}

/**
 * Where the second pass starts.
 *
 * @param by what it goes on by: "the templates and the gap"
 * @param of whose pass, where it is not that of the blank in hand: " of the next blank"
 */
export function secondSaid(
  { item, say }: Words,
  second: SecondPass | null,
  { by, of = "" }: { readonly by: string; readonly of?: string },
): string {
  if (!second) return "";
  const held = second.held ? " (held back at the plan's own high)" : "";
  return ` Second pass${of}: start at ${placesSaid({ pipe: isPipe(item), say }, second)}${held}, raise to it with the plate moving, and go on by ${by}.`;
}

/** What to do after the trials, in sentences with this part's own numbers. */
export function adviceOn(asked: Words, advised: Advised): string {
  const { say } = asked;
  const { model, trials, next, second } = advised;
  const last = trials.at(-1) as TrialRead;
  const { from, to } = model.window;
  const words = {
    done: () =>
      `Closed ${say.percent(last.closed)}, within ${say.percent(from)} to ${say.percent(to)}: this pass is done; keep the setting of ${say.length(atLargeEdge(last))} for the lot.${secondSaid(asked, second, ROUND)}`,
    raise: () => raised(asked, advised),
    overshot: () => overshot(asked, advised),
    check: () => checked(asked, advised),
  };
  return `${words[next.kind]()}${disagreement(asked, advised)}`;
}

/** "gap 1350 mm", "overlap 40 mm", "closed 72 %" or "sprang back flat". */
export function cameOut(seen: TrialOutcome, say: Say): string {
  if ("flat" in seen) return "sprang back flat";
  if ("closed" in seen) return `closed ${say.percent(seen.closed)}`;
  return seen.gapMm < 0 ? `overlap ${say.length(-seen.gapMm)}` : `gap ${say.length(seen.gapMm)}`;
}

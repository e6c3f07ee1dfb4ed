import type { AnySeen } from "./anyTrials.ts";
import { correctAny } from "./anyTrials.ts";
import type { RollAsked } from "./asked.ts";
import { type RollPlaces, setting } from "./rollPlaces.ts";
import type { SecondPass } from "./secondPass.ts";
import { isPipe } from "./skin.ts";
import { cameOut } from "./trialAdvice.ts";
import type { TrialAnswer, TrialCorrection } from "./trials.ts";
import { triedZones } from "./triedZones.ts";
import { capital } from "./words.ts";

/** Trials of the part on one machine. */
export interface TrialsKept {
  readonly machine: string;
  /** In order. */
  readonly seen: readonly AnySeen[];
}

/** Where one zone is set by trials. */
export interface TriedZone {
  /** Where to set now; null where something is to be looked at first. */
  readonly set: RollPlaces | null;
  /** Where the second pass starts; null before a trial lies in the window. */
  readonly second: SecondPass | null;
  /** Is nothing safe to name before something is looked at? */
  readonly look: boolean;
}

/** What trials of this part on this roll came to, as its work sheet takes it. */
export interface Tried extends TriedZone {
  /** What was set last, what came out, and what to do, in sentences. */
  readonly words: string;
  /** The same as it stands beside boxes that hold the numbers. */
  readonly brief: string;
  /** The same zone by zone, where a part is rolled in several; else none. */
  readonly zones: readonly TriedZone[];
}

/** What to do, the numbers of the other places being in the boxes. */
function shortly({ item, say }: RollAsked, correction: TrialCorrection): string {
  const { kind, set, nextMm, trials, disagrees, problems, brief } = correction;
  const last = trials.at(-1);
  if (kind === "check" || !last) return brief;
  const mm = setting(set?.largeMm ?? nextMm ?? last.settingMm, say);
  const at = isPipe(item) ? mm : `${mm} at the large edge, the rest in the boxes`;
  const unsure = disagrees.length > 0 ? " The trials do not agree: measure again first." : "";
  const first = last.sprangFlat
    ? "look at 0, thickness and contact, then start"
    : last.place === "past the cap"
      ? "that blank is set aside; start the next"
      : last.place === "past the window"
        ? "that blank is kept for the second pass; start the next"
        : "start";
  return [kind === "done" ? `keep ${at}.${unsure}` : `${first} at ${at}.${unsure}`, ...problems].join(" ");
}

function whatTo(answer: TrialAnswer): string {
  return answer.kind === "none" ? `No setting by them: ${answer.why}.` : answer.correction.brief;
}

/** What the trials kept of this part on this roll came to; undefined where there are none. */
export function triedOn(asked: RollAsked, kept: TrialsKept | undefined): Tried | undefined {
  const last = kept?.machine === asked.roll.name ? kept.seen.at(-1) : undefined;
  if (!kept || !last) return undefined;
  const answer = correctAny(asked, kept.seen);
  if (answer.kind === "zones") return triedZones(asked, kept.seen, answer.correction);
  const correction = answer.kind === "none" ? null : answer.correction;
  const what = "zone" in last ? "" : `, came out ${cameOut(last, asked.say)}`;
  const came = `last set ${asked.say.length(last.settingMm)}${what}`;
  return {
    // Whatever the correction warns of on the screen stands on the sheet that starts from it.
    words: `${capital(came)}. ${correction ? correction.advice : whatTo(answer)}`,
    brief: `By this part's own trials (${came}): ${correction ? shortly(asked, correction) : whatTo(answer)}`,
    set: correction?.set ?? null,
    second: correction?.secondPass ?? null,
    look: correction === null || correction.kind === "check",
    zones: [],
  };
}

import { correctAny } from "./anyTrials.ts";
import type { RollAsked } from "./asked.ts";
import type { RollPlaces } from "./rollPlaces.ts";
import type { Say } from "./say.ts";
import type { SecondPass } from "./secondPass.ts";
import type { AnySeen, AnyTold, settleTrials } from "./settleTrials.ts";
import { cameOut } from "./trialAdvice.ts";
import { triedZones } from "./triedZones.ts";

/** Trials of the part on one machine. */
export interface TrialsKept {
  readonly machine: string;
  /** In order. */
  readonly seen: readonly AnyTold[];
  /** Works out how the roll was set; left out where that has been done, as in what a browser keeps. */
  readonly settle?: typeof settleTrials;
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
  /** The same zone by zone, where a part is rolled in several; else none. */
  readonly zones: readonly TriedZone[];
}

const isSettled = (one: AnyTold): one is AnySeen => one.settingMm !== undefined;

/** "set 22.5 mm", as far as the raise is known. */
const setSaid = (settingMm: number | undefined, say: Say): string =>
  settingMm === undefined ? "trial" : `set ${say.length(settingMm)}`;

/** What the trials kept of this part on this roll came to; undefined where there are none. */
export function triedOn(asked: RollAsked, kept: TrialsKept | undefined): Tried | undefined {
  const last = kept?.machine === asked.roll.name ? kept.seen.at(-1) : undefined;
  if (!kept || !last) return undefined;
  const settled = kept.settle?.(asked, kept.seen);
  const seen = settled?.kind === "settled" ? settled.seen : kept.seen.filter(isSettled);
  const answer: ReturnType<typeof correctAny> =
    settled?.kind === "wrong" || seen.length === 0
      ? { kind: "none", why: "bearings and raise do not agree, or cannot be taken" }
      : correctAny({ ...asked, onSheet: true }, seen);
  if (answer.kind === "zones") return triedZones(asked, seen, answer.correction);
  const correction = answer.kind === "none" ? null : answer.correction;
  const [where, what] =
    "zone" in last ? [` in zone ${last.zone}`, ""] : ["", `, came out ${cameOut(last, asked.say)}`];
  return {
    // Whatever the correction warns of on the screen stands on the sheet that starts from it.
    words:
      answer.kind === "none"
        ? `Last ${setSaid(seen.at(-1)?.settingMm, asked.say)}${where}${what}. No setting by them: ${answer.why}.`
        : answer.correction.advice,
    set: correction?.set ?? null,
    second: correction?.secondPass ?? null,
    look: correction === null || correction.kind === "check",
    zones: [],
  };
}

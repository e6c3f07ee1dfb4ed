import { correctAny } from "./anyTrials.ts";
import type { RollAsked } from "./asked.ts";
import { type BearingsNext, bearingsNext } from "./bearingsNext.ts";
import { type SetWrong, wrongOf } from "./setWords.ts";
import { type AnyTold, settleTrials, zoneOf } from "./settleTrials.ts";
import type { RollSet } from "./trialSeen.ts";
import type { TrialCorrection } from "./trials.ts";
import { zoneModels } from "./zoneModel.ts";
import { tiltWords, type ZoneTilt, zoneTilt } from "./zoneTilt.ts";
import type { ZoneCorrection, ZonesCorrection } from "./zoneTrials.ts";

interface AtBearings {
  /** The next numbers for both bearings, and whether they stood at the plan's tilt; null where nobody read them. */
  readonly bearings: BearingsNext | null;
  /** The advice in the parts that are read one by one. */
  readonly lines: readonly string[];
}

/** A correction as whoever stands at the roll is told it. */
export type WholeTold = TrialCorrection & AtBearings;

interface ZoneTold extends ZoneCorrection, AtBearings {
  /** The tilt by which both ends come round together; null where they came out alike, or no number is safe to name. */
  readonly tilt: ZoneTilt | null;
}
type ZonesTold = Omit<ZonesCorrection, "zones"> & { readonly zones: readonly ZoneTold[] };

/** What is wrong with how one of the trials was set. */
interface TrialSetWrong extends SetWrong {
  /** Which of them, from 0. */
  readonly at: number;
}

export type ToldAnswer =
  | { readonly kind: "correction"; readonly correction: WholeTold }
  | { readonly kind: "zones"; readonly correction: ZonesTold }
  | { readonly kind: "none"; readonly why: string; readonly wrong?: TrialSetWrong };

const AT_BEARINGS =
  "; where both bearings were read the roll is a straight line between them, and half the slant counts";

/** The parts of an advice that say something. */
const saying = (lines: readonly string[]): string[] => lines.map((line) => line.trim()).filter(Boolean);

function wholeTold(
  asked: RollAsked,
  { advice, ...rest }: TrialCorrection,
  last: RollSet | undefined,
): WholeTold {
  const bearings = bearingsNext(asked, last, rest);
  const lines = saying([advice, bearings?.words ?? ""]);
  return { ...rest, rule: `${rest.rule}${AT_BEARINGS}`, bearings, lines, advice: lines.join(" ") };
}

function zonesTold(
  asked: RollAsked,
  correction: ZonesCorrection,
  seen: readonly (RollSet & { readonly zone?: number })[],
): ZonesTold {
  const answer = zoneModels(asked);
  const models = answer.kind === "models" ? answer.models : [];
  const lastOf = (zones: readonly number[]) => seen.findLast(({ zone = 1 }) => zones.includes(zone));
  const zones = correction.zones.map((one): ZoneTold => {
    // Zones that mirror each other are set alike, in tilt too.
    const last = lastOf([one.zone, ...one.mirrors]);
    const bearings = bearingsNext(asked, last, one);
    const [model, tried] = [models[one.zone - 1], correction.zones[(last?.zone ?? 1) - 1]?.trials.at(-1)];
    const alone = one.endAtLimit !== null;
    const tilt =
      model && last && tried && (one.set || alone) && one.disagrees.length === 0
        ? zoneTilt(asked, {
            model,
            last: tried,
            stood: model.placesAt(tried.settingMm, last.tiltMm),
            set: one.set,
          })
        : null;
    const lines = saying([one.advice, bearings?.words ?? "", tilt ? tiltWords(asked, tilt, alone) : ""]);
    return { ...one, bearings, tilt, lines, advice: lines.join(" ") };
  });
  const advice = saying([correction.taught, ...zones.map((one) => one.advice)]).join(" ");
  return { ...correction, rule: `${correction.rule}${AT_BEARINGS}`, zones, advice };
}

/**
 * The next setting by the trials of a part on this roll, with what there is to say at the bearings: their next numbers, how
 * the tilt that was set compares with the plan's, and the tilt by which both ends of a zone come round together.
 */
export function correctTold(asked: RollAsked, told: readonly AnyTold[]): ToldAnswer {
  const settled = settleTrials(asked, told);
  if (settled.kind === "wrong") {
    const { at, why } = settled;
    const one = told[at];
    const wrong = wrongOf(asked, one ?? {}, { why, zone: one ? zoneOf(one) : 1 });
    return {
      kind: "none",
      why: `trial ${at + 1}: ${wrong.problem}; ${wrong.remedy}`,
      wrong: { at, ...wrong },
    };
  }
  const { seen } = settled;
  const answer = correctAny(asked, seen);
  if (answer.kind === "none") return answer;
  return answer.kind === "correction"
    ? { kind: "correction", correction: wholeTold(asked, answer.correction, seen.at(-1)) }
    : { kind: "zones", correction: zonesTold(asked, answer.correction, seen) };
}

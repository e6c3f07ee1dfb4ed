import { BY_GAP, BY_ZONES, inZone } from "./anyTrials.ts";
import type { RollAsked } from "./asked.ts";
import { wrongOf } from "./setWords.ts";
import { type AnyTold, settleTrials, zoneOf } from "./settleTrials.ts";
import { trialModel } from "./trialModel.ts";
import { impossible, type TrialSeen } from "./trialSeen.ts";
import { zoneModels } from "./zoneModel.ts";
import type { ZoneSeen } from "./zoneSeen.ts";
import { slipIn } from "./zoneTrials.ts";

/** Why a trial cannot have been on this roll, to be told before it is kept; null where it can. */
export function impossibleTrial(asked: RollAsked, seen: TrialSeen): string | null {
  const answer = trialModel(asked);
  if (answer.kind === "none") return null;
  return impossible(seen, { item: asked.item, say: asked.say, travelMm: answer.model.travelMm });
}

/** The same for one zone. */
function impossibleZoneTrial(asked: RollAsked, seen: ZoneSeen): string | null {
  const answer = zoneModels(asked);
  return answer.kind === "none" ? null : slipIn(asked, answer, seen);
}

/** Why a trial cannot have been of this part on this roll, to be told before it is kept; null where it can. */
export function impossibleAny(asked: RollAsked, told: AnyTold): string | null {
  const settled = settleTrials(asked, [told]);
  if (settled.kind === "wrong") {
    const { problem, remedy } = wrongOf(asked, told, { why: settled.why, zone: zoneOf(told) });
    return `${problem}; ${remedy}`;
  }
  const [seen] = settled.seen;
  if (!seen) return null;
  if (asked.item.cone) return "zone" in seen ? BY_GAP : impossibleTrial(asked, seen);
  const zoned = inZone(seen);
  return zoned ? impossibleZoneTrial(asked, zoned) : BY_ZONES;
}

import type { PartAsked } from "./asked.ts";
import type { BrakePlan } from "./brakePlan.ts";
import type { BehindPunch } from "./brakeBehind.ts";
import { brakeThroat, lineWords, morePieces } from "./brakeThroat.ts";
import type { Check } from "./check.ts";
import type { PressBrake } from "./machine.ts";
import { widerDie } from "./sharpFold.ts";

/** Something to look at before the first hit. */
export interface BrakeRemark {
  readonly id: "throat" | "off-the-punch" | "facets" | "sharp-fold" | "seam-edge" | "others";
  /** The step of the work sheet at which it bites. */
  readonly step: "tooling" | "bend" | "tips";
  /** In whole sentences. */
  readonly text: string;
}

type Planned = Pick<
  BrakePlan,
  "zones" | "piecesToComeOff" | "turnDeg" | "insideRadiusMm" | "leastInsideRadiusMm" | "behind"
>;

/** The plate behind the line does not find room, or nobody knows whether it does. */
function throat(asked: PartAsked, behind: BehindPunch | null, brake: PressBrake | undefined): BrakeRemark[] {
  const check = brake && behind && brakeThroat({ ...asked, brake, behind });
  if (!check || check.verdict === "pass" || check.value === null) return [];
  const { item, say } = asked;
  const depth = say.length(check.value);
  return [
    {
      id: "throat",
      step: "tooling",
      text:
        check.limit === null
          ? check.advice
          : `Even with its shallower side behind the punch up to ${depth} of plate lie there (${lineWords(behind, item.pieces)}), and the throat of this brake is ${say.shops(check.limit)} deep: try with the flat blank first. Let it hang out past the frame at the end of the bed, bend it on a deeper brake, or make the part in ${morePieces(item, check.limit)}. The foreman decides which before the blank is cut.`,
    },
  ];
}

/** Checks that a remark speaks of. */
const TOLD: ReadonlySet<string> = new Set(["brake-throat", "off-the-punch", "bend-spacing", "sharp-fold"]);

/**
 * What has to be looked at, worst first.
 *
 * @param checks what the brake was asked: cautions that have no remark of their own are named
 * @param fold the check of the sharp folds over this die, which the verdict of the part hangs on too
 */
export function remarksOf(
  asked: PartAsked,
  plan: Planned,
  {
    brake,
    fold,
    checks = [],
  }: { brake: PressBrake | undefined; fold: Check | null; checks?: readonly Check[] | undefined },
): BrakeRemark[] {
  const { item, say } = asked;
  const remarks = throat(asked, plan.behind, brake);
  if (plan.piecesToComeOff > item.pieces)
    remarks.push({
      id: "off-the-punch",
      step: "bend",
      text: `In one piece it turns by ${Math.round(plan.turnDeg)}° and closes round the punch: make it in ${plan.piecesToComeOff} pieces, or find out before the last hits that it slides off the free end of the punch.`,
    });
  const tight = plan.zones.filter(({ roomForAll }) => !roomForAll);
  if (tight.length > 0) {
    const off = say.length(Math.max(...tight.map(({ facetMm }) => facetMm)));
    remarks.push({
      id: "facets",
      step: "tooling",
      text: `The die leaves no room for more hits: the facets stand up to ${off} off the true curve.`,
    });
  }
  if (fold && fold.verdict !== "pass") {
    const wider = widerDie(asked, brake);
    const radius = say.length(plan.insideRadiusMm);
    remarks.push({
      id: "sharp-fold",
      step: "tips",
      text: `The sharp fold at the tip of a corner over this die comes out near ${radius} inside, less than the ${say.length(plan.leastInsideRadiusMm)} advised, and may crack: use a wider die there, ${wider}; hits of a few degrees are not in question.`,
    });
  }
  if (plan.zones.some(({ seamDeg }) => seamDeg > 1))
    remarks.push({
      id: "seam-edge",
      step: "bend",
      text: "At a seam edge on a curve no punch bends the last half space: pre-bend it over a bar, or draw it in when the seam is tacked.",
    });
  const others = checks.filter(({ id, verdict }) => verdict === "caution" && !TOLD.has(id));
  if (others.length > 0)
    remarks.push({
      id: "others",
      step: "tooling",
      text: `With care too: ${others.map(({ title }) => title).join("; ")}. The part’s page says why.`,
    });
  return remarks;
}

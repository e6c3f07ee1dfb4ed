import type { PartAsked } from "./asked.ts";
import type { BrakePlan } from "./brakePlan.ts";
import type { BehindPunch } from "./brakeBehind.ts";
import { brakeThroat, findsRoom, linesWords } from "./brakeThroat.ts";
import type { Check } from "./check.ts";
import type { PressBrake } from "./machine.ts";
import type { ClosesRound } from "./leftOut.ts";
import { offThePunch } from "./offThePunch.ts";
import { widerDie } from "./sharpFold.ts";

/** Something to look at before the first hit. */
export interface BrakeRemark {
  readonly id: "throat" | "off-the-punch" | "facets" | "sharp-fold" | "seam-edge" | "others";
  /** The step of the work sheet at which it bites. */
  readonly step: "tooling" | "bend" | "tips" | "shut";
  /** In whole sentences. */
  readonly text: string;
  /** What that step says of it: the same, or that it stands above, where the step comes too late to choose otherwise. */
  readonly atStep: string;
}

type Planned = Pick<BrakePlan, "zones" | "insideRadiusMm" | "leastInsideRadiusMm" | "behind" | "closes">;

/** What is to be chosen before the blank is cut is no advice any more where it is half bent. */
const ABOVE = "see “Look at this first”, before the first hit.";

/** The plate behind the line does not find room, or nobody knows whether it does. */
function throat(asked: PartAsked, behind: BehindPunch | null, brake: PressBrake | undefined): BrakeRemark[] {
  const check = brake && behind && brakeThroat({ ...asked, brake, behind });
  if (!check || check.verdict === "pass" || check.value === null) return [];
  const text = check.advice;
  const atStep =
    check.limit === null
      ? text
      : findsRoom(behind, check.limit)
        ? "Flat it is deeper than the throat: keep to the order of hits."
        : `More plate lies behind than the throat is deep: ${ABOVE}`;
  return [{ id: "throat", step: "tooling", text, atStep }];
}

/** A part that cannot come off as it is drawn: the better way, and what the steps do where it has to stay so. */
function closesWords({ item: { pieces } }: PartAsked, { turnDeg, better, left }: ClosesRound): string {
  const as = pieces === 1 ? "in one piece" : `in ${pieces} pieces`;
  const does = pieces === 1 ? "it" : "a piece";
  const mend = better
    ? `Best in ${better.pieces} pieces, which turn by ${Math.round(better.turnDeg)}° and come off: write ${better.keys} into the part file and print its new sheet; this one is then void`
    : "In no greater number of pieces that its shape takes does it come off";
  return `As drawn, ${as}, it cannot come off this punch: ${does} turns by ${Math.round(turnDeg)}° and closes round it. ${mend}. Only where the foreman keeps it as drawn: the steps below leave ${linesWords(left, pieces)} out, and bend them by hand off the brake.`;
}

/** The bent piece does not lift off the punch. */
function embraces(
  asked: PartAsked,
  closes: ClosesRound | null,
  brake: PressBrake | undefined,
): BrakeRemark[] {
  const { verdict, advice } = offThePunch({ ...asked, brake });
  if (verdict === "pass") return [];
  if (!closes) return [{ id: "off-the-punch", step: "bend", text: advice, atStep: advice }];
  return [
    {
      id: "off-the-punch",
      step: "bend",
      text: closesWords(asked, closes),
      atStep: `It closes round the punch: leave out ${linesWords(closes.left, asked.item.pieces)}.`,
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
  const { say } = asked;
  const [deep, round] = [throat(asked, plan.behind, brake), embraces(asked, plan.closes, brake)];
  const remarks = plan.closes ? [...round, ...deep] : [...deep, ...round];
  const push = (one: Omit<BrakeRemark, "atStep">) => remarks.push({ ...one, atStep: one.text });
  const tight = plan.zones.filter(({ roomForAll }) => !roomForAll);
  if (tight.length > 0) {
    const off = say.length(Math.max(...tight.map(({ facetMm }) => facetMm)));
    push({
      id: "facets",
      step: "tooling",
      text: `The die leaves no room for more hits: the facets stand up to ${off} off the true curve.`,
    });
  }
  if (fold && fold.verdict !== "pass") {
    const wider = widerDie(asked, brake);
    const radius = say.length(plan.insideRadiusMm);
    const least = say.length(plan.leastInsideRadiusMm);
    if (plan.closes)
      push({
        id: "sharp-fold",
        step: "shut",
        text: `A tip folded sharper than ${least} inside may crack: dress it over a bar of that radius or more.`,
      });
    else
      push({
        id: "sharp-fold",
        step: "tips",
        text: `The sharp fold at the tip of a corner over the die of the lines comes out near ${radius} inside, less than the ${least} advised, and may crack: use a wider die there, ${wider}; hits of a few degrees are not in question.`,
      });
  }
  if (plan.zones.some(({ seamDeg }) => seamDeg > 1))
    push({
      id: "seam-edge",
      step: "bend",
      text: "At a seam edge on a curve no punch bends the last half space: pre-bend it over a bar, or draw it in when the seam is tacked.",
    });
  const others = checks.filter(({ id, verdict }) => verdict === "caution" && !TOLD.has(id));
  if (others.length > 0)
    push({
      id: "others",
      step: "tooling",
      text: `With care too: ${others.map(({ title }) => title).join("; ")}. The part’s page says why.`,
    });
  return remarks;
}

import type { PartAsked } from "../asked.ts";
import type { BrakePlan } from "../brakePlan.ts";
import { linesWords } from "../brakeThroat.ts";
import { COMMON_PRACTICE } from "../judge.ts";
import { lookAt } from "./brakeSetUp.ts";
import { middleLines } from "./foldTips.ts";
import { mm, type PlanStep } from "./step.ts";

/** Closed round, a piece lets no punch into its corners: their tips are dressed over a bar. */
const tipsWords = (plan: BrakePlan): string =>
  ` The punch no longer reaches into its corners: dress the tip of each over the bar too, along its middle line${middleLines(plan)}, from where the bent length ends, until its two flats stand as checked in the next step.`;

/** Does any tip of a corner stay unbent on the brake? */
const hasTips = ({ item }: PartAsked, { lines }: BrakePlan): boolean =>
  item.tightestRadiusMm === null && lines.some(({ stopsShortMm }) => stopsShortMm > 0);

/** What the brake leaves out of a piece that closes round its punch; nothing where every piece comes off. */
export function shutByHand(asked: PartAsked, plan: BrakePlan): PlanStep[] {
  const { item, say } = asked;
  const { closes } = plan;
  if (!closes) return [];
  const left = linesWords(closes.left, item.pieces);
  const bar = say.length(plan.leastInsideRadiusMm);
  return [
    {
      id: "shut",
      phase: "closing",
      title: "Pull shut, and bend the lines left by hand",
      text: `Off the brake: hold a bar, rounded to ${bar} or more, inside along each line left (${left}). Pull the seam edges together with straps or clamps, and dress the plate over the bar from outside, a little at each line in turn, by its angle in the table and the template.${hasTips(asked, plan) ? tipsWords(plan) : ""} Too stiff for that: stop, it has to be made in pieces.`,
      figures: [mm("bar inside, rounded to at least", plan.leastInsideRadiusMm, plan.leastInsideRadiusBasis)],
      cautions: [
        "Pulled shut it is a spring: keep clear of where a strap or clamp would let go.",
        ...lookAt(plan, "shut"),
      ],
      toNote: [],
      basis: COMMON_PRACTICE,
    },
  ];
}

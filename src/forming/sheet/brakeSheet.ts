import type { PartAsked } from "../asked.ts";
import { checkCorners } from "./checkCorners.ts";
import { type LiftAsked, withLifting } from "./lifting.ts";
import { type BrakeEnds, brakeEnds } from "../brakeEnds.ts";
import { isUnlike } from "../brakeDepths.ts";
import type { BrakePlan } from "../brakePlan.ts";
import { COMMON_PRACTICE } from "../judge.ts";
import { isPointed } from "../skin.ts";
import { behindWords, leftWords, orderWords } from "./brakeOrder.ts";
import { brakeSetUp, deeperWords, depthBoxes, GUARDS, lookAt } from "./brakeSetUp.ts";
import { brakeTemplate } from "./brakeTemplates.ts";
import { INSPECT } from "./finish.ts";
import { foldTips, middleLines, reachWords } from "./foldTips.ts";
import { shutByHand } from "./shutByHand.ts";
import { type NumberedStep, numbered, type PlanStep, taped } from "./step.ts";
import { tackBent } from "./tackBent.ts";

/** What becomes of the metal beyond the ends of lines that stop short. */
const TIPS = {
  corner: (lines: string) =>
    `Then fold the tip of each corner along the corner's middle line${lines}. ${reachWords("round end")}`,
  cone: () => "The small end beyond them is drawn in over a bar, by template.",
  point: () =>
    "Next to the point no line can be bent: cut a small end and cap it, or draw the tip in over a bar by template.",
} as const;

/** How a brake bends a part of a line only. */
const shortHits = ({ towards, hand }: BrakeEnds): string =>
  `bend the bent length in the table alone, with a punch no longer than that, or with the ${towards} hung out past the end of punch and die: on your ${hand} while the side of seam edge 1 is behind, on your ${hand === "left" ? "right" : "left"} while that of seam edge 2 is.`;

/** A piece so narrow that no hit finds room over the die. */
const NO_LINES: PlanStep = {
  id: "bend",
  phase: "bending",
  title: "Bring to the template",
  text: "No bend line finds room over this die: bring each piece to its template over a bar, or make the part in fewer pieces.",
  figures: [],
  cautions: [GUARDS],
  toNote: [],
  basis: COMMON_PRACTICE,
};

/** A degree more on every line of a stretch is soon too much: what is missing is shared out. */
function stillFlat({ zones }: BrakePlan): string {
  const most = Math.max(...zones.map(({ hits }) => hits));
  const all = most > 2 ? `, for a degree on each of ${most} lines closes it by ${most}°` : "";
  return `Still too flat: one or two of its lines a degree deeper, then try again${all}.`;
}

function bend(asked: PartAsked, plan: BrakePlan): PlanStep {
  const { item, say } = asked;
  const corners = item.tightestRadiusMm === null;
  const short = Math.max(0, ...plan.lines.map(({ stopsShortMm }) => stopsShortMm));
  const tips =
    plan.closes && corners
      ? "The tips are dressed in the next step."
      : plan.tips
        ? "The tips are folded in the next step."
        : TIPS[corners ? "corner" : isPointed(item) ? "point" : "cone"](middleLines(plan));
  const template = brakeTemplate(asked, plan);
  const ends = brakeEnds(item);
  const look = lookAt(plan, "bend");
  const [room, left] = [behindWords(asked, plan), leftWords(asked, plan)];
  return {
    id: "bend",
    phase: "bending",
    title: "Bend line by line",
    text: `Inside up. Lay each line under the punch by its two ends and bend it by ${plan.depths.some(isUnlike) ? "the depth of its letter, more or less by what stands beside that in the table" : "the depth of its letter as it is"}: at first a degree less deep, by ${deeperWords(asked, plan)}, then, where the template shows it too flat, to the full depth. ${stillFlat(plan)} ${orderWords(plan)}${left.text}${room.text} Try the template after every few hits, over lines already bent. ${template.words}.${short > 0 ? ` Lines that run nearer to each other than half the die opening stop short of the ${ends.towards}, by up to ${say.tape(short)}: ${shortHits(ends)} ${tips}` : ""}`,
    figures: [
      ...left.figures,
      ...room.figures,
      ...(short > 0
        ? [taped(`lines stop short of the ${ends.towards} by up to`, short, "metalforming-step-bending")]
        : []),
      ...template.figures,
    ],
    cautions: [
      GUARDS,
      ...look,
      "A line bent too far is hard to open again: bend its neighbours less, by the template.",
      "Look before each hit that no flange meets ram, punch holder or frame as it swings up.",
    ],
    toNote: depthBoxes(plan, "depth used"),
    basis: COMMON_PRACTICE,
  };
}

/** The numbered work sheet of one part on a press brake. */
export function brakeSheet(asked: LiftAsked, plan: BrakePlan): NumberedStep[] {
  const work =
    plan.lines.length > 0
      ? [
          ...brakeSetUp(asked, plan),
          bend(asked, plan),
          ...foldTips(asked, plan),
          ...shutByHand(asked, plan),
          ...checkCorners(asked, plan),
        ]
      : [NO_LINES];
  return withLifting(asked, numbered([...work, tackBent(asked, plan), INSPECT]));
}

/** How a lot goes through the brake. Nothing for a single blank. */
export function brakeBatch({ item }: PartAsked): string[] {
  const blanks = item.pieces * item.quantity;
  return blanks === 1
    ? []
    : [
        `${blanks} blanks in the lot (${item.quantity} × ${item.pieces}): mark each with its number.`,
        "Bend the first alone, try it against the templates and write down the ram depths; then all others to the same depths.",
      ];
}

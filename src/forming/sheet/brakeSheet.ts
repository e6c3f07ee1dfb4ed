import type { PartAsked } from "../asked.ts";
import { craneOf, type LiftAsked, withLifting } from "./lifting.ts";
import { type BrakeEnds, brakeEnds } from "../brakeEnds.ts";
import type { BrakePlan } from "../brakePlan.ts";
import { fromSeam1 } from "../brakeLines.ts";
import { linesWords, lineWords } from "../brakeThroat.ts";
import { AS_DRAWN, COMMON_PRACTICE, DERIVED } from "../judge.ts";
import { number } from "../say.ts";
import { isPointed } from "../skin.ts";
import { brakeSetUp, depthBoxes, GUARDS, lookAt } from "./brakeSetUp.ts";
import { brakeTemplate, cornerCheck } from "./brakeTemplates.ts";
import { INSPECT } from "./finish.ts";
import { foldTips, middleLines } from "./foldTips.ts";
import { type NumberedStep, numbered, type PlanStep, taped } from "./step.ts";
import { feelerWords } from "./touch.ts";

/** What becomes of the metal beyond the ends of lines that stop short. */
const TIPS = {
  corner: (lines: string) =>
    `At the tip of each corner fold the rest along the corner's middle line${lines}. Short hits, a little at a time, with no depth of their own, until its two flats stand as checked in the next step.`,
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

/** Which way the lines are gone through, and which side is behind: always that of the seam edge that is come from. */
function orderWords({ lines }: BrakePlan): string {
  const pieces = [...new Set(lines.map(({ piece }) => piece))];
  const counts = pieces.map((piece) => lines.filter((one) => one.piece === piece).length);
  const alike = new Set(counts).size === 1;
  const [count = 0] = counts;
  const behind = "side behind the punch, towards the frame";
  if (Math.max(...counts) === 1) return `Seam edge 1 and its ${behind}.`;
  const [first, then] = alike
    ? [` (lines 1 to ${fromSeam1(count)})`, ` (lines ${count} to ${fromSeam1(count) + 1})`]
    : ["", ""];
  return `Go from seam edge 1 to the middle${first}, that edge’s ${behind}; then turn the piece and go from seam edge 2${then}, its side behind.`;
}

/** How deep plate reaches behind the punch at most, and for which lines the piece is turned once more. */
function behindWords(
  { item, say }: PartAsked,
  { behind, throatMm }: BrakePlan,
): Pick<PlanStep, "text" | "figures"> {
  if (!behind) return { text: "", figures: [] };
  const { inOrder, turned } = behind;
  const other =
    turned.length === 0
      ? ""
      : ` For ${linesWords(turned, item.pieces)} turn it the other way round: there the other side is shallower.`;
  const room =
    throatMm === null
      ? ""
      : ` Plate reaches about ${say.tape(inOrder.depthMm)} behind at most (${lineWords(inOrder, item.pieces)}), in a throat of ${say.shops(throatMm)}.`;
  return {
    text: other + room,
    figures:
      throatMm === null ? [] : [taped("plate behind the punch at most, about", inOrder.depthMm, DERIVED)],
  };
}

function bend(asked: PartAsked, plan: BrakePlan): PlanStep {
  const { item, say } = asked;
  const corners = item.tightestRadiusMm === null;
  const angles = plan.lines.map(({ bendDeg }) => bendDeg);
  const short = Math.max(0, ...plan.lines.map(({ stopsShortMm }) => stopsShortMm));
  const [least, most] = [Math.min(...angles), Math.max(...angles)].map((deg) => `${number(deg, 1)}°`);
  const range = least === most ? least : `${least} to ${most}`;
  const tips = plan.tips
    ? "The tips are folded in the next step."
    : TIPS[corners ? "corner" : isPointed(item) ? "point" : "cone"](middleLines(plan));
  const template = brakeTemplate(asked);
  const ends = brakeEnds(item);
  const look = lookAt(plan, "bend");
  const room = behindWords(asked, plan);
  return {
    id: "bend",
    phase: "bending",
    title: "Bend line by line",
    text: `Inside up. Lay each line under the punch by its two ends and bend it by its own angle in the table (${range}), by the depth of its letter: at first a little less deep, then, where the template shows it too flat, to the full depth. ${orderWords(plan)}${room.text} Try the template after every few hits. ${template.words}.${short > 0 ? ` Lines that run nearer to each other than half the die opening stop short of the ${ends.towards}, by up to ${say.tape(short)}: ${shortHits(ends)} ${tips}` : ""}`,
    figures: [
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
    toNote: depthBoxes(plan, "in the end"),
    basis: COMMON_PRACTICE,
  };
}

/** A part with flats: how its corners are measured before it is tacked. Nothing where it is round all the way. */
function checkCorners(asked: PartAsked, plan: BrakePlan): PlanStep[] {
  if (asked.item.tightestRadiusMm !== null) return [];
  const { turn, flats, figures } = cornerCheck(asked, plan);
  const square =
    "Hold a try square in each corner of the rectangular end, level along its two edges: 90° inside";
  const protractor =
    "Then hold a protractor inside, a leg on each flat beside the corner, and rock it up and down along it: its greatest reading is";
  const notMeasured = "that is their sum, and no angle to measure, because a corner is a cone";
  const wrong =
    "If it reads more, the corner is too open: go over its lines once more, a little deeper, the middle ones first. If it reads less, it is bent too far: stop and ask the foreman before anything is tacked.";
  const said = (flat: string | null, sum: string) =>
    `${square}.${flat === null ? "" : ` ${protractor} ${flat}.`} The hits of a corner add up to ${sum}; ${notMeasured}. ${wrong}`;
  return [
    {
      id: "corners",
      phase: "bending",
      title: "Check the corners",
      text: `${said(flats, turn)} Corners are numbered on the picture of the bend lines, from seam edge 1.`,
      figures,
      cautions: ["The bent piece is springy and tips easily: prop it before anybody reaches in."],
      toNote: plan.zones.map(({ piece, zone, flatsDeg }) => ({
        label: `corner ${zone}${asked.item.pieces > 1 ? ` of piece ${piece}` : ", flats"}`,
        unit: "°",
        ...(flatsDeg !== null && { planned: flatsDeg }),
      })),
      basis: COMMON_PRACTICE,
    },
  ];
}

function tackOf(asked: LiftAsked): PlanStep {
  const { item, say } = asked;
  const { seamGapMm: gapMm = 0, seamLapMm: lapMm = 0, pieces } = item;
  const edges =
    lapMm > 0
      ? `the seam edges over each other by ${say.tape(lapMm)}: seam edge 1 inside, on the lap line, unless the drawing says otherwise`
      : gapMm > 0
        ? `seam edges together to ${feelerWords(gapMm, say)}, by feeler`
        : "seam edges together";
  const left = gapMm > 0 ? " The gap is for the weld: leave it the same from end to end." : "";
  return {
    id: "tack",
    phase: "tack and re-round",
    title: "Tack",
    text: `Stand the ${pieces === 1 ? "piece" : "pieces"} on a drawn outline of the larger end. Bring ${lapMm > 0 ? "" : "the "}${edges}. Set sound tacks from the middle outwards.${left}`,
    figures: gapMm > 0 ? [taped("gap between the seam edges", gapMm, AS_DRAWN)] : [],
    cautions: [
      "Hot work: fire watch and ventilation by local rules.",
      ...(pieces === 1 ? craneOf(asked) : []),
    ],
    toNote: gapMm > 0 ? [{ label: "seam gap, measured", unit: "mm", planned: gapMm }] : [],
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
          ...checkCorners(asked, plan),
        ]
      : [NO_LINES];
  return withLifting(asked, numbered([...work, tackOf(asked), INSPECT]));
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

import { COMMON_PRACTICE, DERIVED } from "../judge.ts";
import type { PlateRoll } from "../machine.ts";
import { isPipe } from "../skin.ts";
import type { RollSheetAsked } from "./asked.ts";
import { closedWords } from "./closed.ts";
import { coneStop } from "./coneStop.ts";
import { GUARDS, heaviestKg, isHeavy } from "./lifting.ts";
import type { PlanStep } from "./step.ts";
import { templateBrief, templateFigures } from "./touch.ts";

type OtherArrangement = Exclude<NonNullable<PlateRoll["arrangement"]>, "initial-pinch">;

/** How each other arrangement goes about it, in its own words. */
interface Way {
  /** Before the blank goes in; not present where the rolls bend the edges themselves. */
  readonly before?: { readonly title: string; readonly text: string };
  /** The rolls out of the way, and where the blank lies before they close on it. */
  readonly open: string;
  readonly laid: string;
  /** How the rolls stand for a cone. */
  readonly tilt: string;
  readonly bend: string;
  /** What is moved in small steps, and where it goes before the direction is changed. */
  readonly closer: string;
  readonly eased: string;
}

const WAYS: Readonly<Record<OtherArrangement, Way>> = {
  pyramid: {
    before: {
      title: "Pre-bend the seam edges",
      text: "Bend both seam edges on the press brake or under a former before the blank goes in: a pyramid leaves them straight for half the distance between its lower rolls. Measure that distance from middle to middle, and bend half of it at each edge",
    },
    open: "Top roll up",
    laid: "its middle under the top roll and its seam edges alike far from it",
    tilt: "Tilt the top roll, or the lower ones, so that they stand closer at the small end",
    bend: "Lower the top roll by a small step, roll to one edge and back to the other, and look",
    closer: "the top roll lower",
    eased: "ease the top roll",
  },
  "double-pinch": {
    open: "Both lower rolls down",
    laid: "one seam edge just past the top roll, square to it",
    tilt: "Tilt the lower rolls for the cone, closer to the top roll at the small end",
    bend: "Pinch the plate near that seam edge, lightly. Raise the other lower roll, the one under the plate, until the edge fits the template: pre-bent. Roll on to the other seam edge, let the two lower rolls change their parts, and pre-bend that one. Then close by small steps, the blank rolled to and fro and never taken out",
    closer: "that lower roll higher",
    eased: "lower the bending roll",
  },
  "four-roll": {
    open: "Both side rolls and the lower roll down",
    laid: "one seam edge square against the far side roll, raised for that and lowered again",
    tilt: "Tilt both side rolls for the cone, higher at the small end; trim the pinch, if it can be, to grip the large end only",
    bend: "Pinch the plate near that seam edge, lightly. Raise the side roll under the plate until the edge fits the template: pre-bent. Roll through and pre-bend the other seam edge by the other side roll. Then close by small steps, the blank rolled to and fro and never taken out",
    closer: "that side roll higher",
    eased: "lower the side roll",
  },
};

function before({ before: one }: Way, asked: RollSheetAsked): PlanStep | null {
  if (!one) return null;
  return {
    id: "pre-bend",
    phase: "set-up",
    title: one.title,
    text: `${one.text}, to the finished part's templates: ${finished(asked)}.`,
    figures: templateFigures(asked.item, 1),
    cautions: ["Hands never between punch and die; the brake's own manual and guards come first."],
    toNote: [{ label: "pre-bent, each edge", unit: "mm" }],
    basis: COMMON_PRACTICE,
  };
}

const finished = ({ item, say }: RollSheetAsked): string => templateBrief(item, say, 1);

function load({ open, laid, tilt }: Way, asked: RollSheetAsked): PlanStep {
  const { item, say } = asked;
  const pipe = isPipe(item);
  const heaviest = heaviestKg(asked);
  return {
    id: "align",
    phase: "set-up",
    title: "Load and align",
    text: `${open}. Lay the blank in (${say.mass(heaviest)}), inside face up towards the top roll${pipe ? "" : ", its small edge tight on the stop"}, ${laid}. Close and lock the yoke by the manual.${pipe ? "" : ` ${tilt}, as the manual has it; note by how much.`}`,
    figures: [{ label: "mass of the heaviest blank", value: heaviest, unit: "kg", basis: DERIVED }],
    cautions: [
      GUARDS,
      `Move the blank by hand only with the rolls stopped. ${isHeavy(asked) ? "Crane or hoist, and support" : "Support it"} on both sides of the rolls.`,
    ],
    toNote: pipe ? [] : [{ label: "tilt set", unit: "mm" }],
    basis: COMMON_PRACTICE,
  };
}

function byTemplate({ bend, eased }: Way, arrangement: OtherArrangement, asked: RollSheetAsked): PlanStep {
  const pipe = isPipe(asked.item);
  return {
    id: "by-template",
    phase: "bending",
    title: `Roll by template (${arrangement})`,
    text: `${bend}. Before the direction is changed ${eased}. ${pipe ? "" : "Keep the element lines parallel to the top roll and the small edge against the stop; if not: stop, ease the rolls, square the plate. "}No settings are given for this arrangement, for which no sound model is known here: go by the finished part's templates (${finished(asked)}) after every step, and by the machine's manual. Note what the scales showed at each step: the next blank goes by it.`,
    figures: templateFigures(asked.item, 1),
    cautions: [
      "Set the rolls closer by small steps only, and while the plate travels; never a large one on standing plate.",
      `Never let an overlap enter between the rolls. Support the rising ${pipe ? "" : "large "}end and keep clear of its swing.`,
    ],
    toNote: [
      { label: "scales, one end", unit: "mm" },
      { label: "scales, other end", unit: "mm" },
    ],
    basis: COMMON_PRACTICE,
  };
}

/** Too little and too much, and one end before the other; a template shows all three. */
function release({ closer }: Way, asked: RollSheetAsked): PlanStep {
  const { item } = asked;
  const pipe = isPipe(item);
  const end = closedWords(asked);
  return {
    id: "close",
    phase: "closing",
    title: item.pieces === 1 ? "Release, measure and close" : "Release and measure",
    text: `Judge it released: rolls eased, the piece supported. Inside templates, square to an element line: ${finished(asked)}. Light at both ends of a template: too open, ${closer} by another small step. Light at its middle: too tight, stop and ask the foreman, for rolling on does not open it.${pipe ? "" : " One end right before the other: more at the open end alone."} ${end.text}. When right, ease the rolls, open the yoke and take it off by the manual.`,
    figures: [...templateFigures(item, 1), ...end.figures],
    cautions: ["Let nobody stand under or inside the piece while it is held only by the rolls."],
    toNote: [...end.toNote],
    basis: COMMON_PRACTICE,
  };
}

/** A short and honest sequence for rolls that we have no settings for: by template all the way. */
export function otherRollSteps(asked: RollSheetAsked, arrangement: OtherArrangement): (PlanStep | null)[] {
  const way = WAYS[arrangement];
  return [
    before(way, asked),
    coneStop(asked),
    load(way, asked),
    byTemplate(way, arrangement, asked),
    release(way, asked),
  ];
}

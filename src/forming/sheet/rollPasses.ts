import { COMMON_PRACTICE, DERIVED } from "../judge.ts";
import { seamOrder } from "../seamOrder.ts";
import { isPipe } from "../skin.ts";
import type { RollSheetAsked } from "./asked.ts";
import { raiseSteps, raiseStepsAgain } from "./raiseSteps.ts";
import { carriedOver } from "./carriedOver.ts";
import { expectedFirst } from "./expectedFirst.ts";
import { firstMeasure } from "./firstMeasure.ts";
import { firstCorrect } from "./firstCorrect.ts";
import { settingBoxes } from "./settingBoxes.ts";
import { settingFigures, settingProblems, settingWords } from "./settingFigures.ts";
import { startAllRound } from "./startAllRound.ts";
import { closedWords, raiseAtEnd, standsOpen } from "./closed.ts";
import { exchangedWords } from "./exchanged.ts";
import { isAskew, keptParallel } from "./keptParallel.ts";
import { ledLast } from "./ledLast.ts";
import { type PlanStep, stepNamed, taped } from "./step.ts";
import { firstByTrials, secondByTrials, secondTold } from "./byTrials.ts";
import { zonesBack, zonesOn } from "./zoneChange.ts";
import { stillOpen } from "./stillOpen.ts";
import { gapWindows, templateBrief, templateFigures } from "./touch.ts";

/** In short, for the head of the sheet says it whole. */
const RAISE_MOVING = "Raise only while the plate travels; never roll backwards at setting.";
const OVERLAP = "Never let an overlap enter the pinch.";
const rising = ({ item }: RollSheetAsked): string =>
  `Support the rising ${isPipe(item) ? "" : "large "}end; keep clear of its swing.`;
const PRESSURE = "Open the pinch first: do not draw the piece out under pinch pressure.";

/** Where a zone has its own setting: with trials the boxes hold what those say. */
const ownSetting = ({ tried }: RollSheetAsked): string =>
  tried ? "in the table of settings" : "in the boxes";

function raise(asked: RollSheetAsked): PlanStep {
  const { settings, noSettings, say } = asked;
  const words = settings && settingWords(settings, "trial", { say, zoneBy: ownSetting(asked) });
  const expected = expectedFirst(asked);
  const plan: PlanStep = {
    id: "first-raise",
    phase: "first pass",
    title: "Raise for the first pass",
    text: words
      ? `With the plate moving raise to ${words}. ${raiseSteps(asked, startAllRound(asked, "trial"))} The first trial stays short on purpose${expected.text}.`
      : `With the plate moving raise in small steps, try the template, and raise again${noSettings === null ? "" : ` (${noSettings})`}.`,
    figures: settings
      ? [
          ...settingFigures(settings, "trial"),
          ...expected.figures,
          taped("whole raise on before the plate has gone", settings.flat.acrossMm, DERIVED),
        ]
      : [],
    cautions: [RAISE_MOVING, ...(settings ? settingProblems(settings, "trial", say) : [])],
    toNote: settingBoxes(asked, "trial"),
    basis: settings ? DERIVED : COMMON_PRACTICE,
  };
  return firstByTrials(asked, plan, raiseSteps(asked, null));
}

function through(asked: RollSheetAsked): PlanStep {
  const { settings, say } = asked;
  const arm = settings?.flat.acrossMm;
  const order = seamOrder(asked);
  const parallel = keptParallel(asked);
  return {
    id: "first-through",
    phase: "first pass",
    title: "Roll from seam edge to seam edge",
    text: `Roll on. ${parallel.text} The leading end stays straight${arm === undefined ? "" : ` for about ${say.tape(arm)}`}, then open as far as the chalk had gone: the second pass bends both. ${zonesOn(asked)}Stop before ${order.second} leaves the pinch.`,
    figures: [
      ...(arm === undefined ? [] : [taped("straight lead, about", arm, DERIVED)]),
      ...parallel.figures,
    ],
    cautions: [rising(asked)],
    toNote: [
      { label: "chalk gone, all raise on", unit: "mm" },
      { label: "straight lead, measured", unit: "mm" },
    ],
    basis: COMMON_PRACTICE,
  };
}

/** The first of two passes. */
export const firstPassSteps = (asked: RollSheetAsked): (PlanStep | null)[] => [
  raise(asked),
  through(asked),
  firstMeasure(asked),
  firstCorrect(asked),
];

/** How a piece between its passes comes off the top roll: sideways, where that goes between its seam edges at both ends. */
function wayOff(asked: RollSheetAsked): string {
  const { roll, say } = asked;
  const gaps = gapWindows(asked);
  const over = "over the drop end, yoke open";
  const top = `the top roll${roll ? ` (${say.length(roll.rolls.topDiameter)})` : ""}`;
  // What is past the window is still to be taken off, down to the cap.
  const narrowest = Math.min(...gaps.map(({ capMm }) => capMm));
  if (!roll || gaps.length === 0)
    return `sideways, ${top} coming out between the seam edges if wider at both ends; else ${over}`;
  return narrowest > roll.rolls.topDiameter
    ? `sideways, ${top} coming out between the seam edges, which stand further apart; or ${over}`
    : `${over}: the seam edges may stand nearer than ${top} is thick`;
}

const allOf = ({ pieces, quantity }: RollSheetAsked["item"]): string =>
  pieces * quantity === 2 ? "both blanks" : `all ${pieces * quantity} blanks`;

function turnRound(asked: RollSheetAsked): PlanStep[] {
  const { item, settings, say } = asked;
  const pipe = isPipe(item);
  const lot = item.pieces * item.quantity > 1;
  const stopMm = settings?.stopMm ?? null;
  const order = seamOrder(asked);
  return [
    {
      id: "unload",
      phase: "turning the job round",
      title: "Unload",
      text: `Lower the bending roll, open the pinch and take the piece off by the manual: ${wayOff(asked)}.${lot && !pipe ? ` Make the first pass of ${allOf(item)} of the lot before the stop is moved.` : ""}`,
      figures: [],
      cautions: [PRESSURE],
      toNote: [],
      basis: COMMON_PRACTICE,
    },
    {
      id: "turn",
      phase: "turning the job round",
      title: "Turn the job round",
      text: pipe
        ? `Turn the piece end for end so that ${order.second} leads. Lower the bending roll and set it parallel again; close and lock the yoke.`
        : `Move the stop to the fixed end of the rolls${stopMm === null ? "" : `, as far in as before: ${say.tape(stopMm)}`}. Set the bending roll down and parallel; the readings at 0 stay, the small edge's bearing is now the one at the fixed end. Put the piece back round the top roll bent as it is (never flattened), the inside up and the small edge on the stop: now ${order.second} lies ahead. Bring that edge over the lowered bending roll, ${isAskew(asked) ? `laid as in ${stepNamed("align")}` : "square to the rolls"}; close and lock the yoke, pinch as before.`,
      figures: [],
      cautions: [
        `The piece is springy and awkward now: slings so that it cannot roll or spring open.${pipe ? "" : " It must not strike the machine at this end either: watch the first turn by hand jog."}`,
      ],
      toNote: pipe
        ? []
        : [{ label: "stop from fixed end", unit: "mm", ...(stopMm === null ? {} : { planned: stopMm }) }],
      basis: COMMON_PRACTICE,
    },
  ];
}

/** How soon it is to be on in the second pass; the first has said why. */
const soonAgain = ({ settings, say }: RollSheetAsked): string =>
  settings ? `, again before chalk at the pinch has gone ${say.tape(settings.flat.acrossMm)}` : "";

function second(asked: RollSheetAsked): PlanStep {
  const { item, settings, say } = asked;
  const carries = !secondTold(asked);
  const words =
    settings &&
    settingWords(settings, "finished", { say, zoneBy: carries ? "in the boxes" : ownSetting(asked) });
  // Trials have it all in them already: what was carried over by hand on top of that would be counted twice.
  const carried: ReturnType<typeof carriedOver> = carries ? carriedOver(asked) : { text: "", figures: [] };
  const order = seamOrder(asked);
  return {
    id: "second-raise",
    phase: "second pass",
    title: "Raise for the second pass",
    text: words
      ? `${carried.text}${carried.text === "" ? "With the plate moving" : "Then, with the plate moving,"} raise towards ${words}, ${raiseStepsAgain(asked, startAllRound(asked, "finished"))}${soonAgain(asked)}. Roll from ${order.second} to the other${item.cone ? ` as in ${stepNamed("first-through")}` : ""}, and stop before that leaves the pinch.${zonesBack(settings, order)}`
      : `With the plate moving raise in small steps, a little tighter than the first pass, and roll from ${order.second} to the other.`,
    figures: settings
      ? [
          ...settingFigures(settings, "finished"),
          taped("whole raise on before the plate has gone", settings.flat.acrossMm, DERIVED),
          ...carried.figures,
        ]
      : [],
    cautions: [RAISE_MOVING, rising(asked), ...(settings ? settingProblems(settings, "finished", say) : [])],
    toNote: settingBoxes(asked, "finished", carried.model !== undefined),
    ...(carried.model && { model: carried.model }),
    basis: settings ? DERIVED : COMMON_PRACTICE,
  };
}

function close(asked: RollSheetAsked): PlanStep {
  const { item, say } = asked;
  const more = stillOpen(asked);
  const end = closedWords(asked);
  const templates = templateFigures(item, 1);
  const led = ledLast(asked);
  return {
    id: "close",
    phase: "closing",
    title: item.pieces === 1 ? "Close" : "Bring to the template",
    text: `${end.text}. Judge it released, as in ${stepNamed("first-measure")}. Inside templates, square to an element line: ${templateBrief(item, say, 1)}.${led.text}${more.text}${item.pieces === 1 ? " It will not close: stop." : ""} When right, lower the bending roll, open pinch and yoke, take it off.`,
    figures: [...templates, ...led.figures, ...end.figures, ...more.figures],
    cautions: item.pieces === 1 ? [OVERLAP] : [],
    toNote: [...raiseAtEnd(asked), ...end.toNote],
    basis: COMMON_PRACTICE,
  };
}

/** A piece is not brought round as a part is once it is tacked: what led in the second pass goes through last. */
function lastEdge(asked: RollSheetAsked): PlanStep | null {
  const { item, say, settings, roll } = asked;
  if (item.pieces === 1) return null;
  const { first, second: led } = seamOrder(asked);
  const stands = standsOpen(item, say);
  const pipe = isPipe(item);
  const scales = !pipe && settings !== null && roll?.bearings !== undefined;
  const moved = !pipe && settings && roll ? exchangedWords(settings, roll, say) : { text: "", figures: [] };
  return {
    id: "last-edge",
    phase: "closing",
    title: "Bend the edge that led last",
    text: `All pieces: turn each round once more (${pipe ? "" : "stop at the drop end, "}${first} ahead). With the plate moving raise ${pipe ? `to the last of ${stepNamed("close")}` : scales ? `each end to its own 0 plus the other's last raise (its scale less its 0)${moved.text}` : `to the last of ${stepNamed("close")}, its raises exchanged`}; roll through, stop before ${led} leaves the pinch. Templates now fit up to it${stands.text}${stands.text === "" ? "" : "; wider: raise a little more"}.`,
    figures: [...moved.figures, ...stands.figures],
    cautions: [RAISE_MOVING, rising(asked)],
    toNote: stands.toNote,
    basis: DERIVED,
  };
}

/** Turning the job round, the second pass, and closing. */
export const secondPassSteps = (asked: RollSheetAsked): (PlanStep | null)[] => [
  ...turnRound(asked),
  secondByTrials(asked, second(asked)),
  close(asked),
  lastEdge(asked),
];

import { isTurnedRound } from "../stopRoom.ts";
import type { RollSheetAsked } from "./asked.ts";
import { finishRolled, INSPECT } from "./finish.ts";
import { withLifting } from "./lifting.ts";
import { otherRollSteps } from "./otherRolls.ts";
import { firstPassSteps, secondPassSteps } from "./rollPasses.ts";
import { edges, rollSetUp } from "./rollSetUp.ts";
import { type NumberedStep, numbered } from "./step.ts";

/** The numbered work sheet of one part on a plate roll, or on such a roll in general. */
export function rollSheet(asked: RollSheetAsked): NumberedStep[] {
  const arrangement = asked.roll?.arrangement ?? "initial-pinch";
  const rolled =
    arrangement === "initial-pinch"
      ? [...rollSetUp(asked), ...firstPassSteps(asked), ...secondPassSteps(asked)]
      : [edges(asked), ...otherRollSteps(asked, arrangement)];
  return withLifting(asked, numbered([...rolled, ...finishRolled(asked), INSPECT]));
}

/** What the blanks of a lot are of the parts that they become, and what is written on each. */
function namedBlanks({ pieces, quantity }: RollSheetAsked["item"], blanks: number): string {
  if (pieces === 1) return `${blanks} blanks, one a part: mark them 1 to ${blanks}.`;
  const share = pieces === 2 ? "its halves" : `its ${pieces} pieces`;
  return quantity === 1
    ? `${blanks} blanks for one part, ${share}: mark them piece 1 to piece ${pieces}.`
    : `${blanks} blanks, ${pieces} for each of ${quantity} parts, ${share}: mark them part and piece, 1.1 to ${quantity}.${pieces}.`;
}

/** How a lot goes through: in which order its blanks are rolled. Nothing for a single blank. */
export function rollBatch({ item, roll }: Pick<RollSheetAsked, "item" | "roll">): string[] {
  const blanks = item.pieces * item.quantity;
  if (blanks === 1) return [];
  if (!isTurnedRound(roll?.arrangement))
    return [
      namedBlanks(item, blanks),
      "The first alone, by template: write down what the scales showed when it fitted.",
      "Then all others towards that in the same small steps, the templates on each (plate of one delivery may differ).",
      "Inspect the first finished one before the last is rolled.",
    ];
  return [
    namedBlanks(item, blanks),
    "The first alone through its first pass: correct the setting on it and write it down.",
    `Then all others, ${item.cone ? "the gap" : "the fit of the templates"} of each on its line of the lot's sheet (plate of one delivery may differ).`,
    "Only then move the stop for the second passes.",
    item.pieces > 1
      ? "Try the templates on the first finished piece before the last is rolled."
      : "Inspect the first finished one before the last is closed.",
  ];
}

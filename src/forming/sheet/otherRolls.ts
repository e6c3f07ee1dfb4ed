import { COMMON_PRACTICE } from "../judge.ts";
import type { PlateRoll } from "../machine.ts";
import { isPipe } from "../skin.ts";
import type { RollSheetAsked } from "./asked.ts";
import { RAISE_MOVING } from "./rollPasses.ts";
import type { PlanStep } from "./step.ts";

type Arrangement = Exclude<NonNullable<PlateRoll["arrangement"]>, "initial-pinch">;

/** How each other arrangement goes about it, in its own words: for a pipe, and what a cone adds. */
const WAYS: Readonly<Record<Arrangement, { readonly way: string; readonly cone: string }>> = {
  pyramid: {
    way: "Pre-bend both seam edges on the press brake or under a former: a pyramid leaves them straight for half the distance of its lower rolls. Centre the blank. Lower the top roll in small steps and roll to and fro until the template fits; change the direction only with the top roll eased",
    cone: "Tilt the top roll (or the lower rolls) so that they stand closer at the small end, hold the small edge back on a stop, and keep the element lines parallel to the top roll",
  },
  "double-pinch": {
    way: "Pinch near one seam edge, raise the roll on that side and pre-bend the edge. Roll on to the other edge, change sides and pre-bend that one. Then close in small steps, without turning the blank round",
    cone: "Tilt the lower rolls for the cone, small edge on the stop, and keep the element lines parallel to the top roll",
  },
  "four-roll": {
    way: "Square the blank against the far side roll, pinch lightly, pre-bend the leading edge with one side roll. Roll through, and pre-bend the trailing edge with the other. Then close in small steps",
    cone: "Tilt both side rolls for the cone, trim the pinch to grip the large end only, and keep the small edge on the stop",
  },
};

/** A short and honest sequence for rolls that we have no settings for: by template all the way. */
export function otherRollSteps({ item }: RollSheetAsked, arrangement: Arrangement): PlanStep[] {
  const { way, cone } = WAYS[arrangement];
  return [
    {
      id: "by-template",
      phase: "first pass",
      title: `Roll by template (${arrangement})`,
      text: `${isPipe(item) ? "" : `${cone}. `}${way}. No settings are given for this arrangement: go by the template at every step, and by the machine's manual.`,
      figures: [],
      cautions: [
        RAISE_MOVING,
        "Never let an overlap enter the pinch. Support the rising end and keep clear of its swing.",
      ],
      toNote: [
        { label: "settings that fitted", unit: "mm" },
        { label: "tilt that fitted", unit: "mm" },
      ],
      basis: COMMON_PRACTICE,
    },
  ];
}

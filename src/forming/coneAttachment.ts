import type { RollAsked } from "./asked.ts";
import type { Check } from "./check.ts";
import { COMMON_PRACTICE, state } from "./judge.ts";
import { isPipe } from "./skin.ts";

/** The small edge has further to go than it travels by itself, so something hard must hold it back: without a stop, no cone. */
export function coneAttachment({ item, roll, say }: RollAsked): Check | null {
  if (isPipe(item)) return null;
  const slide = say.length((item.rimsMm.large - item.rimsMm.small) / item.pieces);
  const words = {
    id: "cone-attachment",
    title: "Cone attachment",
    unit: "-",
    basis: COMMON_PRACTICE,
    rule: "a cone is rolled against a hardened stop that the small edge bears and slides on",
  };
  const attachment = roll.coneAttachment;
  if (!attachment)
    return state({
      ...words,
      verdict: "caution",
      advice: `Not known whether this roll has a stop for the small edge: look, and say in the shop file whether it has one; without one it rolls no cones, for the edge has to slide back by ${slide}.`,
    });
  return attachment.fitted !== false
    ? state({
        ...words,
        verdict: "pass",
        advice: `Dress the small edge smooth and grease the stop: in one pass the large edge runs ${slide} further, and the small one slides on the stop.`,
      })
    : state({
        ...words,
        verdict: "fail",
        advice: `This roll has no stop for the small edge, which has to slide back by ${slide}: use a roll with a cone attachment, or the press brake.`,
      });
}

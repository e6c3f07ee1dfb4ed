import type { PartAsked } from "./asked.ts";
import type { Check } from "./check.ts";
import { COMMON_PRACTICE, judge, state } from "./judge.ts";
import { number } from "./say.ts";
import { isPipe, isPointed } from "./skin.ts";

/** Above this the small edge is marked by the stop, and the straight roll overbends the wall between the ends. [-] */
const MOST = 2.5;

/**
 * Large rim over small rim. While the large edge travels its girth the small edge may only travel its own, so it slides
 * by the difference, π(D − d), along the stop. Asked wherever a cone is rolled, on whichever machine. [-]
 */
export function travelRatio({ item, say }: PartAsked): Check | null {
  if (isPipe(item)) return null;
  const words = {
    id: "travel-ratio",
    title: "Travel of the large edge over that of the small edge",
    sense: "at most" as const,
    unit: "-",
    basis: COMMON_PRACTICE,
    rule: "large rim / small rim ≤ 2.5",
  };
  if (isPointed(item))
    return state({
      ...words,
      verdict: "caution",
      advice: `There is no small edge to bear on the stop: a cone to a point is usually rolled with a small end and capped, or formed on the press brake.`,
    });
  const { large, small } = item.rimsMm;
  const slide = say.length((large - small) / item.pieces);
  return judge({
    ...words,
    value: large / small,
    limit: MOST,
    beyond: "caution",
    advice: (verdict) =>
      verdict === "pass"
        ? `In a pass the large edge runs ${slide} further than the small one, which slides on the stop: grease the stop and keep the edge free of burrs.`
        : `The large edge travels ${number(large / small, 2)} times the small one: expect the stop to mark the small edge (the large one runs ${slide} further) and the middle of the wall to bend too far; add tilt only while a template half way up (mean radius) is not tight, or make two courses.`,
  });
}

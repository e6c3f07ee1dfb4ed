import type { ShopAsked } from "./asked.ts";
import type { Check } from "./check.ts";
import { COMMON_PRACTICE, judge } from "./judge.ts";
import type { Shop } from "./machine.ts";

/** Where a shop states no rule of its own. [kg] */
const HAND_LIFT_KG = 25;

/** Above this a blank is lifted by machine: the shop's own rule, else the usual one. [kg] */
export const handLiftOf = (shop: Shop | undefined): number => shop?.handLiftKg ?? HAND_LIFT_KG;

/** Mass of the heaviest blank against what is lifted by hand. [kg] */
export function handling({ item, shop, say }: ShopAsked): Check | null {
  if (item.blanks.length === 0) return null;
  const value = Math.max(...item.blanks.map(({ massKg }) => massKg));
  const own = shop?.handLiftKg;
  const mass = say.mass(value);
  return judge({
    id: "handling",
    title: "Mass of a blank",
    value,
    limit: handLiftOf(shop),
    sense: "at most",
    unit: "kg",
    beyond: "caution",
    basis: COMMON_PRACTICE,
    rule:
      own === undefined
        ? `heaviest blank ≤ ${say.mass(HAND_LIFT_KG)}, where the shop has no rule of its own`
        : "heaviest blank ≤ the shop's own rule",
    advice: (verdict) =>
      verdict === "pass"
        ? `A blank of ${mass} may be carried by hand, with gloves: its edges are sharp.`
        : `A blank of ${mass} is lifted by crane or hoist, and held up at the rolls or the brake while it is formed.`,
  });
}

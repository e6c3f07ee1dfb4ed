import { degrees } from "../geometry/angle.ts";
import type { PartAsked } from "./asked.ts";
import type { Check } from "./check.ts";
import { firstPass } from "./firstPass.ts";
import { DERIVED, judge, state } from "./judge.ts";
import { isPipe } from "./skin.ts";
import { zonesOf } from "./zones.ts";

/**
 * How wide is the cone? The flat blank of a right cone already sweeps sin α of the turn; from 65 % on the usual marks
 * of the first pass lie below the flat plate, and the share of the bend has to be followed instead. [°]
 * Where the wall leans unevenly there is no one setting for it at all.
 */
export function halfAngle({ item, say }: PartAsked): Check | null {
  const words = { title: "Half angle", unit: "°", id: "half-angle" };
  const { cone } = item;
  if (!cone)
    return state({
      ...words,
      title: "Greatest lean of the wall",
      value: degrees(item.leanRad),
      verdict: "caution",
      basis: DERIVED,
      rule: "radius and tilt are the same all round only where both ends share one axis",
      advice:
        zonesOf(item).length === 1
          ? `The wall leans by up to ${say.angle(item.leanRad)} and curves a little unevenly: one setting serves, and re-rounding by the template at each end takes out the rest.`
          : `The wall leans by up to ${say.angle(item.leanRad)} and curves unevenly: mark zones on the blank, set radius and tilt for each, and try each with its template.`,
    });
  if (isPipe(item)) return null;
  const pass = firstPass(cone.halfAngleRad);
  const flat = Math.sin(cone.halfAngleRad);
  return judge({
    ...words,
    value: degrees(cone.halfAngleRad),
    limit: degrees(Math.asin(firstPass(0).from)),
    sense: "at most",
    beyond: "caution",
    basis: DERIVED,
    rule: "sin(half angle), the share of the turn that the flat blank sweeps, ≤ 65 %, where the usual window of the first pass begins",
    advice: (verdict) =>
      verdict === "pass"
        ? `The flat blank already sweeps ${say.percent(flat)} of the turn; the first pass ends between ${say.percent(pass.from)} and ${say.percent(pass.to)}.`
        : `The flat blank already sweeps ${say.percent(flat)} of the turn: go by the share of the bend, end the first pass between ${say.percent(pass.from)} and ${say.percent(pass.to)}, and keep clear of the wide swing of the plate.`,
  });
}

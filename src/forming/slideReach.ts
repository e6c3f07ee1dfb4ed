import type { RollAsked } from "./asked.ts";
import type { Check } from "./check.ts";
import { DERIVED, state } from "./judge.ts";
import { rollSetting, sectionOf } from "./rollSetting.ts";
import { plateOf } from "./springback.ts";
import { zonesOf } from "./zones.ts";

/**
 * Does the slide reach the finished bend of every zone, at both ends? Told only where the model says that it does not: where
 * it reaches, the settings themselves are the answer. The model knows no give, so this is no refusal.
 */
export function slideReach({ item, roll }: RollAsked): Check | null {
  const section = sectionOf(roll);
  if (!section) return null;
  const plate = plateOf(item);
  const radii = zonesOf(item).flatMap(({ largeRadiusMm, smallRadiusMm }) => [largeRadiusMm, smallRadiusMm]);
  const short = radii
    .map((radius) => rollSetting(section, plate, radius))
    .find(({ kind }) => kind !== "setting");
  if (short?.kind !== "refused") return null;
  return state({
    id: "slide-reach",
    title: "Reach of the slide",
    unit: "-",
    verdict: "caution",
    basis: DERIVED,
    rule: "the bending roll on its slide touches the plate bent to the finished radius",
    advice: `By the slide in the shop file the finished bend is ${short.why}: ask the maker of the roll before the part is begun, or check what the shop file says.`,
  });
}

import type { Units } from "../../drawing/format.ts";
import { setting } from "../../forming/rollPlaces.ts";
import { sayIn } from "../../forming/say.ts";
import type { Figure } from "../../forming/sheet/step.ts";
import { withUnit } from "../words/forming.ts";

/** A figure of a step as its sentence has it, so that one is found in the other. */
export function figureWords(
  { value, unit, read, inShop }: Pick<Figure, "value" | "unit" | "read" | "inShop">,
  units: Units,
): string {
  if (unit !== "mm") return withUnit(value, unit, units);
  const say = sayIn(units, inShop);
  const words = read === "scale" ? setting(value, say) : read === "tape" ? say.tape(value) : say.shops(value);
  return words.replaceAll(" ", "\u00a0");
}

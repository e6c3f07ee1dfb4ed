import type { Units } from "../../drawing/format.ts";
import { number, sayIn } from "../../forming/say.ts";

/** What the plan has beside a line to write on, in the unit of its box. */
export function plannedWords(planned: number, unit: string, units: Units): string {
  const say = sayIn(units);
  return unit === "kN" ? say.force(planned) : unit === "°" ? `${number(planned, 1)}°` : say.length(planned);
}

import type { PartAsked } from "../asked.ts";
import type { FormingCase } from "../case.ts";
import { DERIVED } from "../judge.ts";
import { isPipe, isPointed } from "../skin.ts";
import { type Figure, mm } from "./step.ts";

/**
 * How far one corner of an edge cut square to the plate stands over the plane of its end, along the wall: half the thickness
 * times the tangent of the lean; twice as much where the blank has an allowance for it. At the other face it lacks as much,
 * or nothing.
 *
 * @returns [mm]; 0 where nothing is dressed. Where the lean changes round the part, the most of it
 * @see derived here
 */
function standsOverMm(item: FormingCase): number {
  if (item.edges !== "level" || isPipe(item)) return 0;
  return (item.thicknessMm / 2) * Math.tan(item.leanRad) * (item.trimAllowance ? 2 : 1);
}

/** How much is taken off which face at both ends, in few words; empty where nothing is. */
export function dressingWords({ item, say }: PartAsked): string {
  const over = standsOverMm(item);
  if (over === 0) return "";
  const most = item.cone ? "" : "up to ";
  const small = isPointed(item) ? "" : ", the outside of the small end";
  return `${most}${say.length(over)} off the inside of the large end${small}`;
}

export const dressingFigures = (item: FormingCase): Figure[] =>
  standsOverMm(item) > 0 ? [mm("square cut stands over its end plane", standsOverMm(item), DERIVED)] : [];

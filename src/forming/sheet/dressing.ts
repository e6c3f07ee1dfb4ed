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
  const { thicknessMm, leanRad, trimAllowance: allowed = false } = item;
  return standsOver({ thicknessMm, leanRad, allowed });
}

/** The same for any plate and lean. [mm] */
export const standsOver = ({
  thicknessMm,
  leanRad,
  allowed,
}: {
  readonly thicknessMm: number;
  readonly leanRad: number;
  readonly allowed: boolean;
}): number => (thicknessMm / 2) * Math.tan(leanRad) * (allowed ? 2 : 1);

/** Which face of which edge is bevelled, how far, and to where that runs out, in few words; empty where nothing is. */
export function dressingWords({ item, say }: PartAsked): string {
  const over = standsOverMm(item);
  if (over === 0) return "";
  const to = item.trimAllowance ? "the other face" : "half the thickness";
  const off = `${say.length(over)} off along the wall`;
  if (!item.cone)
    return `${isPointed(item) ? "the large end" : "both ends"}, at each line by what stands under the picture of the blank (up to ${off}), running out to nothing at ${to}`;
  const small = isPointed(item) ? "" : ", the small edge on the outside";
  return `the large edge on the inside${small}: there ${off}, running out to nothing at ${to}`;
}

export const dressingFigures = (item: FormingCase): Figure[] =>
  standsOverMm(item) > 0 ? [mm("square cut stands over its end plane", standsOverMm(item), DERIVED)] : [];

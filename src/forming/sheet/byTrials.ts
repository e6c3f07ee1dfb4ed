import { DERIVED } from "../judge.ts";
import { isPipe } from "../skin.ts";
import { placesSaid, type RollPlaces, setting } from "../rollPlaces.ts";
import type { RollSheetAsked } from "./asked.ts";
import type { Figure, PlanStep } from "./step.ts";

/** Where trials of this part say to set the roll. */
function triedFigures({ item }: RollSheetAsked, places: RollPlaces | null): Figure[] {
  if (!places) return [];
  const { largeMm, smallMm, smallBearingMm, largeBearingMm } = places;
  const all = isPipe(item)
    ? [["raise", largeMm] as const]
    : ([
        ["large edge", largeMm],
        ["small edge", smallMm],
        ["bearing beyond the small edge", smallBearingMm],
        ["bearing beyond the large edge", largeBearingMm],
      ] as const);
  return all.flatMap(([place, value]) =>
    value === null
      ? []
      : [
          {
            label: `by this part's own trials, ${place}`,
            value,
            unit: "mm",
            basis: DERIVED,
            read: "scale" as const,
          },
        ],
  );
}

/** The first raise as trials of this part have it. */
export function firstByTrials(asked: RollSheetAsked, step: PlanStep): PlanStep {
  const { tried } = asked;
  if (!tried) return step;
  return {
    ...step,
    text: `By this part's own trials, which come before the plan's start: ${tried.words} Raise in small steps with the plate moving. Without them: ${step.text}`,
    brief: `${tried.brief} Plate moving, in small steps.`,
    figures: [...triedFigures(asked, tried.set), ...step.figures],
  };
}

/** The second raise, once the first pass of a blank of this part ended in its window. */
export function secondByTrials(asked: RollSheetAsked, step: PlanStep): PlanStep {
  const second = asked.tried?.second;
  if (!second) return step;
  const { item, say } = asked;
  const pipe = isPipe(item);
  const large = setting(second.largeMm, say);
  return {
    ...step,
    text: `By this part's own trials, which come before the plan's start: raise in small steps with the plate moving to ${placesSaid({ pipe, say }, second)}, and go on by the templates and the gap. Without them: ${step.text}`,
    brief: `By this part's own trials: plate moving, in small steps, to ${pipe ? large : `${large} at the large edge, the rest in the boxes`}. Roll from seam edge 2.`,
    figures: [...triedFigures(asked, second), ...step.figures],
  };
}

import { seamOrder, zoneOrder } from "../seamOrder.ts";
import { belowZero } from "../belowZero.ts";
import { lowerEndMm, sectionOf } from "../rollSetting.ts";
import { isPipe } from "../skin.ts";
import { placesSaid, type RollPlaces } from "../rollPlaces.ts";
import { listedZones, zoneName } from "../zoneWords.ts";
import type { RollSheetAsked } from "./asked.ts";
import { type Figure, type PlanStep, scaled } from "./step.ts";

/** Where trials of this part say to set the roll. */
function triedFigures({ item }: RollSheetAsked, places: RollPlaces | null, zone = ""): Figure[] {
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
    value === null ? [] : [scaled(`${zone}by this part's own trials, ${place}`, value)],
  );
}

/** The same zone by zone, named as the plan's own figures are. */
function zoneFigures(asked: RollSheetAsked, of: "set" | "second"): Figure[] {
  const zones = asked.settings?.zones ?? [];
  return (asked.tried?.zones ?? []).flatMap((one, i) => {
    const zone = zones[i];
    return zone ? triedFigures(asked, one[of], zoneName(zone, zones.length)) : [];
  });
}

/** Zones whose own number of the plan no longer holds; all of them where nothing is safe to name. */
function overruledIn({ tried, settings }: RollSheetAsked): number[] {
  if (!tried) return [];
  const known = tried.zones.length > 0;
  return (settings?.zones ?? [1]).flatMap((_, i) => {
    const one = tried.zones[i];
    return known && one?.set == null && one?.look !== true ? [] : [i + 1];
  });
}

/** What the numbers beside the lines are, where there are any for the bearings: the words tell them at the edges. */
const scales = ({ toNote }: PlanStep): string =>
  toNote.some(({ planned, onto }) => planned !== undefined && onto !== undefined)
    ? "Set what the boxes here have for the scales."
    : "";

/**
 * The first raise as trials of this part have it. The plan's own start is left to the table of settings: of two numbers in one
 * paragraph the wrong one is set.
 *
 * @param always what holds of every first raise
 */
export function firstByTrials(asked: RollSheetAsked, step: PlanStep, always: string): PlanStep {
  const { tried } = asked;
  if (!tried) return step;
  return {
    ...step,
    text: `By this part's own trials, which overrule the plan's start and were made on an earlier blank: ${[tried.words, ...(tried.look ? [] : [always, scales(step)])].filter((words) => words !== "").join(" ")}`,
    figures: [...triedFigures(asked, tried.set), ...zoneFigures(asked, "set"), ...step.figures],
    overruled: overruledIn(asked),
  };
}

/** Do trials of this part say what the second raise is, or that none is safe: has it all in it that the first pass taught? */
export function secondTold({ tried }: RollSheetAsked): boolean {
  if (!tried) return false;
  const { second, look, zones } = tried;
  return (
    second !== null ||
    look ||
    zones.some((one) => one.second) ||
    (zones.length > 0 && zones.every((one) => one.look))
  );
}

/** Where a bearing stands below 0 in the second pass. */
function lowIn(
  { item, roll, say }: RollSheetAsked,
  seconds: readonly (RollPlaces | null | undefined)[],
): string {
  const section = roll && sectionOf(roll);
  const places = seconds.map((one) => one ?? null);
  return section ? belowZero(say, places, lowerEndMm(section, item.thicknessMm)) : "";
}

const IN_WINDOW =
  "It is for blanks whose first pass ended in its window: one that is past the cap is not rolled on. The plan's own start stands in the table of settings.";

/** The second raise, once the first pass of a blank of this part ended in its window. */
export function secondByTrials(asked: RollSheetAsked, step: PlanStep): PlanStep {
  const second = asked.tried?.second;
  const zones = asked.tried?.zones ?? [];
  const order = seamOrder(asked);
  const from = zoneOrder(order, zones.length, "second");
  const onward = `Roll from ${order.second}${zones.length === 0 || from === "" ? "" : `, zones from ${from}`}`;
  const ready = zones.flatMap((one, i) => (one.second ? [i + 1] : []));
  if (ready.length > 0) {
    const rest = ready.length < zones.length ? "; the others by the plan" : "";
    const held = zones.flatMap((one, i) => (one.second?.held ? [i + 1] : []));
    const high = held.length > 0 ? `; ${listedZones(held)} held back at the plan's own high` : "";
    return {
      ...step,
      text: `By this part's own trials, which overrule the plan's start: ${listedZones(ready)} to their own figures of this step${rest}${high}; raise in small steps, as in the first pass, with the plate moving. ${onward}, and go on by the templates. ${IN_WINDOW}${lowIn(
        asked,
        zones.map((one) => one.second),
      )}`,
      figures: [...zoneFigures(asked, "second"), ...step.figures],
      overruled: ready,
    };
  }
  if (asked.tried?.look || (zones.length > 0 && zones.every(({ look }) => look)))
    return {
      ...step,
      text: `By this part's own trials no second raise is safe to name: first look at what is said at the first raise. ${onward} only after that.`,
      overruled: overruledIn(asked),
    };
  if (!second) return step;
  const { item, say } = asked;
  const pipe = isPipe(item);
  const held = second.held ? " (held back at the plan's own high)" : "";
  return {
    ...step,
    text: `By this part's own trials, which overrule the plan's start: raise in small steps, as in the first pass, with the plate moving to ${placesSaid({ pipe, say }, second)}${held}. ${onward}, and go on by the templates and the gap. ${IN_WINDOW}${lowIn(asked, [second])}`,
    figures: [...triedFigures(asked, second), ...step.figures],
    overruled: [1],
  };
}

import type { RollAsked } from "../asked.ts";
import { byHand } from "../byHand.ts";
import { closedOfGap } from "../closedOfGap.ts";
import { trialModel } from "../trialModel.ts";
import { zoneByHand } from "../zoneByHand.ts";
import { type ZoneModel, zoneModels } from "../zoneModel.ts";
import { down, zoneModelMm } from "./modelTable.ts";

/** A range of the table: what the model asks at its tight end, and by how much the table raises for it. [mm] */
interface Range {
  readonly tightMm: number;
  readonly moreMm: number;
}

/** More would be no table to work by. */
const MOST = 9;

/** How often a roll that follows the model is raised until what comes out lies in the window; null where the table never leads there. */
function raisesFrom(startMm: number, ranges: readonly Range[]): number | null {
  let settingMm = startMm;
  for (let raises = 0; raises <= MOST; raises++) {
    const range = ranges.find(({ tightMm }) => settingMm < tightMm);
    if (!range) return raises;
    const moreMm = down(range.moreMm);
    if (moreMm <= 0) return null;
    settingMm += moreMm;
  }
  return null;
}

function coneRaises(asked: RollAsked): number | null {
  const answer = trialModel(asked);
  if (answer.kind === "none") return null;
  const { cone, leadMm, pass, read } = answer.model;
  const start = pass("trial")?.start;
  if (!start) return null;
  const { largeMm: settingMm, middleMm } = start;
  const ranges = byHand(asked).flatMap(({ toMm, moreMm }): Range[] => {
    if (toMm === null || moreMm <= 0) return [];
    const closed = closedOfGap(asked.item, cone, { gapMm: toMm, leadMm });
    const { modelMm } = read({ settingMm, closed });
    return [{ tightMm: modelMm - (middleMm - settingMm), moreMm }];
  });
  return raisesFrom(settingMm, ranges);
}

function zoneRaises(asked: RollAsked): number | null {
  const answer = zoneModels(asked);
  if (answer.kind === "none") return null;
  const half = asked.item.thicknessMm / 2;
  const setting = (model: ZoneModel, insideMm: number) =>
    zoneModelMm(model, model.zone.largeRadiusMm / (insideMm + half), half) - model.middleHigherMm;
  const all = zoneByHand(asked).map(({ zones, ranges }) => {
    const model = answer.models[(zones[0] ?? 1) - 1];
    if (!model) return null;
    const raising = ranges.flatMap(({ tightMm, moreMm }): Range[] =>
      tightMm === null || moreMm <= 0 ? [] : [{ tightMm: setting(model, tightMm), moreMm }],
    );
    return raisesFrom(model.startMm, raising);
  });
  return all.length === 0 || all.includes(null) ? null : Math.max(...all.map((one) => one ?? 0));
}

/**
 * How many raises by the sheet's own table lead from the plan's first trial into the window, if plate and roll follow the
 * model: the table is careful, and may take more than one.
 *
 * @returns null where there is no table, or where it stops short of the window
 * @see derived here
 */
export const raisesByTable = (asked: RollAsked): number | null =>
  asked.item.cone ? coneRaises(asked) : zoneRaises(asked);

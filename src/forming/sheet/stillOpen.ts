import { TURN } from "../../geometry/angle.ts";
import { MM_PER_INCH } from "../../geometry/units.ts";
import type { RollAsked } from "../asked.ts";
import type { FormingCase } from "../case.ts";
import { insideAcrossMm, takenAtSeamMm } from "../closure.ts";
import { closureOfShare, shareOfClosure } from "../firstPass.ts";
import { DERIVED } from "../judge.ts";
import { seamOrder } from "../seamOrder.ts";
import { isPipe, meanHalfAngleRad } from "../skin.ts";
import { depthOfRadius, straightedgeOf } from "../straightedge.ts";
import { trialModel } from "../trialModel.ts";
import { type ZoneModel, zoneModels } from "../zoneModel.ts";
import type { RollSheetAsked } from "./asked.ts";
import { secondTold } from "./byTrials.ts";
import { modelTables, zoneModelMm } from "./modelTable.ts";
import { oneEndOpen } from "./oneEnd.ts";
import { type Figure, mm, stepNamed } from "./step.ts";

/** The last of the bend, over which the raise is taken to run straight with the gap. [-] */
const LAST_CLOSED = 0.95;
/** One unit of gap on a tape that a raise is told for: 10 mm, or an inch. [mm] */
const TAPE = { mm: 10, in: MM_PER_INCH } as const;
/** One unit of depth under a straightedge: 1 mm, or a sixteenth of an inch. [mm] */
const DEPTH = { mm: 1, in: MM_PER_INCH / 16 } as const;

/** How much more to raise for the gap that the second pass has left, and what to do where the edges have passed each other. */
export function stillOpen(asked: RollSheetAsked): {
  readonly text: string;
  readonly figures: readonly Figure[];
} {
  const { item, roll, say } = asked;
  const { second } = seamOrder(asked);
  const tilt = oneEndOpen(asked);
  const lapped = isLapped(item);
  const past =
    item.pieces === 1
      ? ` Edges ${lapped ? "further " : ""}past each other${lapped ? " than the lap" : ""}: take it off, spring them apart by a spreader, not by rolling on.`
      : "";
  const rest = `${tilt}${past}`;
  const rate = roll && (item.cone ? coneRate({ item, roll, say }) : zoneRate({ item, roll, say }));
  if (!rate)
    return {
      text: ` Not there yet: raise both ends a little more, both alike: lower it, go back to ${second}, raise with the plate moving, roll through.${rest}`,
      figures: [],
    };
  // What a chalk's way adds to it is no bend that is lacking.
  const open = item.cone && item.pieces === 1 && !lapped ? "Templates still open" : "Not there yet";
  const by = `${say.length(rate.moreMm)} for every ${say.length(rate.everyMm)} ${rate.of}`;
  return {
    text: ` ${open}: raise both ends alike${rate.where}, by the model about ${by}. Lower it, go back to ${second}, put half on as the plate moves, roll through.${rate.where === "" ? "" : othersStay(asked)}${rest}`,
    figures: [mm(`raise for every ${say.length(rate.everyMm)} ${rate.of}`, rate.moreMm, DERIVED)],
  };
}

/** What is done with zones that are not to go further, while others are still open. */
function othersStay(asked: RollSheetAsked): string {
  const { item, roll, say } = asked;
  const limited = !secondTold(asked) && roll && modelTables({ item, roll, say }).length > 0;
  return ` The others stay${limited ? `, as does one up by the most of ${stepNamed("second-raise")}` : ""}.`;
}

/** A raise for so much that is still to be closed. [mm] */
interface Rate {
  readonly moreMm: number;
  readonly everyMm: number;
  readonly of: string;
  readonly where: string;
}

const isLapped = ({ seamLapMm = 0 }: FormingCase): boolean => seamLapMm > 0;

/** What of a part in one piece is still to be closed, as a tape tells it. */
const lacking = (item: FormingCase): string =>
  `${isLapped(item) ? "of lap lacking" : item.pieces > 1 ? "of gap too much" : "that it falls further short"}${isPipe(item) ? "" : " at the large end"}`;

/** Inside corner to inside corner at the large end, below 0 where the edges lap. [mm] */
function gapOf(item: FormingCase, halfAngleRad: number, radiusMm: number): (closed: number) => number {
  const { thicknessMm, edges, pieces } = item;
  const rolled = { radiusMm, halfAngleRad, thicknessMm, edges, pieces, seamGapMm: takenAtSeamMm(item) };
  return (closed) => insideAcrossMm({ ...rolled, closed });
}

function coneRate(asked: RollAsked): Rate | null {
  const { item } = asked;
  const answer = trialModel(asked);
  if (answer.kind !== "model") return null;
  const { cone, read } = answer.model;
  const modelMm = (closed: number) => read({ settingMm: 0, closed }).modelMm;
  const gap = gapOf(item, cone.halfAngleRad, cone.largeRadiusMm);
  const everyMm = TAPE[item.units ?? "mm"];
  // By the bend and not by the closure: a wide cone's blank is flat before it is that far open.
  const nearly = closureOfShare({ halfAngleRad: cone.halfAngleRad, share: LAST_CLOSED });
  const moreMm = (everyMm * (modelMm(1) - modelMm(nearly))) / (gap(nearly) - gap(1));
  if (!(moreMm > 0 && Number.isFinite(moreMm))) return null;
  return { moreMm, everyMm, of: lacking(item), where: "" };
}

/**
 * The same where the skin is curved unevenly: all zones alike, by the zone that asks least for it. A skin that closes on
 * itself is told by its gap, that of the right cone of the same rims and mean slant; a piece of it by its depth under the
 * straightedge.
 */
function zoneRate(asked: RollAsked): Rate | null {
  const { item, say } = asked;
  const answer = zoneModels(asked);
  if (answer.kind === "none") return null;
  const { models } = answer;
  const halfAngleRad = meanHalfAngleRad(item);
  const share = shareOfClosure({ halfAngleRad, closed: LAST_CLOSED });
  if (share === null) return null;
  const half = item.thicknessMm / 2;
  const raise = (model: ZoneModel) => zoneModelMm(model, 1, half) - zoneModelMm(model, share, half);
  const where = models.length > 1 ? ", only in zones that their templates show open" : "";
  if (item.pieces === 1) {
    const gap = gapOf(item, halfAngleRad, item.rimsMm.large / TURN);
    const everyMm = TAPE[item.units ?? "mm"];
    const moreMm = (everyMm * Math.min(...models.map(raise))) / (gap(LAST_CLOSED) - gap(1));
    // Beyond what the roll bends the model knows no difference.
    return moreMm > 0 ? { moreMm, everyMm, of: lacking(item), where } : null;
  }
  const chordMm = straightedgeOf(asked);
  if (chordMm === null) return null;
  const everyMm = DEPTH[item.units ?? "mm"];
  const rates = models.map((model) => {
    const depth = (of: number) => depthOfRadius({ chordMm, insideMm: model.zone.largeRadiusMm / of - half });
    return (everyMm * raise(model)) / (depth(1) - depth(share));
  });
  const moreMm = Math.min(...rates);
  const of = `of depth lacking under a straightedge of ${say.length(chordMm)} at the large end`;
  return moreMm > 0
    ? { moreMm, everyMm, of, where: models.length > 1 ? " in the zone that is open" : "" }
    : null;
}

import type { RollAsked } from "../asked.ts";
import { endRolled } from "../closure.ts";
import type { FirstPass } from "../firstPass.ts";
import type { PassSettings } from "../passSettings.ts";
import { depthOfRadius, straightedgeOf } from "../straightedge.ts";
import { trialModel } from "../trialModel.ts";
import { type ZoneModel, zoneModels } from "../zoneModel.ts";
import { alikeNumbers } from "../zoneWords.ts";

/** What the model asks at the large edge, at the tilt of the first trial, for what came out at the large end. [mm] */
interface ModelSetting {
  /** Gap between the inside corners; null where the skin is curved unevenly. */
  readonly gapMm: number | null;
  /** Inside radius square to the element, and its depth under the straightedge; null where a gap tells. */
  readonly insideMm: number | null;
  readonly depthMm: number | null;
  readonly largeMm: number;
}

/** The model's settings for one setting of the plan. */
export interface ModelTable {
  /** Counted from 1; none where a gap tells all round. */
  readonly zones: readonly number[];
  /** Straightedge that the depths are told for; null where there are none. [mm] */
  readonly chordMm: number | null;
  /** For what lies at the open end, in the middle and at the tight end of the first pass's window, and at the cap: so far a blank is kept. */
  readonly at: readonly ModelSetting[];
  /** Planned at the large edge for the second pass, and no more on top of it than this: so far goes the plan's own high. [mm] */
  readonly plannedMm: number;
  readonly mostMm: number;
}

/** Down to a tenth of a millimetre, as a roll is set: what is not to be passed is never rounded up. */
export const down = (mm: number): number => Math.floor(mm * 10) / 10;

/** Planned for the closed part, and how far the plan's own high lies above it at both ends; null where it has no start. */
function finishedOf(pass: PassSettings | undefined): Pick<ModelTable, "plannedMm" | "mostMm"> | null {
  if (!pass?.start) return null;
  const { start, large, small } = pass;
  const above = (highMm: number | null, mm: number) => (highMm ?? mm) - mm;
  const mostMm = Math.min(above(large.highMm, start.largeMm), above(small.highMm, start.smallMm));
  return { plannedMm: start.largeMm, mostMm: Math.max(0, mostMm) };
}

/** What the first pass may leave of a blank that is kept for the second, most open first. */
const told = ({ from, to, cap }: FirstPass): readonly number[] => [from, (from + to) / 2, to, cap];

function gapTable(asked: RollAsked): ModelTable[] {
  const answer = trialModel(asked);
  if (answer.kind === "none") return [];
  const { cone, window, leadMm, pass, read } = answer.model;
  const start = pass("trial")?.start;
  const finished = finishedOf(pass("finished"));
  if (!start || !finished) return [];
  const at = told(window).map((closed) => ({
    gapMm: endRolled(asked.item, cone, { radiusMm: cone.largeRadiusMm, closed, leadMm }).insideGapMm,
    insideMm: null,
    depthMm: null,
    largeMm: read({ settingMm: start.largeMm, closed }).modelMm - (start.middleMm - start.largeMm),
  }));
  return [{ zones: [], chordMm: null, at, ...finished }];
}

function zoneTable(asked: RollAsked): ModelTable[] {
  const answer = zoneModels(asked);
  if (answer.kind === "none") return [];
  const { models, window } = answer;
  const chordMm = straightedgeOf(asked);
  const half = asked.item.thicknessMm / 2;
  const tables = alikeNumbers(models.map(({ zone }) => zone)).map((zones): ModelTable | null => {
    const model = models[(zones[0] ?? 1) - 1];
    const finished = finishedOf(model?.pass("finished"));
    if (!model || !finished) return null;
    const at = told(window).map((share) => {
      const insideMm = model.zone.largeRadiusMm / share - half;
      return {
        gapMm: null,
        insideMm,
        depthMm: chordMm === null ? null : depthOfRadius({ chordMm, insideMm }),
        largeMm: zoneModelMm(model, share, half) - model.middleHigherMm,
      };
    });
    return { zones, chordMm, at, ...finished };
  });
  const whole = tables.filter((one) => one !== null);
  // One zone without its numbers, and nobody would know whose they are.
  return whole.length === tables.length ? whole : [];
}

/** The model's setting at half the slant for a zone bent to this share of its finished bend at both ends. [mm] */
export function zoneModelMm(model: ZoneModel, share: number, halfThicknessMm: number): number {
  const { largeRadiusMm, smallRadiusMm } = model.zone;
  const inside = (radiusMm: number) => radiusMm / share - halfThicknessMm;
  return model.settingFor({ largeMm: inside(largeRadiusMm), smallMm: inside(smallRadiusMm) });
}

/**
 * What the model asks for the most open, the middle and the tightest of the first pass's window, and for its cap; between them it runs all
 * but straight. By how much a roll was set over or under it, the second pass is moved.
 *
 * @returns nothing where there is no model to compare with
 * @see derived here
 */
export const modelTables = (asked: RollAsked): ModelTable[] =>
  asked.item.cone ? gapTable(asked) : zoneTable(asked);

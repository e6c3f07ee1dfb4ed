import { MM_PER_INCH } from "../geometry/units.ts";
import type { RollAsked } from "./asked.ts";
import type { FormingCase } from "./case.ts";
import type { PlateRoll } from "./machine.ts";
import { depthOfRadius, straightedgeOf } from "./straightedge.ts";
import { careful } from "./trialCorrection.ts";
import { LEAST_SLOPE } from "./trialSlope.ts";
import { alikeNumbers } from "./zoneWords.ts";
import { type ZoneModel, zoneModels } from "./zoneModel.ts";

/** One range of what may come out of a zone, and what is done. Most open first. */
interface ZoneRange {
  /** Inside radius at the large end: the most open of the range; null: any more open, and what sprang back flat. [mm] */
  readonly openMm: number | null;
  /** The tightest; null: any tighter. [mm] */
  readonly tightMm: number | null;
  /** The same as depths under the straightedge; null where there is none, and beyond an end of the table. [mm] */
  readonly openDepthMm: number | null;
  readonly tightDepthMm: number | null;
  /** Raise both ends by so much from where they were set; 0 to leave it, below 0 for the next blank. [mm] */
  readonly moreMm: number;
}

/** Correcting without a screen the zones of one setting. */
export interface ZoneByHand {
  /** Counted from 1; those that are set alike. */
  readonly zones: readonly number[];
  /** Straightedge that the depths are told for; null where none is short enough. [mm] */
  readonly chordMm: number | null;
  /** The plan's own high at the large edge: no raise by the table goes past it. [mm] */
  readonly highMm: number;
  readonly ranges: readonly ZoneRange[];
}

/** Ranges with a raise, that for whatever is more open still included. */
const MOST_RANGES = 3;
/** Less than this share of the bend at the start of the window has hardly bent, and needs no range of its own. [-] */
const HARDLY = 0.25;
const HALVINGS = 50;
/** Radii are round numbers, as templates are marked: 10 mm, or half an inch. [mm] */
const ROUND = { mm: 10, in: MM_PER_INCH / 2 } as const;
/** A roll is set to a tenth of a millimetre at the best. [mm] */
const SET_TO_MM = 0.1;

/** Steps that measure, correct and carry over ask for the same tables of the same roll. */
const known = new WeakMap<
  FormingCase,
  { readonly roll: PlateRoll; readonly tables: readonly ZoneByHand[] }
>();

/** As much as a zone that came out with this inside radius at the large end wants, both ends bent alike; null: sprang back flat. */
function moreOf(model: ZoneModel, insideAt: (end: "large" | "small") => number | null): number {
  const { startMm: settingMm, aim, large, small, number: zone } = model;
  const [largeMm, smallMm] = [insideAt("large"), insideAt("small")];
  const read = model.read(
    largeMm === null || smallMm === null
      ? { zone, settingMm, flat: true }
      : { zone, settingMm, largeMm, smallMm },
  );
  const wanted = careful(read, aim) - settingMm;
  const ends = [
    [read.largeModelMm, large.capMm],
    [read.smallModelMm, small.capMm],
  ] as const;
  const room = ends.flatMap(([at, capMm]) => (at === null ? [] : [LEAST_SLOPE * (capMm - at)]));
  return Math.min(wanted, ...room);
}

/**
 * Radii that part what is more open than the window: from the first range one raise comes into it, from the second two, and so
 * on, as far as the plate follows the model. A raise is as large as the tightest of its range bears, so no range is longer
 * than what its own raise and those after it make good. Most open first. [mm]
 */
function partedBy({
  model,
  openMm,
  unit,
  more,
  insideAt,
}: {
  model: ZoneModel;
  openMm: number;
  unit: number;
  more: (insideMm: number) => number;
  /** Inside radius for a share of the bend at the start of the window. [mm] */
  insideAt: (share: number) => number;
}): number[] {
  const half = model.thicknessMm / 2;
  const { largeRadiusMm, smallRadiusMm } = model.zone;
  const setFor = (largeMm: number) => {
    const smallMm = (smallRadiusMm * (largeMm + half)) / largeRadiusMm - half;
    return model.settingFor({ largeMm, smallMm });
  };
  const atWindow = setFor(openMm);
  const radii: number[] = [];
  let reach = 0;
  while (radii.length < MOST_RANGES - 1) {
    // What is read off the table is set to a tenth, and down.
    reach += more(radii[0] ?? openMm) - SET_TO_MM;
    let [open, tight] = [insideAt(HARDLY), openMm];
    if (!(atWindow - setFor(open) > reach)) break;
    for (let i = 0; i < HALVINGS; i++) {
      const at = (open + tight) / 2;
      if (atWindow - setFor(at) > reach) open = at;
      else tight = at;
    }
    const radius = unit * Math.floor(tight / unit);
    if (radius <= (radii[0] ?? openMm)) break;
    radii.unshift(radius);
  }
  return radii;
}

/**
 * The first correction of an uneven skin as a table, for every setting of the plan: for ranges of the inside radius at the
 * large end, most open first, how much more to raise both ends, by one trial alone, as much as the tightest of the range
 * wants, never further than the liveliest machine may go below the cap, and never more than a more open zone gets. It
 * serves after every trial, from the last setting: where the plate follows the model, the range next to the window comes into
 * it by one raise, the one before by two. The last but one range is the window, the last what is bent further.
 *
 * @returns nothing where there is no model to correct by
 * @see derived here
 */
export function zoneByHand(asked: RollAsked): readonly ZoneByHand[] {
  const { item, roll } = asked;
  const before = known.get(item);
  if (before?.roll === roll) return before.tables;
  const tables = tablesOf(asked);
  known.set(item, { roll, tables });
  return tables;
}

function tablesOf(asked: RollAsked): ZoneByHand[] {
  const { item } = asked;
  const answer = zoneModels(asked);
  if (answer.kind === "none") return [];
  const { models, window } = answer;
  const half = item.thicknessMm / 2;
  const chordMm = straightedgeOf(asked);
  const unit = ROUND[item.units ?? "mm"];
  return alikeNumbers(models.map(({ zone }) => zone)).flatMap((zones) => {
    const model = models[(zones[0] ?? 1) - 1];
    if (!model) return [];
    const { largeRadiusMm, smallRadiusMm } = model.zone;
    const inside = (share: number) => largeRadiusMm / share - half;
    const more = (largeMm: number) => {
      const share = largeRadiusMm / (largeMm + half);
      return moreOf(model, (end) => (end === "large" ? largeMm : smallRadiusMm / share - half));
    };
    const [openMm, tightMm] = [inside(window.from), inside(window.to)];
    const radii = partedBy({ model, openMm, unit, more, insideAt: (share) => inside(share * window.from) });
    const depth = (radius: number | null) =>
      radius === null || chordMm === null ? null : depthOfRadius({ chordMm, insideMm: radius });
    const range = (from: number | null, to: number | null, moreMm: number): ZoneRange => ({
      openMm: from,
      tightMm: to,
      openDepthMm: depth(from),
      tightDepthMm: depth(to),
      moreMm,
    });
    const roomMm = model.aim.highMm - model.startMm;
    let mostMm = Math.max(
      0,
      Math.min(
        moreOf(model, () => null),
        roomMm,
      ),
    );
    const raises: ZoneRange[] = [];
    for (const to of [...radii, openMm]) {
      const moreMm = Math.max(0, Math.min(mostMm, more(to)));
      // Held to the same raise, as close as a roll is set, two ranges are one, by the lower.
      const last = raises.at(-1);
      const same = last !== undefined && last.moreMm - moreMm < SET_TO_MM;
      if (same) raises.pop();
      raises.push(range(same ? last.openMm : (last?.tightMm ?? null), to, moreMm));
      mostMm = moreMm;
    }
    return [
      {
        zones,
        chordMm,
        highMm: model.aim.highMm,
        ranges: [
          ...raises,
          range(openMm, tightMm, 0),
          range(tightMm, null, Math.min(0, more(inside(window.cap)))),
        ],
      },
    ];
  });
}

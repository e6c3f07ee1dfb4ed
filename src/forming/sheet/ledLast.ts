import { TURN } from "../../geometry/angle.ts";
import { endRolled } from "../closure.ts";
import { isGapTold } from "../gapTold.ts";
import { DERIVED } from "../judge.ts";
import { seamOrder } from "../seamOrder.ts";
import { isPipe } from "../skin.ts";
import type { RollSheetAsked } from "./asked.ts";
import { type Figure, mm, stepNamed, taped } from "./step.ts";
import { sharesOf, templateRadius } from "./touch.ts";

interface Told {
  readonly text: string;
  readonly figures: readonly Figure[];
}

/** A strip that kept a gentler bend than it is to have. [mm] */
interface Strip {
  readonly arcMm: number;
  readonly gentleMm: number;
  readonly tightMm: number;
}

/** Where an arc as long as the strip ends: along the direction that it leaves in, and off it. [mm] */
function stripEnd({ arcMm }: Strip, radiusMm: number): readonly [number, number] {
  if (!Number.isFinite(radiusMm)) return [arcMm, 0];
  const turn = arcMm / radiusMm;
  return [radiusMm * Math.sin(turn), radiusMm * (1 - Math.cos(turn))];
}

/**
 * How far a strip that kept a gentler bend stands off where the finished one would have brought its end: two arcs of one
 * length that leave one place in one direction.
 *
 * @returns [mm]
 * @see derived here
 * @example standsOffMm({ arcMm: 100, gentleMm: Infinity, tightMm: 500 }) // → 9.98889383
 */
export function standsOffMm(strip: Strip): number {
  const [gentle, tight] = [stripEnd(strip, strip.gentleMm), stripEnd(strip, strip.tightMm)];
  return Math.hypot(gentle[0] - tight[0], gentle[1] - tight[1]);
}

/**
 * How far apart the edges of a piece stand, straight across, while a strip at one of them has kept a gentler bend.
 *
 * @param turn that the finished piece sweeps [rad]; arc length of the strip, and both radii [mm]
 * @returns [mm]
 * @see derived here
 * @example edgesApartMm({ turnRad: Math.PI, arcMm: 0, gentleMm: 900, tightMm: 500 }) // → 1000
 */
export function edgesApartMm({ turnRad, ...strip }: Strip & { readonly turnRad: number }): number {
  const { arcMm, tightMm } = strip;
  const [along, off] = stripEnd(strip, strip.gentleMm);
  // The strip begins where the tight arc, from the origin along x and turning towards y, has turned so far.
  const turned = turnRad - arcMm / tightMm;
  const [cos, sin] = [Math.cos(turned), Math.sin(turned)];
  return Math.hypot(tightMm * sin + along * cos - off * sin, tightMm * (1 - cos) + along * sin + off * cos);
}

/**
 * The edge that leads in the second pass keeps what the first one bent it to, as far as the bending roll stands from the
 * pinch: a closed part is brought round as a whole, a piece goes through once more.
 */
export function ledLast(asked: RollSheetAsked): Told {
  const { item, settings, say } = asked;
  const { second } = seamOrder(asked);
  if (!settings)
    return {
      text:
        item.pieces === 1
          ? ""
          : ` What led at ${second} keeps the first pass's bend: no template there; ${stepNamed("last-edge")} bends it.`,
      figures: [],
    };
  const strip = ` The ${say.tape(settings.flat.acrossMm)} at ${second} keep the first pass's bend`;
  if (item.pieces > 1) return ofPiece(asked, `${strip}: no template there; `);
  // It is a word to be warned by, not a size to be met.
  const near = (mm: number) => (say.units === "mm" ? Math.round(mm) : mm);
  const ends = ofEnds(asked, (strip) => near(standsOffMm(strip)));
  return {
    text: `${strip}, some ${told(ends, (mm) => say.length(mm))} off the round: no template there. Else right: no more raise; ${stepNamed("tack")} draws it in, ${stepNamed("re-round")} rounds it.`,
    figures: ends.map(({ end, value }) => mm(`last edge stands off, about, ${end}`, value, DERIVED)),
  };
}

/** What a tape shows of a piece of a right cone until its last edge is bent. */
function ofPiece(asked: RollSheetAsked, uneven: string): Told {
  const { cone, pieces } = asked.item;
  const bends = `${stepNamed("last-edge")} bends them`;
  const stripMm = asked.settings?.flat.acrossMm ?? 0;
  if (!cone || !isGapTold(asked.item, stripMm) || stripMm > asked.item.rimsMm.small / pieces)
    return { text: `${uneven}${bends}.`, figures: [] };
  // Level radii are those square to the element, times the cosine; an arc of the rim is as long in both.
  const cos = Math.cos(cone.halfAngleRad);
  const ends = ofEnds(asked, ({ arcMm, gentleMm, tightMm }, radiusMm) => {
    const level = { arcMm, gentleMm: gentleMm * cos, tightMm: tightMm * cos, turnRad: TURN / pieces };
    const wider = edgesApartMm(level) - edgesApartMm({ ...level, arcMm: 0 });
    return endRolled(asked.item, cone, { radiusMm, closed: 1, leadMm: 0 }).insideGapMm + wider;
  });
  return {
    text: `${uneven}until ${bends} the seam edges stand apart by about ${told(ends, (mm) => asked.say.tape(mm))}.`,
    figures: ends.map(({ end, value }) =>
      taped(`seam edges apart before the last edge is bent, ${end}`, value, DERIVED),
    ),
  };
}

interface AtEnd {
  readonly end: "ends" | "large end" | "small end";
  readonly value: number;
}

const told = (ends: readonly AtEnd[], length: (mm: number) => string): string =>
  ends.map(({ end, value }) => `${length(value)}${end === "ends" ? "" : ` at the ${end}`}`).join(", ");

/** A value at both ends; the first pass is taken to have ended half way through its window. */
function ofEnds(
  { item, settings, roll }: RollSheetAsked,
  value: (strip: Strip, levelRadiusMm: number) => number,
): AtEnd[] {
  // What leads in the second pass was rolled last in the first.
  const zone = seamOrder({ item, roll }).leads === 2 ? settings?.zones[0] : settings?.zones.at(-1);
  if (!zone) return [];
  const { from, to } = sharesOf(item);
  const at = (end: AtEnd["end"], radiusMm: number, levelMm = radiusMm): AtEnd => ({
    end,
    value: value(
      {
        arcMm: settings?.flat.acrossMm ?? 0,
        gentleMm: templateRadius(item, radiusMm, (from + to) / 2),
        tightMm: templateRadius(item, radiusMm, 1),
      },
      levelMm,
    ),
  });
  const { cone } = item;
  return isPipe(item)
    ? [at("ends", zone.largeRadiusMm)]
    : [
        at("large end", zone.largeRadiusMm, cone?.largeRadiusMm),
        at("small end", zone.smallRadiusMm, cone?.smallRadiusMm),
      ];
}

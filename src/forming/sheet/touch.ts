import type { FormingCase } from "../case.ts";
import { endRolled } from "../closure.ts";
import { type FirstPass, firstPass, firstPassShares } from "../firstPass.ts";
import { isGapTold } from "../gapTold.ts";
import { DERIVED } from "../judge.ts";
import { isPipe, meanHalfAngleRad } from "../skin.ts";
import type { Say } from "../say.ts";
import { type RollZone, zonesOf } from "../zones.ts";
import { alikeZones, zoneName } from "../zoneWords.ts";
import type { RollSheetAsked } from "./asked.ts";
import { type Figure, taped } from "./step.ts";

/** Gaps of the first pass at one end, inside corner to inside corner. [mm] */
export interface GapWindow {
  readonly end: "large end" | "small end" | "ends";
  /** Widest that is in the window, and narrowest; never below `capMm`. */
  readonly fromMm: number;
  readonly toMm: number;
  readonly capMm: number;
}

/** What the first pass leaves straight at the seam edge that leads; nought where it is not known. [mm] */
export const leadMmOf = ({ settings }: Pick<RollSheetAsked, "settings">): number =>
  settings?.flat.acrossMm ?? 0;

/** What a tape shows while the first pass ends; nothing where the skin is curved unevenly, or no gap tells it. */
export function gapWindows(asked: Pick<RollSheetAsked, "item" | "settings">): GapWindow[] {
  const { item } = asked;
  const { cone } = item;
  const leadMm = leadMmOf(asked);
  if (!cone || !isGapTold(item, leadMm)) return [];
  const window = firstPass(cone.halfAngleRad);
  const gap = (radiusMm: number, closed: number) =>
    endRolled(item, cone, { radiusMm, closed, leadMm }).insideGapMm;
  const at = (end: GapWindow["end"], radiusMm: number): GapWindow => ({
    end,
    fromMm: gap(radiusMm, window.from),
    toMm: gap(radiusMm, window.to),
    capMm: gap(radiusMm, window.cap),
  });
  const { largeRadiusMm, smallRadiusMm } = cone;
  if (isPipe(item)) return [at("ends", largeRadiusMm)];
  return [at("large end", largeRadiusMm), at("small end", smallRadiusMm)];
}

/** Window and cap of a part's first pass as shares of the final bend. */
export const sharesOf = (item: FormingCase): FirstPass => firstPassShares(meanHalfAngleRad(item));

/** Inside radius of a template at a share of the final bend of a middle radius. [mm] */
export const templateRadius = ({ thicknessMm }: FormingCase, middleMm: number, share: number): number =>
  Math.max(0, middleMm / share - thicknessMm / 2);

/** Templates of every zone in few words: "R 467 and 205.2", or "zone 1: R 530 and 384; zone 2: …". */
export function templateBrief(item: FormingCase, say: Say, share: number): string {
  const groups = alikeZones(zonesOf(item));
  const radii = ({ largeRadiusMm, smallRadiusMm }: RollZone) =>
    (isPipe(item) ? [largeRadiusMm] : [largeRadiusMm, smallRadiusMm])
      .map((middleMm) => say.tape(templateRadius(item, middleMm, share)))
      .join(" and ");
  return groups
    .map(({ zone, name }) => `${groups.length === 1 ? "" : `${name}: `}R ${radii(zone)}`)
    .join("; ");
}

/**
 * Radii of inside templates held square to an element line, at both ends of every zone. [mm]
 *
 * @param share of the final bend, 1 when finished
 */
export function templateFigures(item: FormingCase, share: number): Figure[] {
  const zones = zonesOf(item);
  return zones.flatMap((zone) => {
    const name = zoneName(zone, zones.length);
    const radius = (end: string, middleMm: number): Figure =>
      taped(
        `${name}template radius inside, ${end}, held square to the element line`,
        templateRadius(item, middleMm, share),
        DERIVED,
      );
    return isPipe(item)
      ? [radius("ends", zone.largeRadiusMm)]
      : [radius("large end", zone.largeRadiusMm), radius("small end", zone.smallRadiusMm)];
  });
}

/** A gap for the weld, told by feeler blades: as close as they go; in inches with the fraction that a drill's shank has. */
export const feelerWords = (mm: number, say: Say): string =>
  say.units === "in" ? say.tape(mm) : say.length(mm);

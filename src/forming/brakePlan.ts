import type { PartAsked } from "./asked.ts";
import { airBendForceN } from "./airBend.ts";
import { beginMm, type BrakeDepth, depthOf, depthsOf, perDegreeMm } from "./brakeDepths.ts";
import { type BehindPunch, behindPunch } from "./brakeBehind.ts";
import { brakeBends, LEAST_FACET_MM } from "./brakeBends.ts";
import { type BrakeLine, type BrakeZone, orderOfHits } from "./brakeLines.ts";
import { type BrakeRemark, remarksOf } from "./brakeRemarks.ts";
import { type BrakeTips, brakeTips } from "./brakeTips.ts";
import { closesOf, type ClosesRound } from "./leftOut.ts";
import type { Check } from "./check.ts";
import { DERIVED } from "./judge.ts";
import { leastOpeningMm } from "./dieOpening.ts";
import type { PressBrake } from "./machine.ts";
import { insideRadiusMm, leastRadius, sharpFold } from "./sharpFold.ts";
import { tensileMostMPa } from "./tensileMost.ts";

/** Everything that the brake bends a part by. */
export interface BrakePlan {
  /** Opening of the V die; the least for this thickness where no shop is given. [mm] */
  readonly dieMm: number;
  readonly leastDieMm: number;
  /** Inside radius that air bending over this die leaves by itself, about. [mm] */
  readonly insideRadiusMm: number;
  /** Smallest inside radius to bend this plate to. [mm] */
  readonly leastInsideRadiusMm: number;
  /** Where that comes from. */
  readonly leastInsideRadiusBasis: string;
  /** Facet error the hits are chosen for. [mm] */
  readonly permittedFacetMm: number;
  readonly zones: readonly BrakeZone[];
  readonly lines: readonly BrakeLine[];
  /** The different angles among the lines: a ram depth each, found on a trial strip. */
  readonly depths: readonly BrakeDepth[];
  /** Least tensile strength of the grade, which forces are reckoned with. [MPa] */
  readonly tensileMPa: number;
  /** Greatest that the grade allows; null where the source says none for this thickness. [MPa] */
  readonly tensileMostMPa: number | null;
  /** Forces use this constant; those in use run from `least` to `greatest`, and the force with them. */
  readonly forceConstant: { readonly used: number; readonly least: number; readonly greatest: number };
  /** Greatest force of a hit, and what the brake has; null where no shop is given. [kN] */
  readonly greatestForceKN: number;
  readonly brakeForceKN: number | null;
  /** Longest length that a hit bends. [mm] */
  readonly longestHitMm: number;
  /** What to set the brake's force limit to: the strongest hit at the highest constant, no more than the brake has. [kN] */
  readonly forceLimitKN: number;
  /** What that limit may be raised to for the strongest plate of the grade, no more than the brake has; null where that is not known. [kN] */
  readonly forceLimitMostKN: number | null;
  /** What a metre of punch and die takes at the highest constant, in the strongest plate of the grade where that is known. [kN/m] */
  readonly forceKNPerM: number;
  /** Turning of the whole part. */
  readonly turnDeg: number;
  /** The pieces it has to be in to come off the punch, where a number is known; else those that it is in. */
  readonly piecesToComeOff: number;
  /** What is done where a piece closes round the punch; null where each comes off. */
  readonly closes: ClosesRound | null;
  /** Plate behind the punch, at the hit where it is most; null where nothing is hit. */
  readonly behind: BehindPunch | null;
  /** Depth behind the bend line that the brake has; null where no shop is given, or it does not say. [mm] */
  readonly throatMm: number | null;
  /** The folds at the tips, where they want a wider die than the lines; else null. */
  readonly tips: BrakeTips | null;
  /** What has to be looked at before the first hit, worst first. */
  readonly remarks: readonly BrakeRemark[];
  readonly basis: string;
  readonly rule: string;
}

const CONSTANT = { used: 1.33, least: 1, greatest: 1.6 };
const N_PER_KN = 1000;
const MM_PER_METRE = 1000;

const ruleOf = ({ say }: PartAsked): string =>
  `facet error R (1 − cos φ/2), φ what the plate turns by from line to line, where the lines lie farthest apart ≤ what the part permits, else half the thickness, at least ${say.length(LEAST_FACET_MM)}; spacing there ≥ half the die opening; a line's angle is the turning between the middles of its neighbouring spaces; force = 1.33 × tensile strength × bent length × thickness² / die opening; hits from both seam edges to the middle (common practice, no source)`;

/**
 * Bend lines, angles, forces and order of hits for every curved stretch of the part's blanks; null where its blanks are
 * not known.
 *
 * @param dieMm opening of the die; by default the least for this thickness
 * @param checks what the brake was asked of the part
 * @see derived here; groover-memory for the force, metalforming-step-bending for the spacing
 */
export function brakePlan(
  asked: PartAsked,
  { dieMm, brake, checks }: { dieMm?: number; brake?: PressBrake; checks?: readonly Check[] } = {},
): BrakePlan | null {
  const { item } = asked;
  const least = leastOpeningMm(item.thicknessMm);
  const die = dieMm ?? least;
  const bends = brakeBends(item, die);
  if (!bends) return null;
  const { zones, hits, permittedFacetMm } = bends;
  const pieces = [...new Set(zones.map(({ piece }) => piece))];
  const { tensileMPa } = item.material;
  const strongest = tensileMostMPa(asked);
  const force = (lineMm: number, constant = CONSTANT.used, strength = tensileMPa) =>
    airBendForceN({
      tensileMPa: strength,
      lineMm,
      thicknessMm: item.thicknessMm,
      dieMm: die,
      constant,
    }) / N_PER_KN;
  const air = { dieMm: die, thicknessMm: item.thicknessMm, insideRadiusMm: insideRadiusMm(die) };
  const depths = depthsOf(hits).map((one) => ({
    ...one,
    perDegreeMm: perDegreeMm(air, one),
    beginMm: beginMm(air, one),
  }));
  const lines = pieces.flatMap((piece) => {
    const own = hits.filter((hit) => hit.piece === piece);
    const order = orderOfHits(own.length);
    return own.map((hit, i): BrakeLine => ({
      ...hit,
      number: i + 1,
      order: order[i] ?? i + 1,
      depth: depthOf(depths, hit),
      forceKN: force(hit.lengthMm - hit.stopsShortMm),
    }));
  });
  const turnDeg = zones.reduce((sum, zone) => sum + zone.turnDeg, 0);
  const closes = closesOf(asked, { lines, brake });
  const radius = leastRadius(asked);
  const longestHitMm = Math.max(0, ...lines.map(({ lengthMm, stopsShortMm }) => lengthMm - stopsShortMm));
  const brakeForceKN = brake?.forceKN ?? null;
  const shape = {
    zones,
    insideRadiusMm: air.insideRadiusMm,
    leastInsideRadiusMm: radius.radius,
    behind: behindPunch(item, bends),
    closes,
  };
  const fold = sharpFold({ ...asked, dieMm: die, bends, brake });
  return {
    ...shape,
    turnDeg,
    piecesToComeOff: closes?.better?.pieces ?? item.pieces,
    dieMm: die,
    leastDieMm: least,
    leastInsideRadiusBasis: radius.basis,
    permittedFacetMm,
    lines,
    depths,
    tensileMPa,
    tensileMostMPa: strongest,
    forceConstant: CONSTANT,
    greatestForceKN: Math.max(0, ...lines.map((line) => line.forceKN)),
    brakeForceKN,
    throatMm: brake?.throat ?? null,
    longestHitMm,
    forceLimitKN: Math.min(brakeForceKN ?? Infinity, force(longestHitMm, CONSTANT.greatest)),
    forceLimitMostKN:
      strongest === null
        ? null
        : Math.min(brakeForceKN ?? Infinity, force(longestHitMm, CONSTANT.greatest, strongest)),
    forceKNPerM: force(MM_PER_METRE, CONSTANT.greatest, strongest ?? tensileMPa),
    tips: fold && fold.verdict !== "pass" ? brakeTips(asked, { bends, brake }) : null,
    remarks: remarksOf(asked, shape, { brake, fold, checks }),
    basis: DERIVED,
    rule: ruleOf(asked),
  };
}

import { plain } from "../../../drawing/format.ts";
import type { BrakePlan } from "../../../forming/brakePlan.ts";
import type { FormingCase } from "../../../forming/case.ts";
import type { Check } from "../../../forming/check.ts";
import { leastOpeningMm } from "../../../forming/dieOpening.ts";
import type { Machine, PlateRoll } from "../../../forming/machine.ts";
import { strengthRatio } from "../../../forming/ratedThickness.ts";
import { closesOnItself, isPipe, isPointed, tightestRadiusMm } from "../../../forming/skin.ts";
import { degrees } from "../../../geometry/angle.ts";
import {
  KG_PER_POUND,
  KN_PER_SHORT_TON,
  MM_PER_INCH,
  MPA_PER_KSI,
  type Units,
} from "../../../geometry/units.ts";
import { withUnit } from "../forming.ts";
import { closely } from "../girth.ts";
import { numbersIn, type Numbers, percent } from "../numbers.ts";
import type { TableAnswers } from "./answers.ts";
import { reachSums } from "./reachSums.ts";
import { shopSizesOf } from "./shopSizes.ts";

/** What the checks of a part were answered by. */
export interface CheckedBy {
  readonly checks: readonly Check[];
  readonly item: FormingCase;
  /** The machine that they are asked of, where one takes the part. */
  readonly machine: Machine | undefined;
  /** Its bend lines, where it is a brake. */
  readonly brake: BrakePlan | null | undefined;
  /** What the shop file counts in. */
  readonly shopUnits?: Units | undefined;
}

/** What a check compares, as sums; either may be left out where it is no sum. */
export interface Sums {
  readonly asked?: string | undefined;
  readonly allowed?: string | undefined;
  /** What is told in its sentence besides, with a name and a sum each. */
  readonly more?: readonly string[];
  /** What its rule leaves to be said where there is room for it. */
  readonly how?: string;
}

/** How each check was answered: its rule, with this part's numbers put in. */
export function askedChecks(by: CheckedBy): TableAnswers {
  const units = by.item.units ?? "mm";
  const say = numbersIn(units);
  return new Map(
    by.checks.map((check) => {
      const { id, title, rule, basis, value, limit, sense, unit } = check;
      const { asked, allowed, more = [], how = "" } = SUMS[id]?.(by, say) ?? {};
      const told = (sum: string | undefined, name: string, figure: number | null): string[] =>
        figure === null
          ? []
          : [`${name}: ${sum === undefined ? "" : `${sum} = `}${withUnit(figure, unit, units)}`];
      const numbers = [
        ...told(asked, "This part", value),
        ...told(allowed, "Allowed", limit).map((one) => (sense === "at least" ? `${one} or more` : one)),
        ...spare(check, say),
        ...more,
        ...shopSizesOf(id, by.machine, { say, shopUnits: by.shopUnits }),
      ].join("; ");
      return [id, { name: title, rows: [{ row: "", worked: { rule: `${rule}.${how}`, numbers, basis } }] }];
    }),
  );
}

/** What is left of the limit, or how far it is passed, as a share of it. */
function spare({ value, limit, margin, sense, unit }: Check, say: Numbers): string[] {
  if (value === null || limit === null || margin === null || limit <= 0) return [];
  const share = [value, limit].map((one) => figureOf(one, unit, say)).join(" / ");
  const isLess = (sense === "at most") === margin >= 0;
  return [
    `${margin < 0 ? "Beyond it" : "Left"}: ${isLess ? `1 − ${share}` : `${share} − 1`} = ${percent(Math.abs(margin), 1)}`,
  ];
}

/** As many figures as a share needs to come out to a tenth of a percent. */
const FIGURES = 5;
/** What one of the drawing's own units is, of those that a check is reckoned in. */
const PER_UNIT: Readonly<Record<string, number>> = {
  mm: MM_PER_INCH,
  "mm²": MM_PER_INCH ** 2,
  kg: KG_PER_POUND,
  kN: KN_PER_SHORT_TON,
  MPa: MPA_PER_KSI,
};

/** A check's figure for a sum, in the units of the drawing. */
const figureOf = (value: number, unit: string, say: Numbers): string =>
  String(Number((value / (say.unit === "in" ? (PER_UNIT[unit] ?? 1) : 1)).toPrecision(FIGURES)));

const strength = (mpa: number, say: Numbers): string =>
  say.unit === "in" ? plain(mpa / MPA_PER_KSI, 2) : plain(mpa, 1);

/** × √(rated strength / plate strength) where the plate is stronger than what the roll is rated for. */
function stronger(item: FormingCase, roll: PlateRoll, say: Numbers): string {
  const ratio = strengthRatio(item, roll);
  if (!ratio || ratio.factor === 1) return "";
  return ` × √(${strength(ratio.ratedMPa, say)} / ${strength(ratio.plateMPa, say)})`;
}

/** The rating that a limit is reckoned from; a sum of one number alone is none. */
function rated(item: FormingCase, roll: PlateRoll, say: Numbers, own: readonly number[]): string | undefined {
  const root = stronger(item, roll, say);
  return own.length === 1 && root === ""
    ? undefined
    : `${own.map((mm) => closely(say, mm)).join(" × ")}${root}`;
}

/** What the large edge travels more than the small one in a pass, which the small one slides. */
function slides({ rimsMm: { large, small }, pieces }: FormingCase, say: Numbers): string {
  const more = `${closely(say, large)} − ${closely(say, small)}`;
  const sum = pieces === 1 ? more : `(${more}) / ${pieces}`;
  return `The large edge travels more by what the small edge slides: ${sum} = ${say.length((large - small) / pieces)}`;
}

const rollOf = ({ machine }: CheckedBy): PlateRoll | undefined =>
  machine?.kind === "plate roll" ? machine : undefined;

const SUMS: Readonly<Record<string, (by: CheckedBy, say: Numbers) => Sums>> = {
  capacity(by, say) {
    const [{ item }, roll] = [by, rollOf(by)];
    const { thicknessMm, slantMm } = item;
    if (isPipe(item)) return { allowed: roll && rated(item, roll, say, [roll.rating.thickness]) };
    const own = roll?.coneRating;
    return {
      asked: `${closely(say, thicknessMm)} × ${closely(say, slantMm.longest)}`,
      allowed:
        roll &&
        (own
          ? rated(item, roll, say, [own.thickness, own.slant])
          : `0.5 × ${rated(item, roll, say, [roll.rating.thickness, roll.workingWidth]) ?? ""}`),
    };
  },
  thickness(by, say) {
    const roll = rollOf(by);
    return { allowed: roll && rated(by.item, roll, say, [(roll.coneRating ?? roll.rating).thickness]) };
  },
  strain({ item }, say) {
    const radius = tightestRadiusMm(item);
    return radius === null || isPointed(item)
      ? {}
      : { asked: `50 × ${closely(say, item.thicknessMm)} / ${closely(say, radius)}` };
  },
  "travel-ratio": ({ item }, say) => ({
    asked: `${closely(say, item.rimsMm.large)} / ${closely(say, item.rimsMm.small)}`,
    more: [slides(item, say)],
  }),
  "cone-attachment": ({ item }, say) => ({ more: [slides(item, say)] }),
  "small-end"({ item, machine }, say) {
    if (machine?.kind !== "plate roll") return {};
    const whole = closesOnItself(item);
    const { small } = item.tightestRadiusMm ?? { small: 0 };
    const top = closely(say, machine.rolls.topDiameter);
    if (whole) return { allowed: `${top} / cos(${plain(degrees(item.leanRad), 3)}°)` };
    return { asked: `2 × ${closely(say, small)} − ${closely(say, item.thicknessMm)}` };
  },
  "bend-radius"({ item, machine }, say) {
    if (machine?.kind !== "plate roll" || machine.smallestRadius !== undefined) return {};
    const closes = machine.smallestDiameter;
    return closes === undefined
      ? {}
      : { allowed: `(${closely(say, closes)} + ${closely(say, item.thicknessMm)}) / 2` };
  },
  "room-beyond-stop": (by, say) => reachSums(by.item, rollOf(by), say),
  "stock-plate": ({ checks, item }, say) => {
    const isSought = checks.some(({ id, limit }) => id === "stock-plate" && limit === null);
    const boxes = item.blanks.map(
      ({ lengthMm, widthMm }) => `Blank as drawn: ${say.bare(lengthMm)} × ${say.bare(widthMm)} ${say.unit}`,
    );
    return isSought ? { more: [...new Set(boxes)] } : {};
  },
  "die-opening": ({ item: { thicknessMm } }, say) => ({
    allowed: `${plain(leastOpeningMm(thicknessMm) / thicknessMm, 0)} × ${closely(say, thicknessMm)}`,
  }),
  "sharp-fold": ({ brake }, say) => ({ asked: brake ? `${closely(say, brake.dieMm)} / 6` : undefined }),
  "brake-force"({ item, brake }, say) {
    const bent = (brake?.lines ?? []).map(({ lengthMm, stopsShortMm }) => lengthMm - stopsShortMm);
    if (!brake || bent.length === 0) return {};
    const { thicknessMm, material } = item;
    const last = say.unit === "in" ? "2" : "1000";
    return {
      asked: `${brake.forceConstant.used} × ${strength(material.tensileMPa, say)} × ${closely(say, Math.max(...bent))} × ${closely(say, thicknessMm)}² / ${closely(say, brake.dieMm)} / ${last}`,
    };
  },
};

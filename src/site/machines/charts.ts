import type { RegionChart, RegionPanel } from "../../drawing/forming/regionChart.ts";
import {
  brakeCurves,
  dieSpans,
  rollCurves,
  type RollLimits,
  rollLimits,
  widestReaches,
} from "../../forming/capacityChart.ts";
import { NEAR_LIMIT } from "../../forming/judge.ts";
import type { PlateRoll, PressBrake, Shop } from "../../forming/machine.ts";
import { crownSlantMm } from "../../forming/pinchTrim.ts";
import { number } from "../../forming/say.ts";
import { AT_LIMIT_REL } from "../../geometry/tolerance.ts";
import type { Binder } from "../binder/binder.ts";
import { numbersIn } from "../words/numbers.ts";
import type { Entry } from "./entries.ts";
import { alike, chartTitle, type Known, type Plate, plateOf, platesOf } from "./plates.ts";

/** The plots run on beyond what the machine takes, so that what is beyond can be seen. [-] */
const BEYOND = 1.15;
const HEADROOM = 1.35;

/** What is drawn into a machine's chart: plates, and the dots of the parts made of some of them. */
interface Charted {
  readonly plates: readonly Plate[];
  readonly dotsOf: (names: readonly string[]) => RegionPanel["dots"];
  readonly units: Shop["units"];
}

/** The dots of the parts made of one of these plates; on a roll slant across and thickness up, on a brake the other way. */
const dotsOf = (
  entries: readonly Entry[],
  { names, binder, known }: { names: readonly string[]; binder: Binder; known: Known },
): RegionPanel["dots"] =>
  entries.flatMap(({ one: { report }, number, lengthMm, ...entry }) => {
    const plate = plateOf(report, binder.tables.catalogue, known);
    if (number === null || !plate || !names.includes(plate.name)) return [];
    const [x, y] =
      known === "by grade" ? [report.part.thickness, lengthMm] : [lengthMm, report.part.thickness];
    return [{ x, y, number, crossed: crossed(entry) }];
  });

/** Goes by what the chart shows, or nearly, and does not go there for another reason. */
export const crossed = ({ region, verdict }: Pick<Entry, "region" | "verdict">): boolean =>
  verdict === "fail" && region !== "fail";
const CROSS = " Cross: does not go for another reason.";

/** What a cross means, where there is one. */
const crossWords = (panels: readonly Pick<RegionPanel, "dots">[]): string =>
  panels.some(({ dots }) => dots.some((dot) => dot.crossed)) ? CROSS : "";

/** What the hatching means, and from which share of the limit on it is near. */
const toldApart = (also = ""): string =>
  `Close hatching: beyond. Open hatching: near the limit, above ${number(100 * NEAR_LIMIT, 0)} % of it${also}. No hatching: goes.`;

/** By a certificate a plate may be taken for softer than its grade; what only that lets through is near the limit too. */
const byCertificate = (limits: readonly RollLimits[]): string =>
  limits.some(({ nearMm2, coneMm2 }) => nearMm2 < NEAR_LIMIT * coneMm2 * (1 - AT_LIMIT_REL))
    ? " or where only a certificate lets it go"
    : "";

/** A roll's chart for the plates of the shop and the job, with the job's parts. */
export const rollChart = (
  roll: PlateRoll,
  entries: readonly Entry[],
  binder: Binder & { shop: Shop },
): RegionChart =>
  rollRegions(roll, {
    plates: platesOf(binder, "by certificate"),
    dotsOf: (names) => dotsOf(entries, { names, binder, known: "by certificate" }),
    units: binder.shop.units,
  });

/** Thickness against slant of the cones that a roll takes. */
export function rollRegions(roll: PlateRoll, { plates, dotsOf, units }: Charted): RegionChart {
  const say = numbersIn(units);
  const groups = alike(plates, ({ strength }) => rollLimits(strength, roll));
  const toMm = BEYOND * roll.workingWidth;
  const crown = crownSlantMm(roll);
  const trim = { true: "pinch trim", false: "no pinch trim", undefined: "pinch trim?" };
  const rule = roll.coneRating ? "the maker’s cone rating" : "half of rated thickness × working width";
  const panels = groups.map(({ names, limits }) => ({
    title: chartTitle(names),
    ...rollCurves(limits, toMm),
    ...(crown !== null && { uprights: [{ x: crown, name: trim[`${roll.pinchTrim}`] }] }),
    dots: dotsOf(names),
  }));
  return {
    title: `Cones on ${roll.name}`,
    description: groups
      .map(
        ({ names, limits }) =>
          `In ${names.join(", ")} at most ${say.length(limits.thicknessMm)} thick and ${say.length(limits.slantMm)} of slant, ` +
          `and thickness times slant at most that of ${say.length(limits.thicknessMm)} by ${say.length(limits.coneMm2 / limits.thicknessMm)}.`,
      )
      .join(" "),
    lines: [
      `${roll.name}: cones`,
      `By ${rule}, scaled for the strength of the plate. ${toldApart(byCertificate(groups.map(({ limits }) => limits)))}${crossWords(panels)}`,
    ],
    units,
    x: { name: "slant", to: toMm },
    y: {
      name: "thickness",
      plate: true,
      to: HEADROOM * Math.max(...groups.map(({ limits }) => limits.thicknessMm)),
    },
    panels,
  };
}

/** What the steps and wedges of a brake's chart mean, and its broken line where it has one, a sentence each; nothing where no dies are listed. */
export function brakeChartWords(brake: PressBrake, { panels, units }: RegionChart): string[] {
  if (!brake.dies) return [];
  const say = numbersIn(units);
  const spans = dieSpans(brake).map(({ dieMm, upToMm }) => `${say.bare(dieMm)} up to ${say.length(upToMm)}`);
  const widest = say.length(Math.max(...brake.dies));
  return [
    `Each die serves plate as thick as its opening allows (die ${spans.join(", ")}); at its thickest it asks for most force, so that hatching may stand alone as a wedge there, and ends where the next wider die takes over, which asks for less.`,
    ...(panels.some(({ also }) => also)
      ? [
          `The broken line, over ${widest}, is how far the force reaches if any plate is bent over the widest die: longer lines, but a rounder bend (its inside radius is about a sixth of the opening) and bend lines no nearer than half of it.`,
        ]
      : []),
  ];
}

/** Where no dies are listed the chart goes at least so far. [mm] */
const LEAST_SHOWN_MM = 12;

/** A brake's chart for the plates of the shop and the job, with the job's parts. */
export const brakeChart = (
  brake: PressBrake,
  entries: readonly Entry[],
  binder: Binder & { shop: Shop },
): RegionChart =>
  brakeRegions(brake, {
    plates: platesOf(binder, "by grade"),
    dotsOf: (names) => dotsOf(entries, { names, binder, known: "by grade" }),
    units: binder.shop.units,
    thicknessesMm: binder.parts.map(({ report }) => report.part.thickness),
  });

/** Length against thickness of the lines that a brake air-bends over the narrowest die that suits. */
export function brakeRegions(
  brake: PressBrake,
  { plates, dotsOf, units, thicknessesMm }: Charted & { readonly thicknessesMm: readonly number[] },
): RegionChart {
  const say = numbersIn(units);
  const groups = alike(plates, ({ strength }) => strength.material.tensileMPa);
  const thickest = brake.dies
    ? (dieSpans(brake).at(-1)?.upToMm ?? 0)
    : Math.max(...thicknessesMm, LEAST_SHOWN_MM);
  const toMm = BEYOND * thickest;
  const widest = brake.dies && Math.max(...brake.dies);
  const panels = groups.map(({ names, limits: tensileMPa }): RegionPanel => {
    const { widest: over, ...curves } = brakeCurves({ tensileMPa, toMm }, brake);
    return {
      title: chartTitle(names),
      ...curves,
      // Where it lies on the limit all along there is no line to be seen.
      ...(widest !== undefined &&
        widestReaches(tensileMPa, brake) && { also: { name: `over ${say.length(widest)}`, points: over } }),
      dots: dotsOf(names),
    };
  });
  const dashed = panels.some(({ also }) => also) ? " Dashed: the limit over the widest die." : "";
  return {
    title: `Air bending on ${brake.name}`,
    description: `Lines up to ${say.length(brake.bedLength)} in plate up to ${say.length(thickest)}, as far as ${say.force(brake.forceKN)} reach, over the narrowest die that suits.`,
    lines: [
      `${brake.name}: air bending`,
      `Over the narrowest die that opens far enough; the steps are where the die changes.${dashed} ${toldApart()}${crossWords(panels)}`,
    ],
    units,
    x: { name: "thickness", plate: true, to: toMm },
    y: { name: "bend line", to: BEYOND * brake.bedLength },
    panels,
  };
}

import { plain } from "../../../drawing/format.ts";
import { longestAirBendMm, V_DIE } from "../../../forming/airBend.ts";
import { capacityLimit } from "../../../forming/capacity.ts";
import { brakeRegion, rollLimits, rollRegion, thicknessAtMm } from "../../../forming/capacityChart.ts";
import { UNLISTED } from "../../../forming/brakeForce.ts";
import { diesFor, leastOpeningMm, thickestOverMm } from "../../../forming/dieOpening.ts";
import { NEAR_LIMIT } from "../../../forming/judge.ts";
import type { Machine, PlateRoll, PressBrake } from "../../../forming/machine.ts";
import { type Strength, strengthRatio } from "../../../forming/ratedThickness.ts";
import { AT_LIMIT_REL } from "../../../geometry/tolerance.ts";
import { KN_PER_SHORT_TON, MM_PER_INCH, MPA_PER_KSI, type Units } from "../../../geometry/units.ts";
import { REGIONS } from "../../machines/words.ts";
import { closely } from "../girth.ts";
import { numbersIn, type Numbers } from "../numbers.ts";
import type { Worked } from "../worked.ts";
import type { TableAnswers } from "./answers.ts";
import { shopSizesOf } from "./shopSizes.ts";
import { REGION } from "./regionKey.ts";

/** A part on the chart of a machine. */
export interface Charted {
  readonly machine: Machine;
  readonly plate: Strength;
  readonly thicknessMm: number;
  /** Slant on a roll, longest bend line on a brake. */
  readonly lengthMm: number;
  readonly units: Units;
  /** What the shop file counts in. */
  readonly shopUnits?: Units | undefined;
}

/** How the lines of the chart, and where the part lies between them, were worked out. */
export function askedRegion(charted: Charted): TableAnswers {
  const { machine, units } = charted;
  const say = numbersIn(units);
  const worked =
    machine.kind === "plate roll" ? onRoll(charted, machine, say) : onBrake(charted, machine, say);
  return new Map([[REGION, { name: "Where it lies", rows: [{ row: "", worked }] }]]);
}

const strength = (mpa: number, say: Numbers): string =>
  say.unit === "in" ? plain(mpa / MPA_PER_KSI, 2) : plain(mpa, 1);

/** × √(rated strength / plate strength) where the plate is stronger than what the roll is rated for. */
function stronger(plate: Strength, roll: PlateRoll, say: Numbers): string {
  const ratio = strengthRatio(plate, roll);
  if (!ratio || ratio.factor === 1) return "";
  return ` × √(${strength(ratio.ratedMPa, say)} / ${strength(ratio.plateMPa, say)})`;
}

const within = (region: keyof typeof REGIONS): string =>
  `So it lies where the chart says “${REGIONS[region]}”.`;

/** Figures of a product of two lengths. */
const FIGURES = 5;
const product = (mm2: number, say: Numbers): string => {
  const perUnit = say.unit === "in" ? MM_PER_INCH ** 2 : 1;
  return String(Number((mm2 / perUnit).toPrecision(FIGURES)));
};

const withUnit = (mm: number, say: Numbers): string => `${closely(say, mm)}\u00a0${say.unit}`;

function onRoll({ plate, thicknessMm, lengthMm, shopUnits }: Charted, roll: PlateRoll, say: Numbers): Worked {
  const limits = rollLimits(plate, roll);
  const { strength: ratio } = capacityLimit(plate, roll);
  const root = stronger(plate, roll, say);
  const { coneRating: own, rating, workingWidth } = roll;
  const area = (mm2: number) => `${product(mm2, say)}\u00a0${say.unit}²`;
  const near = limits.nearMm2 / limits.coneMm2;
  const here = thicknessAtMm(limits, lengthMm);
  const stopMm = workingWidth - limits.slantMm;
  const cone = own
    ? `${closely(say, own.thickness)} × ${closely(say, own.slant)}`
    : `0.5 × ${closely(say, rating.thickness)} × ${closely(say, workingWidth)}`;
  const rated = own?.thickness ?? rating.thickness;
  const lines = [
    `Thickness times slant, at most: ${cone}${root} = ${area(limits.coneMm2)} (${own ? "the maker’s cone rating" : "half of rated thickness × working width"})`,
    `Thickness, at most, however short: ${root === "" ? "" : `${closely(say, rated)}${root} = `}${withUnit(limits.thicknessMm, say)}`,
    `Slant, at most: ${closely(say, workingWidth)} − ${closely(say, stopMm)} = ${withUnit(limits.slantMm, say)} (working width less what the stop cannot be brought towards the drop end)`,
    ...(here.limitMm > 0
      ? [
          `Thickness, at most, at this slant: ${product(limits.coneMm2, say)} / ${closely(say, lengthMm)} = ${withUnit(limits.coneMm2 / lengthMm, say)}, and no more than ${withUnit(limits.thicknessMm, say)}`,
          `Near the limit from there: ${plain(near, 4)} × ${closely(say, here.limitMm)} = ${withUnit(here.nearMm, say)}${nearWords(near)}`,
        ]
      : []),
    `This part: ${closely(say, thicknessMm)} × ${closely(say, lengthMm)} = ${area(thicknessMm * lengthMm)}, ${withUnit(thicknessMm, say)} thick with ${withUnit(lengthMm, say)} of slant. ${within(rollRegion(limits, { thicknessMm, slantMm: lengthMm }))}`,
  ];
  // Its rated thickness is one of the two that the capacity is reckoned from.
  const shop = ["capacity", "working-width"].flatMap((id) => shopSizesOf(id, roll, { say, shopUnits }));
  return {
    rule: `What the roll takes as a cone: a thickness, a slant, and both times each other. ${ratio ? "Stronger plate takes more of the roll than the plate that it is rated for: × √(rated strength / plate strength), the root at most 1." : "For which strength the roll is rated is not known, so that its plain rating is drawn."}`,
    numbers: [...lines, ...shop.map((words) => `${words[0]?.toUpperCase() ?? ""}${words.slice(1)}.`)].join(
      "\n",
    ),
    basis: "common practice, no source",
  };
}

/** Why less than four fifths are drawn as plain, where they are. */
const nearWords = (near: number): string =>
  near < NEAR_LIMIT ? " (beyond that only the certificate lets it go, and not its grade)" : "";

function onBrake({ plate, thicknessMm, lengthMm }: Charted, brake: PressBrake, say: Numbers): Worked {
  const { tensileMPa } = plate.material;
  const [dieMm] = diesFor(thicknessMm, brake);
  const byForce = longestAirBendMm({ tensileMPa, thicknessMm, dieMm, forceN: NEWTONS * brake.forceKN });
  const force =
    say.unit === "in"
      ? `2 × ${plain(brake.forceKN / KN_PER_SHORT_TON, 2)}`
      : `1000 × ${plain(brake.forceKN, 1)}`;
  const t = closely(say, thicknessMm);
  const noDie = thickestOverMm(dieMm) < thicknessMm * (1 - AT_LIMIT_REL);
  const region = brakeRegion({ tensileMPa, thicknessMm, lineMm: lengthMm }, brake);
  const lines = [
    `Die, at least: ${plain(leastOpeningMm(thicknessMm) / thicknessMm, 0)} × ${t} = ${withUnit(leastOpeningMm(thicknessMm), say)}; ${brake.dies ? `${noDie ? "no die of the rack opens so far, the widest" : "the narrowest of the rack that opens so far"} is ${withUnit(dieMm, say)}` : "the shop file lists none, so that this one is reckoned with"}.`,
    `Longest line by the force: ${force} × ${closely(say, dieMm)} / (${V_DIE} × ${strength(tensileMPa, say)} × ${t}²) = ${withUnit(byForce, say)} (force × die opening / (constant × tensile strength × thickness²)${say.unit === "in" ? "; two thousands of pounds are a short ton" : ""})`,
    ...(brake.dies
      ? []
      : [
          `Over a die twice as wide: ${UNLISTED} × ${closely(say, byForce)} = ${withUnit(UNLISTED * byForce, say)}`,
        ]),
    `Near the limit from: ${NEAR_LIMIT} × ${closely(say, byForce)} = ${withUnit(NEAR_LIMIT * byForce, say)}`,
    `No line is longer than the bed of ${withUnit(brake.bedLength, say)}.`,
    `This part: lines up to ${withUnit(lengthMm, say)}. ${within(region)}`,
  ];
  return {
    rule: "What the brake bends in the air: a line no longer than the bed, and none that asks for more than its force, over the narrowest die that opens far enough for the plate. Plate of which no die opens far enough is beyond.",
    numbers: lines.join("\n"),
    basis: "groover-memory",
  };
}

const NEWTONS = 1000;

import type { RegionChart } from "../../../drawing/forming/regionChart.ts";
import type { MachineAnswer } from "../../../forming/answer.ts";
import { brakeRegion, rollLimits, rollRegion } from "../../../forming/capacityChart.ts";
import type { Verdict } from "../../../forming/check.ts";
import { nearestMiss } from "../../../forming/choose.ts";
import type { Machine, Shop } from "../../../forming/machine.ts";
import type { Strength } from "../../../forming/ratedThickness.ts";
import type { Report } from "../../../report/report.ts";
import type { Catalogue } from "../../../shapes/catalogue.ts";
import { brakeRegions, crossed, rollRegions } from "../../machines/charts.ts";
import { plateOf } from "../../machines/plates.ts";
import { REGIONS } from "../../machines/words.ts";
import { numbersIn } from "../../words/numbers.ts";

/** A part on the chart of a machine, and the same in words. */
interface PartChart {
  readonly machine: Machine;
  readonly chart: RegionChart;
  /** Where the part lies. */
  readonly region: Verdict;
  readonly words: string;
  /** What it lies there by: the strength of its plate, and its slant or its longest bend line. [mm] */
  readonly plate: Strength;
  readonly lengthMm: number;
}

/** The machine whose checks are shown: the one that is chosen, or the nearest miss where none takes the part. */
function shown({ forming: { machine, machines, route } }: Report): MachineAnswer | null {
  return machines.find((one) => one.machine === machine) ?? nearestMiss(machines, route);
}

/** What the shown machine takes of this part's plate, the part a dot on it; undefined where it has no place there. */
export function partChart(report: Report, shop: Shop, catalogue: Catalogue): PartChart | undefined {
  const answer = shown(report);
  const machine = shop.machines.find(({ name }) => name === answer?.machine);
  const find = (id: string) => answer?.checks.find((check) => check.id === id);
  if (!machine || !answer) return undefined;
  const { verdict } = answer;
  const { thickness: thicknessMm, units } = report.part;
  const say = numbersIn(units);
  const number = "this part";
  if (machine.kind === "plate roll") {
    const slantMm = find("working-width")?.value ?? undefined;
    const plate = plateOf(report, catalogue, "by certificate");
    // A pipe has no place among cones: its capacity is asked as a thickness.
    if (slantMm === undefined || !plate || find("capacity")?.unit !== "mm²") return undefined;
    const limits = rollLimits(plate.strength, machine);
    const region = rollRegion(limits, { thicknessMm, slantMm });
    const dot = { x: slantMm, y: thicknessMm, number, crossed: crossed({ region, verdict }) };
    return {
      machine,
      chart: rollRegions(machine, { plates: [plate], dotsOf: () => [dot], units }),
      region,
      plate: plate.strength,
      lengthMm: slantMm,
      words: `This part, ${say.length(thicknessMm)} thick with ${say.length(slantMm)} of slant: ${REGIONS[region]}.`,
    };
  }
  const lineMm = find("brake-bed")?.value ?? undefined;
  const plate = plateOf(report, catalogue, "by grade");
  if (lineMm === undefined || !plate) return undefined;
  const { tensileMPa } = plate.strength.material;
  const region = brakeRegion({ tensileMPa, thicknessMm, lineMm }, machine);
  const dot = { x: thicknessMm, y: lineMm, number, crossed: crossed({ region, verdict }) };
  return {
    machine,
    chart: brakeRegions(machine, {
      plates: [plate],
      dotsOf: () => [dot],
      units,
      thicknessesMm: [thicknessMm],
    }),
    region,
    plate: plate.strength,
    lengthMm: lineMm,
    words: `This part, ${say.length(thicknessMm)} thick with bend lines up to ${say.length(lineMm)}: ${REGIONS[region]}.`,
  };
}

import type { RegionChart } from "../../drawing/forming/regionChart.ts";
import type { Paper } from "../../drawing/paper.ts";
import type { Machine, Shop } from "../../forming/machine.ts";
import type { Binder } from "../binder/makeBinder.ts";
import { numbersIn } from "../words/numbers.ts";
import type { Fact } from "../words/partSize.ts";
import type { Cell } from "../words/titleBlock.ts";
import { brakeChart, brakeChartWords, rollChart } from "./charts.ts";
import { brakeEntries, type Entry, rollEntries } from "./entries.ts";
import { brakeFacts, brakeGaps, rollFacts, rollGaps } from "./facts.ts";
import { cardPaper } from "./papers.ts";
import { kindOf } from "./words.ts";

/** What stands on a machine's card. */
export interface Card {
  readonly roll: boolean;
  readonly facts: readonly Fact[];
  /** What the shop file does not say, and what is lost by it. */
  readonly gaps: readonly string[];
  readonly chart: RegionChart;
  readonly chartWords: readonly string[];
  readonly chartPaper: Paper;
  /** What the chart rests on. */
  readonly basis: string;
  readonly entries: readonly Entry[];
  /** The list of the job's parts leaves the chart too little room, and stands on the back. */
  readonly listOnBack: boolean;
  /** What the length of an entry is here. */
  readonly lengthName: string;
}

export function cardOf(machine: Machine, index: number, binder: Binder & { shop: Shop }): Card {
  const { units } = binder.shop;
  const say = numbersIn(units);
  const roll = machine.kind === "plate roll";
  const entries = roll ? rollEntries(binder, index, machine) : brakeEntries(binder, index, machine);
  const facts = roll ? rollFacts(machine, say) : brakeFacts(machine, say);
  const gaps = roll ? rollGaps(machine) : brakeGaps(machine);
  const chart = roll ? rollChart(machine, entries, binder) : brakeChart(machine, entries, binder);
  // What tells near and beyond apart stands at every chart; a picture on paper has no lines of its own for it.
  const chartWords = [...chart.lines.slice(1), ...(roll ? [] : brakeChartWords(machine, chart))];
  const paper = cardPaper({
    reasons: entries.map(({ because }) => because ?? ""),
    facts: facts.length,
    gaps: gaps.length,
    letters: chartWords.join(" ").length,
  });
  return {
    roll,
    facts,
    gaps,
    chart,
    chartWords,
    chartPaper: paper.chart,
    listOnBack: paper.listOnBack,
    basis: roll ? "common practice, no source" : "groover-memory",
    entries,
    lengthName: roll ? "Slant" : "Longest line",
  };
}

/** The title block of a machine's card. */
export const cardCells = (machine: Machine, { shop, job }: Binder & { shop: Shop }): Cell[] => [
  { label: "Title", value: machine.name, wide: true },
  { label: "Kind", value: kindOf(machine), wide: true },
  { label: "Shop", value: shop.name, wide: true },
  ...(job ? [{ label: "Job", value: job.title, wide: true }] : []),
];

export const chartHeading = ({ roll }: Pick<Card, "roll">): string =>
  roll ? "What it takes as a cone" : "What it bends";
export const NO_CHART = "No chart: neither stock nor parts name a material.";

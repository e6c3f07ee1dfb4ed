import { regionChart } from "../../../drawing/forming/regionChart.ts";
import type { Machine, Shop } from "../../../forming/machine.ts";
import { beside, type Block } from "../../../output/pdf/block.ts";
import { flowed, type Setting } from "../../../output/pdf/flow.ts";
import { tableBlock } from "../../../output/pdf/tableBlock.ts";
import { paragraph } from "../../../output/pdf/words.ts";
import type { Binder } from "../../binder/makeBinder.ts";
import { type Card, cardCells, cardOf, chartHeading, NO_CHART } from "../../machines/card.ts";
import type { Entry } from "../../machines/entries.ts";
import { CHART_MM } from "../../machines/papers.ts";
import { CARD_NEVER, kindOf, notCharted, REGIONS } from "../../machines/words.ts";
import { numbersIn, thickness } from "../../words/numbers.ts";
import { basisRun } from "../basisRun.ts";
import { bold, caution, facts, heading, picture, soft, verdictWords } from "../blocks.ts";
import { type BinderSheet, type Making, MARGINS, PLACES } from "./model.ts";
import { titled } from "./titled.ts";

/** A job's parts and the shop that they are made in. */
export type JobInShop = Binder & { readonly shop: Shop };

/** The card of every machine: ratings, what it takes, the job's parts on it, cautions. */
export function machineSheets(making: Making, binder: JobInShop): BinderSheet[] {
  return binder.shop.machines.map((machine, index) => {
    const cells = cardCells(machine, binder);
    const setting = { paper: making.paper, margins: MARGINS, cells };
    return {
      title: machine.name,
      place: `machine ${index + 1}`,
      cells,
      blocks: () => machineCard(making, { binder, machine, index }, setting),
    };
  });
}

/** How much taller the next chart is that is tried. [mm] */
const STEP_MM = 10;

/** A card hangs by its machine: on one sheet if its chart can be read there, else with the job's parts on the back. */
export function machineCard(
  { pdf, known }: Pick<Making, "pdf" | "known">,
  { binder, machine, index }: { binder: JobInShop; machine: Machine; index: number },
  setting: Setting,
): (Block | null)[] {
  const card = cardOf(machine, index, binder);
  const { chartPaper, entries, lengthName } = card;
  const front = (heightMm: number): Block[] =>
    frontBlocks({ pdf, known }, { machine, card: { ...card, chartPaper: { ...chartPaper, heightMm } } });
  const list = (words: string): Block[] =>
    entries.length === 0 ? [] : [heading(pdf, words), entryTable({ pdf }, entries, lengthName)];
  const whole = largestOnOne((heightMm) => [...front(heightMm), ...list("The job’s parts on it")]);
  if (whole) return whole;
  const alone = largestOnOne(front) ?? front(CHART_MM.least);
  return [...alone, null, ...list(`The job’s parts on ${machine.name}`)];

  /** With the tallest chart that keeps it all on one sheet; undefined where the least does not. */
  function largestOnOne(make: (heightMm: number) => Block[]): Block[] | undefined {
    const fits = (blocks: readonly Block[]): boolean => flowed(pdf, blocks, setting).pages === 1;
    const most = chartPaper.heightMm;
    const [least, tallest] = [make(Math.min(CHART_MM.least, most)), make(most)];
    if (fits(tallest)) return tallest;
    if (!fits(least)) return undefined;
    let best = least;
    for (let heightMm = CHART_MM.least + STEP_MM; heightMm < most; heightMm += STEP_MM) {
      const taller = make(heightMm);
      if (!fits(taller)) break;
      best = taller;
    }
    return best;
  }
}

/** Ratings, what the machine takes, and cautions. */
function frontBlocks(
  { pdf, known }: Pick<Making, "pdf" | "known">,
  { machine, card }: { machine: Machine; card: Card },
): Block[] {
  const { chart, chartWords, gaps } = card;
  const half = Math.ceil(card.facts.length / 2);
  const drawn = chart.panels.length > 0;
  return [
    ...titled(pdf, machine.name, kindOf(machine)),
    caution(pdf, CARD_NEVER[machine.kind]),
    heading(pdf, "Ratings"),
    beside([facts(pdf, card.facts.slice(0, half)), facts(pdf, card.facts.slice(half))], [1, 1]),
    ...(gaps.length > 0 ? [paragraph(pdf, [bold("Not given. "), { text: gaps.join(" ") }])] : []),
    heading(pdf, chartHeading(card)),
    drawn ? picture(pdf, regionChart(chart, { paper: card.chartPaper })) : paragraph(pdf, NO_CHART),
    ...(drawn && chartWords.length > 0 ? [paragraph(pdf, chartWords.join(" "))] : []),
    paragraph(pdf, [
      { text: `${notCharted(machine.kind, "on each part’s own page")} ` },
      soft("Basis: "),
      basisRun(known, card.basis),
      soft("; certificate and grade compared as derived here."),
    ]),
  ];
}

function entryTable({ pdf }: Pick<Making, "pdf">, entries: readonly Entry[], length: string): Block {
  const [left, right] = ["left" as const, "right" as const];
  return tableBlock(pdf, {
    columns: [
      { align: right, share: 0.4 },
      { align: left, share: 2 },
      { align: left, share: 0.8 },
      { align: right, share: 1.2 },
      { align: right, share: 0.9 },
      { align: left, share: 1 },
      { align: left, share: 3.8 },
    ],
    head: [
      ["Dot", "Part", "Material", "Thickness", length, "On the chart", "With every question asked"].map(
        (text) => ({ text }),
      ),
    ],
    rows: entries.map(({ one: { report, material, gauge }, number, lengthMm, region, verdict, because }) => {
      const { part } = report;
      const say = numbersIn(part.units);
      return [
        { text: number ?? "—" },
        { text: [{ text: part.title, to: PLACES.part(part.name) }] },
        { text: material.name },
        { text: thickness(part.thickness, part.units, gauge).value },
        { text: `${say.bare(lengthMm)} ${say.unit}` },
        { text: number === null ? "cylinder" : REGIONS[region] },
        { text: [bold(verdictWords(verdict)), soft(because === null ? "" : ` ${because}`)] },
      ];
    }),
  });
}

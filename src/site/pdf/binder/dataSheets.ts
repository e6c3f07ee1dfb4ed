import { MM_PER_INCH } from "../../../geometry/units.ts";
import { beside, type Block } from "../../../output/pdf/block.ts";
import { tableBlock } from "../../../output/pdf/tableBlock.ts";
import { paragraph } from "../../../output/pdf/words.ts";
import { columns } from "../../bits/columns.ts";
import { FROM_MEMORY_NOTE, LEADS, nameAndTrade } from "../../words/leads.ts";
import { basisRun, basisRuns } from "../basisRun.ts";
import { bold, heading, soft } from "../blocks.ts";
import { type BinderSheet, type Making, sheetCells } from "./model.ts";
import { titled } from "./titled.ts";

/** What part files are read against. */
export const dataSheets = (making: Making): BinderSheet[] => [
  {
    title: "Materials",
    place: "materials",
    cells: sheetCells(making, "Materials", "Table"),
    blocks: () => materialBlocks(making),
  },
  {
    title: "Sheet gauges",
    place: "gauges",
    cells: sheetCells(making, "Sheet gauges", "Table"),
    blocks: () => gaugeBlocks(making),
  },
];

/** Headings and what of the width each gets: the other names are many, and stand on several lines. */
const MATERIAL_COLUMNS: readonly (readonly [string, number])[] = [
  ["Id", 1.2],
  ["Name, and what it is bought as", 2.2],
  ["Also read as", 3.6],
  ["Gauges of", 1],
  ["Yield MPa", 0.7],
  ["Tensile, least MPa", 0.9],
  ["Density kg/m³", 0.9],
  ["Young’s GPa", 0.9],
  ["Poisson", 0.8],
];
/** Columns of words, before those of figures. */
const WORDS = 4;

function materialBlocks({ pdf, tables, known }: Making): Block[] {
  const { materials } = tables.catalogue;
  const all = Object.entries(materials);
  return [
    ...titled(pdf, "Materials", LEADS.materials),
    tableBlock(pdf, {
      columns: MATERIAL_COLUMNS.map(([, share], i) => ({ share, align: i < WORDS ? "left" : "right" })),
      head: [MATERIAL_COLUMNS.map(([text]) => ({ text }))],
      rows: all.map(([id, one]) => [
        { text: [bold(id)] },
        ...[
          nameAndTrade(one),
          (one.aliases ?? []).join(", "),
          one.family,
          one.yieldMPa,
          one.tensileMPa,
          one.densityKgM3,
          one.youngsGPa,
          one.poisson,
        ].map((value) => ({ text: String(value) })),
      ]),
    }),
    heading(pdf, "Where the values come from, and what they hold for"),
    ...all.map(([, { name, note, sources }]) =>
      paragraph(pdf, [
        bold(`${name}. `),
        { text: note === undefined ? "" : `${note} ` },
        soft("Strength: "),
        basisRun(known, sources.strength),
        soft("; density: "),
        basisRun(known, sources.density),
        soft("; stiffness: "),
        basisRun(known, sources.elastic),
        soft("."),
      ]),
    ),
    paragraph(pdf, FROM_MEMORY_NOTE),
  ];
}

const HOW_KNOWN =
  "A part file may give a thickness as 10 ga; the metal of its material decides which table counts. Each figure is marked: read, seen in print; rule, worked out by the rule of the table from figures that were read; memory, recalled and not seen.";

function gaugeBlocks({ pdf, tables, known }: Making): Block[] {
  const [left, right] = ["left" as const, "right" as const];
  return [
    ...titled(pdf, "Sheet gauges", LEADS.gauges),
    paragraph(pdf, HOW_KNOWN),
    ...Object.values(tables.gauges).flatMap(({ name, rule, sources, rows }): Block[] => [
      heading(pdf, name),
      paragraph(pdf, [{ text: `${rule} ` }, soft("Sources: "), ...basisRuns(known, sources), soft(".")]),
      beside(
        columns(rows, 3).map((some) =>
          tableBlock(pdf, {
            columns: [
              { align: right, share: 1 },
              { align: right, share: 1.3 },
              { align: right, share: 1.3 },
              { align: left, share: 1.2 },
            ],
            head: [["Gauge", "in", "mm", "Known by"].map((text) => ({ text }))],
            rows: some.map(({ gauge, inches, provenance }) => [
              { text: [bold(gauge)] },
              ...[inches.toFixed(4), (inches * MM_PER_INCH).toFixed(3), provenance].map((text) => ({ text })),
            ]),
          }),
        ),
        [1, 1, 1],
      ),
    ]),
  ];
}

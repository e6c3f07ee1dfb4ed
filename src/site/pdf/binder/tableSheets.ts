import { fittedTable } from "../../../output/pdf/fittedTable.ts";
import { type Block, framed, stack } from "../../../output/pdf/block.ts";
import { paragraph, type Run } from "../../../output/pdf/words.ts";
import { reckonerTables } from "../../../tables/tables.ts";
import type { ReckonerTable } from "../../../tables/table.ts";
import { begins, newBlock, upperRow, workedEntries } from "../../tables/headings.ts";
import { basisRuns } from "../basisRun.ts";
import { bold, heading, soft } from "../blocks.ts";
import { type BinderSheet, type Making, sheetCells, textWidthMm } from "./model.ts";
import { titled } from "./titled.ts";

/** Every ready reckoner: how to read it, the table, its formula, one row by hand, where it comes from. */
export const reckonerSheets = (making: Making): BinderSheet[] =>
  reckonerTables(making.tables.catalogue).map((table) => ({
    title: table.title,
    place: `table ${table.id}`,
    cells: sheetCells(making, table.title, "Ready reckoner"),
    blocks: () => blocksOf(making, table),
  }));

function blocksOf(making: Making, table: ReckonerTable): Block[] {
  const { pdf, known } = making;
  const { worked, caution } = table;
  return [
    ...titled(pdf, table.title, table.about),
    paragraph(pdf, table.use.join(" ")),
    ...(caution === undefined ? [] : [framed(pdf, paragraph(pdf, [bold("Caution. "), { text: caution }]))]),
    reckoner(making, table),
    heading(pdf, "How it is reckoned"),
    ...table.formula.map((line) => paragraph(pdf, line, { mark: "–" })),
    paragraph(pdf, [bold("The bold row, step by step. "), { text: workedEntries(table) }]),
    stack(
      worked.steps.map(({ what, sum, is }, i) =>
        paragraph(pdf, [{ text: `${what}: ${sum} = ` }, bold(is)], { mark: String(i + 1) }),
      ),
      0.4,
    ),
    paragraph(pdf, [
      soft("Basis: "),
      ...basisRuns(known, table.basis),
      soft("."),
      ...(table.checked
        ? [soft(" Published examples come out the same: "), ...basisRuns(known, table.checked), soft(".")]
        : []),
    ]),
  ];
}

const unitRun = (unit: string | undefined): Run[] =>
  unit === undefined ? [] : [{ text: ` ${unit}`, ink: 0.35 }];

function reckoner({ pdf, paper }: Making, table: ReckonerTable): Block {
  const { columns, rows, worked, entries } = table;
  const upper = upperRow(columns);
  const grouped = columns.some(({ group }) => group !== undefined);
  const head = [
    upper.map(({ text, span, alone, unit }) => ({
      text: alone && !grouped ? [bold(text), ...unitRun(unit)] : [bold(alone ? "" : text)],
      span,
    })),
    ...(grouped ? [columns.map(({ head: text, unit }) => ({ text: [bold(text), ...unitRun(unit)] }))] : []),
  ];
  const cells = rows.map((row, i) =>
    row.map((text, k) => ({ text: i === worked.row || k < entries ? [bold(text)] : text })),
  );
  const parted = new Set(cells.filter((_, i) => newBlock(table, i)));
  return fittedTable(
    pdf,
    {
      aligns: columns.map(() => "right"),
      edges: columns.flatMap((_, i) => (grouped && begins(columns, i) ? [i] : [])),
      head,
      rows: cells,
      parted: (row) => parted.has(row as (typeof cells)[number]),
    },
    textWidthMm(paper),
  );
}

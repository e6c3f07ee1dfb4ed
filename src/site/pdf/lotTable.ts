import type { FormingPlan } from "../../forming/plan.ts";
import type { Block } from "../../output/pdf/block.ts";
import type { Pdf } from "../../output/pdf/document.ts";
import { tableBlock } from "../../output/pdf/tableBlock.ts";
import { paragraph } from "../../output/pdf/words.ts";
import type { Report } from "../../report/report.ts";
import { lotOf } from "../forming/lot.ts";
import { LOT_HEADING, lotNote } from "../forming/sheetWords.ts";
import { bold, heading } from "./blocks.ts";

/** Height of a row that is written in. [mm] */
const WRITE_MM = 7.6;

/** In which order a lot is rolled, and a line for every blank of it. */
export function lotTable(pdf: Pdf, report: Report, plan: FormingPlan): Block[] {
  const lot = lotOf(report, plan);
  if (!lot) return [];
  const { groups, names } = lot;
  const columns = groups.flatMap((one) => one.columns);
  return [
    heading(pdf, LOT_HEADING),
    paragraph(pdf, plan.batch.join(" ")),
    tableBlock(pdf, {
      capMm: 1.8,
      rowMm: WRITE_MM,
      columns: [{ align: "left", share: 0.6 }, ...columns.map(() => ({ align: "left" as const, share: 1 }))],
      edges: columns.map((_, i) => i + 1),
      head: [
        [{ text: "" }, ...groups.map((one) => ({ text: one.name, span: one.columns.length }))],
        ["Blank", ...columns].map((text) => ({ text })),
      ],
      rows: names.map((name) => [{ text: [bold(name)] }, ...columns.map(() => ({ text: "" }))]),
    }),
    paragraph(pdf, lotNote(lot, report.part.units)),
  ];
}

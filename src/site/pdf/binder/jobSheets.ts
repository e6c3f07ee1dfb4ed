import { plateDrawing } from "../../../drawing/plates.ts";
import { type Block, stack } from "../../../output/pdf/block.ts";
import { fittedTable } from "../../../output/pdf/fittedTable.ts";
import { tableBlock } from "../../../output/pdf/tableBlock.ts";
import { paragraph } from "../../../output/pdf/words.ts";
import type { Binder } from "../../binder/makeBinder.ts";
import { jobRow } from "../../job/jobRow.ts";
import {
  laidWords,
  PLATE_CARE,
  PLATE_USE_HEADS,
  PLATE_USE_WORDS,
  plateDrawn,
  plateOrder,
  plateSentence,
  plateStop,
  plateUseRows,
} from "../../job/laidWords.ts";
import { layJob } from "../../job/layJob.ts";
import { PLATE_PRINT } from "../../job/papers.ts";
import { leftInWords } from "../../job/plateWords.ts";
import { totalRows } from "../../job/totalRows.ts";
import { unitsOf } from "../../../job/unitsOf.ts";
import { NET_AREA_NOTE } from "../../words/leads.ts";
import { bold, caution, heading, pairs, picture, soft, verdictWords } from "../blocks.ts";
import { type BinderSheet, type Making, PLACES, sheetCells, textWidthMm } from "./model.ts";
import { titled } from "./titled.ts";

/** The list of parts with its totals; and, where the shop lists plates, how the blanks lie on them. */
export function jobSheets(making: Making, binder: Binder): BinderSheet[] {
  const list: BinderSheet = {
    title: "List of parts",
    place: "job",
    cells: sheetCells(making, "List of parts", "Job"),
    blocks: () => listBlocks(making, binder),
  };
  if (!binder.shop) return [list];
  return [
    list,
    {
      title: "Plates to cut",
      place: "plates",
      cells: sheetCells(making, "Plates to cut", "Job"),
      blocks: () => plateBlocks(making, binder),
    },
  ];
}

function listBlocks({ pdf }: Making, binder: Binder): Block[] {
  const { parts, job } = binder;
  const [left, right] = ["left" as const, "right" as const];
  const totals = totalRows(parts, unitsOf(binder));
  const figures = (row: { parts: string; blanks: string; area: string; mass: string }) =>
    [row.parts, row.blanks, row.area, row.mass].map((text) => ({ text }));
  const all = [{ text: [bold("All")] }, { text: "" }, ...figures(totals.all)];
  return [
    ...titled(pdf, job?.title ?? "Job"),
    ...(job?.reference === undefined ? [] : [paragraph(pdf, `Reference ${job.reference}`)]),
    ...(job?.notes === undefined ? [] : job.notes.split("\n").map((line) => paragraph(pdf, line))),
    heading(pdf, "Parts"),
    tableBlock(pdf, {
      columns: [
        { align: left, share: 2.6 },
        { align: left, share: 1.7 },
        { align: right, share: 0.6 },
        { align: left, share: 1.1 },
        { align: right, share: 1.8 },
        { align: right, share: 2.1 },
        { align: right, share: 0.8 },
        { align: right, share: 1.2 },
        { align: right, share: 1.2 },
      ],
      head: [
        [
          "Part",
          "Will it go?",
          "Off",
          "Material",
          "Thickness",
          "Plate for one blank",
          "Blanks",
          "Mass of one",
          "Mass of all",
        ].map((text) => ({ text })),
      ],
      rows: parts.map((one) => {
        const { part, forming } = one.report;
        const row = jobRow(one);
        return [
          { text: [{ ...bold(part.title), to: PLACES.part(part.name) }, soft(` ${row.what}`)] },
          { text: [bold(verdictWords(forming.verdict)), soft(` ${forming.machine ?? ""}`)] },
          ...[
            row.quantity,
            row.material,
            row.thickness,
            row.plate,
            row.blanks,
            row.massOfOne,
            row.massOfAll,
          ].map((text) => ({ text })),
        ];
      }),
    }),
    heading(pdf, "Plate by material and thickness"),
    tableBlock(pdf, {
      columns: [{ align: left, share: 2 }, ...Array.from({ length: 5 }, () => ({ align: right, share: 1 }))],
      head: [
        [
          "Material",
          "Thickness",
          "Parts",
          "Blanks",
          `Net area, ${totals.units.area}`,
          `Mass, ${totals.units.mass}`,
        ].map((text) => ({ text })),
      ],
      rows: [
        ...totals.rows.map((row) => [{ text: row.material }, { text: row.thickness }, ...figures(row)]),
        all,
      ],
      parted: (row) => row === all,
    }),
    paragraph(pdf, [soft(NET_AREA_NOTE)]),
  ];
}

function plateBlocks({ pdf, paper }: Making, binder: Binder): Block[] {
  const groups = layJob(binder);
  const laid = groups.filter(({ plates }) => plates.length > 0);
  const left = groups.flatMap((group) => group.laid.left.map((one) => leftInWords(group, one)));
  const { rows, all } = plateUseRows(groups);
  const sum = all.map((text) => ({ text: [bold(text)] }));
  const use: Block[] = [
    paragraph(pdf, laidWords(groups, unitsOf(binder))),
    fittedTable(
      pdf,
      {
        aligns: PLATE_USE_HEADS.map((_, i) => (i < 2 ? "left" : "right")),
        head: [PLATE_USE_HEADS.map((text) => ({ text }))],
        rows: [...rows.map((row) => row.map((text) => ({ text }))), sum],
        parted: (row) => row === sum,
      },
      textWidthMm(paper),
    ),
    paragraph(pdf, [soft(PLATE_USE_WORDS)]),
    paragraph(pdf, PLATE_CARE),
    caution(pdf, []),
  ];
  const plates = laid.flatMap((group) =>
    group.plates.map((plate) => {
      const stop = plateStop(plate);
      return stack([
        paragraph(pdf, [bold(plate.sheet.title)], { capMm: 2.2 }),
        ...(stop === undefined ? [] : [paragraph(pdf, [bold(stop)])]),
        paragraph(pdf, plateOrder(plate), { capMm: 1.7 }),
        picture(pdf, plateDrawing(plateDrawn(group, plate), { paper: PLATE_PRINT })),
        paragraph(pdf, plateSentence(group, plate), { capMm: 1.7 }),
      ]);
    }),
  );
  return [
    ...titled(pdf, "Plates to cut"),
    ...(laid.length > 0 ? use : []),
    ...(left.length > 0
      ? [
          heading(pdf, "Blanks that go on no plate"),
          ...left.map((words) => paragraph(pdf, words, { mark: "–" })),
        ]
      : []),
    ...pairs(plates),
  ];
}

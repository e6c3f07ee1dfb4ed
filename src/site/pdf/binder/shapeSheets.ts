import { patternDrawing } from "../../../drawing/pattern.ts";
import { viewsDrawing } from "../../../drawing/views.ts";
import { beside } from "../../../output/pdf/block.ts";
import { paragraph } from "../../../output/pdf/words.ts";
import { ACROSS, COLUMN } from "../../parts/papers.ts";
import { workedExample } from "../../shapes/example.ts";
import { cutParagraphs, trustParagraphs } from "../../words/blankWords.ts";
import { sizeFacts } from "../../words/partSize.ts";
import { facts, heading, pairs, picture } from "../blocks.ts";
import { keyRow } from "../keyRow.ts";
import { marking } from "../markingBlocks.ts";
import { prose } from "../prose.ts";
import { type BinderSheet, type Making, sheetCells } from "./model.ts";
import { sourceList } from "./textSheets.ts";
import { titled } from "./titled.ts";

const [VIEWS_MM, PATTERN_MM, PAIR_MM] = [74, 74, 50];

/** A shape on paper: what it is for and how it is laid out, and its example worked through by the same core as every part. */
export function shapeSheets(making: Making): BinderSheet[] {
  const { pdf, content, tables } = making;
  return content.shapes.map(({ id, title, summary, body, example, sources }) => ({
    title,
    place: `shape ${id}`,
    cells: sheetCells(making, title, "Shape"),
    blocks: () => {
      const report = workedExample(id, example, { catalogue: tables.catalogue });
      const own = report.blanks.filter(({ sameAs }) => sameAs === null);
      const pattern = (blank: (typeof own)[number]) =>
        picture(
          pdf,
          patternDrawing(report, {
            blank,
            paper: own.length === 1 ? { ...ACROSS, heightMm: PATTERN_MM } : { ...COLUMN, heightMm: PAIR_MM },
          }),
        );
      return [
        ...titled(pdf, title, summary),
        ...prose(pdf, body),
        heading(pdf, `Worked example: ${report.part.title}`),
        keyRow(pdf, report),
        beside(
          [
            picture(pdf, viewsDrawing(report, { paper: { ...COLUMN, widthMm: 83, heightMm: VIEWS_MM } })),
            facts(pdf, sizeFacts(report, null)),
          ],
          [1, 1],
        ),
        ...(own.length === 1 ? own.map(pattern) : pairs(own.map(pattern))),
        ...[...cutParagraphs(report), ...trustParagraphs(report)].map((sentences) =>
          paragraph(pdf, sentences.join(" ")),
        ),
        heading(pdf, "Marking table"),
        ...marking(pdf, report),
        ...sourceList(making, sources),
      ];
    },
  }));
}

import { beside, type Block, framed, stack } from "../../output/pdf/block.ts";
import type { Pdf } from "../../output/pdf/document.ts";
import { paragraph } from "../../output/pdf/words.ts";
import type { Report } from "../../report/report.ts";
import { keyFigures } from "../words/keyFigures.ts";
import { bold, SMALL_CAP, soft } from "./blocks.ts";

/** What a row of key figures has on the narrowest paper, and between two of them. [mm] */
const KEYS_MM = { row: 168, gap: 3 };

/** The key figures in a frame, in as many rows as they take: none is broken within its number. */
export function keyRow(pdf: Pdf, report: Report): Block {
  const cells = keyFigures(report).map(({ name, value, second }) => ({
    block: stack(
      [
        paragraph(pdf, [soft(name)], { capMm: SMALL_CAP }),
        paragraph(pdf, [bold(value)], { capMm: 2.6 }),
        ...(second ? [paragraph(pdf, [soft(second)], { capMm: SMALL_CAP })] : []),
      ],
      0.2,
    ),
    share: Math.max(
      pdf.width(value, { capMm: 2.6, bold: true }),
      pdf.width(name, { capMm: SMALL_CAP }),
      second ? 16 : 0,
    ),
  }));
  const rows: (typeof cells)[] = [[]];
  const takes = (row: typeof cells): number =>
    row.reduce((sum, { share }) => sum + share, KEYS_MM.gap * (row.length - 1));
  for (const cell of cells) {
    const last = rows.at(-1) ?? [];
    if (last.length > 0 && takes([...last, cell]) > KEYS_MM.row) rows.push([cell]);
    else last.push(cell);
  }
  const laid = rows.map((row, i) => {
    // Below others a row of few keeps its figures near each other.
    const spare = i > 0 ? Math.max(0, KEYS_MM.row - takes(row)) : 0;
    return beside(
      [...row.map(({ block }) => block), ...(spare > 0 ? [stack([])] : [])],
      [...row.map(({ share }) => share), ...(spare > 0 ? [spare] : [])],
      KEYS_MM.gap,
    );
  });
  return framed(pdf, stack(laid, 1.2));
}

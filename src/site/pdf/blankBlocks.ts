import { blankInHand } from "../../drawing/blankInHand.ts";
import type { RollZone } from "../../forming/zones.ts";
import { type Block, stack } from "../../output/pdf/block.ts";
import type { Pdf } from "../../output/pdf/document.ts";
import { tableBlock } from "../../output/pdf/tableBlock.ts";
import { paragraph } from "../../output/pdf/words.ts";
import type { Report } from "../../report/report.ts";
import { bevelNote, bevelRows } from "../forming/bevelRows.ts";
import { blankPaper } from "../forming/papers.ts";
import { blankNote } from "../forming/sheetWords.ts";
import { zoneBegins, zoneMarksSaid } from "../forming/zoneBegins.ts";
import { bold, heading, picture } from "./blocks.ts";

const right = { align: "right" as const, share: 1 };

/** The blank that goes into the rolls, to see which edge and which line is which. */
export function blankBlocks(pdf: Pdf, report: Report, zones: readonly RollZone[]): Block[] {
  // Pieces that differ are few; the part's card shows them all.
  const [first] = report.blanks;
  if (!first) return [];
  return [
    heading(pdf, "The blank"),
    stack([
      picture(
        pdf,
        blankInHand(report, { paper: blankPaper(report, zones), blank: first, zones: zoneBegins(zones) }),
      ),
      ...bevels(pdf, report, first.piece),
      paragraph(pdf, blankNote(report, zoneMarksSaid(report, zones))),
    ]),
  ];
}

/** What is bevelled off both ends at every line, where that is not the same all round. */
function bevels(pdf: Pdf, report: Report, piece: number): Block[] {
  const rows = bevelRows(report, piece);
  const [first] = rows;
  if (!first) return [];
  return [
    tableBlock(pdf, {
      capMm: 1.8,
      columns: [{ align: "left", share: 3 }, ...first.cells.map(() => right)],
      head: [],
      rows: rows.map(({ name, cells }) => [{ text: [bold(name)] }, ...cells.map((text) => ({ text }))]),
    }),
    paragraph(pdf, bevelNote(report.part.units)),
  ];
}

import { cornerSketch } from "../../drawing/forming/cornerSketch.ts";
import type { FormingPlan } from "../../forming/plan.ts";
import { beside, type Block, stack } from "../../output/pdf/block.ts";
import type { Pdf } from "../../output/pdf/document.ts";
import type { Room } from "../../output/pdf/flow.ts";
import { GAP_MM } from "../../output/pdf/paginate.ts";
import { tableBlock } from "../../output/pdf/tableBlock.ts";
import { paragraph } from "../../output/pdf/words.ts";
import type { Report } from "../../report/report.ts";
import { handDrawings } from "../forming/handDrawings.ts";
import { CORNERS_PAPER, isBlankApart } from "../forming/papers.ts";
import { isWrittenIn, limitHead, limitWords, PASSES } from "../forming/sheetWords.ts";
import { degrees, numbersIn } from "../words/numbers.ts";
import { basisRun } from "./basisRun.ts";
import { blankBlocks } from "./blankBlocks.ts";
import { bold, heading, picture } from "./blocks.ts";

/** Height of a row that is written in. [mm] */
const WRITE_MM = 7.2;
const right = { align: "right" as const, share: 1 };

/** On a page of its own, which goes with the finished part: what is measured, the blank in hand, drawings for the layout by hand. */
export function inspectionTable(
  pdf: Pdf,
  report: Report,
  { plan, known, room }: { plan: FormingPlan; known: ReadonlyMap<string, string>; room: Room },
): (Block | null)[] {
  const { part, forming } = report;
  const found = forming.inspection;
  if (!found) return [];
  const say = numbersIn(part.units);
  const zones = plan.settings?.zones ?? [];
  const limit = (row: (typeof found.rows)[number]) => {
    const { range, within } = limitWords(row, part.units);
    return within === "" ? range : `${range}, ${within}`;
  };
  const sheet = [
    heading(pdf, `Inspection: ${part.title}`),
    tableBlock(pdf, {
      rowMm: WRITE_MM,
      capMm: 1.8,
      columns: [
        { align: "left", share: 3 },
        right,
        { align: "right", share: 1.7 },
        { align: "left", share: 2.2 },
        { align: "left", share: 0.6 },
        { align: "left", share: 1.5 },
      ],
      head: [
        [
          { text: "What" },
          { text: `Nominal, ${part.units}` },
          { text: `${limitHead(found.toleranceClass)}, ${part.units}` },
          { text: "Measured" },
          { text: PASSES },
          { text: "Basis" },
        ],
      ],
      rows: found.rows.map((row) => [
        { text: [bold(row.what)] },
        { text: row.nominalDeg === null ? say.taped(row.nominalMm) : degrees(row.nominalDeg, 1) },
        isWrittenIn(row, found.toleranceClass) ? { text: "", toWrite: 1 } : { text: limit(row) },
        { text: "", toWrite: row.readings },
        { text: "", toWrite: 1 },
        { text: [basisRun(known, row.basis)] },
      ]),
    }),
    paragraph(pdf, found.note),
    ...cornersBlock(pdf, report, plan),
    ...(plan.route === "roll" && !isBlankApart(report, zones) ? blankBlocks(pdf, report, zones) : []),
  ];
  // Printed at the foot of the last sheet, where that has room left.
  const whole = [...sheet, ...byHand(pdf, report)];
  return [null, ...(stack(whole, GAP_MM).height(room.widthMm) <= room.heightMm ? whole : sheet)];
}

/** Which corner is which, from above. */
function cornersBlock(pdf: Pdf, report: Report, { brake }: FormingPlan): Block[] {
  const sketch = brake && cornerSketch(report, { paper: CORNERS_PAPER, plan: brake });
  return sketch ? [picture(pdf, sketch)] : [];
}

function byHand(pdf: Pdf, report: Report): Block[] {
  const { heading: purpose, drawings: low } = handDrawings(report);
  const drawings = low.map((one) => picture(pdf, one));
  if (drawings.length === 0) return [];
  return [
    heading(pdf, purpose),
    beside(
      drawings,
      drawings.map(() => 1),
    ),
  ];
}

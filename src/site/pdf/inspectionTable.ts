import { blankInHand } from "../../drawing/blankInHand.ts";
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
import { blankPaper, CORNERS_PAPER } from "../forming/papers.ts";
import { blankNote, isLimited, withinWords } from "../forming/sheetWords.ts";
import { degrees, numbersIn } from "../words/numbers.ts";
import { zoneBegins } from "../forming/zoneBegins.ts";
import { basisRun } from "./basisRun.ts";
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
  const limited = isLimited(found);
  const sheet = [
    heading(pdf, `Inspection: ${part.title}`),
    tableBlock(pdf, {
      rowMm: WRITE_MM,
      capMm: 1.8,
      columns: [
        { align: "left", share: 3 },
        right,
        ...(limited ? [right] : []),
        { align: "left", share: 3 },
        { align: "left", share: 1.6 },
      ],
      head: [
        [
          { text: "What" },
          { text: `Nominal, ${part.units}` },
          ...(limited ? [{ text: `Within, ${part.units}` }] : []),
          { text: "Measured" },
          { text: "Basis" },
        ],
      ],
      rows: found.rows
        .map((row) => [row, withinWords(row, say)] as const)
        .map(([{ what, nominalMm, nominalDeg, basis, readings }, within]) => [
          { text: [bold(what)] },
          { text: nominalDeg === null ? say.taped(nominalMm) : degrees(nominalDeg, 1) },
          ...(limited ? [{ text: within }] : []),
          { text: "", toWrite: readings },
          { text: [basisRun(known, basis)] },
        ]),
    }),
    paragraph(pdf, found.note),
    ...cornersBlock(pdf, report, plan),
    ...(plan.route === "roll" ? blank(pdf, report, zoneBegins(plan.settings?.zones ?? [])) : []),
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

/** The blank that goes into the rolls, to see which edge and which line is which. */
function blank(pdf: Pdf, report: Report, zones: ReturnType<typeof zoneBegins>): Block[] {
  // Pieces that differ are few; the part's card shows them all.
  const [first] = report.blanks;
  if (!first) return [];
  return [
    heading(pdf, "The blank"),
    stack([
      picture(pdf, blankInHand(report, { paper: blankPaper(report), blank: first, zones })),
      paragraph(pdf, blankNote(first.faceUp, report.blanks.length, zones.length > 0)),
    ]),
  ];
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

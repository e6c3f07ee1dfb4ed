import { isometricDrawing } from "../../../drawing/isometric.ts";
import { CARD } from "../../../drawing/paper.ts";
import { beside, type Block } from "../../../output/pdf/block.ts";
import { paragraph } from "../../../output/pdf/words.ts";
import type { Report } from "../../../report/report.ts";
import { workedExample } from "../../shapes/example.ts";
import { bold, caution, picture, soft } from "../blocks.ts";
import type { Making } from "./model.ts";

/** Pictures on the cover: so many in a row, and rows of them. */
const [ACROSS, ROWS] = [3, 2];

const gap = (heightMm: number): Block => ({ height: () => heightMm, draw: () => undefined });

/** What the binder is, for which job and shop, and which files it was made from. */
export function coverBlocks(making: Making, { mark, what }: { mark: string; what: string }): Block[] {
  const { pdf, binder, title } = making;
  const job = binder?.job;
  const large = { capMm: 2.8 };
  const line = (name: string, value: string | undefined): Block[] =>
    value === undefined
      ? []
      : [beside([paragraph(pdf, [{ text: name, ink: 0.35 }], large), paragraph(pdf, value, large)], [1, 5])];
  const shown = pictured(making).map((report) =>
    picture(pdf, isometricDrawing(report, { paper: { ...CARD, widthMm: 52, heightMm: 44 } })),
  );
  const rows = Array.from({ length: Math.ceil(shown.length / ACROSS) }, (_, i) => {
    const row = shown.slice(ACROSS * i, ACROSS * (i + 1));
    return beside([...row, ...Array.from({ length: ACROSS - row.length }, () => gap(0))], [1, 1, 1]);
  });
  return [
    gap(16),
    paragraph(pdf, [bold(title)], { capMm: 8 }),
    paragraph(pdf, what, { capMm: 3.2 }),
    gap(4),
    ...line("Reference", job?.reference),
    ...line("Date", job?.date),
    ...line("Shop", binder?.shop?.name),
    ...(binder ? line("Parts", String(binder.parts.length)) : []),
    gap(8),
    ...rows,
    gap(8),
    caution(pdf, []),
    paragraph(
      pdf,
      "Print at 100 %; black and white will do. The wide edge at the left is for holes. A sheet that hangs beside a machine is good only as long as the files that it was made from are.",
    ),
    paragraph(pdf, [
      soft(`${mark}. The same files give the same binder, byte for byte; no clock has a say in it.`),
    ]),
  ];
}

/** Parts of the job that look unlike each other, else the worked examples. */
function pictured({ binder, content, tables }: Making): Report[] {
  const reports = binder?.parts.map(({ report }) => report) ?? [];
  if (reports.length === 0)
    return content.shapes.map(({ id, example }) =>
      workedExample(id, example, { catalogue: tables.catalogue }),
    );
  const most = ACROSS * ROWS;
  if (reports.length <= most) return reports;
  const every = reports.length / most;
  return Array.from({ length: most }, (_, i) => reports[Math.floor(i * every)]).filter(
    (one) => one !== undefined,
  );
}

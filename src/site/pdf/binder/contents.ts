import { fitted } from "../../../output/pdf/words.ts";
import type { Block } from "../../../output/pdf/block.ts";
import type { Pdf } from "../../../output/pdf/document.ts";
import { printable } from "../../../output/pdf/printable.ts";
import type { BinderSection, BinderSheet, Making } from "./model.ts";
import { titled } from "./titled.ts";

/** Letters of a line, and of a section's. [mm] */
const CAP = { sheet: 2.1, section: 2.5 };
const [INDENT, NUMBER, WITH] = [5, 10, 32];
const DOTS = { widthMm: 0.3, dashMm: [0.3, 1.2] };

/** The contents with page numbers; the numbers are asked for when it is drawn, after everything else. */
export function contentsBlocks({ pdf }: Making, sections: readonly BinderSection[]): Block[] {
  return [
    ...titled(pdf, "Contents"),
    ...sections.flatMap((section) => [
      { ...headLine(pdf, section), withNext: true },
      ...section.sheets.map((sheet) =>
        sheetLine(
          pdf,
          sheet,
          section.sheets.some((one) => one.with),
        ),
      ),
    ]),
  ];
}

const pageOf = (pdf: Pdf, { place }: BinderSheet): string => {
  const page = pdf.sheetOf(place);
  if (page === undefined) throw new RangeError(`no page of ${place}`);
  return String(page);
};

const headLine = (pdf: Pdf, { title }: BinderSection): Block => ({
  height: () => 2 * CAP.section,
  draw: (x, y) => pdf.write(title, [x, y + 1.3 * CAP.section], { capMm: CAP.section, bold: true }),
});

/** A sheet, dots, its page; and behind it the page of the sheet that goes with it. */
function sheetLine(pdf: Pdf, sheet: BinderSheet, paired: boolean): Block {
  const high = CAP.sheet * 1.15;
  const how = { capMm: CAP.sheet };
  return {
    height: () => high,
    draw: (x, y, widthMm) => {
      const middle = y + high / 2;
      const end = x + widthMm - (paired ? WITH : 0);
      const title = printable(sheet.title, pdf);
      const room = end - x - INDENT - NUMBER;
      fitted(pdf, title, [x + INDENT, middle], how, room);
      const from = x + INDENT + Math.min(room, pdf.width(title, how)) + 1.5;
      const dots = middle + CAP.sheet / 2;
      if (from < end - NUMBER) pdf.line([from, dots], [end - NUMBER + 1, dots], DOTS);
      pdf.write(pageOf(pdf, sheet), [end, middle], { ...how, anchor: "end" });
      pdf.link(sheet.place, [x + INDENT, y], [end - x - INDENT, high]);
      if (!sheet.with) return;
      pdf.write("work sheet", [end + 4, middle], how);
      pdf.write(pageOf(pdf, sheet.with), [x + widthMm, middle], { ...how, anchor: "end" });
      pdf.link(sheet.with.place, [end + 4, y], [WITH - 4, high]);
    },
  };
}

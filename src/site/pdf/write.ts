import type { Blank, Report } from "../../report/report.ts";
import { fullSizePdf, type WhichSheets } from "../../output/pdf/fullSize.ts";
import { tilePaper, type TilePaperId } from "../../output/pdf/tilePaper.ts";
import { saveFile } from "../bench/files/saveFile.ts";
import { fetchFonts } from "./fonts.ts";
import { pdfDate } from "./pdfDate.ts";

const PDF = "application/pdf";

interface Pattern {
  readonly name: string;
  readonly blank: Blank;
  readonly count: number;
}

/** Makes the full-size pattern and hands it over; says in a sentence what came of it. */
export async function saveFullSize(
  report: Report,
  { name, blank, count }: Pattern,
  { paper, sheets, file }: { paper: TilePaperId; sheets: WhichSheets; file: string },
): Promise<string> {
  const fonts = await fetchFonts();
  const done = fullSizePdf(report, blank, {
    paper: tilePaper(paper),
    sheets,
    fonts,
    date: pdfDate(new Date()),
    count,
  });
  if (done.kind === "refused") return `${name}: ${done.problem}. What helps: ${done.remedy}.`;
  saveFile(file, done.bytes, PDF);
  const many = `${done.sheets} ${done.sheets === 1 ? "sheet" : "sheets"}`;
  return `${file} went to the browser’s downloads: ${many} and a map of them. Print at 100 %, not “fit to page”, and lay a rule to the 100 mm bars.`;
}

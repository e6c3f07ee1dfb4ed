import { createPdf, type PdfFonts } from "../../output/pdf/document.ts";
import { flow, roomOf } from "../../output/pdf/flow.ts";
import type { Blank, Report } from "../../report/report.ts";
import { fullSizePdf, type WhichSheets } from "../../output/pdf/fullSize.ts";
import { sharesOf } from "../../output/pdf/share.ts";
import { readingPaper, tilePaper, type TilePaperId } from "../../output/pdf/tilePaper.ts";
import { saveFile } from "../bench/files/saveFile.ts";
import { type PartAround, printedCells } from "../words/titleBlock.ts";
import { fetchPrintedWords, type PrintedWords } from "../bench/printedWords.ts";
import { fetchFonts } from "./fonts.ts";
import { lostSigns } from "./lostSigns.ts";
import type { PatternKind } from "./patternKind.ts";
import { cardOnSheets } from "./cardOnSheets.ts";
import { pdfDate } from "./pdfDate.ts";
import { workSheet } from "./workSheet.ts";

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
  {
    paper,
    sheets,
    kind,
    file,
    around,
  }: {
    paper: TilePaperId;
    sheets: WhichSheets;
    kind: PatternKind | undefined;
    file: string;
    around: Pick<PartAround, "material" | "gauge" | "mark">;
  },
): Promise<string> {
  const ofPoints = kind === "points";
  const share = ofPoints ? undefined : sharesOf(report, blank).find((one) => one.kind === kind);
  if (kind && !ofPoints && !share)
    return `${name}: the pattern as it stands has no ${kind} that could be turned over.`;
  const fonts = await fetchFonts();
  const done = fullSizePdf(report, blank, {
    paper: tilePaper(paper),
    sheets: ofPoints ? "points" : sheets,
    fonts,
    date: pdfDate(new Date()),
    count,
    share,
    material: around.material,
    gauge: around.gauge,
    mark: around.mark,
  });
  if (done.kind === "refused") return `${name}: ${done.problem}. What helps: ${done.remedy}.`;
  saveFile(file, done.bytes, PDF);
  const many = `${done.sheets} ${done.sheets === 1 ? "sheet" : "sheets"}`;
  return `${file} went to the browser’s downloads: ${many} and a map of them. Print at 100 %, not “fit to page”, and lay a rule to the 100 mm bars.${lostSigns(done.lost)}`;
}

export interface Sheets {
  readonly kind: "card" | "work-sheet";
  readonly paper: TilePaperId;
}

/** The card or the work sheet of a part; undefined where there is none. */
export function sheetsPdf(
  report: Report,
  around: PartAround,
  { kind, paper, fonts, date, known, glossary }: Sheets & { fonts: PdfFonts; date: string } & PrintedWords,
):
  | {
      readonly bytes: Uint8Array<ArrayBuffer>;
      readonly pages: number;
      /** Signs that print has not, each with the words that it stood in first. */
      readonly lost: ReadonlyMap<string, string>;
    }
  | undefined {
  const { part } = report;
  const name = kind === "card" ? "part card" : "work sheet";
  const pdf = createPdf({ title: `${part.title}: ${name}`, subject: part.name, date, fonts });
  const cells = printedCells(report, around);
  const setting = { paper: readingPaper(tilePaper(paper)), cells, below: around.mark };
  const blocks =
    kind === "card"
      ? cardOnSheets(pdf, report, { ...around, known }, setting)
      : workSheet(pdf, report, { shop: around.shop, known, glossary, room: roomOf(setting) });
  if (!blocks) return undefined;
  flow(pdf, blocks, setting);
  return { bytes: pdf.bytes(), pages: pdf.sheets(), lost: pdf.lost() };
}

/** Makes the card or the work sheet and hands it over. */
export async function saveSheets(
  report: Report,
  around: PartAround,
  { kind, paper, file }: Sheets & { file: string },
): Promise<string> {
  const fonts = await fetchFonts();
  const words = await fetchPrintedWords();
  const made = sheetsPdf(report, around, { kind, paper, fonts, ...words, date: pdfDate(new Date()) });
  if (!made) return "No machine of the shop takes this part, so there are no steps to work by.";
  saveFile(file, made.bytes, PDF);
  return `${file} went to the browser’s downloads: ${made.pages} ${made.pages === 1 ? "page" : "pages"}.${lostSigns(made.lost)}`;
}

import type { Tables } from "../../../input/context.ts";
import type { Content } from "../../../input/loadContent.ts";
import { createPdf, type Pdf, type PdfFonts, READING_DECIMALS } from "../../../output/pdf/document.ts";
import { FOOT_BELOW_MM, flowed, type Setting } from "../../../output/pdf/flow.ts";
import { printable } from "../../../output/pdf/printable.ts";
import { type TilePaperId, tilePaper } from "../../../output/pdf/tilePaper.ts";
import { fitted } from "../../../output/pdf/words.ts";
import type { Binder } from "../../binder/makeBinder.ts";
import { shortName } from "../../words/sources.ts";
import { NO_DATE, pdfDate } from "../pdfDate.ts";
import { contentsBlocks } from "./contents.ts";
import { coverBlocks } from "./cover.ts";
import { fileMark } from "./mark.ts";
import { type BinderSheet, type Making, MARGINS, PLACES, sheetCells } from "./model.ts";
import { sectionsOf, type WhichHalf } from "./sections.ts";

export type BinderPaper = Extract<TilePaperId, "a4" | "letter">;

export interface BinderRequest {
  readonly content: Content;
  readonly tables: Tables;
  /** The job; for the reference half it may be left out. */
  readonly binder: Binder | undefined;
  readonly which: WhichHalf;
  readonly paper: BinderPaper;
  readonly fonts: PdfFonts;
  /** Of the program. */
  readonly version: string;
}

export interface MadeBinder {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly pages: number;
  /** Signs that somebody typed and that the binder's font has not, each with the words that it stood in. */
  readonly lost: ReadonlyMap<string, string>;
}

/** The whole binder as one PDF: cover, contents with page numbers, and every sheet, each drawn and let go of in turn. */
export function binderPdf(request: BinderRequest): MadeBinder {
  const { content, tables, which, fonts, version } = request;
  const binder = which === "reference" ? undefined : request.binder;
  const title = binder ? (binder.job?.title ?? binder.folder) : "Reference binder";
  const mark = fileMark(version, content, tables, binder);
  const paper = tilePaper(request.paper);
  const date = dateOf(binder?.job?.date);
  const pdf = createPdf({ title, subject: mark, date, fonts, decimals: READING_DECIMALS });
  const known = new Map(Object.entries(content.sources).map(([id, source]) => [id, shortName(source)]));
  const glossary = new Map(Object.entries(content.glossary).map(([entry, { text }]) => [entry, text]));
  const making: Making = { pdf, paper, content, tables, binder, known, glossary, title };
  const setting: Omit<Setting, "cells"> = { paper, margins: MARGINS, counted: "middle", bookmarks: false };
  const sheet = (): void => pdf.sheet(paper.widthMm, paper.heightMm);
  const sections = sectionsOf(making, which);

  sheet();
  const cover = coverBlocks(making, { mark, what: WHAT[which] });
  flowed(pdf, cover, { ...setting, cells: sheetCells(making, title, "Cover") }).draw(0);
  pdf.bookmark("Cover");
  const contents = flowed(pdf, contentsBlocks(making, sections), {
    ...setting,
    cells: sheetCells(making, "Contents", "Contents"),
  });
  for (let page = 0; page < contents.pages; page++) {
    sheet();
    if (page === 0) {
      pdf.place(PLACES.contents);
      pdf.bookmark("Contents");
    }
  }
  const put = ({ blocks, cells, place }: BinderSheet): void => {
    const { pages, draw } = flowed(pdf, blocks(), { ...setting, cells });
    for (let page = 0; page < pages; page++) {
      sheet();
      if (page === 0) pdf.place(place);
      draw(page);
    }
  };
  for (const section of sections) {
    let over: ReturnType<Pdf["bookmark"]> | undefined;
    for (const one of section.sheets) {
      put(one);
      const first = pdf.sheetOf(one.place) ?? 0;
      over ??= pdf.bookmark(section.title, null, first);
      const own = pdf.bookmark(one.title, over, first);
      if (!one.with) continue;
      put(one.with);
      pdf.bookmark(one.with.title, own, pdf.sheetOf(one.with.place));
    }
  }
  for (let page = 0; page < contents.pages; page++) {
    pdf.turnTo(FIRST_OF_CONTENTS + page);
    contents.draw(page);
  }
  const pages = pdf.sheets();
  for (let page = 1; page <= pages; page++) runningFoot(making, { page, pages, mark });
  return { bytes: pdf.bytes(), pages, lost: pdf.lost() };
}

const FIRST_OF_CONTENTS = 2;

const WHAT: Readonly<Record<WhichHalf, string>> = {
  all: "Job and reference binder for work in plate",
  job: "Job binder for work in plate",
  reference: "For work in plate: safety, shapes, ready reckoners, sources",
};

/** What every page says below its frame, whichever sheet it is of. */
function runningFoot(
  { pdf, paper, title }: Making,
  { page, pages, mark }: { page: number; pages: number; mark: string },
): void {
  pdf.turnTo(page);
  const y = paper.heightMm - MARGINS.bottom + FOOT_BELOW_MM;
  const [left, right] = [MARGINS.left, paper.widthMm - MARGINS.right];
  const how = { capMm: 1.6 };
  const room = (right - left) * 0.42;
  fitted(pdf, `${printable(title, pdf)} · ${mark}`, [left, y], how, room);
  pdf.write(`page ${page} of ${pages}`, [right, y], { ...how, anchor: "end" });
  pdf.link(PLACES.contents, [left, y - 2], [room, 4]);
}

/** jsPDF takes no others. */
const YEARS = { from: 1970, to: 2037 };
/** A job is made on its own date, or on none. */
function dateOf(written: string | undefined): string {
  const day = /^\d{4}-\d\d-\d\d$/.test(written ?? "") ? new Date(`${written ?? ""}T00:00:00Z`) : undefined;
  const year = day?.getUTCFullYear() ?? Number.NaN;
  return day && year >= YEARS.from && year <= YEARS.to ? pdfDate(day) : NO_DATE;
}

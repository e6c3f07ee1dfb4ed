import { usualPaper } from "../../output/pdf/tilePaper.ts";
import type { Binder, BinderPart } from "../binder/binder.ts";
import type { PrintedWords } from "../bench/printedWords.ts";
import { projectFonts } from "../binder/projectFiles.ts";
import { NO_DATE } from "./pdfDate.ts";
import { readableFiles } from "./readableFiles.ts";
import { sheetsPdf } from "./write.ts";

/** Part card and work sheet as files of the binder, for whoever reads it without scripts. */
export function staticSheets(
  { report, material, gauge }: BinderPart,
  { shop, job }: Binder,
  { known, glossary, mark }: PrintedWords & { mark: string },
): { readonly file: string; readonly bytes: () => Uint8Array<ArrayBuffer> }[] {
  const fonts = projectFonts();
  const paper = usualPaper(report.part.units);
  const around = { shop, job, material: material.name, gauge, mark };
  return readableFiles(report).map(({ kind, file }) => ({
    file,
    bytes: () => {
      const made = sheetsPdf(report, around, { kind, paper, fonts, known, glossary, date: NO_DATE });
      if (!made) throw new RangeError(`${report.part.name} has no ${kind}`);
      return made.bytes;
    },
  }));
}

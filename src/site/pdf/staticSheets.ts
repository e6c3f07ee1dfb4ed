import { readFileSync } from "node:fs";
import { usualPaper } from "../../output/pdf/tilePaper.ts";
import type { Binder, BinderPart } from "../binder/binder.ts";
import { readableFiles } from "./readableFiles.ts";
import { sheetsPdf } from "./write.ts";

/** Never the clock's: the same files give the same binder. */
const DATE = "D:20000101000000+00'00'";

const font = (weight: number): Uint8Array =>
  new Uint8Array(readFileSync(`public/fonts/binder-sans-${weight}.ttf`));

/** Part card and work sheet as files of the binder, for whoever reads it without scripts. */
export function staticSheets(
  { report, material, gauge }: BinderPart,
  { shop, job }: Binder,
  { known, mark }: { known: ReadonlyMap<string, string>; mark: string },
): { readonly file: string; readonly bytes: () => Uint8Array<ArrayBuffer> }[] {
  const fonts = { regular: font(400), bold: font(700) };
  const paper = usualPaper(report.part.units);
  const around = { shop, job, material: material.name, gauge, mark };
  return readableFiles(report).map(({ kind, file }) => ({
    file,
    bytes: () => {
      const made = sheetsPdf(report, around, { kind, paper, fonts, known, date: DATE });
      if (!made) throw new RangeError(`${report.part.name} has no ${kind}`);
      return made.bytes;
    },
  }));
}

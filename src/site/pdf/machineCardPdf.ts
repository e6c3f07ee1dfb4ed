import { createPdf, type PdfFonts } from "../../output/pdf/document.ts";
import { flow } from "../../output/pdf/flow.ts";
import { tilePaper } from "../../output/pdf/tilePaper.ts";
import type { BinderPaper } from "./binder/binderPdf.ts";
import { cardCells } from "../machines/card.ts";
import { type JobInShop, machineCard } from "./binder/machineSheets.ts";
import { NO_DATE } from "./pdfDate.ts";

interface With {
  readonly paper: BinderPaper;
  readonly fonts: PdfFonts;
  /** Short names of the sources, by id. */
  readonly known: ReadonlyMap<string, string>;
  /** Which version and files it is made from. */
  readonly mark: string;
}

/** The card of one machine, to be hung beside it: the same as in the binder. */
export function machineCardPdf(
  binder: JobInShop,
  index: number,
  { paper, fonts, known, mark }: With,
): Uint8Array<ArrayBuffer> {
  const machine = binder.shop.machines[index];
  if (!machine) throw new RangeError(`no machine ${index}`);
  const pdf = createPdf({ title: `${machine.name}: card`, subject: binder.shop.name, date: NO_DATE, fonts });
  const setting = { paper: tilePaper(paper), cells: cardCells(machine, binder), below: mark };
  flow(pdf, machineCard({ pdf, known }, { binder, machine, index }, setting), setting);
  return pdf.bytes();
}

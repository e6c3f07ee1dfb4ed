import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { loadContent } from "../../input/loadContent.ts";
import { type BinderPaper, binderPdf } from "../pdf/binder/binderPdf.ts";
import { readBinder } from "./binder.ts";

const font = (weight: number): Uint8Array =>
  new Uint8Array(readFileSync(resolve(`public/fonts/binder-sans-${weight}.ttf`)));

/** The binder of this build as one PDF. */
export function printBinder(paper: BinderPaper): Uint8Array<ArrayBuffer> {
  const binder = readBinder();
  const { version } = JSON.parse(readFileSync("package.json", "utf8")) as { version: string };
  const fonts = { regular: font(400), bold: font(700) };
  // The pages run from a bundle, where the texts no longer lie beside the code.
  const content = loadContent(resolve("content"));
  return binderPdf({ content, tables: binder.tables, binder, which: "all", paper, fonts, version }).bytes;
}

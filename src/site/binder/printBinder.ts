import { resolve } from "node:path";
import { loadContent } from "../../input/loadContent.ts";
import { type BinderPaper, binderPdf } from "../pdf/binder/binderPdf.ts";
import { readBinder } from "./binder.ts";
import { projectFonts, projectVersion } from "./projectFiles.ts";

/** The binder of this build as one PDF. */
export function printBinder(paper: BinderPaper): Uint8Array<ArrayBuffer> {
  const binder = readBinder();
  const [fonts, version] = [projectFonts(), projectVersion()];
  // The pages run from a bundle, where the texts no longer lie beside the code.
  const content = loadContent(resolve("content"));
  return binderPdf({ content, tables: binder.tables, binder, which: "all", paper, fonts, version }).bytes;
}

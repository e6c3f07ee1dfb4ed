import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { PdfFonts } from "../../output/pdf/document.ts";

/** The project's folder, as a build is run in it. */
const HERE = ".";

/** The binder's font, read from the project. */
export function projectFonts(folder = HERE): PdfFonts {
  const font = (weight: number): Uint8Array =>
    new Uint8Array(readFileSync(join(folder, `public/fonts/binder-sans-${weight}.ttf`)));
  return { regular: font(400), bold: font(700) };
}

/** The version that the project calls itself. */
export const projectVersion = (folder = HERE): string =>
  (JSON.parse(readFileSync(join(folder, "package.json"), "utf8")) as { version: string }).version;

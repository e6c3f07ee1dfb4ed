import { projectFonts } from "../../src/site/binder/projectFiles.ts";

/** The binder's font, for PDFs that tests make. */
export const fonts = projectFonts();

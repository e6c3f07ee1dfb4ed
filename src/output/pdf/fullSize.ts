import type { Blank, Report } from "../../report/report.ts";
import { markWords } from "../contour.ts";
import { createPdf, type PdfFonts } from "./document.ts";
import { mapSheet } from "./mapSheet.ts";
import { printable } from "./printable.ts";
import { type Template, templateOf } from "./template.ts";
import { TILE_PAPERS, type TilePaper, tileLayout } from "./tilePaper.ts";
import { tileSheet } from "./tileSheet.ts";
import { type Tiling, tilingOf } from "./tiles.ts";

/** More sheets than this are not glued together by anybody with care. */
export const MOST_SHEETS = 60;
/** A pattern turned on the grid has to save at least so many sheets. */
const WORTH_TURNING = 2;

/** Which sheets are printed: all that hold a line, or only those that an edge crosses. */
export type WhichSheets = "all" | "edges";

export interface FullSizeOptions {
  readonly paper: TilePaper;
  readonly sheets?: WhichSheets;
  readonly fonts: PdfFonts;
  /** As PDF writes it: D:20260131120000+00'00'. */
  readonly date: string;
  /** How many of the blank are cut. */
  readonly count: number;
}

export type FullSize =
  | { readonly kind: "written"; readonly bytes: Uint8Array<ArrayBuffer>; readonly sheets: number }
  | { readonly kind: "refused"; readonly problem: string; readonly remedy: string };

interface Laid {
  readonly template: Template;
  readonly tiling: Tiling;
}

/** The pattern of one blank at full size, on sheets of paper that are glued together. */
export function fullSizePdf(report: Report, blank: Blank, options: FullSizeOptions): FullSize {
  const { paper, sheets = "all", fonts, date, count } = options;
  const { template, tiling } = layOn(report, blank, { paper, sheets });
  if (tiling.tiles.length > MOST_SHEETS)
    return tooMany(report, blank, { paper, sheets, many: tiling.tiles.length });
  const { part } = report;
  const pdf = createPdf({
    title: `${part.title}: full-size pattern`,
    subject: `${part.name}, ${paper.name}, ${tiling.tiles.length} sheets`,
    date,
    fonts,
  });
  const what = printable(`${part.title} · ${markWords(report, blank)}`, pdf);
  mapSheet(pdf, { report, template, tiling, sheets, count });
  tiling.tiles.forEach((tile, i) => {
    const place = `${i + 1} of ${tiling.tiles.length}`;
    tileSheet(pdf, template, { tiling, tile, words: { what, place, inches: part.units === "in" } });
    pdf.bookmark(`Sheet ${tile.name}`);
  });
  return { kind: "written", bytes: pdf.bytes(), sheets: tiling.tiles.length };
}

/** The fewest sheets: upright or lying, and the pattern as drawn or turned into its smallest rectangle. */
function layOn(
  report: Report,
  blank: Blank,
  { paper, sheets }: { paper: TilePaper; sheets: WhichSheets },
): Laid {
  const turns = blank.box.turnDeg === 0 ? [0] : [0, blank.box.turnDeg];
  const [asDrawn, turned] = turns.map((deg) => {
    const template = templateOf(report, blank, deg);
    const pieces = sheets === "all" ? [...template.edges, ...template.lines] : template.edges;
    const [upright, lying] = [false, true].map((one) => tilingOf(pieces, tileLayout(paper, one)));
    const fewer = lying && upright && lying.tiles.length < upright.tiles.length ? lying : upright;
    return { template, tiling: fewer as Tiling };
  });
  if (!asDrawn) throw new RangeError("no tiling");
  const saved = asDrawn.tiling.tiles.length - (turned?.tiling.tiles.length ?? Infinity);
  return turned && saved >= WORTH_TURNING ? turned : asDrawn;
}

/** What goes instead: other papers of the same kind, or only the sheets along the edges. */
function tooMany(
  report: Report,
  blank: Blank,
  { paper, sheets, many }: { paper: TilePaper; sheets: WhichSheets; many: number },
): FullSize {
  const number = (on: TilePaper, which: WhichSheets) =>
    layOn(report, blank, { paper: on, sheets: which }).tiling.tiles.length;
  const larger = TILE_PAPERS.filter((one) => one.widthMm > paper.widthMm)
    .map((one) => ({ name: one.name, sheets: number(one, sheets) }))
    .filter((one) => one.sheets <= MOST_SHEETS)
    .map((one) => `${one.name} (${one.sheets} ${one.sheets === 1 ? "sheet" : "sheets"})`);
  const alongEdges = sheets === "all" ? number(paper, "edges") : Infinity;
  const remedies = [
    ...(larger.length > 0 ? [`take larger paper: ${larger.join(", ")}`] : []),
    ...(alongEdges <= MOST_SHEETS ? [`print only the sheets that an edge crosses (${alongEdges})`] : []),
    "mark the blank out from the marking table, or cut it from the DXF file",
  ];
  return {
    kind: "refused",
    problem: `The pattern takes ${many} sheets of ${paper.name}, more than the ${MOST_SHEETS} that can be glued together with care`,
    remedy: remedies.join("; or "),
  };
}

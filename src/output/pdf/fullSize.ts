import type { Blank, Report } from "../../report/report.ts";
import { markWords } from "../contour.ts";
import { createPdf, type PdfFonts } from "./document.ts";
import { mapSheet } from "./mapSheet.ts";
import { markingPoints } from "./markingPoints.ts";
import { type PointOnTemplate, pointsOn } from "./pointPicture.ts";
import { pointList } from "./pointWords.ts";
import { printable } from "./printable.ts";
import { type Share, sharesOf, uprightDeg } from "./share.ts";
import { type Template, templateOf, turning } from "./template.ts";
import { TILE_PAPERS, type TilePaper, tileLayout } from "./tilePaper.ts";
import { tileSheet } from "./tileSheet.ts";
import { type Piece, type Tiling, tilingOf } from "./tiles.ts";

/** More sheets than this are not glued together by anybody with care. */
export const MOST_SHEETS = 60;
/** A pattern turned on the grid has to save at least so many sheets. */
const WORTH_TURNING = 2;

/** Which sheets are printed: all that hold a line, only those that an edge crosses, or only those with a marking point. */
export type WhichSheets = "all" | "edges" | "points";

export interface FullSizeOptions {
  readonly paper: TilePaper;
  readonly sheets?: WhichSheets;
  readonly fonts: PdfFonts;
  /** As PDF writes it: D:20260131120000+00'00'. */
  readonly date: string;
  /** How many of the blank are cut. */
  readonly count: number;
  /** What the material is called; by its id where that is left out. */
  readonly material?: string;
  /** The sheet gauge that its thickness is, "10 ga". */
  readonly gauge?: string | null;
  /** Which version and files it is made from; left out where it is of none. */
  readonly mark?: string | undefined;
  /** Only a stretch of the pattern, to be turned over on the plate; all of it where this is left out. */
  readonly share?: Share | undefined;
}

export type FullSize =
  | {
      readonly kind: "written";
      readonly bytes: Uint8Array<ArrayBuffer>;
      readonly sheets: number;
      /** Signs that the font has not, each with the words that it stood in first. */
      readonly lost: ReadonlyMap<string, string>;
    }
  | { readonly kind: "refused"; readonly problem: string; readonly remedy: string };

interface Wanted {
  readonly paper: TilePaper;
  readonly sheets: WhichSheets;
  readonly share?: Share | undefined;
}

interface Laid {
  readonly template: Template;
  readonly tiling: Tiling;
  /** The points that are marked, where the sheets are only those that hold one. */
  readonly points: readonly PointOnTemplate[] | undefined;
}

/** The pattern of one blank at full size, on sheets of paper that are glued together. */
export function fullSizePdf(report: Report, blank: Blank, options: FullSizeOptions): FullSize {
  const { paper, sheets = "all", fonts, date, count, share, mark } = options;
  const layOn = layer(report, blank);
  const { template, tiling, points } = layOn({ paper, sheets, share });
  if (tiling.tiles.length > MOST_SHEETS) {
    const count = (wanted: Wanted) => layOn(wanted).tiling.tiles.length;
    return tooMany(sharesOf(report, blank), count, { paper, sheets, share, many: tiling.tiles.length });
  }
  const { part } = report;
  const which = points ? ", marking points" : share ? `, one ${share.kind}` : "";
  const pdf = createPdf({
    title: `${part.title}: full-size pattern${which}`,
    subject: `${part.name}, ${paper.name}, ${tiling.tiles.length} sheets`,
    date,
    fonts,
  });
  const what = printable(
    `${part.title} · ${markWords(report, blank)}${which}${mark === undefined ? "" : ` · ${mark}`}`,
    pdf,
  );
  const { material = part.material, gauge = null } = options;
  mapSheet(pdf, { report, whole: blank, template, tiling, sheets, points, count, material, gauge, mark });
  if (points) pointList(pdf, points, { tiling, units: part.units, mark });
  const all = points && { all: points, units: part.units };
  tiling.tiles.forEach((tile, i) => {
    const place = `${i + 1} of ${tiling.tiles.length}`;
    const words = { what, place, inches: part.units === "in" };
    tileSheet(pdf, template, { tiling, tile, words, points: all });
    pdf.bookmark(`Sheet ${tile.name}`);
  });
  return { kind: "written", bytes: pdf.bytes(), sheets: tiling.tiles.length, lost: pdf.lost() };
}

/**
 * Lays a pattern on the fewest sheets: upright or lying, and as drawn or turned into its smallest rectangle. What is drawn is
 * the same on every paper and is drawn once.
 */
function layer(report: Report, blank: Blank): (wanted: Wanted) => Laid {
  const known = new Map<string, Template>();
  const drawn = (deg: number, share: Share | undefined): Template => {
    const key = `${deg} ${share?.kind ?? "whole"}`;
    const template = known.get(key) ?? templateOf(report, blank, deg, share);
    known.set(key, template);
    return template;
  };
  return (wanted) => layOn(report, blank, { ...wanted, drawn });
}

function layOn(
  report: Report,
  blank: Blank,
  { paper, sheets, share, drawn }: Wanted & { drawn: (deg: number, share: Share | undefined) => Template },
): Laid {
  const other = share ? uprightDeg(share) : blank.box.turnDeg;
  const turns = other === 0 ? [0] : [0, other];
  const marked = sheets === "points" ? markingPoints(report, blank) : undefined;
  const [asDrawn, turned] = turns.map((deg): Laid => {
    const template = drawn(deg, share);
    const points = marked && pointsOn(marked, turning(deg));
    const pieces =
      points?.map(({ on }): Piece => [on, on]) ??
      (sheets === "all" ? [...template.edges, ...template.lines] : template.edges);
    const round = points ? template.edges : pieces;
    const [upright, lying] = [false, true].map((one) => tilingOf(pieces, tileLayout(paper, one), round));
    const fewer = lying && upright && lying.tiles.length < upright.tiles.length ? lying : upright;
    return { template, tiling: fewer as Tiling, points };
  });
  if (!asDrawn) throw new RangeError("no tiling");
  const saved = asDrawn.tiling.tiles.length - (turned?.tiling.tiles.length ?? Infinity);
  return turned && saved >= WORTH_TURNING ? turned : asDrawn;
}

/** What goes instead: other papers of the same kind, or only the sheets along the edges. */
function tooMany(
  shares: readonly Share[],
  count: (wanted: Wanted) => number,
  { paper, sheets, share, many }: Wanted & { many: number },
): FullSize {
  const number = (on: TilePaper, which: WhichSheets, of = share) =>
    count({ paper: on, sheets: which, share: of });
  const larger = TILE_PAPERS.filter((one) => one.widthMm > paper.widthMm)
    .map((one) => ({ name: one.name, sheets: number(one, sheets) }))
    .filter((one) => one.sheets <= MOST_SHEETS)
    .map((one) => `${one.name} (${one.sheets} ${one.sheets === 1 ? "sheet" : "sheets"})`);
  const alongEdges = sheets === "all" ? number(paper, "edges") : Infinity;
  const atPoints = sheets === "points" || share ? Infinity : number(paper, "points");
  const less = (sheets === "points" ? [] : shares)
    .filter(({ kind }) => !share || (share.kind === "half" && kind === "quarter"))
    .map((one) => ({ kind: one.kind, sheets: number(paper, sheets, one) }))
    .filter((one) => one.sheets <= MOST_SHEETS)
    .map((one) => `one ${one.kind} (${one.sheets})`);
  const remedies = [
    ...(less.length > 0
      ? [`print only a share of it, which is turned over on the plate: ${less.join(", ")}`]
      : []),
    ...(larger.length > 0 ? [`take larger paper: ${larger.join(", ")}`] : []),
    ...(alongEdges <= MOST_SHEETS ? [`print only the sheets that an edge crosses (${alongEdges})`] : []),
    ...(atPoints <= MOST_SHEETS
      ? [`print only the sheets that hold a marking point (${atPoints}), which are not glued into a whole`]
      : []),
    "mark the blank out from the marking table, or cut it from the DXF file",
  ];
  return {
    kind: "refused",
    problem: `${sheets === "points" ? "The marking points take" : `${share ? `One ${share.kind} of the pattern` : "The pattern"} takes`} ${many} sheets of ${paper.name}, more than the ${MOST_SHEETS} that can be ${sheets === "points" ? "laid" : "glued together"} with care`,
    remedy: remedies.join("; or "),
  };
}

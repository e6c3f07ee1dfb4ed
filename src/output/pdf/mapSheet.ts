import { boxOf, touch } from "../../drawing/box.ts";
import { capital } from "../../drawing/capital.ts";
import { checkDistance, checkUnit, fixed } from "../../drawing/format.ts";
import { thickness } from "../../drawing/thickness.ts";
import { LAP_TO_HERE } from "../../drawing/pattern/lapLine.ts";
import type { Box } from "../../drawing/model.ts";
import { distance2, type Vec2 } from "../../geometry/vector.ts";
import type { Blank, Report } from "../../report/report.ts";
import { checkBars } from "./checkBars.ts";
import type { Pdf } from "./document.ts";
import type { WhichSheets } from "./fullSize.ts";
import { endsInStop } from "./numberedLines.ts";
import { printable } from "./printable.ts";
import type { PointOnTemplate } from "./pointPicture.ts";
import { POINT_STEPS, pointFact } from "./pointWords.ts";
import type { Template } from "./template.ts";
import { ORIGIN_NAME } from "./templateOrigin.ts";
import { sheetMap } from "./sheetMap.ts";
import { shareFact, shareSteps } from "./shareWords.ts";
import { readingPaper } from "./tilePaper.ts";
import type { Tiling } from "./tiles.ts";
import { wholePicture } from "./wholePicture.ts";
import { fitted, paragraph, type ParagraphOptions, type Run } from "./words.ts";

const MARGIN = 15;
const TEXT = { capMm: 2.1 };
/** The map takes no more of the first sheet than this. [-] */
const MAP_SHARE = 0.42;
/** Where it stands beside the picture of how a share becomes the whole, both are less high. [-] */
const [SHARE_MAP, WHOLE] = [0.28, 0.13];

interface Told {
  readonly report: Report;
  /** The whole blank, also where the template is a share of it. */
  readonly whole: Blank;
  readonly template: Template;
  readonly tiling: Tiling;
  readonly sheets: WhichSheets;
  /** The points that are marked, where the sheets are only those that hold one. */
  readonly points: readonly PointOnTemplate[] | undefined;
  readonly count: number;
  /** Its name. */
  readonly material: string;
  /** The sheet gauge that its thickness is; null where it is none. */
  readonly gauge: string | null;
  readonly mark: string | undefined;
}

/** The first sheet: what the pattern is, which sheet lies where, how they are joined, and what to measure before it is used. */
export function mapSheet(pdf: Pdf, told: Told): void {
  const { report, template, tiling, whole, points } = told;
  const { share } = template;
  const { widthMm, heightMm } = readingPaper(tiling.layout.paper);
  pdf.sheet(widthMm, heightMm);
  pdf.bookmark("Map of the sheets");
  const wide = widthMm - 2 * MARGIN;
  const what = points
    ? "Marking points at full size"
    : share
      ? `One ${share.kind} of the full-size pattern`
      : "Full-size pattern";
  const title = printable(`${what}: ${report.part.title}`, pdf);
  fitted(pdf, title, [MARGIN, 17], { capMm: 4.5, bold: true }, wide);
  let y = 25;
  const put = (words: string | readonly Run[], options: ParagraphOptions = {}): void => {
    const block = paragraph(pdf, words, { ...TEXT, ...options });
    block.draw(MARGIN, y, wide);
    y += block.height(wide);
  };
  for (const one of facts(told)) put(one);
  // Names of corners stand above the uppermost edge.
  y += 5;
  const high = heightMm * (share ? SHARE_MAP : MAP_SHARE);
  y = sheetMap(pdf, { template, tiling, points, from: [MARGIN, y], room: [wide, high] }) + 5;
  if (share) y = wholePicture(pdf, { whole, share, from: [MARGIN, y], room: [wide, heightMm * WHOLE] }) + 5;
  steps(told).forEach((step, i) => {
    put(step, { mark: String(i + 1) });
    y += 0.8;
  });
  y += 0.8;
  put(CAUTION);
  checkBars(pdf, {
    lying: [MARGIN, heightMm - 13],
    upright: [MARGIN - 4, heightMm - 20],
    inches: report.part.units === "in",
  });
}

const CAUTION: readonly Run[] = [
  { text: "Caution. ", bold: true },
  {
    text: "A paper pattern is a help, not proof: check the first blank against the sizes on the drawing before a lot is cut. Cutting, rolling and bending plate hurt people; the machine’s manual, local codes and licensed practice come first.",
    bold: true,
  },
];

function facts({
  report,
  whole,
  template,
  tiling,
  sheets,
  points,
  count,
  material,
  gauge,
  mark,
}: Told): string[] {
  const { part, blanks } = report;
  const { blank, turnedDeg } = template;
  const piece = blanks.length > 1 ? `, piece ${blank.piece}` : "";
  const { layout, tiles, leftOut } = tiling;
  const lying = layout.widthMm > layout.heightMm ? " on its side" : "";
  const none =
    leftOut.length === 0 ? "" : `; ${leftOut.length} that would hold ${HOLDS_NO[sheets]} are left out`;
  const turned =
    turnedDeg === 0
      ? ""
      : ` The pattern is turned ${fixed(Math.abs(turnedDeg), 1)}° ${turnedDeg > 0 ? "counter-clockwise" : "clockwise"} from the marking table, which saves sheets.`;
  return [
    `Part ${part.name}${piece}; ${material}, ${thickness(part.thickness, part.units, gauge).value} thick; ${count} to cut. ${capital(blank.faceUp)} face up: marks end ${blank.faceUp}, and bends go ${blank.faceUp === "inside" ? "up" : "down"}.`,
    `${tiles.length} ${tiles.length === 1 ? "sheet" : "sheets"} of ${layout.paper.name}${lying}, ${tiling.rows} rows of ${tiling.columns}${none}.${turned}`,
    ...(template.share ? [shareFact(template.share, whole)] : []),
    ...(points ? [pointFact(template.lineName)] : []),
    `The edge to cut is the middle of the wide line. Narrow lines are ${template.lineName}${template.lineName === "bend lines" ? `, each with its number and bend; dashed where a hit stops short` : ", numbered as in the marking table"}${template.share ? ", with the numbers of all lines that they become" : ""}.${template.labels.some(({ text }) => text.endsWith(LAP_TO_HERE)) ? LAP_WORDS : ""}${template.labels.some(({ text }) => endsInStop(text)) ? ENDS_IN_STOP_WORDS : ""}${originWords(template, tiling)}`,
    ...(mark === undefined ? [] : [`Made from: ${mark}.`]),
  ];
}

/** Where the cross at the marking table's nought is found: on a sheet, or on the map alone. */
function originWords({ origin }: Template, { tiles, leftOut }: Tiling): string {
  if (!origin) return "";
  const isIn = (box: Box): boolean => touch(box, boxOf([origin]));
  const where = tiles.some(({ field }) => isIn(field))
    ? ""
    : leftOut.some(({ core }) => isIn(core))
      ? ", on the map alone, for no sheet is printed there"
      : undefined;
  return where === undefined
    ? ""
    : ` The cross “${ORIGIN_NAME}” is where the marking table’s x and y begin${where}.`;
}

/** What a sheet that is left out would have held. */
const HOLDS_NO: Readonly<Record<WhichSheets, string>> = {
  all: "nothing",
  edges: "no edge",
  points: "no marking point",
};
const LAP_WORDS = ` The dashed line “${LAP_TO_HERE}” is where seam edge 1 comes to lie.`;
const ENDS_IN_STOP_WORDS =
  " A number that would be another one upside down ends in a full stop: 6. and 9., 16. and 91.";

function steps({ report, whole: blank, template, tiling, points }: Told): string[] {
  const { units } = report.part;
  const { corners, share } = template;
  const checks = spans(corners).map(
    ([i, j]) =>
      `P${i + 1} to P${j + 1} ${checkDistance(distance2(corners[i] as Vec2, corners[j] as Vec2), units)}`,
  );
  const onPlate = share ? shareSteps(share, blank, units) : [];
  const whole = `Before it is used, measure straight across the whole, in ${checkUnit(units)}: ${checks.join(", ")} (derived here). Paper grows in damp air, so glue and use it the same day (common practice, no source).`;
  const print =
    "Print every sheet at 100 % (“actual size”), never “fit to page”, on one printer. Lay a rule to the 100 mm bars, which lie both ways on each sheet: an error of 0.2 mm there is 2 mm in a metre.";
  if (points)
    return [
      print,
      ...POINT_STEPS,
      `When all is marked, measure straight across the whole, in ${checkUnit(units)}: ${checks.join(", ")} (derived here). Paper grows in damp air, so use it the same day (common practice, no source).`,
    ];
  if (tiling.tiles.length === 1) return [print, whole, ...onPlate];
  return [
    print,
    "A sheet with dashed lines on its left or upper side is cut along them and laid on its neighbours: its cut edge to their narrow line, half crosses to half crosses, the pattern’s own lines running through. A straight edge across the crosses shows whether it lies true.",
    "Begin with the first row, from left to right, on a flat table; then the next row, which joins what still lies apart. Tape each sheet first, and glue when all lies true.",
    whole,
    ...onPlate,
  ];
}

/** Pairs of corners that tell whether the whole came out square: both diagonals and a side; of three corners, all sides. */
function spans(corners: readonly Vec2[]): (readonly [number, number])[] {
  if (corners.length >= 4)
    return [
      [0, 2],
      [1, 3],
      [0, 3],
    ];
  if (corners.length === 3)
    return [
      [0, 1],
      [1, 2],
      [0, 2],
    ];
  return corners.length === 2 ? [[0, 1]] : [];
}

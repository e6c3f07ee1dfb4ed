import { boxOf, height, join, meet, width } from "../../drawing/box.ts";
import { dimension, fixed, unitName } from "../../drawing/format.ts";
import type { Box, Shape, StrokeKind } from "../../drawing/model.ts";
import { LAP_TO_HERE } from "../../drawing/pattern/lapLine.ts";
import { distance2, type Vec2 } from "../../geometry/vector.ts";
import type { Blank, Report } from "../../report/report.ts";
import { checkBars } from "./checkBars.ts";
import type { Lettering, Pdf } from "./document.ts";
import type { WhichSheets } from "./fullSize.ts";
import { endsInStop } from "./numberedLines.ts";
import { type Frame, onSheet } from "./pen.ts";
import { printable } from "./printable.ts";
import type { Template } from "./template.ts";
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
  readonly count: number;
  /** Its name. */
  readonly material: string;
  readonly mark: string | undefined;
}

/** The first sheet: what the pattern is, which sheet lies where, how they are joined, and what to measure before it is used. */
export function mapSheet(pdf: Pdf, told: Told): void {
  const { report, template, tiling, whole } = told;
  const { share } = template;
  const { widthMm, heightMm } = readingPaper(tiling.layout.paper);
  pdf.sheet(widthMm, heightMm);
  pdf.bookmark("Map of the sheets");
  const wide = widthMm - 2 * MARGIN;
  const what = share ? `One ${share.kind} of the full-size pattern` : "Full-size pattern";
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
  y = map(pdf, { template, tiling, from: [MARGIN, y], room: [wide, high] }) + 5;
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

function facts({ report, whole, template, tiling, sheets, count, material, mark }: Told): string[] {
  const { part, blanks } = report;
  const { blank, turnedDeg } = template;
  const piece = blanks.length > 1 ? `, piece ${blank.piece}` : "";
  const { layout, tiles, leftOut } = tiling;
  const lying = layout.widthMm > layout.heightMm ? " on its side" : "";
  const none =
    leftOut.length === 0
      ? ""
      : `; ${leftOut.length} that would hold ${sheets === "all" ? "nothing" : "no edge"} are left out`;
  const turned =
    turnedDeg === 0
      ? ""
      : ` The pattern is turned ${fixed(Math.abs(turnedDeg), 1)}° ${turnedDeg > 0 ? "counter-clockwise" : "clockwise"} from the marking table, which saves sheets.`;
  return [
    `Part ${part.name}${piece}; ${material}, ${dimension(part.thickness, part.units)} ${part.units} thick; ${count} to cut. ${capital(blank.faceUp)} face up: marks end ${blank.faceUp}, and bends go ${blank.faceUp === "inside" ? "up" : "down"}.`,
    `${tiles.length} ${tiles.length === 1 ? "sheet" : "sheets"} of ${layout.paper.name}${lying}, ${tiling.rows} rows of ${tiling.columns}${none}.${turned}`,
    ...(template.share ? [shareFact(template.share, whole)] : []),
    `The edge to cut is the middle of the wide line. Narrow lines are ${template.lineName}${template.lineName === "bend lines" ? `, each with its number and bend; dashed where a hit stops short` : ", numbered as in the marking table"}${template.share ? ", with the numbers of all lines that they become" : ""}.${template.labels.some(({ text }) => text.endsWith(LAP_TO_HERE)) ? LAP_WORDS : ""}${template.labels.some(({ text }) => endsInStop(text)) ? ENDS_IN_STOP_WORDS : ""}`,
    ...(mark === undefined ? [] : [`Made from: ${mark}.`]),
  ];
}

const LAP_WORDS = ` The dashed line “${LAP_TO_HERE}” is where seam edge 1 comes to lie.`;
const ENDS_IN_STOP_WORDS =
  " A number that would be another one upside down ends in a full stop: 6. and 9., 16. and 91.";

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

function steps({ report, whole: blank, template, tiling }: Told): string[] {
  const { units } = report.part;
  const { corners, share } = template;
  const checks = spans(corners).map(
    ([i, j]) =>
      `P${i + 1} to P${j + 1} ${dimension(distance2(corners[i] as Vec2, corners[j] as Vec2), units)}`,
  );
  const onPlate = share ? shareSteps(share, blank, units) : [];
  const whole = `Before it is used, measure straight across the whole, in ${unitName(units)}: ${checks.join(", ")} (derived here). Paper grows in damp air, so glue and use it the same day (common practice, no source).`;
  const print =
    "Print every sheet at 100 % (“actual size”), never “fit to page”, on one printer. Lay a rule to the 100 mm bars, which lie both ways on each sheet: an error of 0.2 mm there is 2 mm in a metre.";
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

/** The whole pattern, small, with the grid of the sheets over it; says where it ends. [mm of paper] */
function map(
  pdf: Pdf,
  { template, tiling, from, room }: { template: Template; tiling: Tiling; from: Vec2; room: Vec2 },
): number {
  const all = [...tiling.tiles, ...tiling.leftOut];
  const box = all.reduce<Box>((sum, { core }) => join(sum, core), all[0]?.core ?? boxOf([]));
  const unit = Math.max(width(box) / room[0], height(box) / room[1]);
  const frame: Frame = {
    at: [box.left, box.top],
    on: [from[0] + (room[0] - width(box) / unit) / 2, from[1]],
    unit,
  };
  const cell = ({ left, right, bottom, top }: Box): Shape => ({
    type: "path",
    closed: true,
    points: [
      [left, bottom],
      [right, bottom],
      [right, top],
      [left, top],
    ],
  });
  pdf.draw(
    tiling.leftOut.map(({ core }) => cell(core)),
    frame,
    { widthMm: 0, fill: true, ink: 0.9 },
  );
  const shapes = (kind: StrokeKind) =>
    template.strokes.filter((one) => one.kind === kind).map(({ shape }) => shape);
  pdf.draw([...shapes("thin"), ...shapes("hidden")], frame, { widthMm: 0.08, ink: 0.5 });
  pdf.draw(gridLines(all), frame, { widthMm: 0.13, dashMm: [1.5, 1] });
  const cellMm = Math.min(...all.map(({ core }) => Math.min(width(core), height(core)))) / unit;
  const capMm = Math.min(3.5, Math.max(1.3, cellMm / 4));
  const middle = ({ left, right, bottom, top }: Box): Vec2 =>
    onSheet(frame, [(left + right) / 2, (bottom + top) / 2]);
  for (const { core, name } of tiling.tiles)
    label(pdf, name, middle(core), { capMm, anchor: "middle", bold: true });
  for (const { core } of tiling.leftOut) pdf.write("–", middle(core), { capMm, anchor: "middle", ink: 0.4 });
  pdf.draw(shapes("outline"), frame, { widthMm: 0.35, round: true });
  const taken: Box[] = tiling.tiles.map(({ core, name }) => roomOf(pdf, name, middle(core), capMm, true));
  template.corners.forEach((p, i) => {
    const at = onSheet(frame, p);
    pdf.draw([{ type: "arc", centre: p, radius: 0.7 * unit, fromRad: 0, toRad: 2 * Math.PI }], frame, {
      widthMm: 0,
      fill: true,
    });
    const name = `P${i + 1}`;
    const own = cornerPlaces(pdf, name, at).map((place) => ({ place, box: roomOf(pdf, name, place, 1.8) }));
    const free = own.find(({ box: one }) => !taken.some((other) => meet(one, other))) ?? own[0];
    if (!free) return;
    taken.push(free.box);
    label(pdf, name, free.place, { capMm: 1.8 });
  });
  return from[1] + height(box) / unit;
}

/** Places beside a corner for its name, the best first: within the sheet, and over nothing else that is written. */
function cornerPlaces(pdf: Pdf, name: string, [x, y]: Vec2): Vec2[] {
  const before = -pdf.width(name, { capMm: 1.8 });
  return [
    [3, -2],
    [before - 3, -2],
    [3, 3],
    [before - 3, 3],
    [before / 2, -4],
    [before / 2, 4.5],
    [8, 0],
    [before - 8, 0],
  ].map(([dx = 0, dy = 0]): Vec2 => [x + dx, y + dy]);
}

/** What lettering covers on the sheet, y down there. [mm of paper] */
function roomOf(pdf: Pdf, text: string, [x, y]: Vec2, capMm: number, inMiddle = false): Box {
  const long = pdf.width(text, { capMm, bold: inMiddle });
  const left = inMiddle ? x - long / 2 : x;
  return { left: left - 0.6, right: left + long + 0.6, bottom: y - capMm * 0.8, top: y + capMm * 0.8 };
}

/** The lines of the grid, each once: dashes on dashes would make a whole line. */
function gridLines(tiles: Tiling["tiles"]): Shape[] {
  const box = tiles.reduce<Box>((sum, { core }) => join(sum, core), tiles[0]?.core ?? boxOf([]));
  const { left, right, bottom, top } = box;
  const upright = new Set(tiles.flatMap(({ core }) => [core.left, core.right]));
  const lying = new Set(tiles.flatMap(({ core }) => [core.bottom, core.top]));
  const shape = (from: Vec2, to: Vec2): Shape => ({ type: "path", points: [from, to], closed: false });
  return [
    ...[...upright].map((x) => shape([x, bottom], [x, top])),
    ...[...lying].map((y) => shape([left, y], [right, y])),
  ];
}

/** Lettering on a ground of its own. */
function label(pdf: Pdf, text: string, at: Vec2, how: Lettering): void {
  const long = pdf.width(text, how);
  const left = how.anchor === "middle" ? at[0] - long / 2 : at[0];
  pdf.box([left - 0.4, at[1] - how.capMm * 0.75], [long + 0.8, how.capMm * 1.5], {
    widthMm: 0,
    fill: true,
    ink: 1,
  });
  pdf.write(text, at, how);
}

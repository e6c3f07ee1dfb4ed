import type { ArcPiece } from "../geometry/arcFit.ts";
import { circleOf } from "../geometry/arcFit.ts";
import { placer } from "../geometry/placed.ts";
import type { Vec2 } from "../geometry/vector.ts";
import type { Blank, Report } from "../report/report.ts";
import { brakeBends, layoutLines, numberPlace } from "./bendLines.ts";
import { type Contour, contourOf, markPlace, markWords, placedContour } from "./contour.ts";
import type { PlateSheet } from "./plateSheet.ts";
import { uprightNumber } from "./uprightNumber.ts";

const DECIMALS = 6;
/** Cut lines of a hair's width: what a cutter follows. [mm] */
const HAIR_MM = 0.1;
const MARK_CAP_MM = 8;

/** One blank at full size: an SVG whose user units are millimetres, y down from the top of the blank. */
export function printSvg(report: Report, blank: Blank): string {
  const { xMm, yMm } = blank.asDrawn;
  const n = (value: number) => String(Number(value.toFixed(DECIMALS)) + 0);
  const at = ([x, y]: Vec2) => `${n(x)} ${n(yMm - y)}`;
  const bends = brakeBends(report, blank);
  const drawn = [
    ...layoutLines(blank, bends),
    ...(bends ?? []).map(({ from: a, to: b }) => ({ kind: "bend", from: a, to: b }) as const),
  ];
  const lines = (kind: "bend" | "element") =>
    drawn
      .filter((line) => line.kind === kind)
      .map(({ from: a, to: b }) => `M${at(a)}L${at(b)}`)
      .join("");
  const words = (p: Vec2, capMm: number, said: string, turn = "") =>
    `x="${n(p[0])}" y="${n(yMm - p[1])}"${turn} text-anchor="middle" font-family="sans-serif" font-size="${n(capMm)}" fill="#000" stroke="none">${escaped(said)}</text>`;
  const numbers = (bends ?? []).map((bend) => {
    const { at: place, capMm, alongDeg } = numberPlace(bend, bends ?? []);
    const turn = ` transform="rotate(${n(-alongDeg)} ${n(place[0])} ${n(yMm - place[1])})" dominant-baseline="central"`;
    return `<text class="bend-number" ${words(place, capMm, uprightNumber(bend.line.number), turn)}`;
  });
  const mark = markPlace(blank);
  const groups = [
    `<path id="cut" d="${contourWords(contourOf(blank), { n, at })}"/>`,
    ...(["bend", "element"] as const).map((kind) =>
      lines(kind) === "" ? "" : `<path id="${kind}" stroke-dasharray="6 3" d="${lines(kind)}"/>`,
    ),
    ...numbers,
    `<text id="mark" ${words(mark.at, MARK_CAP_MM, markWords(report, blank))}`,
  ].filter((group) => group !== "");
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${n(xMm)}mm" height="${n(yMm)}mm" viewBox="0 0 ${n(xMm)} ${n(yMm)}" fill="none" stroke="#000" stroke-width="${HAIR_MM}">`,
    `<title>${escaped(report.part.title)}</title>`,
    ...groups,
    "</svg>",
    "",
  ].join("\n");
}

type Say = { n: (v: number) => string; at: (p: Vec2) => string };

/** A closed contour as the `d` of a path. */
function contourWords({ start, pieces }: Contour, say: Say): string {
  let from = start;
  const d = pieces.map((piece) => {
    const words = pieceWords(from, piece, say);
    from = piece.to;
    return words;
  });
  return `M${say.at(start)}${d.join("")}Z`;
}

/** One piece of the contour; y turned over, so an arc that turns left is drawn the other way round. */
function pieceWords(from: Vec2, piece: ArcPiece, { n, at }: Say): string {
  if (piece.bulge === 0) return `L${at(piece.to)}`;
  const { radius } = circleOf(from, piece);
  const large = Math.abs(piece.bulge) > 1 ? 1 : 0;
  return `A${n(radius)} ${n(radius)} 0 ${large} ${piece.bulge > 0 ? 0 : 1} ${at(piece.to)}`;
}

const escaped = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");

/** A whole plate at full size: its edge dashed, and the cut contour of every blank. */
export function printPlateSvg({ lengthMm, widthMm, title, blanks }: PlateSheet): string {
  const n = (value: number) => String(Number(value.toFixed(DECIMALS)) + 0);
  const at = ([x, y]: Vec2) => `${n(x)} ${n(widthMm - y)}`;
  const cut = blanks.map((one) => {
    const place = placer(one);
    const [x, y] = place(markPlace(one.blank).at);
    return [
      `<path class="cut" d="${contourWords(placedContour(contourOf(one.blank), place), { n, at })}"/>`,
      `<text x="${n(x)}" y="${n(widthMm - y)}" text-anchor="middle" font-family="sans-serif" font-size="${MARK_CAP_MM}" fill="#000" stroke="none">${escaped(markWords(one.report, one.blank))}</text>`,
    ].join("\n");
  });
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${n(lengthMm)}mm" height="${n(widthMm)}mm" viewBox="0 0 ${n(lengthMm)} ${n(widthMm)}" fill="none" stroke="#000" stroke-width="${HAIR_MM}">`,
    `<title>${escaped(title)}</title>`,
    `<path id="plate" stroke-dasharray="12 6" d="M0 0H${n(lengthMm)}V${n(widthMm)}H0Z"/>`,
    ...cut,
    "</svg>",
    "",
  ].join("\n");
}

import type { ArcPiece } from "../geometry/arcFit.ts";
import { circleOf } from "../geometry/arcFit.ts";
import type { Vec2 } from "../geometry/vector.ts";
import type { Contour } from "./contour.ts";

const DECIMALS = 6;

/** How a file says numbers and points. */
export interface Say {
  readonly n: (value: number) => string;
  readonly xy: (p: Vec2) => Vec2;
  readonly at: (p: Vec2) => string;
}

/** Points of a sheet so high, y turned over. */
export function sayer(highMm: number): Say {
  const n = (value: number) => String(Number(value.toFixed(DECIMALS)) + 0);
  const xy = ([x, y]: Vec2): Vec2 => [x, highMm - y];
  return { n, xy, at: (p) => xy(p).map(n).join(" ") };
}

/** A closed contour as the `d` of a path. */
export function contourWords({ start, pieces }: Contour, say: Say): string {
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

export const escaped = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");

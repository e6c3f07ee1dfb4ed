import { degrees, TURN } from "../../geometry/angle.ts";
import {
  add2,
  direction,
  distance2,
  middle2,
  scale2,
  sub2,
  unit2,
  type Vec2,
} from "../../geometry/vector.ts";
import { NO_LENGTH_MM } from "../../geometry/tolerance.ts";
import { cutRadii } from "../../report/cutRadii.ts";
import type { MarkingRow, Drawable } from "../../report/report.ts";
import type { Board } from "../board.ts";
import { angularDimension, bearing } from "../dimension/angular.ts";
import { ARROW_LONG } from "../dimension/arrow.ts";
import { radiusDimension } from "../dimension/radius.ts";
import { textWidth } from "../lettering.ts";
import { angleText, dimension, type Units } from "../format.ts";
import { line } from "../model.ts";
import { arcPoint } from "../pen.ts";
import { lazily, type Way, type Ways } from "../ways.ts";

/** A right cone's blank: a sector of a ring, by its cut edges. */
export interface Sector {
  readonly centre: Vec2;
  readonly outerMm: number;
  /** Nought for a cone to a point. */
  readonly innerMm: number;
  /** Directions of the lines, seen from the centre, from the first on, counter-clockwise or clockwise. [rad] */
  readonly bearings: readonly number[];
}

/** The sector that a right cone's rows lie on; undefined for a pipe and for other shapes. */
export function sectorOf(report: Drawable, rows: readonly MarkingRow[]): Sector | undefined {
  const radii = cutRadii(report);
  const first = rows[0];
  if (!radii || !first) return undefined;
  const { outerMm, innerMm, trimMm } = radii;
  const long = distance2(first.a, first.b);
  if (long < NO_LENGTH_MM) return undefined;
  // Lines end on the finished edge.
  const centre = add2(first.a, scale2(unit2(sub2(first.b, first.a)), outerMm - trimMm));
  return { centre, outerMm, innerMm, bearings: unwound(rows.map((row) => bearing(centre, row.a))) };
}

/** Bearings without jumps of a whole turn. [rad] */
function unwound(bearings: readonly number[]): number[] {
  const out: number[] = [];
  for (const one of bearings) {
    const last = out.at(-1);
    out.push(last === undefined ? one : one + TURN * Math.round((last - one) / TURN));
  }
  return out;
}

/** Directions half way between neighbouring lines, the middle ones first: there a radius meets no element. [rad] */
function between(bearings: readonly number[]): number[] {
  const gaps = bearings.slice(1).map((b, i) => (b + (bearings[i] as number)) / 2);
  const centre = (gaps.length - 1) / 2;
  return gaps
    .map((gap, i) => ({ gap, far: Math.abs(i - centre) }))
    .sort((p, q) => p.far - q.far)
    .map(({ gap }) => gap);
}

const SHARES = [0.5, 0.4, 0.6, 0.3, 0.7];

/** A radius line that only points to its centre is at least this long. [mm of paper] */
const STUB = 7;

/** The centre, and the seams carried on to it: the extension lines of the sector's angle. */
export function drawCentre(board: Board, { centre, innerMm, bearings }: Sector): void {
  const arm = board.mm(4);
  board.draw(
    line("centre", add2(centre, [-arm, 0]), add2(centre, [arm, 0])),
    line("centre", add2(centre, [0, -arm]), add2(centre, [0, arm])),
  );
  if (innerMm <= board.mm(2)) return;
  for (const one of [bearings[0] as number, bearings.at(-1) as number])
    board.draw(line("dimension", centre, add2(centre, scale2(direction(one), innerMm - board.mm(1)))));
}

/** The sector's angle and its two radii. */
export function dimensionSector(
  board: Board,
  sector: Sector,
  options: { units: Units; centreShown: boolean },
): void {
  const { centre, outerMm, innerMm, bearings } = sector;
  const { units, centreShown } = options;
  if (centreShown) dimensionAngle(board, sector);
  const ways = between(bearings);
  const radius = (mm: number, angles: readonly number[]): Ways => {
    const text = board.length(mm, units, "R ");
    const needed = textWidth(text.main, board.paper.capsMm.figure) + ARROW_LONG + 3;
    const from = function* (start: (angle: number) => Vec2, beyond: boolean): Generator<Way> {
      for (const angle of angles) {
        const tips = [arcPoint({ centre, radius: mm }, angle)];
        yield* radiusDimension(board, { start: start(angle), tips, text, shares: SHARES, beyond });
      }
    };
    const shortOf = (reachMm: number) => (angle: number) =>
      arcPoint({ centre, radius: mm - board.mm(reachMm) }, angle);
    // From the centre where it is drawn; else a line that points to it, as long as its figure needs; else a stub.
    return lazily(function* () {
      if (centreShown) yield* from(() => centre, true);
      if (board.mm(needed) < mm) yield* from(shortOf(needed), false);
      if (board.mm(STUB) < mm) yield* from(shortOf(STUB), true);
    });
  };
  board.put("outer radius", radius(outerMm, ways));
  const [lead = 0, ...others] = ways;
  if (innerMm > 0) board.put("inner radius", radius(innerMm, [...others, lead]));
}

/** Where a centre lies that does not fit on the sheet, in words for its foot. */
export function centreInWords({ centre, innerMm, bearings }: Sector, units: Units): string {
  const [first, last] = [bearings[0] as number, bearings.at(-1) as number];
  const ends = middle2(
    arcPoint({ centre, radius: innerMm }, first),
    arcPoint({ centre, radius: innerMm }, last),
  );
  const angle = angleText(degrees(Math.abs(last - first)));
  return (
    `Sector ${angle}; the centre of both radii lies ${dimension(distance2(ends, centre), units)} ` +
    "above the small end's corners, half way between them."
  );
}

function dimensionAngle(board: Board, { centre, outerMm, innerMm, bearings }: Sector): void {
  const [first, last] = [bearings[0] as number, bearings.at(-1) as number];
  const [fromRad, toRad] = [Math.min(first, last), Math.max(first, last)];
  const text = angleText(degrees(toRad - fromRad));
  const hole = [0.5, 0.4, 0.3, 0.6, 0.75]
    .map((share) => share * innerMm)
    .filter((radius) => radius > board.mm(7));
  const body = [0.3, 0.4, 0.5, 0.6, 0.75, 0.15].map((share) => innerMm + share * (outerMm - innerMm));
  const radii = [...hole, ...body];
  board.put("sector angle", angularDimension(board, { centre, fromRad, toRad, radii, text }));
}

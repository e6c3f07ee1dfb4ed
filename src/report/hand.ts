import { rimLength } from "../geometry/measure.ts";
import type { Skin } from "../geometry/skin.ts";
import type { Station } from "../geometry/station.ts";
import { layFlat } from "../geometry/strip.ts";
import { distance2, distance3, type Vec2 } from "../geometry/vector.ts";
import { type LaidBlank, planDegrees } from "./blanks.ts";
import { bendsDeg } from "./elements.ts";
import type { HandLayout, MarkingRow } from "./report.ts";

function rowsOf(skin: Skin, { blank, flat, elements }: LaidBlank): MarkingRow[] {
  const bends = bendsDeg(skin, elements);
  const [a, b] = [(at: number) => flat.net.a[at] as Vec2, (at: number) => flat.net.b[at] as Vec2];
  return elements.map(({ index, station }, i) => {
    const following = elements[i + 1];
    const next = following?.station;
    return {
      piece: blank.piece,
      number: i + 1,
      planDeg: planDegrees(station.theta),
      a: a(index),
      b: b(index),
      trueMm: distance3(station.a, station.b),
      bendDeg: bends[i] as number,
      planMm: Math.hypot(station.b[0] - station.a[0], station.b[1] - station.a[1]),
      next: next
        ? {
            aMm: distance3(station.a, next.a),
            bMm: distance3(station.b, next.b),
            diagonalMm: distance3(station.a, next.b),
            flat: {
              aMm: distance2(a(index), a(following.index)),
              bMm: distance2(b(index), b(following.index)),
              diagonalMm: distance2(a(index), b(following.index)),
            },
          }
        : null,
    };
  });
}

/** How far the points of a strip laid from few triangles lie from where they belong, both starting at seam 1. [mm] */
function worstPoint({ flat, elements }: LaidBlank): number {
  const coarse = layFlat(elements.map(({ station }) => station));
  const off = elements.map(({ index }, i) =>
    Math.max(
      distance2(coarse.a[i] as Vec2, flat.development.flat.a[index] as Vec2),
      distance2(coarse.b[i] as Vec2, flat.development.flat.b[index] as Vec2),
    ),
  );
  return Math.max(...off);
}

function chords(stations: readonly Station[], end: "a" | "b"): number {
  let sum = 0;
  stations.forEach((station, i) => {
    const next = stations[i + 1];
    if (next) sum += distance3(station[end], next[end]);
  });
  return sum;
}

/** The layout by hand over all pieces, and what its few divisions lose. */
export function handLayout(skin: Skin, laid: readonly LaidBlank[], divisions: number): HandLayout {
  const short = (end: "a" | "b") =>
    laid.reduce(
      (sum, { order, elements }) =>
        sum +
        rimLength(skin, end, order.span) -
        chords(
          elements.map(({ station }) => station),
          end,
        ),
      0,
    );
  return {
    divisions,
    shortfallMm: { a: short("a"), b: short("b") },
    pointMm: Math.max(...laid.map(worstPoint)),
    rows: laid.flatMap((one) => rowsOf(skin, one)),
  };
}

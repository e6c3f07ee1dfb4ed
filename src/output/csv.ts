import { type EdgePath, edgePaths, endsOf } from "../drawing/pattern/edges.ts";
import { cross2, distance2, dot2, sub2, type Vec2 } from "../geometry/vector.ts";
import type { Blank, MarkingRow, Report } from "../report/report.ts";
import { brakeBends, type FileBend } from "./bendLines.ts";
import { type FileUnits, perUnit } from "./contour.ts";
import { headRows } from "./csvHead.ts";
import { type Cell, csvText } from "./csvText.ts";
import { cutCorners, isCutSeam } from "./cutCorners.ts";

/** Ordinates of an edge are given at so many equal steps of its base line. */
const STEPS = 12;
const DECIMALS: Readonly<Record<FileUnits, number>> = { mm: 3, in: 5 };

/**
 * The marking table of one blank, for tape, trammel and square, below a heading with the corners of the cut edge: points from the lower left corner of the rectangle round it, true lengths and the
 * distances that swing the next line, girth run along each edge; below it ordinates of both ends, for radii that are
 * too large to swing; and the bend lines of the brake's plan, where the part goes to the brake. Comma separated as RFC 4180 has it, lengths in `units`.
 */
export function printCsv(report: Report, blank: Blank, units: FileUnits = "mm"): string {
  const unit = perUnit(units);
  const length = (mm: number) => Number((mm / unit).toFixed(DECIMALS[units])) + 0;
  const rows = report.hand.rows.filter(({ piece }) => piece === blank.piece);
  const edges = edgePaths(blank);
  const [a, b] = endsOf(edges);
  // The outline begins with seam 1 and comes to end B first; mirrored it begins with end A.
  const mirrored = edges[0] === a;
  const names = [a?.name ?? "end A", b?.name ?? "point"];
  // Both are told from the side of line 1.
  const run = {
    a: girths(
      a,
      rows.map((row) => row.a),
      mirrored ? "as it runs" : "against it",
    ),
    b: girths(
      b,
      rows.map((row) => row.b),
      mirrored ? "against it" : "as it runs",
    ),
  };
  const table: Cell[][] = [
    [
      "line",
      "plan angle deg",
      "bend deg",
      ...names.flatMap((name) => [`${name} x`, `${name} y`, `${name} girth`]),
      "true length",
      "plan length",
      ...names.map((name) => `to next along ${name}`),
      "diagonal to next",
      "what it is",
    ].map((name, i) => (i < 3 || name === "what it is" ? name : `${name} ${units}`)),
    ...rows.map((row, i) => [
      ...rowOf(row, { length, girth: { a: run.a[i] ?? 0, b: run.b[i] ?? 0 } }),
      i > 0 && i < rows.length - 1
        ? "inside the blank"
        : isCutSeam(blank, row)
          ? "cut edge of the seam"
          : "the seam's line and not the cut edge",
    ]),
  ];
  const corners = cutCorners(blank);
  const cornerAt = (p: Vec2): number => corners.find(({ at }) => at === p)?.number ?? 0;
  const ordinates = [a, b].flatMap((edge) => (edge ? ordinatesOf(edge, cornerAt, { length, units }) : []));
  const bends = bendRows(brakeBends(report, blank), { names, units, length });
  return csvText([...headRows(report, blank, { units, length }), ...table, ...ordinates, ...bends]);
}

function rowOf(
  row: MarkingRow,
  { length, girth }: { length: (mm: number) => number; girth: { a: number; b: number } },
): Cell[] {
  const { next } = row;
  return [
    row.number,
    Number(row.planDeg.toFixed(4)),
    Number(row.bendDeg.toFixed(4)),
    length(row.a[0]),
    length(row.a[1]),
    length(girth.a),
    length(row.b[0]),
    length(row.b[1]),
    length(girth.b),
    length(row.trueMm),
    length(row.planMm),
    ...(next ? [next.flat.aMm, next.flat.bMm, next.flat.diagonalMm].map(length) : ["", "", ""]),
  ];
}

/** Girth along an edge to each point of a row of points in their order: the edges of a wide sector may come close to each other. [mm] */
function girths(edge: EdgePath | undefined, at: readonly Vec2[], way: "as it runs" | "against it"): number[] {
  if (!edge) return at.map(() => 0);
  const points = way === "as it runs" ? edge.points : edge.points.toReversed();
  const whole = points.reduce((sum, p, i) => sum + (i === 0 ? 0 : distance2(points[i - 1] as Vec2, p)), 0);
  let from = 0;
  return at.map((p, i) => {
    from = nearest(points, p, { from, to: i === 0 ? whole / 2 : whole });
    return from;
  });
}

/** How far along a path the place nearest to a point lies, among those between `from` and `to`. [mm] */
function nearest(points: readonly Vec2[], at: Vec2, { from, to }: { from: number; to: number }): number {
  let [sum, best, least] = [0, from, Infinity];
  for (let i = 1; i < points.length; i++) {
    const [p, q] = [points[i - 1] as Vec2, points[i] as Vec2];
    const long = distance2(p, q);
    if (long > 0 && sum + long >= from && sum <= to) {
      const share = dot2(sub2(at, p), sub2(q, p)) / (long * long);
      const place = Math.min(to, Math.max(from, sum + long * Math.min(1, Math.max(0, share))));
      const k = (place - sum) / long;
      const away = distance2(at, [p[0] + k * (q[0] - p[0]), p[1] + k * (q[1] - p[1])]);
      if (away < least) [least, best] = [away, place];
    }
    sum += long;
  }
  return best;
}

/** Heights of an edge over the straight line between its corners, at equal steps of that line. */
function ordinatesOf(
  { name, points }: EdgePath,
  cornerAt: (p: Vec2) => number,
  { length, units }: { length: (mm: number) => number; units: FileUnits },
): Cell[][] {
  const [from, to] = [points[0] as Vec2, points.at(-1) as Vec2];
  const base = distance2(from, to);
  if (base === 0) return [];
  const run = sub2(to, from);
  const places = points.map((p): Vec2 => [
    dot2(sub2(p, from), run) / base,
    cross2(run, sub2(p, from)) / base,
  ]);
  // Past half a turn an edge hangs over its base line, and ordinates would not tell it.
  if (places.some(([x], i) => i > 0 && x < (places[i - 1] as Vec2)[0])) return [];
  const heightAt = (x: number): number => {
    const i = Math.max(
      1,
      places.findIndex(([px]) => px >= x),
    );
    const [[px, py], [qx, qy]] = [places[i - 1] as Vec2, places[i] as Vec2];
    return qx === px ? qy : py + ((x - px) / (qx - px)) * (qy - py);
  };
  return [
    [],
    [
      `${name}: along its base line from corner ${cornerAt(from)} to ${cornerAt(to)} ${units}`,
      `ordinate of the cut edge ${units}`,
    ],
    ...Array.from({ length: STEPS + 1 }, (_, i): Cell[] => {
      const x = (base * i) / STEPS;
      return [length(x), length(Math.abs(i === STEPS ? 0 : heightAt(x)))];
    }),
  ];
}

/** The lines that the brake bends: from the wide end to where the hit stops, and on to where the line ends. */
function bendRows(
  bends: readonly FileBend[] | undefined,
  { names, units, length }: { names: readonly string[]; units: FileUnits; length: (mm: number) => number },
): Cell[][] {
  if (!bends || bends.length === 0) return [];
  const places = ["wide end", "stop", "narrow end"].flatMap((place) => [`${place} x`, `${place} y`]);
  const sizes = [...places, ...names.map((name) => `along ${name}`), "length", "stops short"];
  return [
    [],
    ["bend line", "hit", "depth", "bend deg", ...sizes.map((name) => `${name} ${units}`)],
    ...bends.map(({ line, from, to, narrow }): Cell[] => [
      line.number,
      line.order,
      line.depth,
      Number(line.bendDeg.toFixed(4)),
      ...[...from, ...to, ...narrow].map(length),
      ...[line.alongMm.a, line.alongMm.b, line.lengthMm, line.stopsShortMm].map(length),
    ]),
  ];
}

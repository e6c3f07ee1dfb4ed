import { SAME_POINT_MM } from "../../geometry/tolerance.ts";
import type { Vec2 } from "../../geometry/vector.ts";
import type { Report } from "../../report/report.ts";
import type { Board } from "../board.ts";
import { dimension, MM_PER_INCH, plain, type Units, unitName } from "../format.ts";
import { type Box, type Drawing, path } from "../model.ts";
import type { Paper } from "../paper.ts";
import { FULL_SIZE } from "../scale.ts";
import { fitSheet } from "../sheet.ts";
import { axesRoom, drawAxes } from "./axes.ts";
import { hatch } from "./hatch.ts";
import { spaced, within } from "./plotCurve.ts";
import { pointAt } from "./pointAt.ts";

type Evenness = NonNullable<Report["forming"]["evenness"]>;

/** A stretch of the skin that is rolled with one setting; plan angles may run past a whole turn. */
export interface PlottedZone {
  readonly fromDeg: number;
  readonly toDeg: number;
}

const FULL_TURN_DEG = 360;
/** Radii so many times the tightest are nearly flat: the plot does not follow them. [-] */
const [ABOVE, FURTHEST] = [1.12, 6];
const SHADE = { angleDeg: 45, apartMm: 2.2 };
const POINTING = { liked: [60, -60, 120, -120, 90, -90], else: [0, 180] };

/**
 * Radius square to the element at both ends against the place round the part, from the seam on; every second zone hatched,
 * their numbers along the top. Nothing where the skin is curved evenly.
 */
export function curvaturePlot(
  report: Report,
  { paper, zones }: { paper: Paper; zones: readonly PlottedZone[] },
): Drawing | undefined {
  const { part, forming } = report;
  const { evenness } = forming;
  if (!evenness) return undefined;
  const { units } = part;
  const { left, below } = axesRoom(paper.capsMm.small);
  const wide = paper.widthMm - 6 - left;
  const high = Math.min(0.5 * wide, paper.heightMm - below);
  const ends = endsOf(evenness);
  const about = zones.length > 1 ? ` The ${zones.length} zones are hatched by turns.` : "";
  return fitSheet(
    {
      paper: { ...paper, scales: FULL_SIZE },
      core: { widthMm: wide, heightMm: high },
      plot: true,
      text: {
        title: `Curvature of ${part.title} round the part`,
        description: ends
          .map(({ name, radii }) => {
            const [least, most] = [Math.min(...radii), Math.max(...radii)];
            return `${name}: radius from ${dimension(least, units)} to ${dimension(most, units)}, ${plain(most / least, 2)} times.`;
          })
          .join(" "),
        lines: [
          part.title,
          `Middle radius square to the element, in ${unitName(units)}, round the part from the seam on.${about}`,
        ],
      },
    },
    (board) =>
      drawPlot(board, { evenness, zones, units, box: { left: 0, bottom: 0, right: wide, top: high } }),
  );
}

/** Both ends with their radii; a point has none. */
function endsOf({ samples, spread }: Evenness) {
  const large = { name: "large end", radii: samples.map(({ largeRadiusMm }) => largeRadiusMm) };
  const small = { name: "small end", radii: samples.map(({ smallRadiusMm }) => smallRadiusMm) };
  if (spread.small === null) return [large];
  const alike = large.radii.every(
    (radius, i) => Math.abs(radius - (small.radii[i] as number)) < SAME_POINT_MM,
  );
  return alike ? [{ ...large, name: "both ends" }] : [large, small];
}

function drawPlot(
  board: Board,
  what: { evenness: Evenness; zones: readonly PlottedZone[]; units: Units; box: Box },
): void {
  const { evenness, zones, units, box } = what;
  const unit = units === "mm" ? 1 : MM_PER_INCH;
  const ends = endsOf(evenness);
  const most = Math.max(...ends.flatMap(({ radii }) => radii));
  const furthest = FURTHEST * Math.max(...ends.map(({ radii }) => Math.min(...radii)));
  const top = ABOVE * Math.min(most, furthest);
  const first = evenness.samples[0]?.planDeg ?? 0;
  const frame = drawAxes(board, box, {
    x: {
      name: "plan angle of the outward normal in degrees",
      from: first,
      to: first + FULL_TURN_DEG,
      each: { step: 45, say: (deg) => String(deg % FULL_TURN_DEG) },
    },
    y: { name: "radius", from: 0, to: top / unit },
  });
  const step = FULL_TURN_DEG / evenness.samples.length;
  for (const { name, radii } of ends) {
    const round = [...radii, ...radii.slice(0, 1)];
    const curve = round.map((radius, i): Vec2 => [first + i * step, radius / unit]);
    const pieces = within(curve, [0, top / unit]).map((piece) => piece.map(([x, y]) => frame.at(x, y)));
    board.draw(...pieces.map((piece) => path("outline", piece)));
    const longest = pieces.toSorted((p, q) => q.length - p.length)[0] ?? [];
    pointAt(board, { tips: spaced(longest), text: name, box, directionsDeg: POINTING });
  }
  if (zones.length > 1) drawZones(board, { zones, box, x: (deg) => frame.at(deg, 0)[0] });
}

/** Borders of the zones, their numbers at the top, and hatching on every second one. */
function drawZones(
  board: Board,
  { zones, box, x }: { zones: readonly PlottedZone[]; box: Box; x: (deg: number) => number },
): void {
  for (const [i, { fromDeg, toDeg }] of zones.entries()) {
    const [left, right] = [x(fromDeg), x(toDeg)];
    const number = board.label(String(i + 1), [(left + right) / 2, box.top + board.mm(2.4)], {
      role: "number",
      size: "small",
    });
    board.put(`zone ${i + 1}`, [{ strokes: [], labels: [number] }], Infinity);
    if (i > 0)
      board.draw(
        path("thin", [
          [left, box.bottom],
          [left, box.top],
        ]),
      );
  }
  for (const [i, { fromDeg, toDeg }] of zones.entries()) {
    if (i % 2 === 0) continue;
    const [left, right] = [x(fromDeg), x(toDeg)];
    const outline: Vec2[] = [
      [left, box.bottom],
      [right, box.bottom],
      [right, box.top],
      [left, box.top],
    ];
    board.draw(...hatch(board, outline, SHADE));
  }
}

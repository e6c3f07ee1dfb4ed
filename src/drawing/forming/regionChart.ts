import type { Vec2 } from "../../geometry/vector.ts";
import type { Board } from "../board.ts";
import { inchFraction } from "../../geometry/inches.ts";
import { MM_PER_INCH, type Units, unitName } from "../format.ts";
import { textWidth } from "../lettering.ts";
import { type Box, type Drawing, path } from "../model.ts";
import type { Paper } from "../paper.ts";
import { FULL_SIZE } from "../scale.ts";
import { fitSheet } from "../sheet.ts";
import { type Axis, axesRoom, drawAxes, type Frame } from "./axes.ts";
import { type Dot, drawDots } from "./dots.ts";
import { hatch, type Hatching } from "./hatch.ts";
import { spaced } from "./plotCurve.ts";
import { pointAt } from "./pointAt.ts";

/** One plot of what a machine takes: below `near` it goes, between the curves it is near the limit, above `limit` beyond it. */
export interface RegionPanel {
  readonly title: string;
  /** Both curves run over the same x, from the left to the right of the plot. [mm] */
  readonly near: readonly Vec2[];
  readonly limit: readonly Vec2[];
  /** A further curve, with its name. [mm] */
  readonly also?: { readonly name: string; readonly points: readonly Vec2[] };
  /** Upright lines at a place of the x axis, with their names. [mm] */
  readonly uprights?: readonly { readonly x: number; readonly name: string }[];
  readonly dots: readonly Dot[];
}

interface Measure {
  readonly name: string;
  readonly to: number;
  /** A thickness, which a shop in inches calls by its fractions. */
  readonly plate?: boolean;
}

export interface RegionChart {
  readonly title: string;
  readonly description: string;
  readonly lines: readonly string[];
  readonly units: Units;
  /** What the axes measure, and how far they run. [mm] */
  readonly x: Measure;
  readonly y: Measure;
  readonly panels: readonly RegionPanel[];
}

/** Lines far apart where it is near the limit, close together and the other way beyond it. */
const NEAR: Hatching = { angleDeg: 45, apartMm: 2.4 };
const BEYOND: Hatching = { angleDeg: -45, apartMm: 1.1 };
/** Between one plot and the next. [mm of paper] */
const [BESIDE, BELOW] = [4, 2];
/** Height of a plot's frame over its width, where the paper is not too low for it. [-] */
const FORM = 0.62;
/** A name across an outline is rather pointed at from beside it; in the board's measure. */
const DEAREST = 30;
/** A leader is hard to follow among the close hatching above the curves: rather below. */
const POINTING = { liked: [-135, -120, -45, 180, 0, -90], else: [60, 120, 45, 135] };

/** What a machine takes, one plot for each strength of plate, told apart by hatching and words; parts are numbered dots. */
export function regionChart(chart: RegionChart, { paper }: { paper: Paper }): Drawing {
  const columns = paper.name === "narrow" || chart.panels.length === 1 ? 1 : 2;
  const rows = Math.ceil(chart.panels.length / columns);
  const cap = paper.capsMm.small;
  const { left, below } = axesRoom(cap);
  const above = 1.9 * paper.capsMm.figure;
  const wide = (paper.widthMm - 6 - (columns - 1) * BESIDE) / columns - left;
  const room = (paper.heightMm - (rows - 1) * BELOW) / rows - above - below;
  const high = Math.min(FORM * wide, room);
  return fitSheet(
    {
      paper: { ...paper, scales: FULL_SIZE },
      core: { widthMm: wide, heightMm: high },
      plot: true,
      text: { title: chart.title, description: chart.description, lines: chart.lines },
    },
    (board) => {
      for (const [i, panel] of chart.panels.entries()) {
        const x = (i % columns) * (left + wide + BESIDE) + left;
        const y = -Math.floor(i / columns) * (above + high + below + BELOW);
        drawPanel(board, { chart, panel, box: { left: x, right: x + wide, bottom: y, top: y + high } });
      }
    },
  );
}

/** Steps of plate thickness, and so many figures at the most. [in] */
const PLATE_STEPS = [1 / 32, 1 / 16, 1 / 8, 1 / 4, 1 / 2, 1];
const MOST_FIGURES = 8;

const fractions = (toInch: number): NonNullable<Axis["each"]> => ({
  step: PLATE_STEPS.find((step) => toInch / step <= MOST_FIGURES) ?? 1,
  say: (inches) => inchFraction(inches * MM_PER_INCH, 32),
});

function drawPanel(
  board: Board,
  { chart, panel, box }: { chart: RegionChart; panel: RegionPanel; box: Box },
): void {
  const unit = chart.units === "mm" ? 1 : MM_PER_INCH;
  const axis = ({ name, to, plate }: Measure): Axis => ({
    name: `${name} in ${unitName(chart.units)}`,
    from: 0,
    to: to / unit,
    ...(plate && chart.units === "in" && { each: fractions(to / unit) }),
  });
  const frame = drawAxes(board, box, { x: axis(chart.x), y: axis(chart.y) });
  const within = (points: readonly Vec2[]): Vec2[] =>
    points.map(([x, y]) => frame.at(Math.min(x, chart.x.to) / unit, Math.min(y, chart.y.to) / unit));
  const near = within(panel.near);
  const limit = within(panel.limit);
  board.draw(path("outline", limit), path("dimension", near));
  const title = board.label(panel.title, [box.left, box.top + board.mm(1.1 * board.paper.capsMm.figure)], {
    role: "name",
    anchor: "start",
  });
  board.put(panel.title, [{ strokes: [], labels: [title] }], Infinity);
  drawDots(
    board,
    frame,
    panel.dots.map((dot) => ({ ...dot, x: dot.x / unit, y: dot.y / unit })),
  );
  for (const { x, name } of panel.uprights ?? []) upright(board, frame, { x: x / unit, name });
  if (panel.also) {
    const points = within(panel.also.points);
    board.draw(path("hidden", points));
    // Where it runs level along the top it is the limit itself.
    const own = points.filter(([, y]) => y < (points[0]?.[1] ?? 0) - board.mm(1));
    pointAt(board, { tips: spaced(own), text: panel.also.name, box, directionsDeg: POINTING });
  }
  const beyond: Vec2[] = [...limit, [box.right, box.top], [box.left, box.top]];
  const band = [...limit, ...near.toReversed()];
  write(board, { name: "beyond", lower: limit, upper: limit.map(([x]): Vec2 => [x, box.top]) });
  write(board, { name: "goes", lower: near.map(([x]): Vec2 => [x, box.bottom]), upper: near });
  pointAt(board, { tips: roomiest(near, limit), text: "near the limit", box, directionsDeg: POINTING });
  board.draw(...hatch(board, band, NEAR), ...hatch(board, beyond, BEYOND));
}

/** A region's name where it is roomiest: the places between two curves in the order of their height. */
function write(
  board: Board,
  { name, lower, upper }: { name: string; lower: readonly Vec2[]; upper: readonly Vec2[] },
): void {
  const half = (textWidth(name, board.paper.capsMm.figure) / 2 + 1) * board.unit;
  const [first, last] = [lower[0]?.[0] ?? 0, lower.at(-1)?.[0] ?? 0];
  const places = lower
    .map(([x, y], i) => ({ x, y, high: (upper[i] as Vec2)[1] - y }))
    .filter(({ x }) => x - half > first && x + half < last)
    .toSorted((p, q) => q.high - p.high);
  board.put(
    name,
    places.flatMap(({ x, y, high }) =>
      [0.5, 0.7, 0.3, 0.85, 0.15].map((share) => ({
        strokes: [],
        labels: [board.label(name, [x, y + share * high], { role: "name" })],
      })),
    ),
    DEAREST,
  );
}

/** The middle of the band between two curves over the same x, where it is highest. */
function roomiest(lower: readonly Vec2[], upper: readonly Vec2[]): Vec2[] {
  const places = lower.map(([x, y], i) => ({ x, y, high: (upper[i] as Vec2)[1] - y }));
  const most = Math.max(...places.map(({ high }) => high));
  const high = places.filter((one) => one.high > 0.6 * most && most > 0);
  return spaced(high.map(({ x, y, high }): Vec2 => [x, y + high / 2]));
}

/** How far above the axis the name of an upright line begins: low, and where there is no room at all, high. [mm of paper] */
const LOW = [1, 3, 6, 10, 15];
const HIGH = [21, 28, 36];
/** Dearer than any crossing, so that it is taken last. */
const LAST = 1e5;

function upright(board: Board, { box, at }: Frame, { x, name }: { x: number; name: string }): void {
  const [px] = at(x, 0);
  board.draw(
    path("centre", [
      [px, box.bottom],
      [px, box.top],
    ]),
  );
  const aside = board.mm(board.paper.capsMm.small);
  const ways = [...LOW, ...HIGH].flatMap((up) =>
    [-1, 1, 2, -2].map((side) => ({
      strokes: [],
      extra: HIGH.includes(up) ? LAST : 0,
      labels: [
        board.label(name, [px + side * aside, box.bottom + board.mm(up)], {
          role: "note",
          size: "small",
          anchor: "start",
          alongDeg: 90,
        }),
      ],
    })),
  );
  board.put(name, ways, Infinity);
}

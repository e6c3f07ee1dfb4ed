import { ticks } from "d3";
import type { Vec2 } from "../../geometry/vector.ts";
import type { Board } from "../board.ts";
import { plain } from "../format.ts";
import { textWidth } from "../lettering.ts";
import { type Box, closed, line } from "../model.ts";

/** One axis: what it measures, in the unit that its figures have. */
export interface Axis {
  /** "slant in millimetres". */
  readonly name: string;
  readonly from: number;
  readonly to: number;
  /** About so many figures; fewer where they would touch. */
  readonly ticks?: number;
  /** Figures at multiples of this in place of round numbers, and what each of them says. */
  readonly each?: { readonly step: number; readonly say: (tick: number) => string };
}

/** A frame on the paper with its axes drawn, and the way from figures to places in it. */
export interface Frame {
  readonly box: Box;
  readonly at: (x: number, y: number) => Vec2;
}

/** A tick, and the room from the frame to its figure. [mm of paper] */
const [TICK, AWAY] = [1.2, 1];
/** Clear room between one figure and the next. [mm of paper] */
const BETWEEN = 2;

/** Room that the figures and names of the axes take to the left of and below a frame. [mm of paper] */
export const axesRoom = (capMm: number): { left: number; below: number } => ({
  left: TICK + AWAY + textWidth("0000", capMm) + 2.6 * capMm,
  below: TICK + AWAY + 4.4 * capMm,
});

/** The frame of a plot with ticks, figures and the names of both axes; draws them. */
export function drawAxes(board: Board, box: Box, { x, y }: { x: Axis; y: Axis }): Frame {
  const across = along(x, box.left, box.right);
  const up = along(y, box.bottom, box.top);
  const cap = board.paper.capsMm.small;
  const places = (ticks: readonly number[]) =>
    Math.max(0, ...ticks.map((tick) => (plain(tick, 6).split(".")[1] ?? "").length));
  board.draw(
    closed("dimension", [
      [box.left, box.bottom],
      [box.right, box.bottom],
      [box.right, box.top],
      [box.left, box.top],
    ]),
  );
  const figure = (text: string, at: Vec2, anchor: "middle" | "end") =>
    board.put(
      `figure ${text}`,
      [{ strokes: [], labels: [board.label(text, at, { role: "number", size: "small", anchor })] }],
      Infinity,
    );

  const figureOf = (tick: number, all: readonly number[], axis = x) =>
    axis.each?.say(tick) ?? plain(tick, places(all));
  const wanted = x.ticks ?? 8;
  let levels = levelsOf(x, ticks(x.from, x.to, wanted), 1);
  for (let n = 1; n < wanted; n++) {
    const widest = Math.max(...levels.map((tick) => textWidth(figureOf(tick, levels), cap)));
    const step = (across(levels[1] ?? 0) - across(levels[0] ?? 0)) / board.unit;
    if (levels.length < 2 || step >= widest + BETWEEN) break;
    levels = levelsOf(x, ticks(x.from, x.to, wanted - n), n + 1);
  }
  for (const tick of levels) {
    const px = across(tick);
    board.draw(line("dimension", [px, box.bottom], [px, box.bottom - board.mm(TICK)]));
    figure(figureOf(tick, levels), [px, box.bottom - board.mm(TICK + AWAY + cap / 2)], "middle");
  }
  const most = y.ticks ?? 6;
  const every = y.each ? Math.ceil((y.to - y.from) / y.each.step / most) : 1;
  const rises = levelsOf(y, ticks(y.from, y.to, most), every);
  let widest = 0;
  for (const tick of rises) {
    const py = up(tick);
    const text = figureOf(tick, rises, y);
    widest = Math.max(widest, textWidth(text, cap));
    board.draw(line("dimension", [box.left, py], [box.left - board.mm(TICK), py]));
    figure(text, [box.left - board.mm(TICK + AWAY), py], "end");
  }
  const name = (text: string, at: Vec2, alongDeg: number) =>
    board.put(
      text,
      [{ strokes: [], labels: [board.label(text, at, { role: "name", size: "small", alongDeg })] }],
      Infinity,
    );
  name(x.name, [(box.left + box.right) / 2, box.bottom - board.mm(TICK + AWAY + 2.9 * cap)], 0);
  name(y.name, [box.left - board.mm(TICK + 2 * AWAY + widest + cap), (box.bottom + box.top) / 2], 90);
  return { box, at: (px, py) => [across(px), up(py)] };
}

/** From a figure of an axis to its place between both ends. A whole scale would bring colours and dates with it that a bench has to load. */
const along =
  ({ from, to }: Axis, first: number, last: number) =>
  (figure: number): number => {
    const share = (figure - from) / (to - from);
    return first * (1 - share) + last * share;
  };

/** Multiples of the step, every n-th of them, or the round numbers where no step is asked. */
function levelsOf({ from, to, each }: Axis, round: readonly number[], n: number): readonly number[] {
  if (!each) return round;
  const step = n * each.step;
  const first = Math.ceil(from / step);
  return Array.from({ length: Math.floor(to / step) - first + 1 }, (_, i) => (first + i) * step);
}

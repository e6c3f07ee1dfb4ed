import type { Board } from "../board.ts";
import { textWidth } from "../lettering.ts";
import { path } from "../model.ts";
import { spread } from "../spread.ts";

/** Lettering stands upright where side by side it would be driven further from its line than this. [mm of paper] */
const DRIVEN = 2.5;
/** From the base to lettering that has to move aside, and to lettering that need not. [mm of paper] */
const DROP = 5;
const UNDER = 1.5;
/** Share of the paper's width that the numbers may take: the height's dimension stands beside them. [-] */
const SHARE = 0.8;

interface Foot {
  readonly x: number;
  readonly text: string;
}

/** The lines' numbers under the base, in order, so that the thin lines to their feet never cross. */
export function numberFeet(board: Board, feet: readonly Foot[]): void {
  const { unit, paper } = board;
  const cap = paper.capsMm.small;
  const sorted = [...feet].sort((p, q) => p.x - q.x);
  const long = (one: Foot) => textWidth(one.text, cap);
  const driven = (some: readonly Foot[], places: readonly number[]) =>
    Math.max(0, ...some.map(({ x }, i) => Math.abs((places[i] as number) - x)));
  const level = spread(
    sorted.map(({ x }) => x),
    sorted.map((one) => (long(one) + 2) * unit),
  );
  if (driven(sorted, level) <= DRIVEN * unit) {
    const moved = driven(sorted, level) > unit / 2;
    const top = -(moved ? DROP : UNDER) * unit;
    for (const [i, one] of sorted.entries())
      write(board, one, { at: level[i] as number, top, deep: cap / 2, led: moved, alongDeg: 0 });
    return;
  }
  // Upright they take the height of their capitals; in two rows, half of that; beyond it every other one gives way.
  const pitch = cap * 1.4 + 1.2;
  const room = SHARE * (Number.isFinite(paper.widthMm) ? paper.widthMm : sorted.length * pitch);
  const rows = sorted.length * pitch > room ? 2 : 1;
  const every = Math.ceil((sorted.length * pitch) / rows / room);
  const shown = sorted.filter((_, i) => i % every === 0 || i === sorted.length - 1);
  for (const one of sorted) if (!shown.includes(one)) board.dropped.push(`line ${one.text}`);
  const places = spread(
    shown.map(({ x }) => x),
    shown.map(() => (pitch / rows) * unit),
  );
  const second = DROP + Math.max(...shown.map(long)) + 3;
  for (const [i, one] of shown.entries()) {
    const top = -(i % rows === 0 ? DROP : second) * unit;
    write(board, one, { at: places[i] as number, top, deep: long(one) / 2, led: true, alongDeg: 90 });
  }
}

function write(
  board: Board,
  { x, text }: Foot,
  { at, top, deep, led, alongDeg }: { at: number; top: number; deep: number; led: boolean; alongDeg: number },
): void {
  const { unit } = board;
  const label = board.label(text, [at, top - (1 + deep) * unit], { role: "number", size: "small", alongDeg });
  const bend = -DROP * unit;
  const strokes = led
    ? [path("dimension", [[x, -0.8 * unit], [at, bend], ...(top < bend ? [[at, top] as const] : [])])]
    : [];
  board.put(`line ${text}`, [{ strokes, labels: [label] }], Infinity);
}

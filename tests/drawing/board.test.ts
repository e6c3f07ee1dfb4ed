import { expect, it } from "vitest";
import { createBoard, type Placing } from "../../src/drawing/board.ts";
import { line } from "../../src/drawing/model.ts";
import { SHEET } from "../../src/drawing/paper.ts";

const at = (board: ReturnType<typeof createBoard>, x: number, y: number): Placing => ({
  strokes: [],
  labels: [board.label("123", [x, y], { role: "number" })],
});

it("takes the first place that is free, and names what finds none", () => {
  const board = createBoard(SHEET, 1);
  expect(board.put("first", [at(board, 0, 0)])).toBe(true);
  expect(board.put("second", [at(board, 1, 1), at(board, 40, 0)])).toBe(true);
  expect(board.put("third", [at(board, 2, 0), at(board, 41, 1)], Infinity)).toBe(false);
  expect(board.labels.map((label) => label.at)).toEqual([
    [0, 0],
    [40, 0],
  ]);
  expect(board.dropped).toEqual(["third"]);
});

it("writes beside an outline rather than across it, and across a thin line rather than far away", () => {
  const board = createBoard(SHEET, 1);
  board.draw(line("outline", [0, -50], [0, 50]), line("thin", [20, -50], [20, 50]));
  board.put("one", [at(board, 0, 0), at(board, 20, 0)]);
  expect(board.labels[0]!.at).toEqual([20, 0]);
});

it("leads no line through lettering", () => {
  const board = createBoard(SHEET, 1);
  board.put("text", [at(board, 10, 0)]);
  const through: Placing = { strokes: [line("dimension", [0, 0], [30, 0])], labels: [] };
  const past: Placing = { strokes: [line("dimension", [0, 6], [30, 6])], labels: [] };
  board.put("leader", [through, past]);
  expect(board.strokes[0]).toEqual(past.strokes[0]);
  expect(board.put("forced", [through])).toBe(false);
});

it("measures lettering in paper millimetres at any scale", () => {
  for (const unit of [0.1, 1, 50]) {
    const board = createBoard(SHEET, unit);
    board.put("one", [at(board, 0, 0)]);
    expect(board.put("free", [at(board, 20 * unit, 0)])).toBe(true);
    expect(board.put("taken", [at(board, 5 * unit, 0)])).toBe(false);
    expect(board.labels[0]!.capMm).toBeCloseTo(3.5 * unit, 9);
  }
});

it("shows inches with their fractions on a sheet", () => {
  const board = createBoard(SHEET, 1);
  expect(board.length(412.75, "in", "R ")).toEqual({ main: "R 16.25", second: "(16-1/4)" });
  expect(board.length(304.8, "in")).toEqual({ main: "12" });
  expect(board.length(412.75, "mm")).toEqual({ main: "412.8" });
});

it("takes nothing more once it has run over its room, until it is opened for the lines at the foot", () => {
  const board = createBoard(SHEET, 1, { room: [50, 50] });
  board.draw(line("outline", [0, 0], [40, 40]));
  expect(board.put("within", [at(board, 10, 30)])).toBe(true);
  expect(board.isOver()).toBe(false);
  board.draw(line("outline", [0, 0], [60, 0]));
  expect(board.isOver()).toBe(true);
  expect(board.put("beyond", [at(board, 30, 10)])).toBe(false);
  board.open();
  expect(board.put("foot", [at(board, 30, -10)])).toBe(true);
});

import fc from "fast-check";
import { expect, it } from "vitest";
import { createBoard, type Placing } from "../../src/drawing/board.ts";
import { line } from "../../src/drawing/model.ts";
import { NARROW, SHEET } from "../../src/drawing/paper.ts";
import { patternDrawing } from "../../src/drawing/pattern.ts";
import { anyPart, runs } from "../arbitraries.ts";
import { develop } from "../../src/report/develop.ts";
import { readBinder } from "../../src/site/binder/binder.ts";
import { catalogue, reportOf } from "../parts.ts";
import { coveredLabels, outsideSheet } from "./judge.ts";

const at = (board: ReturnType<typeof createBoard>, x: number): Placing => ({
  strokes: [],
  labels: [board.label("123", [x, 0], { role: "number" })],
});
/** A name that has three places, with lines across some of them. */
function named(wallAt: readonly number[], before?: ReturnType<typeof createBoard>["puts"]) {
  const board = createBoard(SHEET, 1, { before });
  board.draw(line("outline", [-90, -50], [90, -50]));
  board.draw(...wallAt.map((x) => line("outline", [x, -50], [x, 50])));
  let looked = 0;
  board.put("name", {
    *[Symbol.iterator]() {
      for (const x of [0, 30, 60]) {
        looked += 1;
        yield at(board, x);
      }
    },
  });
  return { x: board.labels[0]?.at[0], looked, puts: board.puts };
}

it("leaves a figure where it lay as long as that is no worse, and looks anew where something has come there", () => {
  const first = named([0]);
  expect(first.x).toBe(30);
  // The first place is free again, but nobody looks at it: the figure does not jump while somebody types.
  expect(named([-40], first.puts)).toMatchObject({ x: 30, looked: 2 });
  expect(named([0, 30], first.puts)).toMatchObject({ x: 60 });
  expect(named([-40, 30], first.puts)).toMatchObject({ x: 0 });
});

it("leaves out what had no place, and names it, until the whole drawing looks again", () => {
  const board = createBoard(SHEET, 1, { before: [null] });
  expect(board.put("name", [at(board, 0)])).toBe(false);
  expect(board.dropped).toEqual(["name"]);
  // What comes after it in the drawing before is still told apart from it.
  expect(board.put("other", [at(board, 30)])).toBe(true);
  expect(createBoard(SHEET, 1).put("name", [at(board, 0)])).toBe(true);
});

it("draws the same from its own drawing as without one", () => {
  for (const { report } of readBinder().parts)
    for (const paper of [SHEET, NARROW]) {
      const blank = report.blanks[0]!;
      const whole = patternDrawing(report, { paper, blank });
      expect(patternDrawing(report, { paper, blank, before: whole })).toEqual(whole);
    }
});

it("covers nothing and stays on its sheet from the drawing of another size, whatever part and size", () => {
  let moved = 0;
  fc.assert(
    fc.property(
      anyPart,
      fc.constantFrom("mm" as const, "in" as const),
      fc.constantFrom(0.9, 0.99, 1.001, 1.02, 1.3),
      (part, units, times) => {
        const before = reportOf({ ...part, units });
        const grown = {
          ...part,
          units,
          ...("height" in part && part.height !== undefined && { height: part.height * times }),
        };
        const developed = develop(grown, { catalogue });
        fc.pre(developed.kind !== "refused" && "height" in part);
        const after = developed.report;
        for (const paper of [SHEET, NARROW]) {
          const old = patternDrawing(before, { paper, blank: before.blanks[0]! });
          const blank = after.blanks[0]!;
          const quick = patternDrawing(after, { paper, blank, before: old });
          expect(coveredLabels(quick)).toEqual([]);
          expect(outsideSheet(quick)).toEqual([]);
          // What was written before is of no account: every figure is that of the size now.
          const whole = patternDrawing(after, { paper, blank });
          if (quick.unit === whole.unit)
            expect(quick.strokes.filter(({ kind }) => kind === "outline")).toEqual(
              whole.strokes.filter(({ kind }) => kind === "outline"),
            );
          const texts = new Set([...whole.labels.map(({ text }) => text), ...whole.dropped]);
          moved += quick.labels.filter(({ text, role }) => role === "dimension" && texts.has(text)).length;
        }
      },
    ),
    runs(40),
  );
  expect(moved).toBeGreaterThan(100);
});

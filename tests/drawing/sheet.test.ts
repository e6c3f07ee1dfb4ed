import { expect, it } from "vitest";
import { line } from "../../src/drawing/model.ts";
import { SHEET } from "../../src/drawing/paper.ts";
import { fitSheet } from "../../src/drawing/sheet.ts";

const drawn = (size: number, beside: number, heightMm = 100) =>
  fitSheet(
    {
      paper: { ...SHEET, heightMm },
      core: { widthMm: size, heightMm: size },
      text: { title: "Plate", description: "A plate.", lines: ["Plate", "A remark at the foot."] },
    },
    // Something beside it that is as large on paper at every scale.
    (board) => {
      board.draw(line("outline", [0, 0], [size, size]));
      board.draw(line("dimension", [0, -board.mm(beside)], [size, -board.mm(beside)]));
    },
  );

it("draws at the largest scale at which all keeps within the paper, dimensions too", () => {
  expect(drawn(100, 0).unit).toBe(1);
  expect(drawn(100, 20).unit).toBe(2);
  expect(drawn(100, 60).unit).toBe(2.5);
});

it("has its lines at the foot though what is drawn fills the room", () => {
  const texts = drawn(100, 0).labels.map(({ text }) => text);
  expect(texts).toEqual(["Plate", "A remark at the foot.", "Scale 1:1, picture 170 mm wide"]);
});

it("draws what fits at no scale at the one where it is least too large", () => {
  const { unit, labels } = drawn(100, 150);
  expect(unit).toBeGreaterThan(1);
  expect(labels.length).toBe(3);
});

import fc from "fast-check";
import { expect, it } from "vitest";
import { NARROW, SHEET } from "../../src/drawing/paper.ts";
import { plateDrawing } from "../../src/drawing/plates.ts";
import { layPlates } from "../../src/nesting/layPlates.ts";
import { runs } from "../arbitraries.ts";
import { items } from "../nesting/shapes.ts";
import { coveredLabels, outsideSheet } from "./judge.ts";

it("shows every blank with its number and the plate's sizes; no label covers another, nothing leaves the sheet", () => {
  fc.assert(
    fc.property(items, fc.boolean(), (wanted, inches) => {
      const laid = layPlates(wanted, [{ lengthMm: 2500, widthMm: 1250, grain: false }], {
        spacingMm: 8,
        edgeMm: 10,
        effort: 0.01,
        seed: 1,
      });
      for (const { stock, placings, free } of laid.plates) {
        const blanks = placings.map(({ outline, part }, i) => ({ outline, number: i + 1, name: part }));
        const drawing = {
          title: "S235, 3 mm, plate 1",
          units: inches ? ("in" as const) : ("mm" as const),
          lengthMm: stock.lengthMm,
          widthMm: stock.widthMm,
          blanks,
          free: free && {
            left: free.at[0],
            bottom: free.at[1],
            right: free.at[0] + free.xMm,
            top: free.at[1] + free.yMm,
          },
        };
        for (const paper of [SHEET, NARROW]) {
          const drawn = plateDrawing(drawing, { paper });
          expect(coveredLabels(drawn)).toEqual([]);
          expect(outsideSheet(drawn)).toEqual([]);
          expect(drawn.strokes.filter(({ kind }) => kind === "outline")).toHaveLength(blanks.length);
          const texts = drawn.labels.map(({ text }) => text);
          for (const { number } of blanks)
            if (!drawn.dropped.includes(`number ${number}`))
              expect(texts.some((text) => text === `${number}` || text.startsWith(`${number} `))).toBe(true);
          expect(texts).toContain(inches ? "98.425" : "2500");
          expect(texts).toContain(inches ? "49.213" : "1250");
        }
      }
    }),
    runs(30),
  );
});

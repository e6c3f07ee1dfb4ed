import fc from "fast-check";
import { expect, it } from "vitest";
import type { Drawing } from "../../src/drawing/model.ts";
import { isometricDrawing } from "../../src/drawing/isometric.ts";
import { SHEET } from "../../src/drawing/paper.ts";
import { patternDrawing } from "../../src/drawing/pattern.ts";
import { trueShapeDrawing } from "../../src/drawing/trueShape.ts";
import { viewsDrawing } from "../../src/drawing/views.ts";
import { develop } from "../../src/report/develop.ts";
import type { Report } from "../../src/report/report.ts";
import { mm, runs, share } from "../arbitraries.ts";
import { catalogue, named } from "../parts.ts";
import { svgText } from "./svgText.ts";

const drawingsOf = (report: Report): Drawing[] => [
  viewsDrawing(report, { paper: SHEET }),
  patternDrawing(report, { paper: SHEET, blank: report.blanks[0]! }),
  isometricDrawing(report, { paper: SHEET }),
  trueShapeDrawing(report, { paper: SHEET, blank: report.blanks[0]! }),
];

/** From nothing at all up to a part; about half of its sizes are too small to be one. */
const tiny = fc.oneof(mm(1e-9, 1), mm(0.2, 1), mm(1, 1000));

it("has a place for every stroke and every letter, however small a side, an end or an offset is", () => {
  let drawn = 0;
  fc.assert(
    fc.property(
      tiny,
      tiny,
      tiny,
      tiny,
      share,
      mm(0.2, 3),
      (length, width, diameter, offset, turn, thickness) => {
        const plan: [number, number] = [offset * Math.cos(7 * turn), offset * Math.sin(7 * turn)];
        const height = 50 + length + width + diameter + offset;
        const hood = named({
          shape: "square-to-round",
          thickness,
          rectangularEnd: { length, width, measured: "inside" },
          roundEnd: { diameter, measured: "inside", offset: plan },
          height,
        });
        const cone = named({
          shape: "eccentric-cone",
          thickness,
          largeEnd: { diameter: Math.max(length, width), measured: "inside" },
          smallEnd: { diameter: Math.min(length, width), measured: "inside", offset: plan },
          height,
        });
        for (const part of [hood, cone]) {
          const developed = develop(part, { catalogue });
          if (developed.kind === "refused") continue;
          for (const drawing of drawingsOf(developed.report)) {
            drawn += 1;
            expect(svgText(drawing)).not.toMatch(/NaN|Infinity|undefined/);
          }
        }
      },
    ),
    runs(120),
  );
  expect(drawn).toBeGreaterThan(100);
});

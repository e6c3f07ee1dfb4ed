import { expect, it } from "vitest";
import { closureSketch } from "../../src/drawing/closureSketch.ts";
import { isometricDrawing } from "../../src/drawing/isometric.ts";
import { CARD, NARROW, SHEET } from "../../src/drawing/paper.ts";
import { patternDrawing } from "../../src/drawing/pattern.ts";
import { trueShapeDrawing } from "../../src/drawing/trueShape.ts";
import { viewsDrawing } from "../../src/drawing/views.ts";
import { named, reportOf } from "../parts.ts";
import { svgText } from "./svgText.ts";

/** Small parts, one of each shape, whose drawings a person can look at in golden/. */
const parts = {
  "right-cone": named({
    shape: "right-cone",
    thickness: 5,
    largeEnd: { diameter: 600, measured: "outside" },
    smallEnd: { diameter: 300, measured: "outside" },
    height: 250,
  }),
  "eccentric-cone": named({
    shape: "eccentric-cone",
    thickness: 2,
    largeEnd: { diameter: 320, measured: "inside" },
    smallEnd: { diameter: 160, measured: "inside", offset: [40, -60] },
    height: 240,
    seam: { gap: 2 },
  }),
  "square-to-round": named({
    shape: "square-to-round",
    thickness: 2,
    rectangularEnd: { length: 406.4, width: 304.8, measured: "inside" },
    roundEnd: { diameter: 254, measured: "outside" },
    height: 203.2,
    pieces: 2,
    seam: { at: 90 },
  }),
} as const;

for (const [name, part] of Object.entries(parts)) {
  // The rectangle in inches, so that fractions are looked at too.
  const report = reportOf({ ...part, title: `A ${name}`, units: name === "square-to-round" ? "in" : "mm" });
  const blank = report.blanks[0]!;
  it.each([
    ["pattern", patternDrawing(report, { paper: SHEET, blank })],
    ["pattern-narrow", patternDrawing(report, { paper: NARROW, blank })],
    ["views", viewsDrawing(report, { paper: SHEET })],
    ["true-lengths", trueShapeDrawing(report, { paper: SHEET, blank })],
    ["in-the-round", isometricDrawing(report, { paper: CARD })],
  ])(`${name}: %s`, async (drawing, model) => {
    await expect(svgText(model)).toMatchFileSnapshot(`golden/${name}-${drawing}.svg`);
  });
}

it("right-cone: part-rolled end", async () => {
  const drawing = closureSketch(reportOf(parts["right-cone"]), { paper: SHEET })!;
  await expect(svgText(drawing)).toMatchFileSnapshot("golden/right-cone-part-rolled.svg");
});

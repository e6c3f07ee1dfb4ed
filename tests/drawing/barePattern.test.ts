import { expect, it } from "vitest";
import { barePattern } from "../../src/drawing/barePattern.ts";
import { svgPen } from "../../src/drawing/svgPath.ts";
import { named, reportOf } from "../parts.ts";

it("is as high as it is asked to be, or as wide as its paper, and holds the blank", () => {
  const pipe = (height: number) =>
    reportOf(
      named({
        shape: "right-cone",
        thickness: 2,
        largeEnd: { diameter: 400, measured: "inside" },
        smallEnd: { diameter: 400, measured: "inside" },
        height,
      }),
    ).blanks[0]!;
  for (const height of [60, 200, 1000, 5000]) {
    const bare = barePattern(pipe(height), 24);
    const { widthMm, heightMm } = svgPen(bare);
    const [across, high] = [400 * Math.PI, height];
    expect(heightMm).toBeLessThanOrEqual(24.001);
    if (6 * high > 1.1 * across) expect(heightMm).toBeCloseTo(24, 3);
    else expect(heightMm).toBeLessThan(24);
    expect(widthMm / heightMm).toBeGreaterThan((0.9 * across) / high / 1.2);
    expect(bare.strokes.length).toBe(1 + pipe(height).lines.length);
  }
});

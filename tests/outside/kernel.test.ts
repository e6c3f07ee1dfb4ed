import init from "replicad-opencascadejs";
import { describe, expect, it } from "vitest";
import { skinArea, volume } from "../../src/geometry/measure.ts";
import { circleRim, rectangleRim } from "../../src/geometry/rim.ts";
import { kernelArea, kernelFrustum, kernelTransition } from "./kernel.ts";

const oc = await init();

describe("a general geometry kernel building the same ruled surface", () => {
  it.each([
    { name: "right", R: 100, r: 50, h: 120, e: 0, rel: 1e-9 },
    { name: "oblique", R: 100, r: 50, h: 120, e: 40, rel: 1e-9 },
    { name: "oblique", R: 100, r: 50, h: 120, e: 90, rel: 1e-9 },
    { name: "oblique pipe", R: 80, r: 80, h: 200, e: 120, rel: 1e-9 },
    // The kernel's own quadrature is less exact on steep surfaces.
    { name: "steep", R: 100, r: 50, h: 60, e: 200, rel: 1e-6 },
  ])("$name R $R r $r h $h offset $e: area and volume", ({ R, r, h, e, rel }) => {
    const skin = { a: circleRim([0, 0], R), b: circleRim([e, 0], r), baseMm: 0, heightMm: h };
    const built = kernelFrustum(oc, { R, r, h, e });
    expect(Math.abs(built.area / skinArea(skin) - 1)).toBeLessThan(rel);
    expect(Math.abs(built.volume / volume(skin) - 1)).toBeLessThan(1e-9);
  });

  it("square-to-round: four triangles and four quarter cones have the area of the skin", () => {
    const sizes = { a: 300, b: 200, r: 80, h: 180, x: 30, y: -10 };
    const skin = { a: rectangleRim(300, 200), b: circleRim([30, -10], 80), baseMm: 0, heightMm: 180 };
    const faces = kernelTransition(oc, sizes);
    expect(faces).toHaveLength(8);
    const area = faces.reduce((sum, face) => sum + kernelArea(oc, face), 0);
    expect(Math.abs(area / skinArea(skin) - 1)).toBeLessThan(1e-9);
  });
});

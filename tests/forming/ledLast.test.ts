import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { stripPlace } from "../../src/forming/sheet/ledLast.ts";
import { formingOf } from "../../src/forming/forming.ts";
import { zonesOf } from "../../src/forming/zones.ts";
import { even } from "../even.ts";
import { coneCase, reducer, roll, shop } from "./cases.ts";

const strips = fc
  .record({ tightMm: even(100, 2000), share: even(0.3, 0.99), turn: even(0.05, 1) })
  .map(({ tightMm, share, turn }) => ({ tightMm, gentleMm: tightMm / share, arcMm: turn * tightMm }));

describe("a strip that kept a gentler bend", () => {
  it("stands off by half the difference of curvatures times the square of its length, where that is little", () => {
    fc.assert(
      fc.property(strips, ({ tightMm, gentleMm }) => {
        const arcMm = 0.01 * tightMm;
        const little = ((1 / tightMm - 1 / gentleMm) * arcMm ** 2) / 2;
        const { outsideMm, pastMm } = stripPlace({ arcMm, tightMm, gentleMm });
        expect(outsideMm / little).toBeCloseTo(1, 2);
        expect(Math.abs(pastMm)).toBeLessThan(0.1 * little);
      }),
    );
  });

  it("ends where arcs laid down in a thousand short turns do, about the round that it should have closed", () => {
    fc.assert(
      fc.property(strips, (strip) => {
        const { arcMm, tightMm, gentleMm } = strip;
        const laid = (radiusMm: number) => {
          let [x, y, heading] = [0, 0, 0];
          const step = arcMm / 1000;
          for (let i = 0; i < 1000; i++) {
            heading += step / radiusMm / 2;
            x += step * Math.cos(heading);
            y += step * Math.sin(heading);
            heading += step / radiusMm / 2;
          }
          return { x, y, heading };
        };
        const [gentle, tight] = [laid(gentleMm), laid(tightMm)];
        const [dx, dy] = [gentle.x - tight.x, gentle.y - tight.y];
        const [cos, sin] = [Math.cos(tight.heading), Math.sin(tight.heading)];
        const { outsideMm, pastMm } = stripPlace(strip);
        expect(Math.abs(outsideMm - (dx * sin - dy * cos))).toBeLessThan(1e-4 * tightMm);
        expect(Math.abs(pastMm - (dx * cos + dy * sin))).toBeLessThan(1e-4 * tightMm);
      }),
      { numRuns: 50 },
    );
  });
});

describe("the edge that led in the second pass", () => {
  const machine = roll({
    slide: { origin: [230, -200], angle: 60, travel: 300 },
    bearings: [140, 160],
    dropEnd: "left",
    coneAttachment: { range: [60, 60] },
  });
  const steps = (pieces: number) => formingOf(coneCase(reducer, { pieces }), shop([machine])).plans[0]!.steps;
  const text = (pieces: number, id: string) => steps(pieces).find((step) => step.id === id)?.text;

  it("is told on the sheet of a whole part with how far it stands off, and is brought in and round by later steps", () => {
    const close = steps(1).find(({ id }) => id === "close")!;
    const number = (id: string) => steps(1).find((step) => step.id === id)!.number;
    expect(close.text).toMatch(
      new RegExp(
        `at seam edge 2 keep the first pass's bend: no template there nor on the chalk's way; its edge is some [\\d.]+ mm outside and [\\d.]+ mm short of the other at the large end, [\\d.]+ mm and [\\d.]+ mm at the small end or more\\. Then raise no more; step ${number("tack")} draws it in, step ${number("re-round")} rounds it`,
      ),
    );
    const off = close.figures.filter(({ label }) => label.startsWith("last edge stands outside"));
    expect(off).toHaveLength(2);
    expect(off[1]!.value).toBeGreaterThan(off[0]!.value);
    expect(text(1, "last-edge")).toBeUndefined();
  });

  it("is bent last on a piece, whose edges stand further apart till then", () => {
    expect(text(3, "close")).toMatch(/until step \d+ bends them the seam edges stand apart by about/);
    const apart = (id: string, label: string) =>
      steps(3)
        .find((step) => step.id === id)!
        .figures.find((one) => one.label.startsWith(label))!.value;
    const right = apart("last-edge", "seam edges apart when right, the large end");
    const before = apart("close", "seam edges apart before the last edge is bent, large end");
    expect(before).toBeGreaterThan(right);
    expect(before).toBeLessThan(1.1 * right);
    expect(text(3, "last-edge")).toMatch(
      /turn each round once more \(stop at the drop end, seam edge 1 ahead\).*each end to its own 0 plus the other's last raise \(its scale less its 0\)/,
    );
    expect(text(3, "re-round")).toBeUndefined();
  });

  it("gets at both edges what it had at the other end of the rolls, whose bearings stand less far out", () => {
    const figure = (id: string, label: string) =>
      steps(3)
        .find((step) => step.id === id)!
        .figures.find((one) => one.label === label)!.value;
    const [small, large] = ["small", "large"].map((edge) =>
      figure("second-raise", `bearing beyond the ${edge} edge`),
    );
    const moved = figure("last-edge", "both bearings, once exchanged, moved by");
    // Along the roll from its drop end: the small edge's bearing is that one now, and the piece begins at the stop.
    const [drop, fixed] = [-140, machine.workingWidth + 160];
    const { slantMm } = zonesOf(coneCase(reducer, { pieces: 3 }))[0]!;
    for (const [edge, at] of [
      ["small", 60],
      ["large", 60 + slantMm],
    ] as const) {
      const raise = small! + moved + ((large! - small!) * (at - drop)) / (fixed - drop);
      expect(raise).toBeCloseTo(figure("second-raise", `start at the ${edge} edge`), 6);
    }
    expect(Math.abs(moved)).toBeGreaterThan(0.1);
    expect(text(3, "last-edge")).toMatch(/its scale less its 0\), both /);
  });
});

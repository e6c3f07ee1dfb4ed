import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cutEvenly } from "../../src/forming/zoneCut.ts";
import { even } from "../even.ts";
import { develop } from "../../src/report/develop.ts";
import { catalogue, named } from "../parts.ts";
import { roll, RUNS, shop as shopOf } from "./cases.ts";

const row = fc.array(even(1, 3), { minLength: 2, maxLength: 9 });
const LIMIT = 1.4;

describe("a row cut into stretches", () => {
  const costOf = (values: readonly number[]) => (from: number, to: number) => {
    const own = values.slice(from, to + 1);
    return Math.max(...own) / Math.min(...own);
  };
  /** Every way to cut it, one after the other: slow, and apart from the code. */
  function* allCuts(last: number, from = 0): Generator<[number, number][]> {
    if (from === last) yield [];
    for (let to = from + 1; to <= last; to++)
      for (const rest of allCuts(last, to)) yield [[from, to], ...rest];
  }

  it("has as few as any way of cutting it, and of those with so few the least worst one", () => {
    fc.assert(
      fc.property(row, (values) => {
        const cost = costOf(values);
        const last = values.length - 1;
        const fits = ([from, to]: readonly [number, number]) => to - from === 1 || cost(from, to) <= LIMIT;
        const ways = [...allCuts(last)].filter((way) => way.every(fits));
        const fewest = Math.min(...ways.map((way) => way.length));
        const worst = (way: readonly (readonly [number, number])[]) =>
          Math.max(...way.map(([from, to]) => cost(from, to)));
        const best = Math.min(...ways.filter((way) => way.length === fewest).map(worst));
        const cut = cutEvenly({ last, limit: LIMIT, costOf: cost });
        expect(cut).toHaveLength(fewest);
        expect(worst(cut)).toBeCloseTo(best, 12);
        expect(cut[0]![0]).toBe(0);
        expect(cut.at(-1)![1]).toBe(last);
        cut.slice(1).forEach(([from], i) => expect(from).toBe(cut[i]![1]));
      }),
      RUNS,
    );
  });

  it("is nothing where there is no step", () => {
    expect(cutEvenly({ last: 0, limit: 2, costOf: () => 1 })).toEqual([]);
  });
});

describe("the zones of an eccentric cone", () => {
  const machine = roll({
    rolls: { topDiameter: 200, pinchDiameter: 180, bendingDiameter: 180 },
    slide: { origin: [230, -200], angle: 60, travel: 300, greatestTilt: 10 },
    bearings: [140, 160],
    smallestDiameter: 300,
    rating: { thickness: 20, yieldMPa: 250 },
    coneAttachment: { range: [0, 300], clearRoom: 900 },
  });
  const part = named({
    shape: "eccentric-cone",
    thickness: 4,
    largeEnd: { diameter: 1100, measured: "inside" },
    smallEnd: { diameter: 700, measured: "inside", offset: [300, 0] },
    height: 600,
  });
  const reportAt = (at: number, pieces: number, divisions = 12) => {
    const made = develop(
      { ...part, pieces, divisions, seam: { at } },
      { catalogue, shop: shopOf([machine]) },
    );
    if (made.kind === "refused") throw new Error(JSON.stringify(made.issues));
    return made.report;
  };
  const fine = (at: number, pieces: number) => reportAt(at, pieces, 72);
  const zonesAt = (at: number, pieces = 1) => {
    const report = reportAt(at, pieces);
    return { report, zones: report.forming.plans[0]!.settings?.zones ?? [] };
  };
  const shop = () => zonesAt(0);

  it("lie alike on both sides of a seam in the plane of symmetry", () => {
    const { zones } = shop();
    expect(zones.length).toBeGreaterThan(2);
    zones.forEach((zone, i) => {
      const other = zones.at(-1 - i)!;
      expect(zone.fromDeg + other.toDeg).toBeCloseTo(360, 9);
      expect(zone.largeRadiusMm).toBeCloseTo(other.largeRadiusMm, 5);
      expect(zone.spread).toBeLessThanOrEqual(1.25 + 1e-9);
    });
  });

  it("begin where the marking table of the same plate has an element line at that plan angle", () => {
    for (const at of [0, 35])
      for (const pieces of [1, 2]) {
        const { zones } = zonesAt(at, pieces);
        for (const { fromDeg, begins } of zones.slice(1)) {
          expect(begins).not.toBeNull();
          // The same plate divided so finely that a line stands at each border: chords of 5° from line to line.
          const rows = fine(at, pieces).hand.rows.filter(({ piece }) => piece === begins!.piece);
          const turned = fromDeg % 360;
          const last = rows.findIndex(({ planDeg }) => Math.abs(planDeg - turned) < 1e-3);
          expect(last, `plan ${turned}`).toBeGreaterThan(0);
          const walked = (end: "a" | "b") =>
            rows.slice(1, last + 1).reduce((sum, row, i) => {
              const before = rows[i]!;
              return sum + Math.hypot(row[end][0] - before[end][0], row[end][1] - before[end][1]);
            }, 0);
          for (const [end, along] of [
            ["a", begins!.largeMm],
            ["b", begins!.smallMm],
          ] as const) {
            // A chord of 5° is short of its arc by (5°)²/24, at most.
            expect(along).toBeGreaterThan(walked(end) - 0.01);
            expect(along).toBeLessThan(walked(end) * (1 + (Math.PI / 36) ** 2 / 24) + 0.01);
          }
        }
      }
  });

  it("are what the finished part is held to: the radius of the mean curvature, with the true ones of its elements beside it", () => {
    const { report } = shop();
    const rows = report.forming.inspection!.rows.filter(({ id }) => id === "template");
    const { samples } = report.forming.evenness!;
    const { zones } = report.forming.plans[0]!.settings!;
    // Alike on both sides of the seam: both ends of the first half of the zones.
    expect(rows).toHaveLength(zones.length + 1);
    zones.slice(0, rows.length / 2).forEach(({ fromDeg, toDeg }, i) => {
      const own = samples.filter(({ planDeg }) => {
        const on = planDeg < fromDeg - 1e-6 ? planDeg + 360 : planDeg;
        return on < toDeg + 1e-6;
      });
      for (const [j, of] of (["largeRadiusMm", "smallRadiusMm"] as const).entries()) {
        const radii = own.map((one) => one[of]);
        const mean = radii.length / radii.reduce((sum, radius) => sum + 1 / radius, 0);
        const { what, nominalMm } = rows[2 * i + j]!;
        expect(nominalMm).toBeCloseTo(mean - 2, 4);
        const within = [Math.min(...radii), Math.max(...radii)].map(
          (mm) => `${Number((mm - 2).toFixed(1))} mm`,
        );
        expect(what).toContain(`mean (true ${within.join(" to ")})`);
      }
    });
  });
});

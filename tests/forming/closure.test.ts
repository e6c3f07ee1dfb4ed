import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { closureTable, partRolled } from "../../src/forming/closure.ts";
import { closureOfShare, firstPass, shareOfClosure } from "../../src/forming/firstPass.ts";
import { isPipe } from "../../src/forming/skin.ts";
import { anyCone, coneCase, hood, reducer, RUNS } from "./cases.ts";
import { even } from "../even.ts";

type Vec3 = readonly [number, number, number];
const minus = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const plus = (a: Vec3, b: Vec3, k: number): Vec3 => [a[0] + k * b[0], a[1] + k * b[1], a[2] + k * b[2]];
const dot = (a: Vec3, b: Vec3) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const size = (a: Vec3) => Math.hypot(...a);
const unit = (a: Vec3): Vec3 => [a[0] / size(a), a[1] / size(a), a[2] / size(a)];

/**
 * The flat sector rolled up in space: a point of it (reach from the corner of the sector, angle across it) laid on the
 * cone about the z axis that the sector covers to the given closure. Distances along the sheet are kept, nothing else is used.
 */
function rolledUp({ sector, closed }: { sector: number; closed: number }) {
  const perAngle = (2 * Math.PI * closed) / sector; // turn about the axis for each radian of sheet
  const slope = 1 / perAngle; // sine of the cone's half angle: arc reach·dψ = radius·turn
  const rise = Math.sqrt(1 - slope * slope);
  return (reach: number, psi: number): Vec3 => [
    reach * slope * Math.cos(psi * perAngle),
    reach * slope * Math.sin(psi * perAngle),
    -reach * rise,
  ];
}

const rolling = fc
  .record({
    halfAngleRad: even(0.02, 1.4),
    bend: even(0.05, 0.98),
    radiusMm: even(50, 5000),
    thin: even(0.0001, 0.02),
  })
  .map(({ halfAngleRad, bend, radiusMm, thin }) => ({
    halfAngleRad,
    closed: closureOfShare({ halfAngleRad, share: bend }),
    radiusMm,
    thicknessMm: thin * radiusMm,
    edges: "square" as const,
    pieces: 1,
  }));

describe("a blank rolled in part, laid out in space", () => {
  const REL = 1e-9; // of the radius: rounding of the construction

  it("has the gap, the level radius and the inside corners that the table gives", () => {
    fc.assert(
      fc.property(rolling, fc.constantFrom(1, 2, 3, 5), (rolled, pieces) => {
        const sector = 2 * Math.PI * Math.sin(rolled.halfAngleRad);
        const at = rolledUp({ sector, closed: rolled.closed });
        const reach = rolled.radiusMm / Math.sin(rolled.halfAngleRad);
        const [one, two] = [at(reach, 0), at(reach, sector / pieces)];
        const end = partRolled({ ...rolled, pieces });
        expect(Math.abs(end.gapMm - size(minus(one, two)))).toBeLessThan(REL * rolled.radiusMm);
        expect(Math.abs(end.levelRadiusMm - Math.hypot(one[0], one[1]))).toBeLessThan(REL * rolled.radiusMm);

        // Inside corners of a square edge: half the thickness in along the normal, which is square to both sheet directions.
        const inward = (psi: number) => {
          const along = unit(at(1, psi));
          const across: Vec3 = unit(cross([0, 0, 1], along));
          const normal = cross(along, across);
          return dot(normal, [along[0], along[1], 0]) > 0 ? plus([0, 0, 0], normal, -1) : normal;
        };
        const half = rolled.thicknessMm / 2;
        const corners = [plus(one, inward(0), half), plus(two, inward(sector / pieces), half)] as const;
        const scale = rolled.radiusMm;
        expect(Math.abs(end.insideGapMm - size(minus(...corners)))).toBeLessThan(REL * scale);
        expect(Math.abs(end.insideLevelRadiusMm - Math.hypot(corners[0][0], corners[0][1]))).toBeLessThan(
          REL * scale,
        );
      }),
      RUNS,
    );
  });

  it("is curved square to its elements as the table gives", () => {
    fc.assert(
      fc.property(rolling, (rolled) => {
        const sector = 2 * Math.PI * Math.sin(rolled.halfAngleRad);
        const at = rolledUp({ sector, closed: rolled.closed });
        const reach = rolled.radiusMm / Math.sin(rolled.halfAngleRad);
        // A straight line on the sheet, square to the element, runs along the curve of greatest bend: differences of
        // it in space give that bend, for the line itself adds none.
        const step = 0.0005 * rolled.radiusMm;
        const on = (x: number) => at(Math.hypot(reach, x), sector / 2 + Math.atan2(x, reach));
        const second = plus(plus(on(step), on(0), -2), on(-step), 1);
        const curvature = size(second) / (step * step);
        const end = partRolled(rolled);
        expect(Math.abs(curvature * end.squareRadiusMm - 1)).toBeLessThan(1e-3);
        expect(end.insideSquareRadiusMm).toBeCloseTo(
          Math.max(0, end.squareRadiusMm - rolled.thicknessMm / 2),
          6,
        );
      }),
      RUNS,
    );
  });

  it("shows a level template the inside face where the plane of the middle rim cuts it", () => {
    fc.assert(
      fc.property(rolling, (rolled) => {
        const sine = Math.sin(rolled.halfAngleRad) / rolled.closed;
        const lean = Math.asin(sine);
        const end = partRolled({ ...rolled, edges: "level" });
        // Go from the middle rim square into the wall, then along the inside face back to the same level.
        const half = rolled.thicknessMm / 2;
        const middle = rolled.radiusMm / rolled.closed;
        const inside = [middle - half * Math.cos(lean), -half * Math.sin(lean)] as const;
        const back = -inside[1] / Math.cos(lean);
        const radius = Math.max(0, inside[0] - back * Math.sin(lean));
        expect(Math.abs(end.insideLevelRadiusMm - radius)).toBeLessThan(1e-8 * rolled.radiusMm);
      }),
      RUNS,
    );
  });
});

describe("closure and share of the bend", () => {
  it("are each other's inverse", () => {
    fc.assert(
      fc.property(even(0, 1.4), even(0.1, 1), (halfAngleRad, share) => {
        const closed = closureOfShare({ halfAngleRad, share });
        expect(shareOfClosure({ halfAngleRad, closed })).toBeCloseTo(share, 9);
      }),
      RUNS,
    );
  });

  it("are the same for a steep cone and part for a wide one", () => {
    expect(shareOfClosure({ halfAngleRad: 0.001, closed: 0.7 })).toBeCloseTo(0.7, 5);
    // Half angle 30°: flat is 50 % closed, 65 % closed is 48 % bent.
    expect(shareOfClosure({ halfAngleRad: Math.PI / 6, closed: 0.65 })).toBeCloseTo(0.48, 2);
    expect(shareOfClosure({ halfAngleRad: Math.PI / 6, closed: 0.5 - 1e-9 })).toBeNull();
  });

  it("keep the first pass in order: window, cap, closed", () => {
    for (let degrees = 0; degrees <= 89; degrees++) {
      const { from, to, cap } = firstPass((degrees * Math.PI) / 180);
      expect(from).toBeGreaterThanOrEqual(0.65);
      expect(to).toBeGreaterThan(from);
      expect(cap).toBeGreaterThan(to);
      expect(cap).toBeLessThan(1);
    }
    expect(firstPass(0)).toEqual({ from: 0.65, to: 0.8, cap: 0.85 });
  });
});

describe("the table", () => {
  it("ends closed: no gap, the whole bend, the radii of the drawing", () => {
    fc.assert(
      fc.property(anyCone, (item) => {
        const cone = item.cone!;
        const last = closureTable({ ...item, pieces: 1 }, 0).at(-1);
        if (!last) {
          expect(isPipe(item)).toBe(true);
          return;
        }
        expect(last).toMatchObject({ closed: 1, share: 1, mark: "closed" });
        expect(last.large!.gapMm).toBe(0);
        expect(last.large!.levelRadiusMm).toBe(cone.largeRadiusMm);
        const square = cone.largeRadiusMm / Math.cos(cone.halfAngleRad);
        expect(Math.abs(last.large!.squareRadiusMm / square - 1)).toBeLessThan(1e-9);
      }),
      RUNS,
    );
  });

  it("closes steadily: larger share, smaller gap and radii from row to row", () => {
    fc.assert(
      fc.property(anyCone, (item) => {
        const rows = closureTable({ ...item, pieces: 1 }, 0);
        const numbered = rows.filter((row) => row.large !== null);
        for (const [i, row] of rows.entries())
          if (i > 0) expect(row.closed).toBeGreaterThan(rows[i - 1]!.closed);
        for (const [i, row] of numbered.entries()) {
          const before = numbered[i - 1];
          if (!before) continue;
          expect(row.share!).toBeGreaterThan(before.share!);
          expect(row.large!.gapMm).toBeLessThan(before.large!.gapMm);
          expect(row.large!.squareRadiusMm).toBeLessThan(before.large!.squareRadiusMm);
        }
        const flat = Math.sin(item.cone!.halfAngleRad);
        for (const row of rows) expect(row.share === null).toBe(row.closed <= flat);
      }),
      RUNS,
    );
  });

  it("shows the usual rows and the marks of a steep cone, each closure once", () => {
    const rows = closureTable(coneCase({ ...reducer, heightMm: 1000 }), 0);
    expect(rows.map(({ closed, mark }) => [closed, mark])).toEqual([
      [0.65, "start of the window"],
      [0.7, null],
      [0.75, null],
      [0.8, "end of the window"],
      [0.85, "cap of the first pass"],
      [1, "closed"],
    ]);
  });

  it("adds the window of a wide cone and leaves the rows blank that the flat plate has passed", () => {
    // Half angle 45°: flat is 71 % closed.
    const rows = closureTable(
      coneCase({ largeRadiusMm: 600, smallRadiusMm: 200, heightMm: 400, thicknessMm: 5 }),
      0,
    );
    expect(rows.filter(({ mark }) => mark).map(({ closed }) => closed)).toEqual([
      expect.closeTo(Math.sqrt(0.5 + 0.18), 12),
      expect.closeTo(Math.sqrt(0.5 + 0.5 * 0.5625), 12),
      expect.closeTo(Math.sqrt(0.5 + 0.32), 12),
      1,
    ]);
    expect(rows.filter(({ large }) => large === null).map(({ closed }) => closed)).toEqual([0.65, 0.7]);
    expect(rows).toHaveLength(9);
  });

  it("has no small end at a point, and no rows for a pipe or another shape", () => {
    const pointed = closureTable(coneCase({ ...reducer, smallRadiusMm: 0 }), 0);
    expect(pointed.every(({ small }) => small === null)).toBe(true);
    expect(pointed.every(({ large }) => large !== null)).toBe(true);
    expect(closureTable(coneCase({ ...reducer, smallRadiusMm: 450 }), 0)).toEqual([]);
    expect(closureTable(hood, 0)).toEqual([]);
  });

  it("gives the chord from seam to seam of one of two pieces: the diameter, once closed", () => {
    const last = closureTable(coneCase(reducer, { pieces: 2 }), 0).at(-1)!;
    expect(last.large!.gapMm).toBeCloseTo(900, 9);
    expect(last.small!.gapMm).toBeCloseTo(400, 9);
  });
});

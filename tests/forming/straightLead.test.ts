import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { closedOfGap } from "../../src/forming/closedOfGap.ts";
import { insideAcrossMm, partRolled } from "../../src/forming/closure.ts";
import { closureOfShare } from "../../src/forming/firstPass.ts";
import { acrossLedMm } from "../../src/geometry/straightLead.ts";
import { even } from "../even.ts";
import { coneCase, RUNS } from "./cases.ts";

type Vec3 = readonly [number, number, number];
const plus = (a: Vec3, b: Vec3, k: number): Vec3 => [a[0] + k * b[0], a[1] + k * b[1], a[2] + k * b[2]];
const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const unit = (a: Vec3): Vec3 => plus([0, 0, 0], a, 1 / Math.hypot(...a));
const apart = (a: Vec3, b: Vec3) => Math.hypot(...plus(a, b, -1));

const rolling = fc
  .record({
    halfAngleRad: even(0.02, 1.2),
    bend: even(0.3, 0.95),
    radiusMm: even(50, 5000),
    thin: even(0.0001, 0.02),
    pieces: fc.constantFrom(1, 2, 3, 5),
    /** Of the edge of the blank. */
    lead: even(0.01, 0.3),
  })
  .map(({ halfAngleRad, bend, radiusMm, thin, pieces, lead }) => ({
    halfAngleRad,
    closed: closureOfShare({ halfAngleRad, share: bend }),
    radiusMm,
    thicknessMm: thin * radiusMm,
    edges: "square" as const,
    pieces,
    leadMm: (lead * 2 * Math.PI * radiusMm) / pieces,
  }));

type Rolled = typeof rolling extends fc.Arbitrary<infer One> ? One : never;

/**
 * The flat sector laid on the cone that it makes at this closure, point by point, up to where the lead begins; from there
 * on it runs straight, in the plane that three points of the bend next to that place span. Its two inside corners.
 */
function foldedCorners({ halfAngleRad, closed, radiusMm, thicknessMm, pieces, leadMm }: Rolled) {
  const sine = Math.sin(halfAngleRad) / closed;
  const rise = Math.sqrt(1 - sine * sine);
  const reach = radiusMm / Math.sin(halfAngleRad);
  const on = (psi: number): Vec3 => [
    sine * Math.cos(psi / sine),
    sine * Math.sin(psi / sine),
    -rise, // the apex at nought, the rim below it
  ];
  const sector = (2 * Math.PI * Math.sin(halfAngleRad)) / pieces;
  const psi = leadMm / reach;
  const ends = sector - psi;
  const along = unit(on(ends));
  // Along the sheet, square to the element: by the slope of the cone there, from both sides.
  const step = 1e-5;
  const across = unit(plus(on(ends + step), on(ends - step), -1));
  const tip = plus(plus([0, 0, 0], along, reach * Math.cos(psi)), across, reach * Math.sin(psi));
  const start = plus([0, 0, 0], on(0), reach);
  const inward = (at: Vec3, direction: Vec3) => {
    const normal = unit(cross(unit(at), direction));
    return normal[0] * at[0] + normal[1] * at[1] > 0 ? plus([0, 0, 0], normal, -1) : normal;
  };
  const half = thicknessMm / 2;
  // What is measured lies in the level of its middle corner: gone in, and not up.
  const level = (corner: Vec3, normal: Vec3): Vec3 => plus(corner, [normal[0], normal[1], 0], half);
  return {
    middle: [start, tip] as const,
    inside: [level(start, inward(on(0), [0, 1, 0])), level(tip, inward(along, across))] as const,
    turned: ends / sine + Math.atan2(reach * Math.sin(psi), reach * Math.cos(psi) * sine),
  };
}

describe("a blank with a straight lead, folded up in space", () => {
  it("has the gap that is told, as long as its edges have not passed each other", () => {
    let led = 0;
    fc.assert(
      fc.property(rolling, (rolled) => {
        const folded = foldedCorners(rolled);
        if (folded.turned > 2 * Math.PI - 0.01) return;
        led++;
        const end = partRolled(rolled);
        const scale = 1e-6 * rolled.radiusMm; // differences taken over 1e-5 of the sector
        expect(Math.abs(end.gapMm - apart(...folded.middle))).toBeLessThan(scale);
        expect(Math.abs(insideAcrossMm(rolled) - apart(...folded.inside))).toBeLessThan(scale);
      }),
      RUNS,
    );
    expect(led).toBeGreaterThan(100);
  });

  it("is wider than one bent alike all along, and as wide without a lead", () => {
    fc.assert(
      fc.property(rolling, (rolled) => {
        const alike = insideAcrossMm({ ...rolled, leadMm: 0 });
        const widened = partRolled(rolled).gapMm - partRolled({ ...rolled, leadMm: 0 }).gapMm;
        expect(widened).toBeGreaterThan(-1e-9 * rolled.radiusMm);
        if (rolled.leadMm > 0.1 * rolled.radiusMm && rolled.halfAngleRad < 1)
          expect(widened).toBeGreaterThan(0);
        const level = rolled.radiusMm / rolled.closed;
        const sine = Math.sin(rolled.halfAngleRad) / rolled.closed;
        const sweepRad = (2 * Math.PI * rolled.closed) / rolled.pieces;
        const nearer = (rolled.thicknessMm / 2) * Math.sqrt(1 - sine * sine);
        if (rolled.closed < 0.99)
          expect(acrossLedMm({ levelMm: level, sweepRad, sine, leadMm: 0 }, nearer)).toBeCloseTo(alike, 6);
      }),
      RUNS,
    );
  });

  it("is straight all through where the lead is as long as the blank", () => {
    for (const leadMm of [1000, 5000])
      expect(acrossLedMm({ levelMm: 500, sweepRad: 2, sine: 0, leadMm }, 3)).toBeCloseTo(1000, 9);
  });

  it("tells by its gap how far it is bent, past the turn too", () => {
    fc.assert(
      fc.property(even(0.05, 0.6), even(0.5, 1.15), even(0.02, 0.15), (halfAngleRad, closed, lead) => {
        const flat = Math.sin(halfAngleRad);
        if (closed < flat + 0.1) return;
        const [largeRadiusMm, smallRadiusMm] = [800, 500];
        const heightMm = (largeRadiusMm - smallRadiusMm) / Math.tan(halfAngleRad);
        const item = coneCase({ largeRadiusMm, smallRadiusMm, heightMm, thicknessMm: 6 });
        const leadMm = lead * 2 * Math.PI * largeRadiusMm;
        const { thicknessMm, edges, pieces } = item;
        const at = (share: number) =>
          insideAcrossMm({
            ...{ radiusMm: largeRadiusMm, closed: share, leadMm },
            ...{ halfAngleRad, thicknessMm, edges, pieces },
          });
        const gapMm = at(closed);
        const read = closedOfGap(item, item.cone!, { gapMm, leadMm });
        // Where the lead stands beside the other edge, one gap goes with a little more or less.
        if (Math.abs(at(closed + 1e-3) - at(closed - 1e-3)) < 20) expect(read).toBeCloseTo(closed, 6);
        else expect(Math.abs(read - closed)).toBeLessThan(0.05);
      }),
      RUNS,
    );
  });
});

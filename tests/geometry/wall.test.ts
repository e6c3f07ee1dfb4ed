import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { TURN } from "../../src/geometry/angle.ts";
import { allRound, girth, rimLength } from "../../src/geometry/measure.ts";
import { hasParallel, parallelSkin } from "../../src/geometry/parallel.ts";
import { tightest } from "../../src/geometry/wall.ts";
import { leanAt, planeNormal, type Skin } from "../../src/geometry/skin.ts";
import { dot3 } from "../../src/geometry/vector.ts";
import { roundSkin, runs, share } from "../arbitraries.ts";
import { named, reportOf } from "../parts.ts";

/** Offsets that leave the skin a skin: a small share of what there is room for. */
const walled = fc.record({ skin: roundSkin, p: share, q: share }).map(({ skin, p, q }) => {
  const room = Math.min(skin.heightMm, skin.a.support(0, 1).rho) / 10;
  return { skin, offsets: { a: (p - 0.3) * room, b: (q - 0.3) * room } };
});

const exists = ({ skin, offsets }: { skin: Skin; offsets: { a: number; b: number } }) =>
  hasParallel(skin, offsets, allRound());

describe("parallel skins", () => {
  it("each tangent plane is parallel to the one that touches both drawn ends at their distances", () => {
    fc.assert(
      fc.property(walled, share, (wall, turn) => {
        fc.pre(exists(wall));
        const { skin, offsets } = wall;
        const theta = turn * TURN;
        const moved = parallelSkin(skin, offsets);
        const normal = planeNormal(theta, leanAt(moved, theta, 1).beta);
        const n = [Math.cos(theta), Math.sin(theta)] as const;
        const gap = (end: "a" | "b") => {
          const level = moved[end].support(theta, 1).h - skin[end].support(theta, 1).h;
          return dot3(normal, [level * n[0], level * n[1], 0]);
        };
        expect(gap("a")).toBeCloseTo(offsets.a, 6);
        expect(gap("b")).toBeCloseTo(offsets.b, 6);
      }),
      runs(200),
    );
  });

  it("h′ and ρ are what differences of h say", () => {
    fc.assert(
      fc.property(walled, share, (wall, turn) => {
        fc.pre(exists(wall));
        const moved = parallelSkin(wall.skin, wall.offsets);
        const theta = turn * TURN;
        const e = 1e-4;
        for (const end of ["a", "b"] as const) {
          const h = (t: number) => moved[end].support(t, 1).h;
          const { dh, rho } = moved[end].support(theta, 1);
          const size = 1 + Math.abs(h(theta)) + Math.abs(rho) + wall.skin.heightMm;
          expect(Math.abs((h(theta + e) - h(theta - e)) / (2 * e) - dh) / size).toBeLessThan(1e-3);
          const second = (h(theta + e) - 2 * h(theta) + h(theta - e)) / (e * e);
          expect(Math.abs(second + h(theta) - rho) / size).toBeLessThan(1e-2);
        }
      }),
      runs(200),
    );
  });

  it("going out and back in by the same distance is the skin again", () => {
    fc.assert(
      fc.property(walled, share, (wall, turn) => {
        fc.pre(exists(wall));
        const { skin, offsets } = wall;
        const d = offsets.a; // one distance at both ends: a true parallel surface
        const back = parallelSkin(parallelSkin(skin, { a: d, b: d }), { a: -d, b: -d });
        for (const end of ["a", "b"] as const) {
          const [p, q] = [back[end].point(turn * TURN, 1), skin[end].point(turn * TURN, 1)];
          expect(Math.hypot(p[0] - q[0], p[1] - q[1])).toBeLessThan(1e-6);
        }
      }),
      runs(200),
    );
  });

  it("girth by Cauchy's formula is the length of the rim", () => {
    fc.assert(
      fc.property(walled, (wall) => {
        fc.pre(exists(wall));
        const moved = parallelSkin(wall.skin, wall.offsets);
        for (const end of ["a", "b"] as const) {
          if (tightest(moved[end], allRound()).rho < 0) return;
          const length = rimLength(moved, end);
          expect(Math.abs(girth(moved, end) - length)).toBeLessThan(1e-7 * (length + wall.skin.heightMm));
        }
      }),
      runs(150),
    );
  });
});

describe("the same wall measured inside, outside or at the middle has the same blank", () => {
  it.each(["level", "square"] as const)("right cones with %s edges", (edges) => {
    fc.assert(
      fc.property(share, share, share, (p, q, r) => {
        const [t, alpha, middle] = [1 + 20 * p, 0.1 + 1.1 * q, 120 + 800 * r];
        const level = edges === "level" ? t / Math.cos(alpha) : t * Math.cos(alpha);
        const slant = 300;
        const small = middle - 2 * slant * Math.sin(alpha);
        const D = middle + 2 * Math.max(0, 100 - small);
        const d = small + 2 * Math.max(0, 100 - small);
        const sizes = { middle: 0, inside: -level, outside: level };
        const blanks = (["inside", "middle", "outside"] as const).map((face) => {
          const height = slant * Math.cos(alpha) + (edges === "square" ? t * Math.sin(alpha) : 0);
          const part = named({
            shape: "right-cone",
            thickness: t,
            largeEnd: { diameter: D + sizes[face], measured: face },
            smallEnd: { diameter: d + sizes[face], measured: face },
            height,
            edges,
          });
          return reportOf(part);
        });
        for (const { cone, shape, blanks: cut } of blanks) {
          expect(cone?.halfAngleDeg).toBeCloseTo((alpha * 180) / Math.PI, 5);
          expect(cone?.slantMm).toBeCloseTo(slant, 5);
          expect(shape.rims.a).toBeCloseTo(Math.PI * D, 5);
          expect(cut[0]!.areaMm2).toBeCloseTo((Math.PI * (D + d) * slant) / 2, 3);
        }
      }),
      runs(100),
    );
  });

  it("each end may be measured its own way", () => {
    const [t, alpha, slant, D, d] = [10, 0.4, 600, 900, 900 - 1200 * Math.sin(0.4)];
    const report = reportOf(
      named({
        shape: "right-cone",
        thickness: t,
        largeEnd: { diameter: D + t / Math.cos(alpha), measured: "outside" },
        smallEnd: { diameter: d - t / Math.cos(alpha), measured: "inside" },
        height: slant * Math.cos(alpha),
      }),
    );
    expect(report.cone?.slantMm).toBeCloseTo(slant, 5);
    expect(report.shape.rims.a).toBeCloseTo(Math.PI * D, 5);
    expect(report.shape.rims.b).toBeCloseTo(Math.PI * d, 5);
  });
});

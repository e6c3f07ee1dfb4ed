import fc from "fast-check";
import { expect, it } from "vitest";
import { TURN } from "../../src/geometry/angle.ts";
import { pathLength } from "../../src/geometry/polygon.ts";
import { circleRim, rectangleRim } from "../../src/geometry/rim.ts";
import { leanAt, type Skin } from "../../src/geometry/skin.ts";
import { stationsBetween } from "../../src/geometry/station.ts";
import { layFlat } from "../../src/geometry/strip.ts";
import { withTrim } from "../../src/geometry/trim.ts";
import { cross2, distance2, dot2, length2, sub2, type Vec2 } from "../../src/geometry/vector.ts";
import { runs, share } from "../arbitraries.ts";

const THICKNESS_MM = 12;

/** A rectangle below a circle, within what is ordinary in a duct or hopper, and where its seam lies. */
const hood = fc
  .record({ l: share, w: share, d: share, x: share, y: share, h: share, seam: share })
  .map(({ l, w, d, x, y, h, seam }) => {
    const [length, width] = [200 + 1300 * l, 200 + 1300 * w];
    const skin: Skin = {
      a: rectangleRim(length, width),
      b: circleRim([(x - 0.5) * 400, (y - 0.5) * 400], 80 + 500 * d),
      baseMm: 0,
      heightMm: 250 + 1200 * h,
    };
    return { skin, length, width, from: TURN * seam };
  });

const allowance = (skin: Skin, theta: number) =>
  (THICKNESS_MM / 2) * Math.abs(Math.tan(leanAt(skin, theta, 1).beta));

/** Distance from a point to an open path. */
function toPath(p: Vec2, path: readonly Vec2[]): number {
  return Math.min(
    ...path.slice(1).map((q, i) => {
      const from = path[i]!;
      const along = sub2(q, from);
      const length = length2(along);
      const at = length === 0 ? -1 : dot2(sub2(p, from), along) / length;
      return at < 0 || at > length
        ? Math.min(distance2(p, from), distance2(p, q))
        : Math.abs(cross2(along, sub2(p, from))) / length;
    }),
  );
}

function trimmed({ skin, from }: { skin: Skin; from: number }) {
  const knots = Array.from({ length: 720 }, (_, i) => from + (i * TURN) / 720);
  const stations = stationsBetween(skin, { from, to: from + TURN }, { knots });
  const flat = layFlat(stations);
  const cut = withTrim(stations, flat, { thicknessMm: THICKNESS_MM, open: false });
  return { stations, flat, cut };
}

it("stands off each end by (t/2) tan β square to it, away from corners and seams", () => {
  fc.assert(
    fc.property(hood, (made) => {
      const { stations, flat, cut } = trimmed(made);
      if (!cut) return;
      for (const end of ["a", "b"] as const) {
        const span = pathLength(flat[end]);
        cut[end].forEach((p, i) => {
          const { theta } = stations[i]!;
          const wanted = allowance(made.skin, theta);
          const corner = flat[end].some(
            (q, k) =>
              k !== i &&
              end === "a" &&
              distance2(q, flat[end][i]!) < 1e-6 &&
              Math.abs(stations[k]!.theta - theta) > 0.02,
          );
          const seam = Math.min(distance2(p, flat[end][0]!), distance2(p, flat[end].at(-1)!));
          if (corner || seam < 0.05 * span) return;
          expect(Math.abs(toPath(p, flat[end]) - wanted)).toBeLessThan(0.1 * wanted + 0.02);
        });
      }
    }),
    runs(60),
  );
});

it("ends on the lines of its seams, and runs from one to the other without turning back", () => {
  fc.assert(
    fc.property(hood, (made) => {
      const { flat, cut } = trimmed(made);
      if (!cut) return;
      for (const end of ["a", "b"] as const) {
        for (const at of [0, -1]) {
          const [foot, head, p] = [flat.a.at(at)!, flat.b.at(at)!, cut[end].at(at)!];
          const along = sub2(head, foot);
          expect(Math.abs(cross2(along, sub2(p, foot)) / length2(along))).toBeLessThan(1e-6);
        }
        const first = sub2(flat.b[0]!, flat.a[0]!);
        const beyond = cut[end].filter(
          (p, i) => i > 0 && i < 30 && cross2(first, sub2(p, flat.a[0]!)) < -1e-6,
        );
        expect(beyond).toEqual([]);
      }
    }),
    runs(120),
  );
});

it("is found for nearly every hood, wherever its seam lies", () => {
  const made = fc.sample(hood, { seed: 7, numRuns: 200 });
  expect(made.filter((one) => trimmed(one).cut).length).toBeGreaterThan(195);
});

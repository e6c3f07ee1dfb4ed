import { Clipper, FillRule } from "clipper2-ts";
import fc from "fast-check";
import { expect, it } from "vitest";
import { convolve } from "../../src/nesting/convolve.ts";
import { gridRing, merged, type Ring, ringArea } from "../../src/nesting/ring.ts";
import { runs } from "../arbitraries.ts";
import { even } from "../even.ts";
import { outlines } from "./shapes.ts";

/** The Minkowski sum by the library: every pair of sides, and each outline once with the other's first corner. */
function sumOfPairs(a: Ring, b: Ring): Ring[] {
  const shift = (ring: Ring, { x, y }: Ring[number]) => ring.map((p) => ({ x: p.x + x, y: p.y + y }));
  const band = Clipper.minkowskiSum([...a], [...b], true);
  return Clipper.union([...band, shift(a, b[0]!), shift(b, a[0]!)], FillRule.NonZero);
}

it("goes round the Minkowski sum and nothing else, for any two outlines", () => {
  fc.assert(
    fc.property(outlines, outlines, even(0, 360), (p, q, turn) => {
      const [a, b] = [gridRing(p, 0), gridRing(q, turn)];
      const [ours, theirs] = [merged(convolve(a, b)), sumOfPairs(a, b)];
      const whole = theirs.reduce((sum, ring) => sum + ringArea(ring), 0);
      const differs = Clipper.xor(
        ours.map((ring) => [...ring]),
        theirs.map((ring) => [...ring]),
        FillRule.NonZero,
      );
      // Crossings come to lie on the grid: a few steps along each side.
      expect(Math.abs(Clipper.areaPaths(differs)) / whole).toBeLessThan(1e-6);
    }),
    runs(150),
  );
});

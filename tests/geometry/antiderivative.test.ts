import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { antiderivative } from "../../src/geometry/antiderivative.ts";
import { integrate } from "../../src/geometry/quadrature.ts";
import { even } from "../even.ts";
import { runs } from "../arbitraries.ts";

describe("the integral up to any place of a stretch", () => {
  // Closed forms from any table of integrals.
  const known = [
    { name: "3", f: () => 3, whole: (x: number) => 3 * x, from: -1, to: 4 },
    { name: "x³", f: (x: number) => x ** 3, whole: (x: number) => x ** 4 / 4, from: 0, to: 2 },
    { name: "cos x", f: Math.cos, whole: Math.sin, from: -2, to: 4 },
    { name: "1/(1 + x²)", f: (x: number) => 1 / (1 + x * x), whole: Math.atan, from: -1, to: 3 },
  ];
  it.each(known)("of $name is that of the closed form", ({ f, whole, from, to }) => {
    const upTo = antiderivative(f, from, to);
    expect(upTo).not.toBeNull();
    for (const share of [0, 0.1, 0.35, 0.5, 0.99, 1]) {
      const x = from + share * (to - from);
      expect(upTo!(x)).toBeCloseTo(whole(x) - whole(from), 11);
    }
  });

  it("agrees with adding up each part by itself", () => {
    fc.assert(
      fc.property(even(0, 0.6), even(0, 6), even(0, 1), even(0, 1), (e, phase, p, q) => {
        const f = (x: number) => 1 / Math.sqrt(1 + e * Math.cos(x - phase));
        const upTo = antiderivative(f, 0, 6);
        const part = (upTo?.(6 * q) ?? NaN) - (upTo?.(6 * p) ?? NaN);
        expect(part).toBeCloseTo(integrate(f, 6 * p, 6 * q), 10);
      }),
      runs(200),
    );
  });

  it("is not given where the function is not smooth enough", () => {
    expect(antiderivative((x) => Math.abs(x - 0.3), -1, 1)).toBeNull();
  });
});

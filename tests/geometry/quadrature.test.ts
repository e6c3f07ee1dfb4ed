import { describe, expect, it } from "vitest";
import { integrate } from "../../src/geometry/quadrature.ts";

/** Values asked for till an integral is found; one that asks for more than a million would ask for ever. */
function asked(f: (x: number) => number, from: number, to: number): { value: number; values: number } {
  let values = 0;
  const value = integrate(
    (x) => {
      values += 1;
      if (values > 1_000_000) throw new Error("there is no end to it");
      return f(x);
    },
    from,
    to,
  );
  return { value, values };
}

describe("an integral", () => {
  it("of a smooth function takes few values, and is exact", () => {
    const { value, values } = asked(Math.exp, 0, 1);
    expect(value).toBeCloseTo(Math.E - 1, 14);
    expect(values).toBeLessThan(100);
  });

  it("of a function with a bend is found by halving towards it", () => {
    const { value, values } = asked((x) => Math.abs(x - Math.SQRT1_2), 0, 1);
    expect(value).toBeCloseTo((Math.SQRT1_2 ** 2 + (1 - Math.SQRT1_2) ** 2) / 2, 13);
    expect(values).toBeLessThan(2000);
  });

  it("of a function that is lost in its own rounding has an end, and as many digits as the function", () => {
    const noise = 1e-6;
    // Rounded to six digits: however near two places lie, their values differ by a step or by none.
    const { value, values } = asked((x) => Math.round(Math.exp(x) / noise) * noise, 0, 1);
    expect(Math.abs(value - (Math.E - 1))).toBeLessThan(noise);
    expect(values).toBeLessThan(12_000); // at most 512 halvings of 14 values each, and 256 panels of 7
  });

  it("of what is no number has an end", () => {
    const { value, values } = asked(() => NaN, 0, 1);
    expect(value).toBeNaN();
    expect(values).toBeLessThan(12_000);
  });
});

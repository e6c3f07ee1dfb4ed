import { globSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";

const TOKENS = readFileSync("src/site/styles/tokens.css", "utf8");

/** A colour of the site by day and by night. */
function colour(name: string): readonly [string, string] {
  const [, day, night] = new RegExp(`--${name}: light-dark\\((#\\w{6}), (#\\w{6})\\)`).exec(TOKENS) ?? [];
  if (day === undefined || night === undefined) throw new Error(`there is no colour --${name}`);
  return [day, night];
}

const channels = (hex: string): number[] =>
  [1, 3, 5].map((i) => Number.parseInt(hex.slice(i, i + 2), 16) / 255);

/** Relative luminance and contrast as WCAG 2.2 defines them. */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = channels(hex).map((one) =>
    one <= 0.04045 ? one / 12.92 : ((one + 0.055) / 1.055) ** 2.4,
  );
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
function contrast(one: string, other: string): number {
  const [light = 0, dark = 0] = [luminance(one), luminance(other)].toSorted((a, b) => b - a);
  return (light + 0.05) / (dark + 0.05);
}

/** Where on the wheel of colours. [degrees] */
function hue(hex: string): number {
  const [r = 0, g = 0, b = 0] = channels(hex);
  return (Math.atan2(Math.sqrt(3) * (g - b), 2 * r - g - b) * 180) / Math.PI;
}

it.each([0, 1])("shows where the keyboard is on every ground, in the colour of no verdict (%d)", (mode) => {
  const focus = colour("focus")[mode]!;
  for (const ground of ["paper", "desk", "wash"]) {
    // WCAG 2.2, 1.4.11: 3:1 for what shows a state.
    expect(contrast(focus, colour(ground)[mode]!), ground).toBeGreaterThanOrEqual(3);
  }
  for (const verdict of ["accent", "care"]) {
    const apart = Math.abs(hue(focus) - hue(colour(verdict)[mode]!)) % 360;
    expect(Math.min(apart, 360 - apart), verdict).toBeGreaterThan(90);
  }
});

it("draws that ring in that colour wherever a style draws one", () => {
  const rings = globSync("src/site/**/*.{css,svelte,astro}").flatMap((file) =>
    [...readFileSync(file, "utf8").matchAll(/:focus-visible \{([^}]*)\}/g)].map(([, rule = ""]) => rule),
  );
  expect(rings.length).toBeGreaterThan(2);
  for (const rule of rings) expect(rule).toContain("var(--focus)");
});

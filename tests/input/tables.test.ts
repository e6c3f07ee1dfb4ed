import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { loadCatalogue } from "../../src/input/loadCatalogue.ts";
import type { GaugeFamily } from "../../src/shapes/material.ts";

const { catalogue, gauges } = loadCatalogue();

/**
 * Ounces a square foot of the statutory gauge, 15 U.S.C. 206: thickness in inches times 640, from 3 gauge to 30.
 * The statute gives fractions of an inch; down to 21 gauge they were read, from 22 on they are recalled.
 */
const STATUTE: readonly [number, number][] = [
  [3, 1 / 4],
  [4, 15 / 64],
  [5, 7 / 32],
  [6, 13 / 64],
  [7, 3 / 16],
  [8, 11 / 64],
  [9, 5 / 32],
  [10, 9 / 64],
  [11, 1 / 8],
  [12, 7 / 64],
  [13, 3 / 32],
  [14, 5 / 64],
  [15, 9 / 128],
  [16, 1 / 16],
  [17, 9 / 160],
  [18, 1 / 20],
  [19, 7 / 160],
  [20, 3 / 80],
  [21, 11 / 320],
  [22, 1 / 32],
  [23, 9 / 320],
  [24, 1 / 40],
  [25, 7 / 320],
  [26, 3 / 160],
  [27, 11 / 640],
  [28, 1 / 64],
  [29, 9 / 640],
  [30, 1 / 80],
];
const ounces = new Map(STATUTE.map(([gauge, inches]) => [gauge, inches * 640]));

/** The rules that make the trade tables, each to the decimals that are printed. */
const rules: Record<GaugeFamily, { inches: (gauge: number) => number; from: number; decimals: number }> = {
  steel: { inches: (n) => ounces.get(n)! / 16 / 41.82, from: 3, decimals: 4 },
  galvanised: { inches: (n) => (ounces.get(n)! + 2.5) / 16 / 41.82, from: 8, decimals: 4 },
  stainless: { inches: (n) => ounces.get(n)! / 640, from: 3, decimals: 9 },
  aluminium: { inches: (n) => 0.005 * 92 ** ((36 - n) / 39), from: 3, decimals: 4 },
};

describe.each(Object.entries(rules))("the gauges of %s", (family, { inches, from, decimals }) => {
  const { rows } = gauges[family as GaugeFamily];

  it("run without a gap to 30", () => {
    expect(rows.map(({ gauge }) => gauge)).toEqual(
      Array.from({ length: 31 - from }, (_, i) => String(from + i)),
    );
  });

  it.each(rows)("$gauge is $inches in by the rule of the table", ({ gauge, inches: printed }) => {
    expect(Math.abs(printed - inches(Number(gauge)))).toBeLessThanOrEqual(0.5000001 * 10 ** -decimals);
  });

  it("call memory what was not read", () => {
    const shaky = rows.filter(({ provenance }) => provenance === "memory").map(({ gauge }) => Number(gauge));
    const recalled = { steel: 22, stainless: 22, galvanised: 8, aluminium: 31 }[family] ?? 0;
    // One galvanised value, of 30 gauge, was seen in print.
    const last = family === "galvanised" ? 29 : 30;
    expect(shaky).toEqual(Array.from({ length: Math.max(0, last + 1 - recalled) }, (_, i) => recalled + i));
  });
});

it("lists the materials, strongest promises first read", () => {
  const { materials } = catalogue;
  expect(Object.keys(materials).sort()).toEqual([
    "304",
    "316",
    "5052-h32",
    "5083",
    "a36",
    "s235",
    "s250gd-z",
    "s275",
    "s355",
  ]);
  // EN 10025-2 table 7, up to 16 mm, and ASTM A36: yield and least tensile strength.
  const strengths = Object.fromEntries(
    ["s235", "s275", "s355", "a36"].map((id) => [id, [materials[id]!.yieldMPa, materials[id]!.tensileMPa]]),
  );
  expect(strengths).toEqual({ s235: [235, 360], s275: [275, 410], s355: [355, 470], a36: [250, 400] });
});

it("gives each material a tensile strength above its yield, and elastic values of its family", () => {
  const modulus = { steel: 210, galvanised: 210, stainless: 200, aluminium: 70 };
  for (const [id, material] of Object.entries(catalogue.materials)) {
    expect(material.tensileMPa, id).toBeGreaterThan(material.yieldMPa);
    expect(material.youngsGPa, id).toBe(modulus[material.family]);
  }
});

describe("loadCatalogue", () => {
  it("reads a folder once", () => {
    expect(loadCatalogue()).toBe(loadCatalogue());
    expect(loadCatalogue("content").catalogue).toEqual(catalogue);
  });

  it("throws with every mistake of the tables, with places", () => {
    const folder = mkdtempSync(join(tmpdir(), "tables-"));
    writeFileSync(join(folder, "materials.yaml"), "s235:\n  name: S235\n  family: steal\n");
    writeFileSync(join(folder, "gauges.yaml"), "steel: 3\n");
    expect(() => loadCatalogue(folder)).toThrow(/materials\.yaml:3:11: s235\.family: steal is not known/);
  });
});

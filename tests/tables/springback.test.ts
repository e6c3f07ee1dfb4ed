import { describe, expect, it } from "vitest";
import type { Material } from "../../src/shapes/material.ts";
import { materials, tableOf } from "./all.ts";
import { halfLast, off } from "./arithmetic.ts";

const LAYERS = 4000;

/**
 * Bends a plate of thickness 1 layer by layer and lets it go: each layer takes E·y/R up to its yield, the sum is the moment,
 * and the plate opens elastically by that moment over E·I. No formula of springback, only Hooke and a yield.
 *
 * @returns free radius over loaded radius; Infinity where nothing of the bend is left
 */
function letGo(loaded: number, { yieldMPa, youngsGPa, poisson }: Material, times: number): number {
  const [Y, E] = [(times * yieldMPa * 2) / Math.sqrt(3), (youngsGPa * 1000) / (1 - poisson ** 2)];
  if (E / (2 * loaded) <= Y) return Infinity;
  let moment = 0;
  for (let i = 0; i < LAYERS; i++) {
    const y = ((i + 0.5) / LAYERS) * 0.5;
    moment += (2 * Math.min(Y, (E * y) / loaded) * y * 0.5) / LAYERS;
  }
  return 1 / (1 - (moment * loaded * 12) / E);
}

/** What the same plate has to be bent to, by halving. */
function bendFor(free: number, material: Material, times: number): number {
  let [tight, slack] = [0.01, free];
  for (let i = 0; i < 50; i++) {
    const middle = (tight + slack) / 2;
    if (middle * letGo(middle, material, times) > free) slack = middle;
    else tight = middle;
  }
  return (tight + slack) / 2;
}

/** Each pair of columns with a material that it is for. */
const pairs = (id: string) => {
  const { columns } = tableOf(id);
  return columns.slice(1).flatMap(({ group = "" }, i) => {
    const found = group.split(", ").map((name) => Object.values(materials).find((one) => one.name === name)!);
    return found.map((material) => ({ column: i + 1, material, times: i % 2 === 0 ? 1 : 1.4 }));
  });
};

it.each(["springback-bend-to", "springback-comes-to"])("%s has every material of the list, twice", (id) => {
  const named = pairs(id).map(({ material }) => material.name);
  expect(named.toSorted()).toEqual(
    Object.values(materials)
      .flatMap(({ name }) => [name, name])
      .toSorted(),
  );
  for (const { column, material, times } of pairs(id))
    expect(tableOf(id).columns[column]?.unit).toBe(`${(times * material.yieldMPa).toFixed(0)} MPa`);
});

it("every radius comes to what a plate of 8000 layers comes to, or is flat", () => {
  const { rows } = tableOf("springback-comes-to");
  let [flat, over] = [0, 0];
  for (const row of rows.slice(0, -1))
    for (const { column, material, times } of pairs("springback-comes-to")) {
      const value = letGo(Number(row[0]), material, times);
      const cell = row[column]!;
      if (value === Infinity) {
        flat += 1;
        expect(cell).toBe("flat");
      } else if (cell === "> 10") {
        over += 1;
        expect(value).toBeGreaterThan(10);
      } else {
        // The layers' moment is within 1/LAYERS² of itself, and the ratio within that times the ratio.
        const layers = value ** 2 / LAYERS ** 2;
        expect(Math.abs(Number(cell) - value), `${row[0]} ${material.name}`).toBeLessThanOrEqual(
          halfLast(cell) + layers,
        );
      }
    }
  expect(flat).toBeGreaterThan(20);
  expect(over).toBeGreaterThan(5);
});

it("the last row says from where on it is flat: half the stiffness over the yield", () => {
  const last = tableOf("springback-comes-to").rows.at(-1)!;
  for (const { column, material, times } of pairs("springback-comes-to")) {
    const from = Number(last[column]);
    expect(letGo(from + 1, material, times)).toBe(Infinity);
    expect(letGo(from - 1, material, times)).toBeLessThan(Infinity);
  }
});

it("every radius wanted is bent to what the same plate has to be bent to", () => {
  for (const row of tableOf("springback-bend-to").rows.filter((_, i) => i % 3 === 0))
    for (const { column, material, times } of pairs("springback-bend-to")) {
      const free = Number(row[0]);
      expect(
        off(row[column]!, bendFor(free, material, times) / free),
        `${free} ${material.name}`,
      ).toBeLessThanOrEqual(1.01);
    }
});

describe("the two tables are each other's way back", () => {
  it("computed beforehand in plane strain: yield 355, E 210 GPa, t 10, radius 500 comes to 679.0200822", () => {
    const { columns, rows } = tableOf("springback-comes-to");
    const at = columns.findIndex(({ group }) => group === "S355");
    expect(off(rows.find(([r]) => r === "50")![at]!, 679.0200822 / 500)).toBeLessThanOrEqual(1);
  });
});

import { describe, expect, it } from "vitest";
import { inchesOf, materials, tableOf } from "./all.ts";
import { off } from "./arithmetic.ts";

/** kg/m³ in a pound a cubic inch, from the definitions of the pound and the inch. */
const KG_M3 = 0.45359237 / 0.0254 ** 3;

describe.each([
  { id: "plate-mass-mm", entries: 2 },
  { id: "plate-mass-inch", entries: 3 },
])("$id", ({ id, entries }) => {
  const { rows, columns } = tableOf(id);

  it("has every material under its own density", () => {
    const groups = new Set(columns.flatMap(({ group }) => group ?? []));
    for (const { name, densityKgM3 } of Object.values(materials)) {
      const group = [...groups].find((one) => one.split(": ")[0]?.split(", ").includes(name));
      expect(group, name).toMatch(new RegExp(`: ${densityKgM3} kg/m³$`));
    }
  });

  it("every row comes out in cubic inches and in kilograms of a litre", () => {
    for (const row of rows) {
      const inches = entries === 3 ? inchesOf(row[0]!) : Number(row[0]) / 25.4;
      columns.forEach(({ group, unit }, i) => {
        if (group === undefined) return;
        const density = Number(/: (\d+) kg/.exec(group)?.[1]);
        // 144 in² a square foot; a square metre of 1 mm is a litre.
        const value = unit === "lb/ft²" ? (144 * inches * density) / KG_M3 : (inches * 25.4 * density) / 1000;
        expect(off(row[i]!, value), `${row[0]} ${group} ${unit}`).toBeLessThanOrEqual(1);
      });
    }
  });

  it("names each thickness in both units", () => {
    for (const row of rows) {
      const inches = entries === 3 ? inchesOf(row[0]!) : Number(row[0]) / 25.4;
      expect(off(row[1]!, inches)).toBeLessThanOrEqual(1);
      if (entries === 3) expect(off(row[2]!, inches * 25.4)).toBeLessThanOrEqual(1);
    }
  });
});

it("basic weight of stainless plate (list after the Korean and Japanese standards): 304 7.93, 316 7.98 kg for 1 mm and 1 m²", () => {
  const { rows, columns } = tableOf("plate-mass-mm");
  const row = rows.find(([mm]) => mm === "1")!;
  const cell = (name: string) => row[columns.findIndex(({ group }) => group?.startsWith(`${name}:`))];
  expect([cell("304"), cell("316")]).toEqual(["7.93", "7.98"]);
});

it("rounds an exact half up, as printed tables do: 3/8 in are 9.53 mm, 3/32 in 0.0938 in", () => {
  const { rows } = tableOf("plate-mass-inch");
  expect(rows.find(([first]) => first === "3/8")?.[2]).toBe("9.53");
  expect(rows.find(([first]) => first === "3/32")?.[1]).toBe("0.0938");
});

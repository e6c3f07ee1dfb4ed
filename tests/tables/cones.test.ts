import { describe, expect, it } from "vitest";
import { coneTable } from "../../src/tables/coneTable.ts";
import { ductCones } from "../../src/tables/cones.ts";
import { named, reportOf } from "../parts.ts";
import { inchesOf, tableOf } from "./all.ts";
import { off } from "./arithmetic.ts";

/** A cone by similar triangles and the law of cosines, without its half angle's sine. */
function byTriangles(D: number, d: number, h: number) {
  const slant = Math.sqrt(h * h + ((D - d) / 2) ** 2);
  const outer = (slant * D) / (D - d);
  const inner = outer - slant;
  const sector = (180 * D) / outer;
  const cos = Math.cos((sector * Math.PI) / 180);
  const chord = (radius: number) => Math.sqrt(2 * radius * radius * (1 - cos));
  return { slant, outer, inner, sector, outerChord: chord(outer), innerChord: chord(inner) };
}

/** EN 1506 as a duct maker's manual lists it: recommended diameters, then the additional ones. */
const EN_1506 = [63, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250, 150, 300, 355, 450];

describe.each(["cones-ducts", "cones-inch", "cones-pipes-mm", "cones-pipes-inch"])("%s", (id) => {
  const { rows, entries } = tableOf(id);
  const inch = id.endsWith("inch");

  it("every row comes out by triangles", () => {
    for (const row of rows) {
      const [D = 0, d = 0, h = 0] = row.slice(entries - 3, entries).map(Number);
      const cone = byTriangles(D, d, h);
      const wanted = [
        (Math.atan((D - d) / 2 / h) * 180) / Math.PI,
        cone.slant,
        cone.outer,
        cone.inner,
        cone.sector,
        cone.outerChord,
        cone.innerChord,
      ];
      const cells = row.slice(entries);
      const decimals = inch ? cells.filter((_, i) => ![2, 4, 6, 9, 11].includes(i)) : cells;
      wanted.forEach((value, i) =>
        expect(off(decimals[i]!, value), `${row.join(" ")}: ${value}`).toBeLessThanOrEqual(1),
      );
      if (inch)
        for (const at of [2, 4, 6, 9, 11])
          // The nearest sixteenth, or finer: no further off than half of one.
          expect(Math.abs(inchesOf(cells[at]!) - Number(cells[at - 1]))).toBeLessThanOrEqual(1 / 32 + 0.0005);
    }
  });

  it("the last column moves both radii to those of the cone whose faces are measured", () => {
    for (const row of rows) {
      const [D = 0, d = 0, h = 0] = row.slice(entries - 3, entries).map(Number);
      const middle = byTriangles(D, d, h);
      // A plate of 1 lies half on either side of its middle; level with the ends that half is 1/(2 cos α) wide.
      const across = middle.slant / h;
      const outside = byTriangles(D + across, d + across, h);
      expect(off(row.at(-1)!, outside.outer - middle.outer), row.join(" ")).toBeLessThanOrEqual(1);
      expect(off(row.at(-1)!, outside.inner - middle.inner)).toBeLessThanOrEqual(1);
      expect(outside.sector).toBeCloseTo(middle.sector, 9);
      expect(outside.slant).toBeCloseTo(middle.slant, 9);
    }
  });

  it("has cones that are worth a table: at most twice as large, no flatter than 30°, never as much as half a disc", () => {
    for (const row of rows) {
      const [D = 0, d = 0] = row.slice(entries - 3).map(Number);
      expect(D / d).toBeGreaterThanOrEqual((id.startsWith("cones-pipes") ? 1.08 : 1.25) - 1e-9);
      expect(D / d).toBeLessThanOrEqual(2 + 1e-9);
      expect(Number(row[entries])).toBeLessThanOrEqual(30);
    }
  });
});

it("takes its ducts from EN 1506", () => {
  const used = new Set(tableOf("cones-ducts").rows.flatMap(([D, d]) => [Number(D), Number(d)]));
  expect([...used].toSorted((a, b) => a - b)).toEqual(EN_1506.toSorted((a, b) => a - b));
});

it("names one pipe in millimetres and inches alike", () => {
  const sizes = (id: string) =>
    new Map(
      tableOf(id).rows.flatMap(([name = "", D, d]) => [
        [name.split(" × ")[0], Number(D)] as const,
        [name.split(" × ")[1], Number(d)] as const,
      ]),
    );
  const [mm, inches] = [sizes("cones-pipes-mm"), sizes("cones-pipes-inch")];
  expect(mm.size).toBe(14);
  // The standard rounds to a tenth of a millimetre.
  for (const [name, diameter] of mm)
    expect(Math.abs(diameter - inches.get(name)! * 25.4), name).toBeLessThanOrEqual(0.051);
});

it('published: ducts 5 and 8, 4 apart ("The Net of a Frustum", Geometry 2 – Drawings and Nets 6): 7.12, 11.39, 126.4°', () => {
  const order = {
    ...tableOrder(),
    sizes: [{ diameter: 5 }, { diameter: 8 }],
    heights: [4],
    leastRatio: 1.25,
    worked: { large: 8, small: 5, height: 4 },
  };
  const [row = []] = coneTable(order).rows;
  expect(off(row[5]!, 11.39)).toBeLessThanOrEqual(1);
  expect(off(row[6]!, 7.12)).toBeLessThanOrEqual(1);
  expect(off(row[7]!, 126.404438972)).toBeLessThanOrEqual(1);
  // Chords from the same check, computed: 20.337082 and 12.710676.
  expect(off(row[8]!, 20.337082)).toBeLessThanOrEqual(1);
  expect(off(row[9]!, 12.710676)).toBeLessThanOrEqual(1);
});

const tableOrder = () => {
  const { id, title, about, basis } = ductCones();
  return {
    ...{ id, title, about, basis, sizesAre: "-", units: "mm" as const },
    plate: { thickness: 1, face: "inside" as const },
  };
};

it("corrected for its thickness, a row is the blank of the same part", () => {
  const { rows, worked } = tableOf("cones-pipes-mm");
  const row = rows[worked.row]!.map(Number);
  const [D = 0, d = 0, h = 0] = row.slice(1);
  const { cone } = reportOf(
    named({
      shape: "right-cone",
      thickness: 6,
      largeEnd: { diameter: D, measured: "outside" },
      smallEnd: { diameter: d, measured: "outside" },
      height: h,
    }),
  );
  // The worked row's last step, and a tenth of a millimetre of two rounded numbers.
  const last = Number.parseFloat(worked.steps.at(-1)!.is);
  expect(Math.abs(cone!.outerRadiusMm! - last)).toBeLessThan(0.1);
  expect(cone!.sectorDeg).toBeCloseTo(row[8]!, 2);
});

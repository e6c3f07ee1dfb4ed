import { expect, it } from "vitest";
import fc from "fast-check";
import { plateToOrder } from "../../src/forming/plateToOrder.ts";
import type { Shop } from "../../src/forming/machine.ts";
import { hull } from "../../src/geometry/polygon.ts";
import { platesOf } from "../../src/job/plates.ts";
import { develop } from "../../src/report/develop.ts";
import { leftInWords } from "../../src/site/job/plateWords.ts";
import { even } from "../even.ts";
import { catalogue, named } from "../parts.ts";

const box = (lengthMm: number, widthMm: number) => ({ lengthMm, widthMm });

it("takes the longest and the widest, which need not be the largest", () => {
  // The second is the largest by area; the first alone is as long.
  const blanks = [[box(1100, 940)], [box(1080, 980)]];
  expect(plateToOrder(blanks, { edgeMm: 0, units: "mm" })).toEqual(box(1100, 980));
  expect(plateToOrder(blanks, { edgeMm: 10, units: "mm" })).toEqual(box(1120, 1000));
});

it("turns a blank where that spares plate for all", () => {
  const blanks = [[box(900, 300), box(700, 500)], [box(690, 480)]];
  expect(plateToOrder(blanks, { edgeMm: 0, units: "mm" })).toEqual(box(700, 500));
});

it("goes up to whole sizes, of 10 mm or of half an inch, and not over one for a hair", () => {
  expect(plateToOrder([[box(1450, 600)]], { edgeMm: 10, units: "mm" })).toEqual(box(1470, 620));
  expect(plateToOrder([[box(1450.001, 600.1)]], { edgeMm: 10, units: "mm" })).toEqual(box(1470, 630));
  expect(plateToOrder([[box(1450, 600)]], { edgeMm: 10, units: "in" })).toEqual(box(58 * 25.4, 24.5 * 25.4));
});

it("is no smaller than any blank wants, and no larger than all of them lying in their worst way", () => {
  const ways = fc.array(
    fc.tuple(even(1, 3000), even(1, 3000)).map(([a, b]) => box(Math.max(a, b), Math.min(a, b))),
    { minLength: 1, maxLength: 5 },
  );
  fc.assert(
    fc.property(fc.array(ways, { minLength: 1, maxLength: 5 }), even(0, 30), (blanks, edgeMm) => {
      const plate = plateToOrder(blanks, { edgeMm, units: "mm" });
      for (const one of blanks)
        expect(
          one.some(
            ({ lengthMm, widthMm }) =>
              lengthMm + 2 * edgeMm <= plate.lengthMm + 0.01 && widthMm + 2 * edgeMm <= plate.widthMm + 0.01,
          ),
        ).toBe(true);
      const all = blanks.flat();
      const most = (pick: "lengthMm" | "widthMm") =>
        Math.max(...all.map((one) => one[pick])) + 2 * edgeMm + 10;
      expect(plate.lengthMm * plate.widthMm).toBeLessThanOrEqual(most("lengthMm") * most("widthMm"));
    }),
    { seed: 7, numRuns: 200 },
  );
});

/** A cone with blanks of several sizes, in inches, for a shop in millimetres that has no such plate. */
const cone = (pieces: number) =>
  ({
    ...named({
      shape: "eccentric-cone",
      thickness: 4.7625,
      largeEnd: { diameter: 1066.8, measured: "inside" },
      smallEnd: { diameter: 520.7, measured: "inside", offset: [152.4, 0] },
      height: 812.8,
      pieces,
    }),
    units: "in",
  }) as const;
const shop = (units: "mm" | "in", edge?: number): Shop => ({
  name: "A shop",
  units,
  machines: [],
  stock: [{ material: "304", thickness: 3, length: 2000, width: 1000 }],
  ...(edge !== undefined && { cutting: { edge } }),
});

/** Does a hull, turned by tenths of a degree, go in a rectangle? Tried apart from what is tested. */
function goes(points: readonly (readonly [number, number])[], along: number, across: number): boolean {
  for (let tenth = 0; tenth < 1800; tenth++) {
    const [c, s] = [Math.cos((tenth * Math.PI) / 1800), Math.sin((tenth * Math.PI) / 1800)];
    const [xs, ys] = [points.map(([x, y]) => x * c - y * s), points.map(([x, y]) => x * s + y * c)];
    const spread = (all: number[]) => Math.max(...all) - Math.min(...all);
    if (spread(xs) <= along + 0.05 && spread(ys) <= across + 0.05) return true;
  }
  return false;
}

it.each([
  [2, "mm", undefined],
  [3, "in", undefined],
  [5, "mm", 15],
  [12, "in", 0],
] as const)(
  "says one size that takes any of %i blanks, on the part's sheet as on the job's page",
  (pieces, units, edge) => {
    const part = cone(pieces);
    const made = develop(part, { catalogue, shop: shop(units, edge) });
    if (made.kind === "refused") throw new Error(JSON.stringify(made.issues));
    const { report } = made;
    const { advice } = report.forming.checks.find(({ id }) => id === "stock-plate")!;
    const [, length = "", width = ""] =
      /at least ([\d.]+) × ([\d.]+) in, which takes any of/.exec(advice) ?? [];
    const edgeMm = edge ?? 10;
    for (const { outline } of report.blanks)
      expect(goes(hull(outline), Number(length) * 25.4 - 2 * edgeMm, Number(width) * 25.4 - 2 * edgeMm)).toBe(
        true,
      );
    const material = catalogue.materials[part.material]!;
    const job = { parts: [{ report, material, gauge: null }], shop: shop(units, edge) };
    const groups = platesOf(job, 0.01);
    const words = groups.flatMap((group) => group.laid.left.map((one) => leftInWords(group, one)));
    expect(words.length).toBeGreaterThan(0);
    for (const one of words) expect(one).toContain(`plate of at least ${length} × ${width}\u00a0in,`);
  },
);

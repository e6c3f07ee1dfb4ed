import { expect, it } from "vitest";
import { Shop } from "../../src/forming/machine.ts";
import { layPlates } from "../../src/nesting/layPlates.ts";
import type { Stock } from "../../src/nesting/model.ts";
import { cuttingOf } from "../../src/forming/cutting.ts";
import { type PlateGroup, platesOf } from "../../src/job/plates.ts";
import { effort } from "../../src/site/job/layJob.ts";
import { leftInWords, sizeOf } from "../../src/site/job/plateWords.ts";
import { itemOf, rectangle } from "../nesting/shapes.ts";
import { named, reportOf } from "../parts.ts";

const shop = (more: object) => Shop.parse({ name: "A shop", units: "mm", machines: [], ...more });

it("keeps blanks as far apart as the shop says, else by common practice", () => {
  expect(cuttingOf(undefined, 3)).toMatchObject({ spacingMm: 8, edgeMm: 10 });
  expect(cuttingOf(shop({}), 20)).toMatchObject({ spacingMm: 20, edgeMm: 10 });
  expect(cuttingOf(shop({}), 20).basis.spacing).toBe("common practice, no source");
  const own = cuttingOf(shop({ cutting: { spacing: 0, edge: 5 } }), 20);
  expect(own).toMatchObject({ spacingMm: 0, edgeMm: 5, basis: { spacing: "the shop file" } });
});

it("takes an effort from the surroundings, and says what is wrong with one that is none", () => {
  expect(effort(undefined)).toBe(1);
  expect(effort("20")).toBe(20);
  for (const none of ["", "0", "-1", "much", "101", "NaN"])
    expect(() => effort(none)).toThrow(/give a number/);
});

const leftOf = (stock: readonly Stock[]) => {
  const laid = layPlates([itemOf(rectangle(600, 1450), 2, "hood")], stock, {
    spacingMm: 8,
    edgeMm: 10,
    effort: 0.01,
    seed: 1,
  });
  const group: PlateGroup = {
    material: "S235",
    thicknessMm: 3,
    name: "S235, 3 mm",
    units: "mm",
    blanks: 2,
    cutting: cuttingOf(undefined, 3),
    stock,
    laid,
    plates: [],
    toOrder: new Map([["hood", { lengthMm: 1470, widthMm: 620, units: "mm" }]]),
  };
  return laid.left.map((one) => leftInWords(group, one));
};

it("says why a blank goes on no plate, with sizes and what to do", () => {
  expect(leftOf([])).toEqual([
    "hood, 2 blanks: the shop file lists no plate of S235, 3 mm; order S235, 3 mm plate of at least 1470 × 620\u00a0mm, and list it under stock.",
  ]);
  expect(leftOf([{ lengthMm: 1000, widthMm: 900, grain: false }])).toEqual([
    "hood, 2 blanks: too large for 1000 × 900\u00a0mm with 10\u00a0mm left along the edges, at any angle; order S235, 3 mm plate of at least 1470 × 620\u00a0mm, or split the part in more pieces.",
  ]);
  expect(leftOf([{ lengthMm: 2000, widthMm: 1000, grain: true }])).toEqual([
    "hood, 2 blanks: goes on 2000 × 1000\u00a0mm only if it is turned, which the grain of the plate forbids; order S235, 3 mm plate of at least 1470 × 620\u00a0mm without a grain, or split the part in more pieces.",
  ]);
});

it("tells a plate's size in both units where it is sold by the other, or a part on it is drawn in it", () => {
  const plate = (lengthMm: number, widthMm: number) => ({ lengthMm, widthMm });
  const bare = (units: "mm" | "in") => ({ units, plates: [] });
  const [foot, metric] = [plate(3048, 1524), plate(3000, 1500)];
  expect(sizeOf(bare("mm"), foot)).toBe("3048 × 1524\u00a0mm (120 × 60\u00a0in)");
  expect(sizeOf(bare("mm"), metric)).toBe("3000 × 1500\u00a0mm");
  expect(sizeOf(bare("in"), foot)).toBe("120 × 60\u00a0in");
  expect(sizeOf(bare("in"), metric)).toBe("118.11 × 59.055\u00a0in (3000 × 1500\u00a0mm)");
  const cone = {
    shape: "right-cone",
    thickness: 3,
    largeEnd: { diameter: 605, measured: "outside" },
    smallEnd: { diameter: 305, measured: "outside" },
    height: 200,
  } as const;
  const plates = (units: "mm" | "in") => {
    const report = reportOf({ ...named(cone), units });
    return platesOf(
      {
        shop: shop({ stock: [{ material: "s235", thickness: 3, length: 3000, width: 1500 }] }),
        parts: [{ report, material: { name: "S235" }, gauge: null }],
      },
      0.01,
    )[0]!;
  };
  expect(sizeOf(plates("in"), metric)).toBe("3000 × 1500\u00a0mm (118.11 × 59.055\u00a0in)");
  expect(sizeOf(plates("mm"), metric)).toBe("3000 × 1500\u00a0mm");
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { LAY_TOUCH_MM } from "../../src/geometry/tolerance.ts";
import type { Vec2 } from "../../src/geometry/vector.ts";
import { enclose } from "../../src/nesting/enclose.ts";
import { layPlates } from "../../src/nesting/layPlates.ts";
import type { LaidPlates, LayItem, LayOptions, Stock } from "../../src/nesting/model.ts";
import { contourOf, cutPatterns } from "../../src/output/contour.ts";
import { anyPart, runs } from "../arbitraries.ts";
import { even } from "../even.ts";
import { reportOf } from "../parts.ts";
import { beyond, distanceApart, placed, sharedArea } from "./judge.ts";
import { itemOf, items, rectangle } from "./shapes.ts";

const stockOf = (lengthMm: number, widthMm: number, grain = false): Stock => ({ lengthMm, widthMm, grain });
const options = (more: Partial<LayOptions> = {}): LayOptions => ({
  spacingMm: 0,
  edgeMm: 0,
  effort: 0.02,
  seed: 1,
  ...more,
});
const count = ({ plates }: LaidPlates) => plates.reduce((sum, plate) => sum + plate.count, 0);

/** Every item placed as often as it is wanted, or left. */
function expectAllThere(laid: LaidPlates, wanted: readonly LayItem[]): void {
  for (const { part, piece, count: want } of wanted) {
    const on = laid.plates.reduce(
      (sum, plate) =>
        sum + plate.count * plate.placings.filter((one) => one.part === part && one.piece === piece).length,
      0,
    );
    const left = laid.left
      .filter((one) => one.part === part && one.piece === piece)
      .reduce((sum, one) => sum + one.count, 0);
    expect([on, left]).toEqual(left > 0 ? [0, want] : [want, 0]);
  }
}

/** Nothing overlaps or comes too near, and nothing leaves the plate, by outlines that the test itself puts in place. */
function expectApart(
  laid: LaidPlates,
  outlineOf: (part: string, piece: number) => readonly Vec2[],
  { spacingMm, edgeMm, slack }: { spacingMm: number; edgeMm: number; slack: number },
): void {
  for (const { stock, placings } of laid.plates) {
    const shapes = placings.map(({ part, piece, rotationDeg, at }) =>
      placed(outlineOf(part, piece), rotationDeg, at),
    );
    const room = {
      left: edgeMm,
      low: edgeMm,
      right: stock.lengthMm - edgeMm,
      top: stock.widthMm - edgeMm,
    };
    for (const [i, shape] of shapes.entries()) {
      expect(beyond(shape, room)).toBeLessThanOrEqual(slack);
      for (const other of shapes.slice(i + 1)) {
        expect(distanceApart(shape, other, spacingMm + 1)).toBeGreaterThanOrEqual(spacingMm - slack);
        // Shapes that touch share a sliver of their common edge, as thin as the slack.
        expect(sharedArea(shape, other)).toBeLessThanOrEqual(slack * 4000);
      }
    }
  }
}

const stocks = fc.array(
  fc
    .record({ long: even(600, 4000), share: even(0.4, 1), grain: even(0, 1) })
    .map(({ long, share, grain }) => ({
      lengthMm: long,
      widthMm: long * share,
      grain: grain < 0.15,
    })),
  { minLength: 1, maxLength: 3 },
);

describe("plain shapes of any form", () => {
  it("keep apart, stay within the margins, and are all there", () => {
    fc.assert(
      fc.property(
        items,
        stocks,
        fc.constantFrom(0, 3, 12),
        fc.constantFrom(0, 10),
        (wanted, stock, spacingMm, edgeMm) => {
          const laid = layPlates(wanted, stock, options({ spacingMm, edgeMm }));
          expectAllThere(laid, wanted);
          expectApart(laid, (part) => wanted.find((one) => one.part === part)!.outline, {
            spacingMm,
            edgeMm,
            slack: LAY_TOUCH_MM + 1e-6,
          });
        },
      ),
      runs(120),
    );
  });

  it("need no more plates than their rectangles, nor fewer than their area", () => {
    fc.assert(
      fc.property(
        items,
        stocks.map((all) => all.slice(0, 1)),
        (wanted, stock) => {
          const laid = layPlates(wanted, stock, options({ spacingMm: 5, edgeMm: 5 }));
          expect(count(laid)).toBeLessThanOrEqual(laid.bounds.rectanglePlates);
          expect(count(laid)).toBeGreaterThanOrEqual(laid.bounds.areaPlates);
          expect(laid.utilisation).toBeGreaterThanOrEqual(laid.bounds.rectangleUtilisation);
          expect(laid.usedShare).toBeGreaterThanOrEqual(laid.bounds.rectangleUsedShare - 1e-12);
          expect(laid.utilisation).toBeLessThanOrEqual(1);
        },
      ),
      runs(120),
    );
  });

  it("lie the same every time, and by the seed and the effort alone", () => {
    fc.assert(
      fc.property(items, stocks, (wanted, stock) => {
        const once = layPlates(wanted, stock, options({ spacingMm: 5, seed: 3 }));
        expect(layPlates(wanted, stock, options({ spacingMm: 5, seed: 3 }))).toEqual(once);
      }),
      runs(20),
    );
  });

  it("lie no worse the longer it is searched", () => {
    fc.assert(
      fc.property(
        items,
        stocks.map((all) => all.slice(0, 1)),
        (wanted, stock) => {
          const [little, much] = [0.01, 0.1].map((effort) =>
            layPlates(wanted, stock, options({ spacingMm: 5, effort })),
          );
          expect(much!.usedShare).toBeGreaterThanOrEqual(little!.usedShare - 1e-12);
        },
      ),
      runs(20),
    );
  });

  it("leave a free rectangle that nothing touches, spacing and margins included", () => {
    fc.assert(
      fc.property(items, stocks, (wanted, stock) => {
        const laid = layPlates(wanted, stock, options({ spacingMm: 8, edgeMm: 10 }));
        for (const { stock: plate, placings, free } of laid.plates) {
          if (!free) continue;
          const rest = rectangle(free.xMm, free.yMm).map(([x, y]): Vec2 => [x + free.at[0], y + free.at[1]]);
          expect(
            beyond(rest, { left: 10, low: 10, right: plate.lengthMm - 10, top: plate.widthMm - 10 }),
          ).toBeLessThan(1e-6);
          for (const { outline } of placings) {
            expect(sharedArea(rest, outline)).toBeLessThan(1e-6);
            expect(distanceApart(rest, outline, 20)).toBeGreaterThan(8 - 1e-6);
          }
        }
      }),
      runs(40),
    );
  });
});

describe("blanks of parts", () => {
  it("keep the true distance along their true arcs, for any part", () => {
    fc.assert(
      fc.property(
        fc.array(anyPart, { minLength: 1, maxLength: 3 }),
        fc.constantFrom(0, 6),
        (parts, spacingMm) => {
          const blanks = parts.flatMap((part, i) =>
            cutPatterns(reportOf({ ...part, name: `part-${i}` })).map(({ blank }) => ({
              part: `part-${i}`,
              blank,
            })),
          );
          const wanted = blanks.map(({ part, blank }): LayItem => ({
            part,
            piece: blank.piece,
            count: 2,
            areaMm2: blank.areaMm2,
            outline: enclose(contourOf(blank)),
          }));
          const largest = Math.max(...blanks.map(({ blank }) => blank.box.lengthMm));
          const stock = [stockOf(1.6 * largest, 1.2 * largest)];
          const laid = layPlates(wanted, stock, options({ spacingMm, edgeMm: spacingMm }));
          expect(laid.left).toEqual([]);
          expectAllThere(laid, wanted);
          // The guard of the enclosing outline is more than what the grid may take: no slack but rounding.
          expectApart(
            laid,
            (name, piece) =>
              blanks.find(({ part, blank }) => part === name && blank.piece === piece)!.blank.outline,
            { spacingMm, edgeMm: spacingMm, slack: 1e-6 },
          );
        },
      ),
      runs(25),
    );
  });
});

describe("known answers", () => {
  it("four squares fill a plate of two by two, without spacing", () => {
    const laid = layPlates([itemOf(rectangle(100, 100), 4)], [stockOf(200, 200)], options());
    expect(count(laid)).toBe(1);
    expect(laid.utilisation).toBe(1);
    expect(laid.plates[0]!.free).toBeNull();
  });

  it("with a spacing they need a plate that is larger by just that", () => {
    const squares = [itemOf(rectangle(100, 100), 4)];
    expect(count(layPlates(squares, [stockOf(208, 208)], options({ spacingMm: 8 })))).toBe(1);
    expect(count(layPlates(squares, [stockOf(207.9, 208)], options({ spacingMm: 8 })))).toBe(2);
    expect(count(layPlates(squares, [stockOf(228, 228)], options({ spacingMm: 8, edgeMm: 10 })))).toBe(1);
    expect(count(layPlates(squares, [stockOf(227.9, 228)], options({ spacingMm: 8, edgeMm: 10 })))).toBe(2);
  });

  it("two right-angled triangles fill a rectangle; their rectangles would need two", () => {
    const triangle: Vec2[] = [
      [0, 0],
      [300, 0],
      [0, 200],
    ];
    const laid = layPlates([itemOf(triangle, 2)], [stockOf(300, 200)], options());
    expect(count(laid)).toBe(1);
    expect(laid.utilisation).toBe(1);
    expect(laid.bounds.rectanglePlates).toBe(2);
    expect(laid.bounds.areaPlates).toBe(1);
  });

  it("a small blank lies in the hollow of a large one", () => {
    const hood: Vec2[] = [
      [0, 0],
      [300, 0],
      [300, 200],
      [200, 200],
      [200, 100],
      [100, 100],
      [100, 200],
      [0, 200],
    ];
    const laid = layPlates(
      [itemOf(hood, 1, "hood"), itemOf(rectangle(89, 90), 1, "plug")],
      [stockOf(300, 200)],
      options({ spacingMm: 5 }),
    );
    expect(count(laid)).toBe(1);
  });

  it("a blank longer than the plate lies across its corners; one that fits nowhere is left, with what it needs", () => {
    const bar = itemOf(rectangle(1150, 60), 1, "bar");
    const laid = layPlates(
      [bar, itemOf(rectangle(1400, 60), 3, "rail")],
      [stockOf(1000, 800)],
      options({ edgeMm: 5 }),
    );
    expect(count(laid)).toBe(1);
    expect(laid.left).toEqual([{ part: "rail", piece: 1, count: 3, needsMm: [1410, 70], grainOnly: false }]);
  });

  it("with a grain nothing is turned but by half, and what the grain alone forbids is told as such", () => {
    const wanted = [itemOf(rectangle(80, 300), 4, "upright"), itemOf(rectangle(80, 600), 1, "long")];
    const laid = layPlates(wanted, [stockOf(1000, 400, true)], options());
    expect(
      laid.plates.flatMap(({ placings }) => placings.map(({ rotationDeg }) => rotationDeg % 180)),
    ).toEqual([0, 0, 0, 0]);
    expect(laid.left).toMatchObject([{ part: "long", grainOnly: true }]);
  });

  it("takes the size of which least is used, and a smaller one for what is left over", () => {
    const [small, large] = [stockOf(1000, 500), stockOf(2000, 1000)];
    const one = layPlates([itemOf(rectangle(900, 400), 1)], [large, small], options());
    expect(one.plates.map(({ stock }) => stock)).toEqual([small]);
    const five = layPlates([itemOf(rectangle(1000, 500), 5)], [small, large], options());
    expect(five.utilisation).toBe(1);
    const both = layPlates(
      [itemOf(rectangle(1900, 900), 1, "large"), itemOf(rectangle(900, 400), 1, "small")],
      [small, large],
      options(),
    );
    expect(both.plates.map(({ stock }) => stock.lengthMm).toSorted()).toEqual([1000, 2000]);
  });

  it("tells plates that are laid alike once, however many there are", () => {
    const laid = layPlates(
      [itemOf(rectangle(490, 490), 4003)],
      [stockOf(1000, 1000)],
      options({ spacingMm: 10, edgeMm: 5 }),
    );
    expect(laid.plates.map((plate) => [plate.count, plate.placings.length])).toEqual([
      [1000, 4],
      [1, 3],
    ]);
  });

  it.each([
    [490, 490, 18],
    [490, 735, 12],
    [1000, 350, 8],
    [740, 480, 12],
    [700, 300, 18],
  ])("blanks of %i × %i go %i at least on a plate of 3000 × 1500, as in rows and columns", (x, y, least) => {
    const laid = layPlates(
      [itemOf(rectangle(x, y), least)],
      [stockOf(3000, 1500)],
      options({ spacingMm: 10, edgeMm: 5 }),
    );
    expect(laid.plates.map((plate) => [plate.count, plate.placings.length])).toEqual([[1, least]]);
  });

  it("without stock everything is left", () => {
    const laid = layPlates([itemOf(rectangle(100, 50), 2)], [], options());
    expect(laid.plates).toEqual([]);
    expect(laid.left).toHaveLength(1);
    expect(laid.utilisation).toBe(0);
  });
});

import fc from "fast-check";
import polygonClipping from "polygon-clipping";
import { describe, expect, it } from "vitest";
import { polygonArea } from "../../src/geometry/polygon.ts";
import { cross2, cross3, distance2, dot2, dot3, sub2, sub3 } from "../../src/geometry/vector.ts";
import type { NamedPart } from "../../src/report/lay.ts";
import type { Blank, Report } from "../../src/report/report.ts";
import { anyPart, eccentricCone, rightCone, runs, squareToRound } from "../arbitraries.ts";
import { named, reportOf } from "../parts.ts";

/** Every number anywhere in a report. */
function numbersIn(tree: unknown, path = ""): [string, number][] {
  if (typeof tree === "number") return [[path, tree]];
  if (tree === null || typeof tree !== "object") return [];
  return Object.entries(tree).flatMap(([key, value]) => numbersIn(value, `${path}.${key}`));
}

const every = (check: (report: Report, part: NamedPart) => void, arbitrary = anyPart, count = 120) =>
  fc.assert(
    fc.property(arbitrary, (part) => check(reportOf(part), part)),
    runs(count),
  );

/** Numbers leave the core rounded to a millionth. */
const SIX_DECIMALS = 1e-6;

/**
 * Number of simple rings that another library's sweep breaks an outline into: one, unless it crosses itself.
 */
const simpleRings = (outline: readonly (readonly [number, number])[]): number =>
  polygonClipping.union([outline.map(([x, y]): [number, number] => [x, y])]).flat().length;

const edge = (blank: Blank, name: string) => blank.edges.find((one) => one.name === name)!;
const withoutSeam = (part: NamedPart): NamedPart => ({ ...part, seam: {} });

describe("every part in the allowed range", () => {
  it("is judged by a sweep that does see a crossing", () => {
    const bow = [[0, 0], [2, 2], [2, 0], [0, 2]] as const; // prettier-ignore
    expect(simpleRings(bow)).toBe(2);
  });

  it("has only finite numbers, and its errors stay within what is promised", () => {
    every((report) => {
      for (const [path, value] of numbersIn(report)) expect(Number.isFinite(value), path).toBe(true);
      expect(report.accuracy.outlineMm).toBeLessThanOrEqual(0.01);
      expect(report.accuracy.areaRel).toBeLessThan(1e-4);
      expect(report.accuracy.closureMm).toBeLessThan(0.001);
    });
  });

  it("has outlines that run counter-clockwise, touch both axes and never cross themselves (another library's sweep)", () => {
    every(
      (report) => {
        for (const { outline, areaMm2 } of report.blanks) {
          expect(polygonArea(outline)).toBeGreaterThan(0);
          expect(polygonArea(outline) / areaMm2).toBeCloseTo(1, 3);
          expect(Math.min(...outline.map(([x]) => x))).toBeCloseTo(0, 6);
          expect(Math.min(...outline.map(([, y]) => y))).toBeCloseTo(0, 6);
          expect(simpleRings(outline)).toBe(1);
        }
      },
      anyPart,
      80,
    );
  });

  it("has edges that begin where they are said to, in the order promised", () => {
    every(({ blanks }) => {
      for (const { edges, outline, faceUp } of blanks) {
        const names = edges.map(({ name }) => name);
        expect(names.indexOf("seam 1")).toBe(faceUp === "inside" ? 0 : names.length - 1);
        edges.forEach(({ start, lengthMm }, i) => {
          const next = edges[i + 1]?.start ?? outline.length;
          let along = 0;
          for (let at = start; at < next; at++)
            along += distance2(outline[at]!, outline[(at + 1) % outline.length]!);
          expect(Math.abs(along - lengthMm)).toBeLessThan(0.01 + 1e-4 * lengthMm);
        });
      }
    });
  });

  it("has pieces that meet: seam 2 of each is as long as seam 1 of the next, and together they are the skin", () => {
    every((_, part) => {
      const plain = reportOf(withoutSeam(part));
      plain.blanks.forEach((blank, i) => {
        const next = plain.blanks[(i + 1) % plain.blanks.length]!;
        expect(Math.abs(edge(blank, "seam 2").lengthMm - edge(next, "seam 1").lengthMm)).toBeLessThan(0.01);
      });
      const area = plain.blanks.reduce((sum, { areaMm2 }) => sum + areaMm2, 0);
      expect(Math.abs(area - plain.shape.areaMm2)).toBeLessThan(SIX_DECIMALS * 13 + 1e-10 * area);
    });
  });

  it("fits the box that is said to hold it, and no direction has a narrower one", () => {
    every(({ blanks }) => {
      const { outline, box } = blanks[0]!;
      for (let deg = 0; deg < 180; deg += 3) {
        const u = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)] as const;
        const along = outline.map((p) => dot2(p, u));
        const across = outline.map((p) => cross2(u, p));
        const area = (Math.max(...along) - Math.min(...along)) * (Math.max(...across) - Math.min(...across));
        expect(area).toBeGreaterThan(
          (box.lengthMm - SIX_DECIMALS) * (box.widthMm - SIX_DECIMALS) * (1 - 1e-9),
        );
      }
      expect((box.lengthMm + SIX_DECIMALS) * (box.widthMm + SIX_DECIMALS)).toBeGreaterThan(
        polygonArea(outline),
      );
    });
  });

  it("says the box of the drawing as it lies, and how far it is turned for the smallest one", () => {
    every(({ blanks }) => {
      const { outline, box, asDrawn } = blanks[0]!;
      expect(Math.max(...outline.map(([x]) => x))).toBeCloseTo(asDrawn.xMm, 5);
      expect(Math.max(...outline.map(([, y]) => y))).toBeCloseTo(asDrawn.yMm, 5);
      const turn = (box.turnDeg * Math.PI) / 180;
      const u = [Math.cos(turn), -Math.sin(turn)] as const; // level once the pattern is turned
      const along = outline.map((p) => dot2(p, u));
      expect(Math.abs(Math.max(...along) - Math.min(...along) - box.lengthMm)).toBeLessThan(1e-3);
    });
  });

  it("is mirrored on request: the same outline with x turned about", () => {
    every(
      (report, part) => {
        const other = reportOf({ ...part, mirror: !part.mirror });
        report.blanks.forEach((blank, i) => {
          const twin = other.blanks[i]!;
          const width = Math.max(...blank.outline.map(([x]) => x));
          const turned = blank.outline.map(([x, y]) => [width - x, y] as const);
          for (const p of turned.filter((_, k) => k % 40 === 0))
            expect(Math.min(...twin.outline.map((q) => distance2(p, q)))).toBeLessThan(1e-4);
          expect(twin.faceUp).not.toBe(blank.faceUp);
        });
      },
      anyPart,
      60,
    );
  });
});

/**
 * Folds a pattern in the mind: the strip between two lines, seen from the inside, must be the strip between the same
 * elements in space, seen from the inside: triangle by triangle congruent and of the same hand.
 */
function foldsBack(report: Report): void {
  const rows = report.hand.rows;
  const { elements } = report.solid;
  expect(rows).toHaveLength(elements.length);
  const hand = report.blanks[0]!.faceUp === "inside" ? 1 : -1;
  rows.forEach((row, i) => {
    const here = elements[i]!;
    const [next, nextRow] = [elements[i + 1], rows[i + 1]];
    expect(row.planDeg).toBeCloseTo(here.planDeg, 6);
    expect(distance2(row.a, row.b)).toBeCloseTo(Math.hypot(...sub3(here.b, here.a)), 2);
    if (!next || !nextRow || row.next === null) return;
    const flat =
      cross2(sub2(row.b, row.a), sub2(nextRow.b, row.a)) + cross2(sub2(row.b, row.a), sub2(nextRow.a, row.a));
    const along = sub3(here.b, here.a);
    const space = [next.a, next.b].map((p) => cross3(along, sub3(p, here.a)));
    const outward = [
      Math.cos((here.planDeg * Math.PI) / 180),
      Math.sin((here.planDeg * Math.PI) / 180),
      0,
    ] as const;
    const seenFromInside = -(dot3(space[0]!, outward) + dot3(space[1]!, outward));
    expect(Math.sign(flat) * hand).toBe(Math.sign(seenFromInside));
  });
}

describe("folding the pattern back", () => {
  it.each([
    ["right cones", rightCone],
    ["eccentric cones", eccentricCone],
    ["square-to-rounds", squareToRound],
  ] as const)("gives %s as drawn, not their mirror images", (_, arbitrary) => {
    every(foldsBack, arbitrary, 60);
  });

  it("puts the elements where the drawing has them: computed here from the drawing alone", () => {
    const report = reportOf({
      name: "offset",
      title: "Offset both ways",
      units: "mm",
      material: "s235",
      shape: "eccentric-cone",
      thickness: 1,
      largeEnd: { diameter: 800, measured: "middle" },
      smallEnd: { diameter: 300, measured: "middle", offset: [120, 70] },
      height: 500,
      seam: { at: 0 },
    });
    for (const { planDeg, a, b } of report.solid.elements) {
      const [c, s] = [Math.cos((planDeg * Math.PI) / 180), Math.sin((planDeg * Math.PI) / 180)];
      [400 * c, 400 * s, 0].forEach((value, i) => expect(a[i]).toBeCloseTo(value, 4));
      [120 + 150 * c, 70 + 150 * s, 500].forEach((value, i) => expect(b[i]).toBeCloseTo(value, 4));
    }
    // Inside face up, end B up the sheet: going round counter-clockwise in plan is going left on the sheet.
    const [first, second] = report.hand.rows;
    expect(first!.planDeg).toBe(0);
    expect(second!.planDeg).toBe(30);
    expect(second!.a[0]).toBeLessThan(first!.a[0]);
    // Offset towards +x and +y: the shortest element lies between 0° and 90°, near the right edge of the sheet.
    const shortest = report.hand.rows.reduce((least, row) => (row.trueMm < least.trueMm ? row : least));
    expect(shortest.planDeg).toBe(30);
  });
});

describe("bend lines", () => {
  it("stand in the marking table with the half zones along the seams, and sum to the whole turning", () => {
    every(({ shape, hand }) => {
      const sum = hand.rows.reduce((total, { bendDeg }) => total + bendDeg, 0);
      expect(Math.abs(sum - shape.turningDeg)).toBeLessThan(SIX_DECIMALS * (hand.rows.length + 1));
    });
  });

  it("of each corner of a square-to-round sum to that corner's turning, and all to the whole", () => {
    every(
      (report) => {
        const sum = report.blanks
          .flatMap(({ lines }) => lines)
          .reduce((total, { bendDeg }) => total + bendDeg, 0);
        expect(sum).toBeCloseTo(report.shape.turningDeg, 4);
      },
      squareToRound.map((part) => ({ ...part, seam: {} })),
    );
  });
});

describe("edges cut square to the plate", () => {
  it("lack (t/2) tan β of the end plane: 3.46 mm at 12 mm and 30°, as much all round a right cone", () => {
    const part = (edges: "level" | "square") =>
      reportOf(
        named({
          shape: "right-cone",
          thickness: 12,
          largeEnd: { diameter: 900, measured: "middle" },
          smallEnd: { diameter: 400, measured: "middle" },
          halfAngle: 30,
          edges,
        }),
      );
    const loss = part("level").shape.edgeLossMm;
    expect(loss.least).toBeCloseTo(6 * Math.tan(Math.PI / 6), 5);
    expect(loss.greatest).toBeCloseTo(loss.least, 5);
    expect(part("square").shape.edgeLossMm).toEqual({ least: 0, greatest: 0 });
  });

  it("lack nothing where an oblique pipe's wall is upright", () => {
    const end = { diameter: 500, measured: "middle" } as const;
    const { shape } = reportOf(
      named({
        shape: "eccentric-cone",
        thickness: 10,
        largeEnd: end,
        smallEnd: { ...end, offset: [300, 0] },
        height: 600,
      }),
    );
    expect(shape.edgeLossMm.least).toBe(0);
    expect(shape.edgeLossMm.greatest).toBeCloseTo(2.5, 6);
  });
});

it("a marking table whose dividers land on its own x and y", () => {
  every(({ hand }) => {
    hand.rows.forEach(({ a, b, next }, i) => {
      const following = hand.rows[i + 1];
      if (!next || !following) return;
      expect(next.flat.aMm).toBeCloseTo(distance2(a, following.a), 4);
      expect(next.flat.bMm).toBeCloseTo(distance2(b, following.b), 4);
      expect(next.flat.diagonalMm).toBeCloseTo(distance2(a, following.b), 4);
    });
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { distance2, type Vec2 } from "../../src/geometry/vector.ts";
import { cutPatterns } from "../../src/output/contour.ts";
import { fullSizePdf, MOST_SHEETS } from "../../src/output/pdf/fullSize.ts";
import { type Share, sharesOf, uprightDeg } from "../../src/output/pdf/share.ts";
import { tilePaper } from "../../src/output/pdf/tilePaper.ts";
import type { Blank, Report } from "../../src/report/report.ts";
import type { Part } from "../../src/shapes/part.ts";
import { anyPart, runs } from "../arbitraries.ts";
import { even } from "../even.ts";
import { named, reportOf } from "../parts.ts";
import { glued, JOIN_MM, toOutline } from "./glue.ts";
import { readPdf } from "./readPdf.ts";
import { fonts } from "./fonts.ts";

const date = "D:20260131120000+00'00'";
/** As near as a half comes to the other, and as a share's image to the pattern. [mm] */
const ALIKE_MM = 0.03;

const seamOf = (more: object) => more as Pick<Part, "seam">;
const cone = (more: object = {}) =>
  reportOf(
    named({
      shape: "right-cone",
      thickness: 4,
      largeEnd: { diameter: 605, measured: "outside" },
      smallEnd: { diameter: 305, measured: "outside" },
      height: 200,
      ...seamOf(more),
    }),
  );
const oblique = (more: object = {}) =>
  reportOf(
    named({
      shape: "eccentric-cone",
      thickness: 3,
      largeEnd: { diameter: 400, measured: "inside" },
      smallEnd: { diameter: 200, measured: "inside", offset: [60, 0] },
      height: 300,
      ...seamOf(more),
    }),
  );
const square = (more: object = {}) =>
  reportOf(
    named({
      shape: "square-to-round",
      thickness: 2,
      rectangularEnd: { length: 300, width: 240, measured: "inside" },
      roundEnd: { diameter: 250, measured: "inside" },
      height: 200,
      ...seamOf(more),
    }),
  );
const kinds = (report: Report) => sharesOf(report, report.blanks[0]!).map(({ kind }) => kind);
const shareIn = (report: Report, kind: Share["kind"]) =>
  sharesOf(report, report.blanks[0]!).find((one) => one.kind === kind)!;

const outlineOf = ({ edges }: Share): Vec2[] => edges.flatMap(({ points }) => points.slice(0, -1));
/** Shoelace formula. */
const areaOf = (points: readonly Vec2[]): number =>
  points.reduce((sum, [x, y], i) => {
    const [u, v] = points[(i + 1) % points.length]!;
    return sum + (x * v - u * y) / 2;
  }, 0);

/** The shares in their places make the pattern: no point of either lies off the other, and no plate is missing or twice. */
function makesWhole(share: Share, blank: Blank): void {
  const { outline } = blank;
  const images = share.places.map((place) => outlineOf(share).map(place));
  const ends = share.edges
    .filter(({ name }) => name.endsWith("end"))
    .flatMap(({ points }) => points.filter((_, i) => i % 7 === 0));
  for (const place of share.places)
    for (const p of ends) {
      const off = toOutline(place(p), outline);
      // At a joint the share goes on as far as the joint has taken plate away.
      if (!share.seam) expect(off).toBeLessThan(ALIKE_MM);
    }
  for (const p of outline.filter((_, i) => i % 11 === 0)) {
    const nearest = Math.min(...images.map((image) => toOutline(p, image)));
    const onSeam = share.seam && nearest > ALIKE_MM;
    if (!onSeam) expect(nearest).toBeLessThan(ALIKE_MM);
    else {
      // Then it lies on the dashed line, turned over into the outermost shares.
      const [from, to] = share.seam;
      const off = Math.min(...share.places.map((place) => toOutline(p, [place(from), place(to)])));
      expect(off).toBeLessThan(ALIKE_MM);
    }
  }
  const strips = share.seam ? stripArea(share) : 0;
  const sum = share.places.length * areaOf(outlineOf(share)) - 2 * strips;
  expect(Math.abs(sum - areaOf(outline))).toBeLessThan(ALIKE_MM * blank.cutLengthMm);
}

/** Between the edge that is the middle of the pattern, and the line where the seam's image lies. */
function stripArea({ seam, edges }: Share): number {
  const [top, bottom] = edges.at(-1)!.points as [Vec2, Vec2];
  return Math.abs(areaOf([bottom, seam![0], seam![1], top]));
}

describe("which patterns have a half or a quarter", () => {
  it("is told by their symmetry, and by where the seam lies", () => {
    expect(kinds(cone())).toEqual(["half", "quarter"]);
    expect(kinds(cone({ seam: { at: 77, joint: "butt", gap: 3 } }))).toEqual(["half", "quarter"]);
    expect(kinds(oblique({ seam: { at: 0 } }))).toEqual(["half"]);
    expect(kinds(oblique({ seam: { at: 180 } }))).toEqual(["half"]);
    expect(kinds(oblique({ seam: { at: 90 } }))).toEqual([]);
    expect(kinds(oblique({ seam: { at: 1 } }))).toEqual([]);
    expect(kinds(square({ seam: { at: 90 } }))).toEqual(["half", "quarter"]);
    expect(kinds(square({ seam: { at: 30 } }))).toEqual([]);
  });
  it("is a half alone where a gap takes the tip off a point", () => {
    const pointed = (gap: number) =>
      cone({ smallEnd: { diameter: 0, measured: "outside" }, seam: { at: 0, joint: "butt", gap } });
    expect(kinds(pointed(0))).toEqual(["half", "quarter"]);
    expect(kinds(pointed(3))).toEqual(["half"]);
  });
  it("is none where a lap lies on one side alone", () => {
    expect(kinds(cone({ seam: { at: 0, joint: "lap", lap: 20 } }))).toEqual([]);
  });
});

it("shares of any part, laid as they are said to lie, make its pattern", () => {
  let seen = 0;
  fc.assert(
    fc.property(anyPart, (part) => {
      const report = reportOf(part);
      for (const { blank } of cutPatterns(report))
        for (const share of sharesOf(report, blank)) {
          makesWhole(share, blank);
          seen++;
        }
    }),
    runs(60),
  );
  expect(seen).toBeGreaterThan(20);
});

it("every right cone of one piece has a quarter, whatever its gap", () => {
  const cones = fc.record({
    small: even(0, 900),
    more: even(40, 900),
    height: even(60, 1200),
    gap: even(0, 6),
  });
  fc.assert(
    fc.property(cones, ({ small, more, height, gap }) => {
      const report = reportOf(
        named({
          shape: "right-cone",
          thickness: 3,
          largeEnd: { diameter: small + more, measured: "middle" },
          smallEnd: { diameter: small < 60 ? 0 : small, measured: "middle" },
          height,
          // A gap shortens the tip of a point, and only there: see below.
          seam: { at: 0, joint: "butt", gap: small < 60 ? 0 : gap },
        }),
      );
      const [blank] = report.blanks;
      expect(kinds(report)).toEqual(["half", "quarter"]);
      for (const share of sharesOf(report, blank!)) makesWhole(share, blank!);
    }),
    runs(40),
  );
});

function written(report: Report, share: Share): Uint8Array {
  const [{ blank, count } = { blank: undefined, count: 0 }] = cutPatterns(report);
  const done = fullSizePdf(report, blank!, { paper: tilePaper("a4"), fonts, date, count, share });
  if (done.kind === "refused") throw new Error(done.problem);
  return done.bytes;
}

describe("the share on paper, read by another library, glued and turned over", () => {
  it.each([
    ["a quarter of a cone", cone, "quarter", {}],
    ["a quarter of a cone with a gap", cone, "quarter", { seam: { at: 0, joint: "butt", gap: 4 } }],
    ["half an eccentric cone", oblique, "half", { seam: { at: 180 } }],
    ["a quarter of a square-to-round", square, "quarter", { seam: { at: 90 } }],
  ] as const)("%s comes back to the outline of the whole", async (_, of, kind, more) => {
    const report = of(more);
    const blank = report.blanks[0]!;
    const share = shareIn(report, kind);
    const { pages, info } = await readPdf(written(report, share));
    expect(info["Title"]).toBe(`A part: full-size pattern, one ${kind}`);
    const drawn = glued(pages);
    const own = outlineOf(share);
    const turned = pages[0]!.texts.some(({ text }) => text.includes("is turned"));
    const turn = turned ? (uprightDeg(share) * Math.PI) / 180 : 0;
    const rotate =
      (angle: number) =>
      ([x, y]: Vec2): Vec2 => [
        x * Math.cos(angle) - y * Math.sin(angle),
        x * Math.sin(angle) + y * Math.cos(angle),
      ];
    const lying = own.map(rotate(turn));
    const least = (points: readonly Vec2[], way: 0 | 1) => Math.min(...points.map((p) => p[way]));
    const shift: Vec2 = [least(lying, 0) - least(drawn, 0), least(lying, 1) - least(drawn, 1)];
    const back = drawn.map(([x, y]) => rotate(-turn)([x + shift[0], y + shift[1]]));
    expect(Math.max(...back.map((p) => toOutline(p, own)))).toBeLessThan(JOIN_MM);
    // Turned over, what was printed covers the whole outline, but for the seam's own edges where a joint is taken off.
    const images = share.places.flatMap((place) => back.map(place));
    const gap = share.seam ? 4 : 0;
    for (const p of blank.outline.filter((_, i) => i % 3 === 0)) {
      const far = Math.min(...images.map((q) => distance2(p, q)));
      expect(far).toBeLessThan(2.1 + gap);
    }
  });

  it("says how it is laid on the plate and what to measure, and draws the seam where a joint shifts it", async () => {
    const gap = cone({ seam: { at: 0, joint: "butt", gap: 4 } });
    const { pages } = await readPdf(written(gap, shareIn(gap, "quarter")));
    const words = pages[0]!.texts.map(({ text }) => text).join(" ");
    expect(words).toContain("One quarter of the full-size pattern");
    expect(words).toContain("turn both over about the middle");
    // Half of the gap is taken off each outermost quarter.
    expect(words).toMatch(/the seam is the line 2 millimetres inside the edge/);
    const { edges, outline } = gap.blanks[0]!;
    const corner = (i: number) => outline[edges[i]!.start]!;
    // Seam 1 from end A to B, end B, seam 2, end A: A's corners are the first of edges 1 and 4.
    expect(words).toContain(
      `outer corners of the large end ${Number(distance2(corner(0), corner(3)).toFixed(1))}`,
    );
    expect(words).toContain(
      `corner to corner both ways ${Number(distance2(corner(0), corner(2)).toFixed(1))}`,
    );
    const none = cone({ seam: { at: 0, joint: "butt", gap: 0 } });
    const plain = await readPdf(written(none, shareIn(none, "quarter")));
    expect(plain.pages[0]!.texts.map(({ text }) => text).join(" ")).not.toContain("the seam is the line");
  });

  it("gives its lines the numbers of all that they become", async () => {
    const report = cone();
    const { pages } = await readPdf(written(report, shareIn(report, "quarter")));
    const words = new Set(pages.flatMap(({ texts }) => texts.map(({ text }) => text)));
    for (const numbers of ["1 · 7 · 13", "2 · 6. · 8 · 12", "3 · 5 · 9. · 11", "4 · 10"])
      expect([...words], numbers).toContain(numbers);
  });
});

it("is what helps where the whole takes too many sheets", () => {
  const report = reportOf(
    named({
      shape: "right-cone",
      thickness: 4,
      largeEnd: { diameter: 2005, measured: "outside" },
      smallEnd: { diameter: 900, measured: "outside" },
      height: 700,
    }),
  );
  const [blank] = report.blanks;
  const make = (share?: Share) =>
    fullSizePdf(report, blank!, { paper: tilePaper("a4"), fonts, date, count: 1, share });
  const refused = make();
  if (refused.kind !== "refused") throw new Error(`${refused.sheets} sheets`);
  const said = [...refused.remedy.matchAll(/one (half|quarter) \((\d+)\)/g)];
  expect(said.length).toBeGreaterThan(0);
  for (const [, kind, sheets] of said) {
    const done = make(shareIn(report, kind as Share["kind"]));
    expect(done.kind === "written" && done.sheets).toBe(Number(sheets));
    expect(Number(sheets)).toBeLessThanOrEqual(MOST_SHEETS);
  }
});

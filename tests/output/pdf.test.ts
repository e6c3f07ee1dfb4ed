import fc from "fast-check";
import { afterEach, describe, expect, it } from "vitest";
import { arc, closed, type Shape } from "../../src/drawing/model.ts";
import { distance2, type Vec2 } from "../../src/geometry/vector.ts";
import { cutPatterns } from "../../src/output/contour.ts";
import { createPdf } from "../../src/output/pdf/document.ts";
import { type FullSizeOptions, fullSizePdf, MOST_SHEETS } from "../../src/output/pdf/fullSize.ts";
import { printable } from "../../src/output/pdf/printable.ts";
import { TILE_PAPERS, tileLayout, tilePaper } from "../../src/output/pdf/tilePaper.ts";
import { uprightNumber } from "../../src/output/uprightNumber.ts";
import { OVERLAP, type Piece, tilingOf } from "../../src/output/pdf/tiles.ts";
import type { NamedPart } from "../../src/report/lay.ts";
import type { Report } from "../../src/report/report.ts";
import { anyPart, runs } from "../arbitraries.ts";
import { even } from "../even.ts";
import { named, reportOf } from "../parts.ts";
import { glued, JOIN_MM, toOutline } from "./glue.ts";
import { type PaintedPath, type PdfPage, readPdf } from "./readPdf.ts";
import { fonts } from "./fonts.ts";

const date = "D:20260131120000+00'00'";

/** What a rule laid on the paper could show. [mm] */
const RULE_MM = 0.2;

const cone = (more: Partial<NamedPart> = {}) =>
  reportOf({
    ...named({
      shape: "right-cone",
      thickness: 4,
      largeEnd: { diameter: 605, measured: "outside" },
      smallEnd: { diameter: 305, measured: "outside" },
      height: 200,
    }),
    ...more,
  } as NamedPart);
const oblique = () =>
  reportOf(
    named({
      shape: "eccentric-cone",
      thickness: 3,
      largeEnd: { diameter: 400, measured: "inside" },
      smallEnd: { diameter: 200, measured: "inside", offset: [60, 40] },
      height: 300,
    }),
  );

/** Half a wide cone has its smallest rectangle askew. */
const half = () =>
  reportOf(
    named({
      shape: "right-cone",
      thickness: 12,
      largeEnd: { diameter: 1700, measured: "outside" },
      smallEnd: { diameter: 620, measured: "outside" },
      halfAngle: 30,
      pieces: 2,
    }),
  );

function written(report: Report, options: Partial<FullSizeOptions> = {}): Uint8Array {
  const [{ blank, count } = { blank: undefined, count: 0 }] = cutPatterns(report);
  const done = fullSizePdf(report, blank!, { paper: tilePaper("a4"), fonts, date, count, ...options });
  if (done.kind === "refused") throw new Error(done.problem);
  return done.bytes;
}

const straight = ({ runs: [run = []] }: PaintedPath) => run.length === 2;
const bars = (page: PdfPage, way: 0 | 1) =>
  page.paths.filter((one) => {
    const [[p, q] = []] = one.runs;
    return (
      straight(one) && one.clip === null && p![1 - way] === q![1 - way] && Math.abs(p![way] - q![way]) > 50
    );
  });
const barLengths = (page: PdfPage, way: 0 | 1) =>
  bars(page, way)
    .filter(({ widthMm }) => Math.abs(widthMm - 0.2) < 0.001)
    .map(({ runs: [run] }) => Math.abs(run![1]![way] - run![0]![way]));

describe("the tiled pattern, read by another library and glued together by its match marks", () => {
  it.each([
    ["a cone on A4", cone, "a4"],
    ["an eccentric cone on Letter", oblique, "letter"],
    ["an eccentric cone on A3", oblique, "a3"],
    ["half a cone, turned to save sheets, on A4", half, "a4"],
  ] as const)("%s comes back to the outline", async (_, report, paper) => {
    const { pages } = await readPdf(written(report(), { paper: tilePaper(paper) }));
    const drawn = glued(pages);
    const [{ blank } = { blank: undefined }] = cutPatterns(report());
    const turned = pages[0]!.texts.some(({ text }) => text.includes("is turned"));
    expect(turned).toBe(report === half);
    const turn = turned ? (blank!.box.turnDeg * Math.PI) / 180 : 0;
    const outline = blank!.outline.map(([x, y]): Vec2 => [
      x * Math.cos(turn) - y * Math.sin(turn),
      x * Math.sin(turn) + y * Math.cos(turn),
    ]);
    // Its lower left corner tells where the glued whole lies; the file knows nothing of it.
    const least = (points: readonly Vec2[], way: 0 | 1) => Math.min(...points.map((p) => p[way]));
    const [dx, dy] = [least(outline, 0) - least(drawn, 0), least(outline, 1) - least(drawn, 1)];
    const worst = Math.max(...drawn.map(([x, y]) => toOutline([x + dx, y + dy], outline)));
    expect(worst).toBeLessThan(JOIN_MM);
    // And nothing of the outline is missing.
    const missing = outline.filter(
      ([x, y]) => !drawn.some(([p, q]) => Math.hypot(p + dx - x, q + dy - y) < 2.1),
    );
    expect(missing).toEqual([]);
  });

  it("of any part is written on large paper, with all its corners named, whatever its title", async () => {
    const written: Uint8Array[] = [];
    fc.assert(
      fc.property(anyPart, fc.boolean(), (part, inches) => {
        const report = reportOf({ ...part, title: "漢 ".repeat(60), units: inches ? "in" : "mm" });
        for (const { blank, count } of cutPatterns(report)) {
          const done = fullSizePdf(report, blank, { paper: tilePaper("a0"), fonts, date, count });
          if (done.kind === "written") written.push(done.bytes);
        }
      }),
      runs(15),
    );
    expect(written.length).toBeGreaterThan(12);
    for (const bytes of written.slice(0, 8)) {
      const { pages } = await readPdf(bytes);
      const names = new Set(pages.slice(1).flatMap(({ texts }) => texts.map(({ text }) => text)));
      for (const corner of pages[0]!.texts.filter(({ text }) => /^P\d$/.test(text)))
        expect(names).toContain(corner.text);
      // What belongs to the sheet; lettering of the pattern may be cut by its edge.
      for (const { widthMm, texts } of pages)
        for (const { at, longMm, text } of texts.filter((one) =>
          /check:|Sheet |Print |cut along|laid to/.test(one.text),
        ))
          expect(at[0] > 7 && at[0] + longMm < widthMm - 7.9 && at[1] > 7, text).toBe(true);
    }
  });

  it("has bars of 100 mm both ways on every sheet, and of 4 in for a part in inches", async () => {
    const { pages } = await readPdf(written(cone({ units: "in" }), { paper: tilePaper("letter") }));
    for (const page of pages) {
      expect(page.widthMm).toBeCloseTo(215.9, 2);
      for (const way of [0, 1] as const) {
        const lengths = barLengths(page, way).filter(
          (one) => Math.abs(one - 100) < 3 || Math.abs(one - 101.6) < 0.5,
        );
        expect(lengths.filter((one) => Math.abs(one - 100) < RULE_MM).length).toBe(1);
        expect(lengths.filter((one) => Math.abs(one - 101.6) < RULE_MM).length).toBe(1);
      }
    }
  });

  it("tells part, piece, face, place and what to measure in words that can be read out of it, whatever their signs", async () => {
    const title = "Kegel Ø½″ ⅛ ± 30° – žő → 3′";
    const report = cone({ title });
    const { pages, bookmarks, info } = await readPdf(written(report));
    expect(info["Title"]).toBe(`${title}: full-size pattern`);
    const words = pages.map(({ texts }) => texts.map(({ text }) => text).join(" "));
    expect(words[0]).toContain(`Full-size pattern: ${title}`);
    const { outline, edges } = report.blanks[0]!;
    const span = distance2(outline[edges[0]!.start]!, outline[edges[2]!.start]!);
    expect(words[0]).toContain(`P1 to P3 ${Number(span.toFixed(1))}`);
    for (const page of words.slice(1)) {
      expect(page).toContain(`${title} · part, inside up`);
      expect(page).toContain("Print at 100 %");
    }
    expect(bookmarks[0]).toBe("Map of the sheets");
    expect(bookmarks.length).toBe(pages.length);
  });

  it("prints the bend lines of the brake's plan, each with its number and angle", async () => {
    const report = reportOf(
      named({
        shape: "square-to-round",
        thickness: 2,
        rectangularEnd: { length: 300, width: 300, measured: "inside" },
        roundEnd: { diameter: 250, measured: "inside" },
        height: 200,
        pieces: 2,
      }),
    );
    const plan = report.forming.plans.find(({ machine }) => machine === report.forming.machine)!.brake!;
    const { pages } = await readPdf(written(report));
    const words = new Set(pages.flatMap(({ texts }) => texts.map(({ text }) => text)));
    for (const { number, bendDeg } of plan.lines.filter(({ piece }) => piece === 1))
      expect(words).toContain(`${uprightNumber(number)} (${Number(bendDeg.toFixed(1))}°)`);
  });
});

it("marks the numbers that are others upside down", () => {
  expect([1, 6, 9, 10, 16, 18, 26, 68, 91].map(uprightNumber)).toEqual([
    "1",
    "6.",
    "9.",
    "10",
    "16.",
    "18",
    "26",
    "68.",
    "91.",
  ]);
});

describe("the same file for the same part", () => {
  const zone = process.env["TZ"];
  afterEach(() => {
    process.env["TZ"] = zone;
  });
  it("byte for byte, whatever the time zone", () => {
    const report = oblique();
    const first = written(report);
    process.env["TZ"] = "Asia/Tokyo";
    expect(new Date(0).getHours()).toBe(9);
    expect(Buffer.from(written(report)).equals(Buffer.from(first))).toBe(true);
    expect(Buffer.from(written(report, { date: "D:20260131120001+00'00'" })).equals(Buffer.from(first))).toBe(
      false,
    );
  });
});

describe("sheets", () => {
  const anyPieces = fc
    .array(
      fc.record({ x: even(-1500, 1500), y: even(-1500, 1500), dx: even(-400, 400), dy: even(-400, 400) }),
      {
        minLength: 1,
        maxLength: 12,
      },
    )
    .map((all) =>
      all.map(({ x, y, dx, dy }): Piece => [
        [x, y],
        [x + dx, y + dy],
      ]),
    );

  it("show every point that has to be seen, share no point twice, and hold something each", () => {
    fc.assert(
      fc.property(anyPieces, fc.constantFrom(...TILE_PAPERS), fc.boolean(), (pieces, paper, lying) => {
        const { tiles, leftOut, layout, rows, columns } = tilingOf(pieces, tileLayout(paper, lying));
        expect(tiles.length + leftOut.length).toBe(rows * columns);
        for (const { field } of tiles) {
          expect(field.right - field.left).toBeCloseTo(layout.field.widthMm, 9);
          expect(field.top - field.bottom).toBeCloseTo(layout.field.heightMm, 9);
        }
        const points = pieces.flatMap(([p, q]) =>
          Array.from({ length: 41 }, (_, k): Vec2 => [
            p[0] + ((q[0] - p[0]) * k) / 40,
            p[1] + ((q[1] - p[1]) * k) / 40,
          ]),
        );
        for (const [x, y] of points) {
          const own = [...tiles, ...leftOut].filter(
            ({ core }) => x > core.left && x < core.right && y > core.bottom && y < core.top,
          );
          expect(own.length).toBeLessThanOrEqual(1);
          expect(
            tiles.some(({ core }) => x >= core.left && x <= core.right && y >= core.bottom && y <= core.top),
          ).toBe(true);
        }
        for (const tile of tiles) {
          const right = tiles.find(({ row, column }) => row === tile.row && column === tile.column + 1);
          if (right) expect(tile.field.right - right.field.left).toBeCloseTo(OVERLAP, 9);
        }
      }),
      runs(120),
    );
  });

  it("of any part lie edge to edge: from one every other is reached over common lines", () => {
    fc.assert(
      fc.property(anyPart, (part) => {
        const { outline } = reportOf(part).blanks[0]!;
        const pieces = outline.map((p, i): Piece => [p, outline[(i + 1) % outline.length]!]);
        const { tiles } = tilingOf(pieces, tileLayout(tilePaper("a4"), false));
        const reached = new Set([tiles[0]!]);
        for (const one of reached)
          for (const other of tiles)
            if (Math.abs(one.row - other.row) + Math.abs(one.column - other.column) === 1) reached.add(other);
        expect(reached.size).toBe(tiles.length);
      }),
      runs(60),
    );
  });

  it("are refused beyond what can be glued, with remedies that go", async () => {
    const report = cone({
      largeEnd: { diameter: 2005, measured: "outside" },
      smallEnd: { diameter: 900, measured: "outside" },
      height: 700,
    });
    const { blank } = cutPatterns(report)[0]!;
    const make = (id: (typeof TILE_PAPERS)[number]["id"], sheets: "all" | "edges" = "all") =>
      fullSizePdf(report, blank, { paper: tilePaper(id), fonts, date, count: 1, sheets });
    const refused = make("a4");
    if (refused.kind !== "refused") throw new Error(`${refused.sheets} sheets were written`);
    expect(Number(/takes (\d+) sheets/.exec(refused.problem)![1])).toBeGreaterThan(MOST_SHEETS);
    const named = [...refused.remedy.matchAll(/(A\d|US \w+|ANSI \w) \((\d+) sheets?\)/g)];
    expect(named.length).toBeGreaterThan(2);
    for (const [, name, sheets] of named) {
      const done = make(TILE_PAPERS.find((one) => one.name === name)!.id);
      expect(done.kind === "written" && done.sheets, name).toBe(Number(sheets));
    }
    const along = /edge crosses \((\d+)\)/.exec(refused.remedy);
    if (along) {
      const done = make("a4", "edges");
      expect(done.kind === "written" && done.sheets).toBe(Number(along[1]));
    }
    const large = make("a0");
    if (large.kind !== "written") throw new Error(large.problem);
    const { pages } = await readPdf(large.bytes);
    // What is read stands on office paper, and the rest on the plotter's.
    expect(pages.map(({ widthMm }) => Math.round(widthMm)).slice(0, 2)).toEqual([
      210,
      expect.any(Number) as number,
    ]);
    expect(Math.min(pages[1]!.widthMm, pages[1]!.heightMm)).toBeCloseTo(841, 1);
  });
});

describe("the pen", () => {
  const drawn = async (shape: Shape) => {
    const pdf = createPdf({ title: "t", subject: "s", date, fonts });
    pdf.sheet(400, 400);
    pdf.draw([shape], { at: [0, 0], on: [200, 200], unit: 1 }, { widthMm: 0.2 });
    const { pages } = await readPdf(pdf.bytes());
    return pages[0]!.paths[0]!.runs[0]!.map(([x, y]): Vec2 => [x - 200, y - 200]);
  };

  it("keeps to a circle within 0.0002 mm, either way round, and closes a whole one", async () => {
    for (const [fromRad, toRad] of [
      [0.3, 5.9],
      [2, -3],
      [0, 2 * Math.PI],
    ] as const) {
      const points = await drawn(arc("outline", { centre: [10, -5], radius: 150, fromRad, toRad }).shape);
      for (const p of points) expect(Math.abs(distance2(p, [10, -5]) - 150)).toBeLessThan(0.0002);
      const end: Vec2 = [10 + 150 * Math.cos(toRad), -5 + 150 * Math.sin(toRad)];
      expect(distance2(points.at(-1)!, end)).toBeLessThan(0.001);
    }
  });

  it("closes a closed path", async () => {
    const square = await drawn(
      closed("outline", [
        [0, 0],
        [10, 0],
        [10, 10],
      ]).shape,
    );
    expect(distance2(square[0]!, square.at(-1)!)).toBeLessThan(1e-4);
    expect(square.length).toBe(4);
  });
});

describe("signs", () => {
  const pdf = () => {
    const one = createPdf({ title: "t", subject: "s", date, fonts });
    one.sheet(300, 100);
    return one;
  };

  it("of the shop all stand in the font", async () => {
    const signs = "° Ø × ½ ¼ ¾ ⅛ ⅜ ⅝ ⅞ ± – — ′ ″ − → ← ≤ ≥ ≈ √ π α β θ φ ² ³ · é ß Å ž ő “ ” ‘ ’ …";
    const one = pdf();
    for (const bold of [false, true]) one.write(signs, [5, bold ? 20 : 10], { capMm: 2, bold });
    const { pages } = await readPdf(one.bytes());
    expect(pages[0]!.texts.map(({ text }) => text)).toEqual([signs, signs]);
  });

  it("that are missing stop our own words, and give way in those that somebody typed", () => {
    expect(() => pdf().write("Ø 漢", [10, 10], { capMm: 2 })).toThrow(/漢/);
    const one = pdf();
    expect(printable("⌀5 漢 tǎng\u00a0x\ny ⁄ 1‑2", one)).toBe("Ø5 ? tang\u00a0x y / 1-2");
    for (const sign of printable("\u{1F600} кошка ﬁ", one)) expect(one.holds(sign)).toBe(true);
  });

  it("are refused in a date that would not be the same everywhere", () => {
    expect(() => createPdf({ title: "t", subject: "s", date: "2026-01-31", fonts })).toThrow(RangeError);
  });
});

import DxfParser, { type ILineEntity, type ITextEntity } from "dxf-parser";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { distance2, type Vec2 } from "../../src/geometry/vector.ts";
import { cutPatterns, markWords, numbersInWords } from "../../src/output/contour.ts";
import { printDxf } from "../../src/output/dxf.ts";
import { printPlateDxf } from "../../src/output/plateDxf.ts";
import { plateFiles } from "../../src/output/plateFiles.ts";
import type { PlateSheet } from "../../src/output/plateSheet.ts";
import { printPlateSvg, printSvg } from "../../src/output/svg.ts";
import { uprightNumber } from "../../src/output/uprightNumber.ts";
import type { Report } from "../../src/report/report.ts";
import { anyPart, runs } from "../arbitraries.ts";
import { named, reportOf } from "../parts.ts";

const cone = {
  shape: "right-cone",
  thickness: 4,
  largeEnd: { diameter: 605, measured: "outside" },
  smallEnd: { diameter: 305, measured: "outside" },
  height: 200,
} as const;

const readDxf = (text: string) => {
  const { entities } = new DxfParser().parseSync(text)!;
  const on = (layer: string) => entities.filter((one) => one.layer === layer);
  const texts = (layer: string) => on(layer) as ITextEntity[];
  return { texts, lines: [...on("ELEMENT"), ...on("BEND")] as ILineEntity[] };
};

const sheetOf = (report: Report, copies = 1): PlateSheet => ({
  name: "plate-1",
  title: "S235, 4 mm, plate 1",
  lengthMm: 9000,
  widthMm: 9000,
  copies,
  units: "mm",
  blanks: report.blanks.map((_, i) => ({
    report,
    blank: cutPatterns(report)[0]!.blank,
    number: 1,
    rotationDeg: 30 + 90 * i,
    at: [4000, 4000] as Vec2,
  })),
});

/** Distance from a point to a stretch. [mm] */
function off(p: Vec2, a: Vec2, b: Vec2): number {
  const long = distance2(a, b) ** 2;
  const share = ((p[0] - a[0]) * (b[0] - a[0]) + (p[1] - a[1]) * (b[1] - a[1])) / long;
  const k = Math.min(1, Math.max(0, share));
  return Math.hypot(p[0] - a[0] - k * (b[0] - a[0]), p[1] - a[1] - k * (b[1] - a[1]));
}

describe("the mark that is etched", () => {
  it("names every piece that the file serves, and one alone where it serves that one", () => {
    const four = reportOf(named({ ...cone, pieces: 4 }));
    expect(markWords(four, four.blanks[0]!)).toBe("part pieces 1 to 4 alike, inside up");
    expect(markWords(four, four.blanks[2]!)).toBe("part pieces 1 to 4 alike, inside up");
    const two = reportOf(named({ ...cone, pieces: 2 }));
    expect(markWords(two, two.blanks[0]!)).toBe("part pieces 1 and 2 alike, inside up");
    const whole = reportOf(named(cone));
    expect(markWords(whole, whole.blanks[0]!)).toBe("part, inside up");
    const askew = reportOf(
      named({
        shape: "eccentric-cone",
        thickness: 4,
        largeEnd: { diameter: 900, measured: "outside" },
        smallEnd: { diameter: 400, measured: "outside", offset: [150, 40] },
        height: 700,
        pieces: 2,
      }),
    );
    expect(cutPatterns(askew).map(({ blank }) => markWords(askew, blank))).toEqual([
      "part piece 1, inside up",
      "part piece 2, inside up",
    ]);
    expect(numbersInWords([1, 3, 4])).toBe("1, 3 and 4");
    const { texts } = readDxf(printPlateDxf(sheetOf(four)));
    expect(texts("MARK").map(({ text }) => text)).toEqual(
      Array.from({ length: 4 }, () => "part pieces 1 to 4 alike, inside up"),
    );
  });
});

it("where no brake is planned for, every line within has its number of the marking table beside it, on a layer of its own", () => {
  fc.assert(
    fc.property(anyPart, (part) => {
      const report = reportOf(part);
      for (const { blank } of cutPatterns(report)) {
        const rows = report.hand.rows.filter(({ piece }) => piece === blank.piece);
        const { texts, lines } = readDxf(printDxf(report, blank));
        const numbers = texts("NUMBER");
        const bends = report.forming.plans.find(({ machine }) => machine === report.forming.machine)?.brake;
        expect(numbers).toHaveLength(
          bends ? 0 : blank.lines.filter(({ from, to }) => distance2(from, to) > 0.01).length,
        );
        for (const one of numbers) {
          const row = rows.find(({ number }) => uprightNumber(number) === one.text)!;
          const at: Vec2 = [one.endPoint.x, one.endPoint.y];
          const own = off(at, row.a, row.b);
          expect(own).toBeLessThan(1.5 * one.textHeight);
          // Nearer to its own line than to any other that is drawn.
          for (const { vertices } of lines) {
            const [from, to] = vertices.map(({ x, y }): Vec2 => [x, y]) as [Vec2, Vec2];
            if (distance2(from, to) < 0.01) continue;
            expect(off(at, from, to)).toBeGreaterThan(own - 1e-6);
          }
        }
        const svg = printSvg(report, blank);
        const said = [...svg.matchAll(/class="element-number"[^>]*>([\d.]+)</g)].map(([, text]) => text);
        expect(said).toEqual(numbers.map(({ text }) => text));
      }
    }),
    runs(60),
  );
});

it("SVG of a plate has the lines, numbers and marks of its DXF, where they lie there", () => {
  fc.assert(
    fc.property(anyPart, (part) => {
      const sheet = sheetOf(reportOf(part));
      const { lines, texts } = readDxf(printPlateDxf(sheet));
      const svg = printPlateSvg(sheet);
      const drawn = [...svg.matchAll(/class="(?:bend|element)"[^>]* d="([^"]+)"/g)].flatMap(([, d]) =>
        [...d!.matchAll(/M([-\d.e]+) ([-\d.e]+)L([-\d.e]+) ([-\d.e]+)/g)].map((one) =>
          one.slice(1).map((value, i) => (i % 2 === 0 ? Number(value) : sheet.widthMm - Number(value))),
        ),
      );
      const key = (numbers: readonly number[]) => numbers.map((one) => (one + 0.0001).toFixed(2)).join(" ");
      expect(drawn.map(key).toSorted()).toEqual(
        lines.map(({ vertices }) => key(vertices.flatMap(({ x, y }) => [x, y]))).toSorted(),
      );
      const said = (kind: string) =>
        [...svg.matchAll(new RegExp(`class="${kind}"[^>]*>([^<]*)<`, "g"))]
          .map(([, text]) => text)
          .toSorted();
      expect(said("element-number")).toEqual(
        texts("NUMBER")
          .map(({ text }) => text)
          .toSorted(),
      );
      expect([...said("bend-number"), ...said("mark")].toSorted()).toEqual(
        texts("MARK")
          .map(({ text }) => text)
          .toSorted(),
      );
    }),
    runs(30),
  );
});

describe("what does not go", () => {
  const good = reportOf(named(cone));
  const bad: Report = { ...good, forming: { ...good.forming, verdict: "fail" } };
  const words = "DO NOT CUT YET. part: does not go here; do not cut before that is settled";

  it("says so in its own DXF and SVG", () => {
    const blank = bad.blanks[0]!;
    const notes = readDxf(printDxf(bad, blank)).texts("NOTE");
    expect(notes.map(({ text }) => text)).toContain(words);
    expect(printSvg(bad, blank)).toContain(`>${words}</text>`);
    expect(printDxf(good, blank) + printSvg(good, blank)).not.toContain("NOT CUT");
  });

  it("says so on the plate that it lies on, once, in DXF and SVG and in what the files are called", () => {
    const sheet = sheetOf(bad, 2);
    const notes = readDxf(printPlateDxf(sheet))
      .texts("NOTE")
      .map(({ text }) => text);
    expect(notes).toEqual([
      "UNITS MM",
      "S235, 4 mm, plate 1: 2 to cut like this, once what stands below is settled",
      words,
    ]);
    expect(printPlateSvg(sheet)).toContain(`>${words}</text>`);
    for (const { what } of plateFiles(sheet)) expect(what).toMatch(/holds what does not go here: part$/);
    for (const { what } of plateFiles(sheetOf(good))) expect(what).not.toContain("not go");
  });
});

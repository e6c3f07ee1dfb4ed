import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bentPlate, concentric } from "../../src/drawing/forming/bentPlate.ts";
import { centreAt, rollSections } from "../../src/drawing/forming/rollSection.ts";
import { NARROW, SHEET } from "../../src/drawing/paper.ts";
import { loadCatalogue } from "../../src/input/loadCatalogue.ts";
import { readPart } from "../../src/input/readPart.ts";
import { readShop } from "../../src/input/readShop.ts";
import { develop } from "../../src/report/develop.ts";
import { SECTIONS_PAPER } from "../../src/site/forming/papers.ts";
import { sectionsOf } from "../../src/site/forming/sections.ts";
import { runs } from "../arbitraries.ts";
import { even } from "../even.ts";
import { coveredLabels, outsideSheet } from "./judge.ts";
import { svgText } from "./svgText.ts";

const tables = loadCatalogue("content");
const read = (path: string) => readFileSync(path, "utf8");
const shop = readShop(read("demo-data/shop.yaml"), { path: "demo-data/shop.yaml", ...tables }).value!;

function sections(name: string) {
  const path = `demo-data/parts/${name}.yaml`;
  const { part } = readPart(read(path), { path, ...tables });
  const developed = develop(part!, { catalogue: tables.catalogue, shop });
  if (developed.kind === "refused") throw new Error(name);
  const { report } = developed;
  return report.forming.plans.flatMap((plan) => sectionsOf(report, plan, shop));
}

describe.each([
  "scalper-cone",
  "dust-cyclone-cone",
  "feed-spout-reducer",
  "sand-trap-cone",
  "dust-main-sleeve",
])("%s", (name) => {
  const [what] = sections(name);
  it("is drawn for both ends and both passes, no label over another, nothing beyond the sheet", () => {
    expect(what!.moments.length).toBeGreaterThan(1);
    for (const paper of [SHEET, { ...NARROW, heightMm: 320 }]) {
      const drawing = rollSections(what!, { paper });
      expect(coveredLabels(drawing)).toEqual([]);
      expect(outsideSheet(drawing)).toEqual([]);
      expect(drawing.dropped).toEqual([]);
      expect(drawing.paperWidthMm).toBeCloseTo(paper.widthMm, 6);
    }
  });

  it("leads to a roll's name without crossing another roll", () => {
    const { roll, thicknessMm, moments } = what!;
    const pinch = roll.pinchRadiusMm ?? 0;
    const first = moments[0]!;
    const circles = [
      { name: "top", centre: [0, 0] as const, radius: roll.topRadiusMm },
      { name: "pinch", centre: [0, -roll.topRadiusMm - thicknessMm - pinch] as const, radius: pinch },
      {
        name: "bending",
        centre: centreAt(roll, first.flatUpMm + first.bestMm),
        radius: roll.bendingRadiusMm,
      },
    ];
    for (const paper of [SHEET, SECTIONS_PAPER]) {
      const { strokes, labels, unit } = rollSections(what!, { paper });
      for (const label of labels.filter(({ text }) => / Ø/.test(text))) {
        // A leader ends at its landing, a millimetre of paper before its words.
        const leader = strokes.find(
          ({ kind, shape }) =>
            kind === "dimension" &&
            shape.type === "path" &&
            Math.hypot(shape.points.at(-1)![0] - label.at[0], shape.points.at(-1)![1] - label.at[1]) <
              1.1 * unit,
        );
        if (leader?.shape.type !== "path") continue;
        const { points } = leader.shape;
        const others = circles.filter(({ name, radius }) => radius > 0 && !label.text.startsWith(name));
        for (let i = 1; i < points.length; i++)
          for (let share = 0; share <= 1; share += 1 / 32) {
            const [p, q] = [points[i - 1]!, points[i]!];
            const at = [p[0] + share * (q[0] - p[0]), p[1] + share * (q[1] - p[1])] as const;
            for (const { name, centre, radius } of others)
              expect(
                Math.hypot(at[0] - centre[0], at[1] - centre[1]),
                `${label.text} through ${name}`,
              ).toBeGreaterThan(radius);
          }
      }
    }
  });

  it("has the outside of the plate touch the bending roll, and no part of the plate within it", () => {
    const { roll, thicknessMm, moments } = what!;
    for (const { flatUpMm, bestMm, touchingMm } of moments) {
      const [x, y] = centreAt(roll, flatUpMm + bestMm);
      const outline = bentPlate({
        pinchLine: [0, -roll.topRadiusMm],
        thicknessMm,
        insideMm: touchingMm,
        afterMm: 2 * roll.travelMm,
        incomingMm: null,
        beforeMm: 1,
      });
      const least = Math.min(...outline.map(([px, py]) => Math.hypot(px - x, py - y)));
      // Chords of 64 steps of the arc drawn: within a hundredth of a millimetre per metre of radius they touch.
      expect(least).toBeGreaterThan(roll.bendingRadiusMm - 1e-6);
      expect(least).toBeLessThan(roll.bendingRadiusMm + 1);
    }
  });
});

it("draws nothing where there are no settings", () => {
  expect(sections("flue-foot")).toEqual([]);
});

it("keeps a bent plate as thick as it is", () => {
  fc.assert(
    fc.property(even(50, 3000), even(0.5, 40), even(10, 2000), (insideMm, thicknessMm, afterMm) => {
      const plate = {
        pinchLine: [0, 0] as const,
        thicknessMm,
        insideMm,
        afterMm,
        incomingMm: null,
        beforeMm: 10,
      };
      const [inside, outside] = [concentric(plate, 0), concentric(plate, thicknessMm)];
      for (const [i, [x, y]] of inside.entries())
        expect(Math.hypot(outside[i]![0] - x, outside[i]![1] - y)).toBeCloseTo(thicknessMm, 6);
    }),
    runs(60),
  );
});

it.each(["scalper-cone", "feed-spout-reducer"])("%s looks as it was looked at", async (name) => {
  const drawing = rollSections(sections(name)[0]!, { paper: SHEET });
  await expect(svgText(drawing)).toMatchFileSnapshot(`golden/${name}-rolls.svg`);
});

import { expect, it } from "vitest";
import { type AirBendGeometry, angleOfDepth, nextDepths } from "../../src/forming/brakeTrial.ts";
import { answerWords } from "../../src/site/trials/brakeAnswer.ts";

const DIE: AirBendGeometry = { dieMm: 24, thicknessMm: 3, insideRadiusMm: 4 };
/** Hits whose bends spring back by so much, and by a share of what they turn by under load. */
const hits = (back: number, share: number) =>
  [2.5, 3.2].map((depthMm) => ({
    depthMm,
    bendDeg: angleOfDepth(DIE, depthMm) * (1 - share) - back,
  }));
const said = (trials: ReturnType<typeof hits>) => answerWords(nextDepths(DIE, trials, [15]));

it("says how much more springs back for each degree, not how much more comes out", () => {
  expect(said(hits(5, 0.08))).toMatch(/, and 0\.08° more for each degree more under load\./);
  expect(said(hits(9, -0.1))).toMatch(/, and 0\.1° less for each degree more under load\./);
  expect(said(hits(5, 0))).not.toMatch(/for each degree/);
  expect(said(hits(5, 0.08).slice(1))).toMatch(/^By one hit .* in it\. Go/);
});

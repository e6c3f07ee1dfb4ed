import { expect, it } from "vitest";
import { freeRadiusMm, widePlate } from "../../src/forming/springback.ts";
import { springbackOf } from "../../src/forming/springbackAnswer.ts";
import { coneCase, coneless, hood, reducer, s235, s355 } from "./cases.ts";

it("asks at both ends of a right cone for the radius square to the element, and for more bend than that", () => {
  const answer = springbackOf(coneCase(reducer))!;
  const cosine = 700 / Math.hypot(700, 250);
  expect(answer.places.map(({ place }) => place)).toEqual(["large end", "small end"]);
  expect(answer.places[0]!.freeMm).toBeCloseTo(450 / cosine, 9);
  expect(answer.places[1]!.freeMm).toBeCloseTo(200 / cosine, 9);
  for (const { freeMm, loadedMm, ratio, strongLoadedMm, strongFreeMm } of answer.places) {
    expect(freeRadiusMm(loadedMm, widePlate(6, s235, 235))).toBeCloseTo(freeMm, 8);
    expect(freeRadiusMm(strongLoadedMm!, widePlate(6, s235, 1.4 * 235))).toBeCloseTo(freeMm, 8);
    expect(ratio).toBe(loadedMm / freeMm);
    expect(strongLoadedMm).toBeLessThan(loadedMm);
    expect(strongFreeMm).toBeGreaterThan(freeMm);
  }
  expect(answer).toMatchObject({ yieldMPa: 235, yieldFrom: "grade" });
  expect(answer.strongYieldMPa).toBeCloseTo(329, 9);
});

it("goes by the certificate where there is one, and shows no band then", () => {
  const answer = springbackOf(coneCase(reducer, { certificateYieldMPa: 300 }))!;
  expect(answer).toMatchObject({ yieldMPa: 300, yieldFrom: "certificate", strongYieldMPa: null });
  expect(answer.places[0]).toMatchObject({ strongLoadedMm: null, strongFreeMm: null });
  expect(answer.places[0]!.loadedMm).toBeLessThan(springbackOf(coneCase(reducer))!.places[0]!.loadedMm);
});

it("says from where on the plate springs back flat: at half of E t / Y", () => {
  const item = coneCase({ ...reducer, thicknessMm: 3 }, { material: s355 });
  const { flatFromMm, strongFlatFromMm } = springbackOf(item)!;
  expect(flatFromMm).toBeCloseTo(((210_000 / 0.91) * 3) / (2 * (2 / Math.sqrt(3)) * 355), 6);
  expect(strongFlatFromMm).toBeCloseTo(flatFromMm / 1.4, 6);
});

it("says null, not infinity, where stronger plate springs back flat", () => {
  // A gentle bend in thin strong plate: a little over x = ½ / 1.4 at the nominal yield.
  const item = coneCase(
    { largeRadiusMm: 8000, smallRadiusMm: 7980, heightMm: 800, thicknessMm: 3 },
    { material: s355 },
  );
  const answer = springbackOf(item)!;
  expect(answer.places[0]!.strongFreeMm).toBeNull();
  expect(answer.curve.some(({ strongFreeMm }) => strongFreeMm === null)).toBe(true);
  expect(JSON.parse(JSON.stringify(answer))).toEqual(answer);
});

it("draws a curve that passes through the part's own radii and grows with the loaded radius", () => {
  const { curve, places } = springbackOf(coneCase(reducer))!;
  for (const { loadedMm, freeMm } of places) {
    const after = curve.findIndex((sample) => sample.loadedMm > loadedMm);
    const [left, right] = [curve[after - 1]!, curve[after]!];
    expect(left.freeMm).toBeLessThan(freeMm);
    expect(right.freeMm).toBeGreaterThan(freeMm);
  }
  for (const [i, { freeMm, strongFreeMm }] of curve.entries()) {
    expect(strongFreeMm).toBeGreaterThan(freeMm!);
    if (i > 0) expect(freeMm).toBeGreaterThan(curve[i - 1]!.freeMm!);
  }
});

it("names the tightest and the slackest element where the skin is curved unevenly", () => {
  const uneven = coneless(coneCase(reducer));
  const curvature = [0, 90, 180, 270].map((planDeg, i) => ({
    planDeg,
    largeRadiusMm: 450 + 50 * i,
    smallRadiusMm: 200 + 20 * i,
    slantMm: 700,
  }));
  const answer = springbackOf({
    ...uneven,
    shape: "eccentric-cone",
    tightestRadiusMm: { large: 450, small: 200 },
    curvature,
  })!;
  expect(answer.places.map(({ place, freeMm }) => [place, freeMm])).toEqual([
    ["large end, tightest", 450],
    ["small end, tightest", 200],
    ["large end, slackest", 600],
    ["small end, slackest", 260],
  ]);
});

it("has one radius for a pipe, none at a point, and nothing for a folded skin", () => {
  const pipe = coneCase({ largeRadiusMm: 300, smallRadiusMm: 300, heightMm: 500, thicknessMm: 6 });
  expect(springbackOf(pipe)!.places.map(({ place }) => place)).toEqual(["all over"]);
  const pointed = coneCase({ ...reducer, smallRadiusMm: 0 });
  expect(springbackOf(pointed)!.places.map(({ place }) => place)).toEqual(["large end"]);
  expect(springbackOf(hood)).toBeNull();
});

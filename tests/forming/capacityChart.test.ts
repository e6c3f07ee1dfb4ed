import fc from "fast-check";
import { expect, it } from "vitest";
import { brakeBed } from "../../src/forming/brakeBed.ts";
import { brakeForce } from "../../src/forming/brakeForce.ts";
import { capacity } from "../../src/forming/capacity.ts";
import {
  brakeRegion,
  dieSpans,
  lineOverMm,
  rollCurves,
  rollLimits,
  rollRegion,
  thicknessAtMm,
} from "../../src/forming/capacityChart.ts";
import { worst } from "../../src/forming/check.ts";
import { dieOpening, diesFor } from "../../src/forming/dieOpening.ts";
import { sayIn } from "../../src/forming/say.ts";
import { isPipe } from "../../src/forming/skin.ts";
import { thicknessLimit } from "../../src/forming/thicknessLimit.ts";
import { stopUnknown, workingWidth } from "../../src/forming/workingWidth.ts";
import { even } from "../even.ts";
import { anyBrake, anyCone, anyRoll, coneCase, reducer, roll, RUNS, s235 } from "./cases.ts";

const say = sayIn("mm");

/** A share of a limit, as often within as beyond it, and often close to it. */
const share = fc.oneof(even(0.05, 2), even(0.75, 1.05), fc.constantFrom(0.8, 1));

it("puts a dot of a roll's chart in the region that its checks give the verdict of", () => {
  const seen = new Set<string>();
  fc.assert(
    fc.property(anyCone, anyRoll, share, share, (cone, machine, wide, full) => {
      const limits = rollLimits(cone, machine);
      const slantMm = Math.max(0.1, wide * limits.slantMm);
      const thicknessMm = Math.max(
        0.01,
        Math.min(full * limits.thicknessMm, (full * limits.coneMm2) / slantMm),
      );
      const item = { ...cone, thicknessMm, slantMm: { longest: slantMm, shortest: slantMm } };
      fc.pre(!isPipe(item));
      const asked = { item, roll: machine, say };
      const checks = [capacity(asked), thicknessLimit(asked), workingWidth(asked)];
      const verdict = worst(checks.flatMap((check) => check?.verdict ?? []));
      const region = rollRegion(limits, { thicknessMm, slantMm });
      // What the shop leaves out makes the checks careful where the chart shows the plain limits.
      const unknown = machine.rating.yieldMPa === undefined || stopUnknown(machine);
      expect(unknown && verdict === "caution" && region === "pass" ? verdict : region).toBe(verdict);
      if (!unknown) seen.add(verdict);
      // The curves of the chart part the same regions, away from the curves themselves.
      const { nearMm, limitMm } = thicknessAtMm(limits, slantMm);
      for (const [by, region] of [
        [limitMm * 1.001, "fail"],
        [nearMm * 0.999, "pass"],
        ...(nearMm < limitMm * 0.99 ? [[limitMm * 0.999, "caution"] as const] : []),
      ] as const)
        if (by > 0) expect(rollRegion(limits, { thicknessMm: by, slantMm })).toBe(region);
    }),
    RUNS,
  );
  expect([...seen].sort()).toEqual(["caution", "fail", "pass"]);
});

it("takes by the rule of thumb half the thickness at full slant, and half the slant at full thickness", () => {
  const limits = rollLimits({ material: s235 }, roll({ coneAttachment: { range: [0, 300] } }));
  expect(thicknessAtMm(limits, 2000).limitMm).toBeCloseTo(5, 9);
  expect(thicknessAtMm(limits, 1000).limitMm).toBeCloseTo(10, 9);
  expect(thicknessAtMm(limits, 500).limitMm).toBeCloseTo(10, 9);
  expect(thicknessAtMm(limits, 2001).limitMm).toBe(0);
});

it("is near the limit by thickness too, however short the cone, as the check of the thickness is", () => {
  const machine = roll({ coneAttachment: { range: [0, 300] } });
  const limits = rollLimits({ material: s235 }, machine);
  // 10 mm at the most; a slant of 300 mm is far from the limit by thickness times slant.
  expect(thicknessAtMm(limits, 300)).toEqual({ nearMm: 8, limitMm: 10 });
  const cone = coneCase({ ...reducer, heightMm: 250 });
  const verdictOf = (thicknessMm: number) => {
    const check = thicknessLimit({ item: { ...cone, thicknessMm }, roll: machine, say })!;
    expect(rollRegion(limits, { thicknessMm, slantMm: 300 })).toBe(check.verdict);
    return check;
  };
  expect(verdictOf(7.9).verdict).toBe("pass");
  expect(verdictOf(9.9).verdict).toBe("caution");
  expect(verdictOf(9.9).advice).toMatch(/^Near the limit, at 99 % of the 10 mm .* ask its maker/);
  expect(verdictOf(10.1).verdict).toBe("fail");
});

/** Plate tried where no dies are listed. [mm] */
const UNLISTED_MM = 20;

it("draws finite curves whatever the shop leaves out", () => {
  fc.assert(
    fc.property(anyCone, anyRoll, even(100, 5000), (cone, machine, toMm) => {
      const { near, limit } = rollCurves(rollLimits(cone, machine), toMm);
      for (const [x, y] of [...near, ...limit]) expect(Number.isFinite(x) && Number.isFinite(y)).toBe(true);
    }),
    RUNS,
  );
});

it("puts a line of a brake's chart in the region that its checks give the verdict of", () => {
  const seen = new Set<string>();
  fc.assert(
    fc.property(anyBrake, even(0.02, 1.2), share, even(100, 900), (machine, t, long, tensileMPa) => {
      const thicknessMm = t * (dieSpans(machine).at(-1)?.upToMm ?? UNLISTED_MM);
      const [dieMm] = diesFor(thicknessMm, machine);
      const lineMm = long * lineOverMm({ tensileMPa, thicknessMm, dieMm }, machine).limitMm;
      const item = {
        ...coneCase(reducer),
        thicknessMm,
        material: { ...s235, tensileMPa },
        bendLines: [{ lengthMm: lineMm, bendRad: 0.1, wideSpacingMm: null }],
      };
      const asked = { item, brake: machine, dieMm, say };
      const verdict = worst(
        [brakeBed(asked), dieOpening(asked), brakeForce(asked)].map((one) => one.verdict),
      );
      const region = brakeRegion({ tensileMPa, thicknessMm, lineMm }, machine);
      expect(!machine.dies && verdict === "caution" && region === "pass" ? verdict : region).toBe(verdict);
      if (machine.dies) seen.add(verdict);
    }),
    RUNS,
  );
  expect([...seen].sort()).toEqual(["caution", "fail", "pass"]);
});

it("gives each thickness the narrowest die that opens far enough", () => {
  fc.assert(
    fc.property(anyBrake, even(0.001, 1), (machine, t) => {
      fc.pre(machine.dies !== undefined);
      const spans = dieSpans(machine);
      const thicknessMm = t * (spans.at(-1)?.upToMm ?? 0);
      const span = spans.find((one) => thicknessMm <= one.upToMm);
      expect(span?.dieMm).toBe(diesFor(thicknessMm, machine)[0]);
    }),
    RUNS,
  );
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { closureSetting } from "../../src/forming/closureSetting.ts";
import { firstPass } from "../../src/forming/firstPass.ts";
import { insideRadiusAtMm, raiseMm, sectionOf } from "../../src/forming/rollSetting.ts";
import { freeRadiusMm, loadedRadiusMm, widePlate } from "../../src/forming/springback.ts";
import { disagreeing, nextSetting, type Trial } from "../../src/forming/trialCorrection.ts";
import { roll, RUNS, s235 } from "./cases.ts";
import { even } from "../even.ts";

const aim = { aimMm: 20, fromMm: 18, toMm: 22, capMm: 25, highMm: 60 };
const trial = (settingMm: number, modelMm: number, sprangFlat = false): Trial => ({
  settingMm,
  // A stand-in that grows with the model's setting, as closures do.
  closed: modelMm / 30,
  modelMm,
  sprangFlat,
});

describe("after a trial", () => {
  it("in the window there is nothing to do", () => {
    for (const modelMm of [18, 20, 22])
      expect(nextSetting([trial(31, modelMm)], aim)).toEqual({ kind: "done" });
  });

  it("moves by what the model misses, once", () => {
    expect(nextSetting([trial(30, 17)], aim)).toEqual({ kind: "raise", settingMm: 33, by: "offset" });
  });

  it("steps no further than the liveliest machine may go without passing the cap", () => {
    // 0.67 × (25 − 5) = 13.4, where the model misses 15.
    expect(nextSetting([trial(30, 5)], aim)).toEqual({ kind: "raise", settingMm: 43.4, by: "offset" });
  });

  it("goes by the slope after two that took set, held within what machines do", () => {
    const second = (settingMm: number) => nextSetting([trial(30, 10), trial(settingMm, 15)], aim);
    expect(second(36)).toEqual({ kind: "raise", settingMm: 36 + 1.2 * 5, by: "slope" });
    expect(second(32)).toEqual({ kind: "raise", settingMm: 32 + 0.67 * 5, by: "slope" });
    expect(second(45)).toEqual({ kind: "raise", settingMm: 45 + 1.5 * 5, by: "slope" });
  });

  it("that sprang flat only bounds the setting: by offset again", () => {
    expect(nextSetting([trial(15, 9, true), trial(33, 15)], aim)).toMatchObject({
      settingMm: 38,
      by: "offset",
    });
    // A quarter of 15 more, where the model misses 8.
    expect(nextSetting([trial(15, 12, true)], aim)).toMatchObject({ settingMm: 18.75, by: "short" });
    expect(nextSetting([trial(55, 12, true)], aim)).toMatchObject({ settingMm: 60, by: "short" });
    expect(nextSetting([trial(60, 12, true)], aim)).toEqual({ kind: "check", why: "flat" });
    expect(nextSetting([trial(30, 15), trial(30, 15)], aim)).toMatchObject({ settingMm: 35, by: "offset" });
  });

  it("that went too far gets no further raise, and the next blank less", () => {
    expect(nextSetting([trial(30, 24)], aim)).toEqual({ kind: "overshot", nextBlankMm: 26, by: "offset" });
    expect(nextSetting([trial(30, 14), trial(38, 24)], aim)).toEqual({
      kind: "overshot",
      nextBlankMm: 38 - 0.8 * 4,
      by: "slope",
    });
  });

  it("goes by the lowest of trials that contradict each other, or asks to measure again", () => {
    // More raise, less closed: 30 + 5 by the first, 34 + 7 by the second.
    expect(nextSetting([trial(30, 15), trial(34, 13)], aim)).toEqual({
      kind: "raise",
      settingMm: 35,
      by: "careful",
    });
    expect(nextSetting([trial(30, 15), trial(36, 13)], aim)).toEqual({ kind: "check", why: "disagree" });
    // Six more that brought next to nothing is no machine either: half as slow again as the slowest is.
    expect(nextSetting([trial(30, 13), trial(36, 14.9)], aim)).toMatchObject({ settingMm: 37 });
    expect(nextSetting([trial(30, 13), trial(36, 15.1)], aim)).toMatchObject({ by: "slope" });
    // Of blanks that are closed too far the next one gets the lower.
    expect(nextSetting([trial(34, 13), trial(30, 24)], aim)).toEqual({
      kind: "overshot",
      nextBlankMm: 26,
      by: "careful",
    });
    expect(disagreeing([trial(30, 15), trial(30, 16), trial(30, 17)])).toEqual([0]);
    expect(disagreeing([trial(30, 9, true), trial(36, 9, true)])).toEqual([]);
    // Two settings nearer than a roll is set are one: as much closed is no contradiction, less closed is.
    expect(disagreeing([trial(30, 15), trial(30.1, 15)])).toEqual([]);
    expect(disagreeing([trial(30, 15), trial(30.1, 14.9)])).toEqual([0]);
    expect(disagreeing([trial(30, 15), trial(33, 15)])).toEqual([0]);
    expect(disagreeing([])).toEqual([]);
  });

  it("is a caller's mistake without one", () => {
    expect(() => nextSetting([], aim)).toThrow(RangeError);
  });
});

describe("a machine that is not the model", () => {
  const machine = roll({ slide: { origin: [230, -200], angle: 60, travel: 300 } });
  const section = sectionOf(machine)!;
  const nominal = widePlate(6, s235, 235);

  const unlike = fc.record({
    /** Raise lost to pinch and frame. */
    giveMm: even(0, 12),
    /** Yield of the plate over the nominal. */
    stronger: even(1, 1.4),
    /** Where between free and loaded curvature the plate really runs. */
    between: even(0.5, 1),
    halfAngleRad: even(0.1, 0.7),
    radiusMm: even(350, 700),
  });

  it("is in the window by the third setting, and never past the cap", () => {
    let [second, third] = [0, 0];
    fc.assert(
      fc.property(unlike, ({ giveMm, stronger, between, halfAngleRad, radiusMm }) => {
        const flat = Math.sin(halfAngleRad);
        const window = firstPass(halfAngleRad);
        const model = (closed: number) => {
          const setting = closureSetting(section, nominal, { radiusMm, halfAngleRad, closed });
          if (setting.kind !== "setting") throw new Error(setting.why);
          return setting.bestMm;
        };
        const aims = {
          aimMm: model((window.from + window.to) / 2),
          fromMm: model(window.from),
          toMm: model(window.to),
          capMm: model(window.cap),
          highMm: Infinity,
        };

        // The real machine: its own plate, its own give, its own run of curvature; closure found by trial and error.
        const real = { ...nominal, yieldMPa: stronger * nominal.yieldMPa };
        const settingFor = (free: number) => {
          const raise = (middle: number) => raiseMm(section, { insideRadiusMm: middle - 3, thicknessMm: 6 })!;
          const low = raise(free);
          return giveMm + low + between * (raise(loadedRadiusMm(free, real)) - low);
        };
        const closureAt = (setting: number) => {
          if (setting <= settingFor(Infinity)) return flat;
          let [gentle, tight] = [1e7, 150];
          for (let i = 0; i < 200; i++) {
            const radius = Math.sqrt(gentle * tight);
            if (settingFor(radius) < setting) gentle = radius;
            else tight = radius;
          }
          return Math.hypot(flat, radiusMm / gentle);
        };

        const trials: Trial[] = [];
        let setting = aims.aimMm;
        for (let i = 1; i <= 3; i++) {
          const closed = closureAt(setting);
          expect(closed).toBeLessThan(window.cap);
          const sprangFlat = closed === flat;
          trials.push({ settingMm: setting, closed, modelMm: model(closed), sprangFlat });
          const next = nextSetting(trials, aims);
          if (next.kind === "done") {
            if (i === 2) second++;
            if (i === 3) third++;
            return;
          }
          // A machine that needs less than the model may pass the window, not the cap, on the start itself.
          if (next.kind === "overshot" && i === 1) return;
          expect(next.kind).toBe("raise");
          if (next.kind === "raise") setting = next.settingMm;
        }
        expect.fail(`not in the window after three: ${JSON.stringify(trials)}`);
      }),
      RUNS,
    );
    // The draw does hold machines that need every step.
    expect(second).toBeGreaterThan(0);
    expect(third).toBeGreaterThan(0);
  });

  it("closes as far as the radius it springs back to says", () => {
    // Ties the simulation to the rules it uses: what the model sets, unloads to the radius asked for.
    const setting = closureSetting(section, nominal, { radiusMm: 450, halfAngleRad: 0.3, closed: 0.7 });
    if (setting.kind !== "setting") throw new Error(setting.why);
    const loaded = insideRadiusAtMm(section, { raiseMm: setting.highMm, thicknessMm: 6 }) + 3;
    const free = freeRadiusMm(loaded, nominal);
    expect(Math.hypot(Math.sin(0.3), 450 / free)).toBeCloseTo(0.7, 9);
  });
});

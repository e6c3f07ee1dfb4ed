import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { closedOfGap } from "../../src/forming/closedOfGap.ts";
import { partRolled } from "../../src/forming/closure.ts";
import { closureSetting } from "../../src/forming/closureSetting.ts";
import { firstPass } from "../../src/forming/firstPass.ts";
import { rollSettings } from "../../src/forming/rollSettings.ts";
import { sectionOf } from "../../src/forming/rollSetting.ts";
import { sayIn } from "../../src/forming/say.ts";
import { plateOf } from "../../src/forming/springback.ts";
import { correctTrials, type TrialSeen } from "../../src/forming/trials.ts";
import { even } from "../even.ts";
import { aluminium, coneCase, coneless, roll, s235, s355 } from "./cases.ts";
import { realFree, type Unlike } from "./simulatedRoll.ts";

const say = sayIn("mm");

/** Any sound initial-pinch roll and a cone or pipe that it can bend. */
const jobs = fc
  .record({
    top: even(60, 200),
    bendingShare: even(0.7, 1.1),
    across: even(1.05, 1.5),
    angle: even(45, 80),
    thick: even(0.03, 0.1),
    rated: even(1, 2),
    small: even(1.9, 4),
    grow: fc.oneof(even(0, 0.2), even(0.2, 1.4)),
    halfAngle: even(4, 45),
    material: fc.constantFrom(s235, s355, aluminium),
    dropRad: even(0, 0.03),
    armShare: even(-0.05, 0.05),
    frame: even(0, 0.04),
    stronger: even(1, 1.4),
    hardening: even(0, 0.15),
  })
  .map((one) => {
    const thicknessMm = one.thick * one.top;
    const bending = one.bendingShare * one.top;
    const rated = one.rated * thicknessMm;
    const machine = roll({
      workingWidth: 8000,
      rating: { thickness: rated, yieldMPa: 250 },
      rolls: { topDiameter: 2 * one.top, bendingDiameter: 2 * bending },
      slide: {
        origin: [one.across * (one.top + bending), -(one.top + rated + bending)],
        angle: one.angle,
        travel: 3000,
      },
      coneAttachment: { range: [20, 300] },
    });
    const smallRadiusMm = one.small * one.top;
    const largeRadiusMm = smallRadiusMm * (1 + one.grow);
    const taper = largeRadiusMm - smallRadiusMm;
    const heightMm = Math.max(300, taper / Math.tan((one.halfAngle * Math.PI) / 180));
    const item = coneCase(
      { largeRadiusMm, smallRadiusMm, heightMm, thicknessMm },
      { material: one.material },
    );
    const { dropRad, armShare, stronger, hardening } = one;
    const unlike: Unlike = { dropRad, armShare, stronger, hardening, frameMm: one.frame * one.top };
    return { machine, item, unlike };
  });

describe("on rolls and plate that do not follow the model", () => {
  it("is in the window by the third setting, and no blank passes the cap", () => {
    const runs = 2000;
    const landed = [0, 0, 0];
    let past = 0;
    fc.assert(
      fc.property(jobs, ({ machine, item, unlike }) => {
        const settings = rollSettings({ item, roll: machine, say });
        const pass = settings.kind === "settings" ? settings.settings.zones[0]!.passes[0] : undefined;
        const start = pass!.start!;
        const { halfAngleRad, largeRadiusMm, smallRadiusMm } = item.cone!;
        const window = firstPass(halfAngleRad);
        const section = sectionOf(machine)!;
        const plate = plateOf(item);
        /** The blank's closure when the large edge is set here and the tilt kept: the mean bend over the slant, by Simpson. */
        const closedAt = (settingMm: number) => {
          const places = [
            [1, settingMm, largeRadiusMm],
            [4, settingMm + start.middleMm - start.largeMm, (largeRadiusMm + smallRadiusMm) / 2],
            [1, settingMm + start.smallMm - start.largeMm, smallRadiusMm],
          ] as const;
          const share = places.reduce(
            (sum, [weight, raise, level]) =>
              sum + (weight / 6) * realFree(section, plate, unlike, raise) * (level / Math.cos(halfAngleRad)),
            0,
          );
          return Math.hypot(Math.sin(halfAngleRad), share * Math.cos(halfAngleRad));
        };
        const seen: TrialSeen[] = [];
        let settingMm = start.largeMm;
        for (let i = 0; i < 3; i++) {
          const closed = closedAt(settingMm);
          if (closed > window.cap) past++;
          if (closed >= window.from && closed <= window.to) {
            landed[i]!++;
            return;
          }
          seen.push({ settingMm, closed });
          const answer = correctTrials({ item, roll: machine, say }, seen);
          if (answer.kind === "none") throw new Error(answer.why);
          settingMm = answer.correction.nextMm!;
        }
      }),
      { seed: 7, numRuns: runs },
    );
    expect(past).toBe(0);
    expect(landed.reduce((sum, count) => sum + count, 0)).toBeGreaterThanOrEqual(0.99 * runs);
    // The draw does hold machines that need every step.
    expect(Math.min(...landed)).toBeGreaterThan(0);
  }, 60000);
});

describe("the gap", () => {
  it("tells the closure that the closure table has it from", () => {
    fc.assert(
      fc.property(jobs, even(0, 1), fc.integer({ min: 1, max: 4 }), ({ item }, s, pieces) => {
        const cone = item.cone!;
        const flat = Math.sin(cone.halfAngleRad);
        const closed = Math.max(0.3, flat + 0.1) + s * (1 - Math.max(0.3, flat + 0.1));
        const { halfAngleRad, largeRadiusMm: radiusMm } = cone;
        const { thicknessMm, edges } = item;
        const { insideGapMm } = partRolled({ radiusMm, closed, halfAngleRad, thicknessMm, edges, pieces });
        expect(closedOfGap({ ...item, pieces }, cone, insideGapMm)).toBeCloseTo(closed, 9);
      }),
      { seed: 7, numRuns: 300 },
    );
  });
});

describe("in the model itself", () => {
  const machine = roll({ slide: { origin: [230, -200], angle: 60, travel: 300 } });
  const steep = coneCase({ largeRadiusMm: 450, smallRadiusMm: 300, heightMm: 700, thicknessMm: 6 });

  it("a steep cone 45 % closed gets a next setting that lands in its window", () => {
    const { cone } = steep;
    const window = firstPass(cone!.halfAngleRad);
    const model = (closed: number) => {
      const setting = closureSetting(sectionOf(machine)!, plateOf(steep), {
        radiusMm: 375,
        halfAngleRad: cone!.halfAngleRad,
        closed,
      });
      return setting.kind === "setting" ? setting.bestMm : NaN;
    };
    // The first try stood 7 mm above the model for 45 %: this machine asks 7 mm more throughout.
    const answer = correctTrials({ item: steep, roll: machine, say }, [
      { settingMm: model(0.45) + 7, closed: 0.45 },
    ]);
    if (answer.kind === "none") throw new Error(answer.why);
    expect(answer.correction.kind).toBe("raise");
    const landed = answer.correction.nextMm! - 7;
    expect(landed).toBeGreaterThan(model(window.from));
    expect(landed).toBeLessThan(model(window.to));
  });

  it("says when it is done, and gives a blank closed too far no further raise", () => {
    const after = (closed: number) => {
      const answer = correctTrials({ item: steep, roll: machine, say }, [{ settingMm: 40, closed }]);
      if (answer.kind === "none") throw new Error(answer.why);
      return answer.correction;
    };
    expect(after(0.72)).toMatchObject({ kind: "done", nextMm: null });
    expect(after(0.72).advice).toMatch(/keep the setting of 40 mm for the lot/);
    expect(after(0.83)).toMatchObject({ kind: "overshot" });
    expect(after(0.83).nextMm).toBeLessThan(40);
    expect(after(0.83).advice).toMatch(/no further raise on this blank/);
    expect(after(0.9).advice).toMatch(/past its cap of 85 %/);
  });

  it("has no answer where there is no closure or no slide", () => {
    const seen = [{ settingMm: 40, closed: 0.5 }];
    expect(correctTrials({ item: steep, roll: roll(), say }, seen)).toMatchObject({ kind: "none" });
    expect(correctTrials({ item: coneless(steep), roll: machine, say }, seen)).toMatchObject({
      kind: "none",
    });
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { closureSetting } from "../../src/forming/closureSetting.ts";
import {
  flatContact,
  insideRadiusAtMm,
  raiseMm,
  rollSetting,
  type RollSection,
  sectionOf,
} from "../../src/forming/rollSetting.ts";
import { freeRadiusMm, widePlate, yieldBand } from "../../src/forming/springback.ts";
import { roll, RUNS, s235 } from "./cases.ts";
import { even } from "../even.ts";

/** Any initial-pinch section whose slide origin lies under a flat plate of some rated thickness. */
const bending = fc
  .record({
    topRadiusMm: even(40, 300),
    bendingRadiusMm: even(40, 300),
    across: even(1.05, 1.6),
    rated: even(2, 25),
    angleRad: even(0.5, Math.PI / 2),
    thin: even(0.2, 1),
    bend: even(0, 1),
  })
  .map(({ topRadiusMm, bendingRadiusMm, across, rated, angleRad, thin, bend }) => {
    const section: RollSection = {
      topRadiusMm,
      bendingRadiusMm,
      originMm: [across * (topRadiusMm + bendingRadiusMm), -(topRadiusMm + rated + bendingRadiusMm)],
      angleRad,
      travelMm: 1000,
    };
    const thicknessMm = thin * rated;
    const { acrossMm } = flatContact(section, thicknessMm);
    // The tightest bend that the slide touches, and gentler ones from it.
    const tightest = Math.max(topRadiusMm, acrossMm * Math.tan(angleRad / 2) - thicknessMm - bendingRadiusMm);
    return { section, thicknessMm, insideRadiusMm: (tightest * 1.001) / (1 - 0.99 * bend) };
  });

/** Centre of the bending roll after a raise from the flat plate. */
function centre(section: RollSection, thicknessMm: number, raise: number): readonly [number, number] {
  const up = flatContact(section, thicknessMm).upMm + raise;
  return [
    section.originMm[0] - up * Math.cos(section.angleRad),
    section.originMm[1] + up * Math.sin(section.angleRad),
  ];
}

/** Clear distance between a plate bent to this inside radius, laid out point by point, and the bending roll. */
function clearance(
  bend: { section: RollSection; thicknessMm: number; insideRadiusMm: number },
  raise: number,
): number {
  const { section, thicknessMm, insideRadiusMm } = bend;
  const [x, y] = centre(section, thicknessMm, raise);
  const outside = insideRadiusMm + thicknessMm;
  // The plate leaves the pinch level, at the foot of the top roll, and curls up.
  const point = (turn: number) =>
    [outside * Math.sin(turn), insideRadiusMm - section.topRadiusMm - outside * Math.cos(turn)] as const;
  const away = (turn: number) => Math.hypot(point(turn)[0] - x, point(turn)[1] - y);
  let [from, to] = [0, Math.PI];
  for (let i = 0; i < 200; i++) {
    const [one, two] = [from + (to - from) / 3, to - (to - from) / 3];
    if (away(one) < away(two)) to = two;
    else from = one;
  }
  return away(from) - section.bendingRadiusMm;
}

describe("the raise of the bending roll", () => {
  it("brings it to touch the bent plate, and no raise before that does", () => {
    fc.assert(
      fc.property(bending, (bend) => {
        const raise = raiseMm(bend.section, bend)!;
        expect(raise).toBeGreaterThan(0);
        expect(Math.abs(clearance(bend, raise))).toBeLessThan(1e-5);
        for (const share of [0, 0.3, 0.7, 0.95]) expect(clearance(bend, share * raise)).toBeGreaterThan(0);
      }),
      RUNS,
    );
  });

  it("has its way back", () => {
    fc.assert(
      fc.property(bending, (bend) => {
        const raise = raiseMm(bend.section, bend)!;
        const back = insideRadiusAtMm(bend.section, { raiseMm: raise, thicknessMm: bend.thicknessMm });
        expect(Math.abs(back / bend.insideRadiusMm - 1)).toBeLessThan(1e-9);
      }),
      RUNS,
    );
    const section = sectionOf(roll({ slide: { origin: [230, -200], angle: 60, travel: 300 } }))!;
    const thicknessMm = 6;
    expect(raiseMm(section, { insideRadiusMm: Infinity, thicknessMm })).toBe(0);
    expect(insideRadiusAtMm(section, { raiseMm: 0, thicknessMm })).toBe(Infinity);
  });

  it("is refused where the slide never touches such a bend", () => {
    // A slide at 60° from 400 across: no bend tighter than 400 tan 30° − t − b touches it.
    const section: RollSection = {
      topRadiusMm: 60,
      bendingRadiusMm: 50,
      originMm: [400, -116],
      angleRad: Math.PI / 3,
      travelMm: 500,
    };
    const least = 400 * Math.tan(Math.PI / 6) - 6 - 50;
    expect(raiseMm(section, { insideRadiusMm: least + 0.01, thicknessMm: 6 })).not.toBeNull();
    expect(raiseMm(section, { insideRadiusMm: least - 0.01, thicknessMm: 6 })).toBeNull();
  });

  it("starts where the roll touches the flat plate, whatever its thickness", () => {
    const section = sectionOf(roll({ slide: { origin: [200, -200], angle: 60, travel: 300 } }))!;
    expect(flatContact(section, 10).upMm).toBeCloseTo(0, 12);
    const thin = flatContact(section, 4);
    expect(thin.upMm * Math.sin(Math.PI / 3)).toBeCloseTo(6, 12);
    expect(centre(section, 4, 0)[1]).toBeCloseTo(-(100 + 4 + 90), 12);
    expect(thin.acrossMm).toBeLessThan(200);
  });
});

it("takes a section only from an initial-pinch roll that gives a slide that rises", () => {
  const slide = { origin: [200, -200] as [number, number], angle: 60, travel: 300 };
  expect(sectionOf(roll())).toBeNull();
  expect(sectionOf(roll({ slide, arrangement: "four-roll" }))).toBeNull();
  expect(sectionOf(roll({ slide: { ...slide, angle: 0 } }))).toBeNull();
  expect(sectionOf(roll({ slide }))).toEqual({
    topRadiusMm: 100,
    bendingRadiusMm: 90,
    originMm: [200, -200],
    angleRad: Math.PI / 3,
    travelMm: 300,
  });
});

describe("the setting", () => {
  const section = sectionOf(roll({ slide: { origin: [230, -200], angle: 60, travel: 300 } }))!;
  const plate = widePlate(6, s235, 235);

  it("lies two thirds of the way from the free to the loaded curvature, both bent in truth by that radius", () => {
    const setting = rollSetting(section, plate, 400);
    if (setting.kind !== "setting") throw new Error(setting.why);
    const middle = (raise: number) => insideRadiusAtMm(section, { raiseMm: raise, thicknessMm: 6 }) + 3;
    expect(middle(setting.lowMm)).toBeCloseTo(400, 8);
    expect(freeRadiusMm(middle(setting.highMm), plate)).toBeCloseTo(400, 8);
    expect((setting.bestMm - setting.lowMm) / (setting.highMm - setting.lowMm)).toBeCloseTo(2 / 3, 12);
  });

  it("rises with the bend and with the strength of the plate", () => {
    const best = (radius: number, one = plate) => {
      const setting = rollSetting(section, one, radius);
      return setting.kind === "setting" ? setting.bestMm : NaN;
    };
    expect(best(300)).toBeGreaterThan(best(400));
    expect(best(400)).toBeGreaterThan(best(Infinity));
    expect(best(Infinity)).toBeGreaterThan(0);
    expect(best(400, yieldBand(plate)[1])).toBeGreaterThan(best(400));
  });

  it("is refused tighter than the top roll, and beyond the slide's travel", () => {
    expect(rollSetting(section, plate, 100)).toEqual({ kind: "refused", why: "tighter than the top roll" });
    const short = { ...section, travelMm: 60 };
    expect(rollSetting(short, plate, 200)).toEqual({ kind: "refused", why: "out of reach of the slide" });
    expect(rollSetting(short, plate, 2000).kind).toBe("setting");
  });

  it("for a closure is that of the radius square to the element, and flat below the flat blank's own", () => {
    const cone = { radiusMm: 400, halfAngleRad: Math.PI / 6 };
    const [closed, square] = [
      closureSetting(section, plate, { ...cone, closed: 1 }),
      rollSetting(section, plate, 400 / Math.cos(Math.PI / 6)),
    ];
    if (closed.kind !== "setting" || square.kind !== "setting") throw new Error("refused");
    expect(closed.bestMm).toBeCloseTo(square.bestMm, 9);
    expect(closureSetting(section, plate, { ...cone, closed: 0.4 })).toEqual(
      rollSetting(section, plate, Infinity),
    );
  });
});

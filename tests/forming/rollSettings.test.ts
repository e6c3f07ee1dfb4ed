import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formingOf } from "../../src/forming/forming.ts";
import type { PlateRoll } from "../../src/forming/machine.ts";
import { passPoints } from "../../src/forming/passPoints.ts";
import { insideRadiusAtMm, sectionOf } from "../../src/forming/rollSetting.ts";
import { type RollSettings, rollSettings } from "../../src/forming/rollSettings.ts";
import { freeRadiusMm, plateOf } from "../../src/forming/springback.ts";
import { sayIn } from "../../src/forming/say.ts";
import { even } from "../even.ts";
import { coneCase, coneless, hood, reducer, roll, RUNS, shop } from "./cases.ts";

const slide = { origin: [230, -200] as [number, number], angle: 60, travel: 300, greatestTilt: 8 };
const machine = roll({
  // Room enough for the stop to stand as near as it goes.
  coneAttachment: { range: [0, 300] },
  slide,
  bearings: [140, 160],
  rolls: { topDiameter: 200, pinchDiameter: 170, bendingDiameter: 180 },
});
const say = sayIn("mm");

function settingsOf(item = coneCase(reducer), one: PlateRoll = machine): RollSettings {
  const answer = rollSettings({ item, roll: one, say });
  if (answer.kind === "none") throw new Error(answer.why);
  return answer.settings;
}

describe("the settings of a right cone", () => {
  it("spring back to each end's own radius, at every moment of both passes", () => {
    const cones = fc.record({ small: even(200, 500), extra: even(20, 300), height: even(300, 900) });
    fc.assert(
      fc.property(cones, ({ small, extra, height }) => {
        const item = coneCase({
          largeRadiusMm: small + extra,
          smallRadiusMm: small,
          heightMm: height,
          thicknessMm: 6,
        });
        const plate = plateOf(item);
        const section = sectionOf(machine)!;
        const { zones } = settingsOf(item);
        expect(zones).toHaveLength(1);
        const { halfAngleRad } = item.cone!;
        for (const { closed, large, small: end } of zones[0]!.passes)
          for (const [place, level] of [
            [large, small + extra],
            [end, small],
          ] as const) {
            // Rolled on from the high setting, by the way back of the geometry and the forward cubic.
            const loaded =
              insideRadiusAtMm(section, { raiseMm: place.highMm!, thicknessMm: 6 }) + plate.thicknessMm / 2;
            const wanted = level / Math.sqrt(closed! ** 2 - Math.sin(halfAngleRad) ** 2);
            expect(freeRadiusMm(loaded, plate) / wanted).toBeCloseTo(1, 7);
          }
      }),
      RUNS,
    );
  });

  it("begin below what both ends ask, by the overbend of the middle, on one line from bearing to bearing", () => {
    const { zones, stopMm } = settingsOf();
    const { passes, slantMm } = zones[0]!;
    expect(stopMm).toBe(0);
    for (const { id, start, large, middle, small } of passes) {
      // The job turned round for the second pass, the small edge stands at the fixed end.
      const [near, far] = id === "finished" ? [160, 140] : [140, 160];
      // Half the slant gets what it needs by itself; the ends keep their proportion and are a little open.
      expect(start!.middleMm).toBeCloseTo(middle.bestMm!, 9);
      expect((start!.largeMm + start!.smallMm) / 2).toBeCloseTo(middle.bestMm!, 9);
      expect(start!.smallMm / start!.largeMm).toBeCloseTo(small.bestMm! / large.bestMm!, 9);
      expect(start!.middleOverbend).toBeGreaterThan(1);
      expect(start!.middleOverbend).toBeLessThan((450 / 200 + 1) ** 2 / (4 * (450 / 200)));
      const slope = Math.tan((start!.tiltDeg * Math.PI) / 180);
      expect(start!.smallMm - start!.largeMm).toBeCloseTo(slope * slantMm, 9);
      expect(start!.smallBearingMm! - start!.smallMm).toBeCloseTo(slope * near, 9);
      expect(start!.largeMm - start!.largeBearingMm!).toBeCloseTo(slope * (2000 - slantMm + far), 9);
    }
  });

  it("rise from the start of the window to the closed cone", () => {
    const { passes } = settingsOf().zones[0]!;
    expect(passes.map(({ id }) => id)).toEqual(["trial", "start", "aim", "end", "finished"]);
    const rise = passes.map(({ start }) => start!.middleMm);
    expect(rise).toEqual(rise.toSorted((a, b) => a - b));
    expect(new Set(rise).size).toBe(5);
  });

  it("say what the slide, the tilt and the pinch roll do not allow", () => {
    const problems = (more: Partial<PlateRoll>) =>
      settingsOf(coneCase(reducer), { ...machine, ...more })
        .zones[0]!.passes.at(-1)!
        .problems.map(({ words }) => words)
        .join(" ");
    expect(problems({ slide: { ...slide, origin: [230, -220] } })).toBe("");
    expect(problems({ slide: { ...slide, travel: 60 } })).toMatch(/out of reach of the slide/);
    expect(problems({ bearings: [140, 9000] })).toMatch(/beyond the slide's travel/);
    expect(problems({ slide: { ...slide, greatestTilt: 1 } })).toMatch(/more than the roll's greatest, 1°/);
    expect(problems({})).toMatch(/below the origin of the slide/);
    expect(problems({ rolls: { topDiameter: 200, pinchDiameter: 280, bendingDiameter: 180 } })).toMatch(
      /run into the pinch roll/,
    );
  });

  it("tell the most tilt that goes where both ends ask for more: one limit is reached, none passed, the large edge kept", () => {
    const lower = (more: Partial<PlateRoll>) =>
      settingsOf(coneCase(reducer), { ...machine, ...more }).zones[0]!.passes.at(-1)!;
    const high = { ...slide, origin: [230, -220] as [number, number] };
    expect(lower({ slide: high }).lessTilt).toBeNull();
    const tilted = lower({ slide: { ...high, greatestTilt: 1 } });
    expect(tilted.lessTilt!.tiltDeg).toBeCloseTo(1, 4);
    expect(tilted.lessTilt!.largeMm).toBe(tilted.start!.largeMm);
    // The lower bearing at the slide's own lower end: the flat plate's contact is at −(100 + 6 + 90).
    const low = lower({ slide: { ...slide, below: 0.5 } });
    const upMm = (-196 - slide.origin[1]) / Math.sin((slide.angle * Math.PI) / 180);
    expect(low.start!.largeBearingMm).toBeLessThan(-upMm - 0.5);
    expect(low.lessTilt!.largeBearingMm).toBeCloseTo(-upMm - 0.5, 3);
    // A straight roll: all places on one line through the large edge.
    const { largeMm, smallMm, smallBearingMm, largeBearingMm } = low.lessTilt!;
    const share = (smallMm - largeMm) / (low.start!.smallMm - low.start!.largeMm);
    for (const [less, full] of [
      [smallBearingMm!, low.start!.smallBearingMm!],
      [largeBearingMm!, low.start!.largeBearingMm!],
    ] as const)
      expect(less - largeMm).toBeCloseTo(share * (full - low.start!.largeMm), 6);
  });

  it("leave clear of the pinch roll what two circles laid out by their centres leave", () => {
    const { passes } = settingsOf(coneCase({ ...reducer, smallRadiusMm: 450 })).zones[0]!;
    const { start, pinchClearMm, travelLeftMm } = passes[4]!;
    // 190 + 6 below the top roll's centre is the flat plate's contact, the roll 4 mm up from its origin by sin 60°.
    const up = (200 - 196) / Math.sin(Math.PI / 3) + start!.middleMm;
    const bending = [230 - up / 2, -200 + up * Math.sin(Math.PI / 3)] as const;
    const apart = Math.hypot(bending[0], bending[1] + 100 + 6 + 85);
    expect(pinchClearMm).toBeCloseTo(apart - 90 - 85, 9);
    expect(travelLeftMm).toBeCloseTo(300 - up, 9);
    expect(start!.tiltDeg).toBe(0);
  });
});

it("goes by the share of the bend where the skin is curved unevenly, zone by zone, each its own radius", () => {
  const samples = Array.from({ length: 72 }, (_, i) => {
    const radius = 400 * (1 + 0.4 * Math.cos((i * Math.PI) / 36));
    return { planDeg: (90 + 5 * i) % 360, largeRadiusMm: radius, smallRadiusMm: radius / 2, slantMm: 600 };
  });
  const item = { ...coneless(coneCase(reducer)), shape: "eccentric-cone" as const, curvature: samples };
  const { zones } = settingsOf(item);
  expect(zones.length).toBeGreaterThan(3);
  expect(zones[0]!.fromDeg).toBe(90);
  expect(zones.at(-1)!.toDeg).toBe(450);
  zones.slice(1).forEach((zone, i) => expect(zone.fromDeg).toBe(zones[i]!.toDeg));
  for (const zone of zones) {
    expect(zone.spread).toBeLessThanOrEqual(1.25);
    const held = samples.filter(({ planDeg }) =>
      [planDeg, planDeg + 360].some((at) => at >= zone.fromDeg && at <= zone.toDeg),
    );
    const radii = held.map(({ largeRadiusMm }) => largeRadiusMm);
    expect(zone.largeRadiusMm).toBeGreaterThanOrEqual(Math.min(...radii));
    expect(zone.largeRadiusMm).toBeLessThanOrEqual(Math.max(...radii));
    // As the right cone of the same rims and slant, whose curvature is even; the first trial of zones from further below.
    const [trial, ...shares] = passPoints(coneCase(reducer)).map(({ share }) => share);
    expect(zone.passes.map(({ share }) => share)).toEqual(
      [(trial! * 0.8) / 0.85, ...shares].map((share) => expect.closeTo(share, 9) as number),
    );
    expect(zone.passes[1]!.large.freeMm).toBeCloseTo(zone.largeRadiusMm / 0.6, 9);
  }
});

describe("no settings", () => {
  it.each(["double-pinch", "pyramid", "four-roll"] as const)("on a %s machine, and why", (arrangement) => {
    const [plan] = formingOf(coneCase(reducer), shop([{ ...machine, arrangement }])).plans;
    expect(plan).toMatchObject({ machine: "Roll", route: "roll", settings: null });
    expect(plan!.noSettings).toMatch(/no sound model/);
  });

  it("where the shop does not give the slide, where there is no shop, and on a brake", () => {
    const item = coneCase(reducer);
    expect(formingOf(item, shop([roll()])).plans[0]!.noSettings).toMatch(/does not give the slide/);
    expect(formingOf(item).plans).toMatchObject([{ machine: null, route: "roll" }]);
    expect(formingOf(item).plans[0]!.noSettings).toMatch(/no shop file/);
    expect(formingOf(hood).plans).toMatchObject([{ machine: null, route: "brake", noSettings: null }]);
  });

  it("and no plan at all on a machine that refuses the part", () => {
    expect(formingOf(coneCase(reducer), shop([roll({ workingWidth: 300 }), machine])).plans).toHaveLength(1);
    expect(formingOf(hood, shop([machine])).plans).toEqual([]);
  });
});

it("asks the window of the first pass, by closure and by share", () => {
  const points = passPoints(coneCase({ ...reducer, smallRadiusMm: 450 }));
  [0.5525, 0.65, 0.725, 0.8, 1].forEach((at, i) => {
    expect(points[i]!.closed).toBeCloseTo(at, 12);
    expect(points[i]!.share).toBeCloseTo(at, 12);
  });
  expect(passPoints(coneless(coneCase(reducer))).map(({ closed }) => closed)).toEqual([
    null,
    null,
    null,
    null,
    null,
  ]);
});

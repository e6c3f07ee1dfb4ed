import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { impossibleAny } from "../../src/forming/impossibleAny.ts";
import { correctTold } from "../../src/forming/correctTold.ts";
import { bearingsOf, settleSet } from "../../src/forming/bearingsRead.ts";
import { firstPass } from "../../src/forming/firstPass.ts";
import { edgeOfBearings, type RollPlaces } from "../../src/forming/rollPlaces.ts";
import { rollSettings } from "../../src/forming/rollSettings.ts";
import { sayIn } from "../../src/forming/say.ts";
import { sumOf } from "../../src/forming/setWords.ts";
import { isPipe } from "../../src/forming/skin.ts";
import { type AnyTold, settleTrials } from "../../src/forming/settleTrials.ts";
import { triedOn } from "../../src/forming/tried.ts";
import { even } from "../even.ts";
import { coneCase, roll } from "./cases.ts";
import type { startOf } from "./simulatedJobs.ts";
import { closedAt, jobs } from "./simulatedJobs.ts";

const say = sayIn("mm");
const ROLL = roll({
  workingWidth: 2500,
  rating: { thickness: 10, yieldMPa: 250 },
  rolls: { topDiameter: 240, bendingDiameter: 220 },
  slide: { origin: [250, -240], angle: 60, travel: 300, below: 60 },
  bearings: [320, 360],
  coneAttachment: { range: [50, 300] },
});
const CONE = coneCase({ largeRadiusMm: 600, smallRadiusMm: 350, heightMm: 700, thicknessMm: 6 });
const ASKED = { item: CONE, roll: ROLL, say };

function planStart() {
  const answer = rollSettings(ASKED);
  if (answer.kind === "none") throw new Error(answer.why);
  return answer.settings.zones[0]!.passes.find(({ id }) => id === "trial")!.start!;
}
const START = planStart();
const PLAN = { dropMm: START.smallBearingMm!, fixedMm: START.largeBearingMm! };

function settled(told: Parameters<typeof settleSet>[1]) {
  const answer = settleSet(ASKED, told);
  if (typeof answer === "string") throw new Error(answer);
  return { ...answer, sum: told.bearings ? sumOf(ASKED, told.bearings) : "" };
}
function corrected(told: readonly AnyTold[], asked = ASKED) {
  const answer = correctTold(asked, told);
  if (answer.kind !== "correction") throw new Error(JSON.stringify(answer));
  return answer.correction;
}

describe("both bearings as they were read", () => {
  it("have the shares that the sheet tells, and come to the plan's own raise at the plan's own numbers", () => {
    const { shares } = bearingsOf(ASKED)!;
    expect(edgeOfBearings(START)).toContain(`is ${shares.large} × that at the drop end`);
    const { settingMm, tiltMm } = settled({ bearings: PLAN });
    // Shares are told to a thousandth.
    expect(Math.abs(settingMm - START.largeMm)).toBeLessThan(0.0006 * (PLAN.dropMm - PLAN.fixedMm));
    expect(tiltMm).toBeCloseTo(0, 9);
  });

  it("are the same from 0 and from what the scales show on the flat plate, and the sum can be done again", () => {
    const { settingMm, sum } = settled({ bearings: { dropMm: 60, fixedMm: 12 } });
    const scales = settled({ bearings: { dropMm: 210, fixedMm: 163, dropAt0Mm: 150, fixedAt0Mm: 151 } });
    expect(scales.settingMm).toBeCloseTo(settingMm, 9);
    expect(scales.sum).toContain("drop end 210 − 150 = 60 mm, fixed end 163 − 151 = 12 mm; ");
    const [, drop, fixed, edge] = /([\d.]+) × 60 \+ ([\d.]+) × 12 = ([\d.]+) mm at the large edge/.exec(sum)!;
    expect(Number(drop) * 60 + Number(fixed) * 12).toBeCloseTo(Number(edge), 1);
    expect(Number(drop) + Number(fixed)).toBeCloseTo(1, 9);
    expect(Number(edge)).toBeCloseTo(settingMm, 1);
  });

  it("answer as the raise at the large edge does, where they have the plan's tilt", () => {
    const byEdge = corrected([{ settingMm: START.largeMm, gapMm: 1900 }]);
    const byBearings = corrected([{ bearings: PLAN, gapMm: 1900 }]);
    expect(byBearings.nextMm).toBeCloseTo(byEdge.nextMm!, 1);
    expect(byEdge.bearings).toBeNull();
    const { set, words } = byBearings.bearings!;
    expect(set!.dropMm).toBeCloseTo(byEdge.next!.smallBearingMm!, 1);
    expect(set!.fixedMm).toBeCloseTo(byEdge.next!.largeBearingMm!, 1);
    expect(set!.dropScaleMm).toBeNull();
    expect(words).not.toContain("tilt");
  });

  it("say how far their tilt is off the plan's, keep it, and tell what the scales then show", () => {
    const bearings = {
      dropMm: 153 + PLAN.dropMm,
      fixedMm: 148 + PLAN.fixedMm,
      dropAt0Mm: 150,
      fixedAt0Mm: 150,
    };
    const { bearings: next, advice, next: places, nextMm } = corrected([{ bearings, gapMm: 1900 }]);
    expect(next!.tiltMm).toBeCloseTo(5, 9);
    expect(advice).toContain("That is more tilt than the plan's, by 5 mm from bearing to bearing");
    const { dropMm, fixedMm, dropScaleMm, fixedScaleMm } = next!.set!;
    // Both bearings move by as much.
    expect(dropMm - (PLAN.dropMm + 3)).toBeCloseTo(fixedMm - (PLAN.fixedMm - 2), 9);
    expect(dropScaleMm).toBeCloseTo(150 + dropMm, 9);
    expect(fixedScaleMm).toBeCloseTo(150 + fixedMm, 9);
    expect(advice).toMatch(/from 0: drop end [\d.]+ mm, fixed end [\d.]+ mm; the scales then show/);
    // The roll is straight.
    const { shares } = bearingsOf(ASKED)!;
    const along = (share: number) => share * dropMm + (1 - share) * fixedMm;
    expect(places!.largeMm).toBeCloseTo(along(shares.large), 1);
    expect(places!.smallMm).toBeCloseTo(along(shares.small), 1);
    expect(nextMm).toBe(places!.largeMm);
    const other = { dropMm: PLAN.fixedMm, fixedMm: PLAN.fixedMm + 2 };
    expect(corrected([{ bearings: other, flat: true }]).advice).toContain(
      "a tilt the other way than the plan's",
    );
    const less = corrected([{ bearings: { dropMm: PLAN.dropMm - 3, fixedMm: PLAN.fixedMm }, gapMm: 1900 }]);
    expect(less.advice).toContain("less tilt than the plan's, by 3 mm");
  });

  it("keep their tilt through trials that tell the large edge alone", () => {
    const bearings = { dropMm: PLAN.dropMm + 3, fixedMm: PLAN.fixedMm - 2 };
    const answer = settleTrials(ASKED, [
      { settingMm: 20, gapMm: 1900 },
      { bearings, gapMm: 1700 },
      { settingMm: 30, gapMm: 1500 },
    ]);
    const tilts = answer.kind === "settled" ? answer.seen.map(({ tiltMm }) => tiltMm) : [];
    expect(tilts[0]).toBeUndefined();
    expect(tilts[1]).toBeCloseTo(5, 9);
    expect(tilts[2]).toBeCloseTo(5, 9);
  });

  it("put on the next blank's sheet what both bearings are set to", () => {
    const bearings = { dropMm: PLAN.dropMm + 3, fixedMm: PLAN.fixedMm - 2 };
    const seen = [{ bearings, gapMm: 1900 }];
    const tried = triedOn(ASKED, { machine: ROLL.name, seen, settle: settleTrials })!;
    expect(tried.set!.smallBearingMm).toBeCloseTo(corrected(seen).bearings!.set!.dropMm, 9);
  });
});

describe("what cannot be taken", () => {
  it.each<[string, AnyTold, RegExp]>([
    [
      "a raise that is another",
      { settingMm: 50, bearings: PLAN, flat: true },
      /50 mm is not what the two bearings come to \(.* at the large edge\); leave out/,
    ],
    [
      "readings without their 0",
      { bearings: { dropMm: -10, fixedMm: -12 }, flat: true },
      /no raise at the large edge .*dropAt0 and fixedAt0/,
    ],
    [
      "scales exchanged",
      { bearings: { dropMm: PLAN.fixedMm, fixedMm: PLAN.dropMm }, gapMm: 1900 },
      /stands below the fixed end .* look whether the two scales are exchanged/,
    ],
    ["neither", { flat: true }, /neither a raise nor two bearings; give setting, or drop and fixed/],
  ])("is told: %s", (_, told, why) => {
    expect(impossibleAny(ASKED, told)).toMatch(why);
    const answer = correctTold(ASKED, [{ settingMm: 20, gapMm: 1900 }, told]);
    expect(answer).toMatchObject({ kind: "none", wrong: { at: 1 } });
    expect(answer.kind === "none" && answer.why).toMatch(/^trial 2: /);
  });

  it("is no disagreement where raise and bearings differ by a rounding alone", () => {
    const settingMm = Math.round(START.largeMm * 10) / 10;
    const bearings = {
      dropMm: Math.round(PLAN.dropMm * 10) / 10,
      fixedMm: Math.round(PLAN.fixedMm * 10) / 10,
    };
    expect(impossibleAny(ASKED, { settingMm, bearings, flat: true })).toBeNull();
  });

  it("is a shop without bearings, and a pipe that stands askew", () => {
    const bare = Object.fromEntries(
      Object.entries(ROLL).filter(([key]) => key !== "bearings"),
    ) as unknown as typeof ROLL;
    expect(impossibleAny({ ...ASKED, roll: bare }, { bearings: PLAN, flat: true })).toContain(
      "give bearings in the shop file",
    );
    const pipe = coneCase({ largeRadiusMm: 400, smallRadiusMm: 400, heightMm: 700, thicknessMm: 6 });
    const asked = { ...ASKED, item: pipe };
    expect(impossibleAny(asked, { bearings: { dropMm: 30, fixedMm: 26 }, flat: true })).toContain(
      "set both bearings alike",
    );
    expect(settleSet(asked, { bearings: { dropMm: 30, fixedMm: 30.4 } })).toMatchObject({
      settingMm: 30.2,
      tiltMm: 0,
    });
  });
});

describe("on rolls and plate that do not follow the model, set at another tilt than the plan's", () => {
  /** The plan's start turned as these places are. */
  const turned = (
    start: NonNullable<ReturnType<typeof startOf>["start"]>,
    { largeMm, smallMm }: RollPlaces,
  ) => ({
    ...start,
    largeMm,
    smallMm,
    middleMm: (largeMm + smallMm) / 2,
  });
  it("is in the window by the third setting, and no blank passes the cap", () => {
    const cones = jobs.filter(({ item }) => !isPipe(item));
    const runs = 800;
    const landed = [0, 0, 0];
    let past = 0;
    fc.assert(
      fc.property(cones, even(-0.3, 0.3), (job, off) => {
        const asked = {
          item: job.item,
          roll: { ...job.machine, bearings: [200, 250] as [number, number] },
          say,
        };
        const answer = rollSettings(asked);
        if (answer.kind === "none") throw new Error(answer.why);
        const { start } = answer.settings.zones[0]!.passes.find(({ id }) => id === "trial")!;
        const { shares } = bearingsOf(asked)!;
        const window = firstPass(job.item.cone!.halfAngleRad);
        // So much of the raise at half the slant is turned about it, from edge to edge.
        // A cone whose small end stands lower was read with its scales exchanged, and is not taken.
        const edge = Math.max(off * start!.middleMm, 1.4 * (start!.largeMm - start!.smallMm));
        const span = edge / (shares.small - shares.large);
        const told: AnyTold[] = [];
        let places: RollPlaces = {
          ...start!,
          smallBearingMm: start!.smallBearingMm! + span * (1 - shares.middle),
          largeBearingMm: start!.largeBearingMm! - span * shares.middle,
          largeMm: start!.largeMm - edge / 2,
          smallMm: start!.smallMm + edge / 2,
        };
        for (let i = 0; i < 3; i++) {
          const closed = closedAt(job, turned(start!, places), places.largeMm);
          if (closed > window.cap) past++;
          if (closed >= window.from && closed <= window.to) {
            landed[i]!++;
            return;
          }
          told.push({
            bearings: { dropMm: places.smallBearingMm!, fixedMm: places.largeBearingMm! },
            closed,
          });
          places = corrected(told, asked).next!;
        }
      }),
      { seed: 7, numRuns: runs },
    );
    expect(past).toBe(0);
    expect(landed.reduce((sum, count) => sum + count, 0)).toBeGreaterThanOrEqual(0.99 * runs);
    expect(Math.min(...landed)).toBeGreaterThan(0);
  }, 60_000);
});

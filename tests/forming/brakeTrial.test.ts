import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type AirBendGeometry,
  angleOfDepth,
  type BrakeTrial,
  depthOfAngle,
  mostLoadedDeg,
  nextDepths,
} from "../../src/forming/brakeTrial.ts";
import { runs } from "../arbitraries.ts";
import { even } from "../even.ts";

const DIE: AirBendGeometry = { dieMm: 100, thicknessMm: 8, insideRadiusMm: 16 };

const geometries = fc
  .record({ thicknessMm: even(2, 20), times: even(6, 12), shoulder: even(0, 0.1), inside: even(0.1, 0.2) })
  .map(({ thicknessMm, times, shoulder, inside }): AirBendGeometry => {
    const dieMm = times * thicknessMm;
    return { dieMm, thicknessMm, insideRadiusMm: inside * dieMm, shoulderMm: shoulder * dieMm };
  });

describe("the geometry of an air bend", () => {
  it("is the tangent of half the angle where plate, punch and edges are sharp", () => {
    const sharp = { dieMm: 100, thicknessMm: 0, insideRadiusMm: 0 };
    // A right angle over a V of 100 lies 50 deep.
    expect(depthOfAngle(sharp, 90)).toBeCloseTo(50, 9);
    expect(depthOfAngle(sharp, 60)).toBeCloseTo(50 / Math.sqrt(3), 9);
    expect(depthOfAngle(DIE, 90)).toBeCloseTo(50 - 24 * (Math.SQRT2 - 1), 9);
  });

  it("lays the side of the plate tangent to the punch's arc and to the shoulder's", () => {
    fc.assert(
      fc.property(geometries, even(0.05, 0.95), (geometry, share) => {
        const deg = share * mostLoadedDeg(geometry);
        const depth = depthOfAngle(geometry, deg);
        const half = (deg * Math.PI) / 360;
        const { dieMm, thicknessMm, insideRadiusMm, shoulderMm = 0 } = geometry;
        // The plate's underside, through the bottom of its arc about the punch; distances to both centres.
        const outside = insideRadiusMm + thicknessMm;
        const normal = [-Math.sin(half), Math.cos(half)] as const;
        const off = (x: number, y: number) => x * normal[0] + y * normal[1];
        const line = off(0, outside - depth) - outside;
        expect(off(dieMm / 2, -shoulderMm) + shoulderMm).toBeCloseTo(line, 9);
      }),
      runs(200),
    );
  });

  it("has a way back, and none beyond what the die bends in air", () => {
    fc.assert(
      fc.property(geometries, even(0, 1), (geometry, share) => {
        const deg = share * mostLoadedDeg(geometry);
        expect(angleOfDepth(geometry, depthOfAngle(geometry, deg))).toBeCloseTo(deg, 6);
      }),
      runs(200),
    );
    expect(() => angleOfDepth(DIE, -1)).toThrow(RangeError);
    expect(() => angleOfDepth(DIE, 60)).toThrow(RangeError);
  });
});

/** What a real brake and plate do otherwise. */
const brakes = fc.record({
  geometry: geometries,
  /** Springback: so many degrees at the least, and so many more for each degree. */
  sprang: even(0.3, 3),
  sprangMore: even(0, 0.06),
  shoulder: even(0, 0.12),
  inside: even(0.7, 1.5),
  opening: even(0.98, 1.03),
  /** The frame yields with the force, which is all there once the plate is plastic. */
  frame: even(0, 0.01),
  /** Where the punch was thought to touch. */
  touch: even(-0.003, 0.003),
  wanted: even(0.05, 0.7),
  first: even(0.6, 1.1),
});

/** Degrees under load in which the force rises to all there is. */
const PLASTIC_DEG = 3;

type Brake = typeof brakes extends fc.Arbitrary<infer One> ? One : never;

/** What comes out of a ram depth on such a brake. */
function cameOut(one: Brake, depthMm: number): number {
  const { dieMm, thicknessMm, insideRadiusMm } = one.geometry;
  const real = {
    dieMm: one.opening * dieMm,
    thicknessMm,
    insideRadiusMm: one.inside * insideRadiusMm,
    shoulderMm: one.shoulder * dieMm,
  };
  let [low, high] = [0, 120];
  for (let i = 0; i < 60; i++) {
    const at = (low + high) / 2;
    const force = 1 - Math.exp(-at / PLASTIC_DEG);
    if (depthOfAngle(real, at) + one.frame * dieMm * force + one.touch * dieMm < depthMm) low = at;
    else high = at;
  }
  const elastic = one.sprang * (1 - Math.exp(-low / PLASTIC_DEG));
  return Math.max(0, low - elastic - one.sprangMore * low);
}

describe("on brakes that do not follow the model", () => {
  it("lands the next hit nearer, and the one after nearer still", () => {
    const numRuns = 2000;
    let [tried, nearer, third, close] = [0, 0, 0, 0];
    fc.assert(
      fc.property(brakes, (one) => {
        // Nobody knows the shoulders of this die.
        const known = { ...one.geometry, shoulderMm: 0 };
        const most = mostLoadedDeg({ ...known, shoulderMm: 0.12 * known.dieMm });
        const wanted = one.wanted * Math.min(90, most);
        const trials: BrakeTrial[] = [];
        const hit = (depthMm: number) => {
          const bendDeg = cameOut(one, depthMm);
          trials.push({ depthMm, bendDeg });
          return Math.abs(bendDeg - wanted);
        };
        const next = () => {
          const answer = nextDepths(known, trials, [wanted]);
          return answer.kind === "depths" ? answer.depthsMm[0]! : null;
        };
        const first = hit(one.first * depthOfAngle(known, wanted));
        // A quarter of a degree is no longer seen.
        if (first < 0.25) return;
        const second = next();
        if (second === null) return;
        tried++;
        const off = hit(second);
        if (off < first) nearer++;
        const again = next();
        const last = again === null ? Infinity : hit(again);
        if (last <= Math.max(off, 0.1)) third++;
        if (last < 0.5) close++;
      }),
      { seed: 7, numRuns },
    );
    expect(tried).toBeGreaterThan(0.9 * numRuns);
    expect(nearer).toBeGreaterThanOrEqual(0.99 * tried);
    expect(third).toBeGreaterThanOrEqual(0.99 * tried);
    expect(close).toBeGreaterThanOrEqual(0.99 * tried);
  }, 60_000);
});

describe("trials that say little, or too much", () => {
  it("go on from below where the plate sprang back flat", () => {
    const depthMm = depthOfAngle(DIE, 2);
    const answer = nextDepths(DIE, [{ depthMm, bendDeg: 0 }], [6]);
    expect(answer).toMatchObject({ kind: "depths", by: "one trial" });
    expect(answer.kind === "depths" && answer.depthsMm[0]).toBeCloseTo(depthOfAngle(DIE, 8), 9);
  });

  it("tell every angle of the plan, and none that the die does not bend to", () => {
    const trial = { depthMm: depthOfAngle(DIE, 12), bendDeg: 10 };
    const answer = nextDepths(DIE, [trial], [5, 10, 99]);
    if (answer.kind === "none") throw new Error(answer.why);
    expect(answer.depthsMm[0]).toBeCloseTo(depthOfAngle(DIE, 7), 9);
    expect(answer.depthsMm[1]).toBeCloseTo(trial.depthMm, 9);
    expect(answer.depthsMm[2]).toBeNull();
    expect(answer.sprangDeg).toBeCloseTo(2, 9);
  });

  it("are asked about where they came out sharper than the die bends, or went too deep", () => {
    expect(nextDepths(DIE, [{ depthMm: depthOfAngle(DIE, 10), bendDeg: 20 }], [12])).toMatchObject({
      kind: "none",
    });
    expect(nextDepths(DIE, [{ depthMm: 80, bendDeg: 20 }], [12])).toMatchObject({ kind: "none" });
    expect(() => nextDepths(DIE, [], [12])).toThrow(RangeError);
  });
});

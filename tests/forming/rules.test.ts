import { describe, expect, it } from "vitest";
import type { FormingCase } from "../../src/forming/case.ts";
import { formingOf } from "../../src/forming/forming.ts";
import { leastOpeningMm } from "../../src/forming/dieOpening.ts";
import { nominalTensileMPa } from "../../src/forming/nominalTensile.ts";
import type { Machine, PlateRoll, PressBrake, Shop } from "../../src/forming/machine.ts";
import { reachBeyondStopMm } from "../../src/forming/openReach.ts";
import {
  aluminium,
  brake,
  coneCase,
  hood,
  reducer,
  type RightCone,
  roll,
  s355,
  shop,
  stainless,
} from "./cases.ts";

/** Slant 743.303 mm, half angle 19.654°. */
const item = coneCase(reducer);
const pipe = coneCase({ ...reducer, smallRadiusMm: 450 });
const spike = coneCase({ ...reducer, smallRadiusMm: 0 });
const lean = Math.atan2(250, 700);

function ask(id: string, part: FormingCase, machine: Machine, more: Partial<Shop> = {}) {
  const forming = formingOf(part, shop([machine], more));
  return forming.checks.find((check) => check.id === id);
}
const onRoll = (
  id: string,
  part: FormingCase,
  more: Partial<PlateRoll> = {},
  drop: (keyof PlateRoll)[] = [],
) => {
  const machine = roll(more);
  for (const key of drop) Reflect.deleteProperty(machine, key);
  return ask(id, part, machine);
};
const onBrake = (id: string, part: FormingCase, more: Partial<PressBrake> = {}) => ask(id, part, brake(more));
const cone = (more: Partial<RightCone>, rest: Partial<FormingCase> = {}) =>
  coneCase({ ...reducer, ...more }, rest);

describe("capacity", () => {
  it("goes up to 80 % of the half rule, goes with care to the whole of it, and no further", () => {
    // ½ T·W = 10 000 mm², slant 743.303 mm.
    const verdict = (share: number) =>
      onRoll("capacity", cone({ thicknessMm: (share * 10_000) / item.slantMm.longest }))!.verdict;
    expect([0.5, 0.799, 0.801, 0.999, 1.001].map(verdict)).toEqual([
      "pass",
      "pass",
      "caution",
      "caution",
      "fail",
    ]);
  });

  it("has the maker's cone rating replace the half rule, thickness and all", () => {
    const own = { coneRating: { thickness: 5, slant: 1500 } };
    expect(onRoll("capacity", item, own)).toMatchObject({ limit: 7500, verdict: "pass" });
    expect(onRoll("thickness", item, own)).toMatchObject({ limit: 5, verdict: "fail" });
    expect(onRoll("thickness", item)).toMatchObject({ limit: 10, verdict: "pass" });
  });

  it("lowers the rating for stronger plate by the root of the mean strengths, and never raises it", () => {
    const limit = (more: Partial<FormingCase>) => onRoll("thickness", { ...item, ...more })!.limit!;
    expect(limit({ material: s355 })).toBeCloseTo(10 * Math.sqrt((250 + 400) / (355 + 470)), 9);
    // Stainless: its nominal yield of 210 is below the rated 250, and still it takes the roll more.
    expect(limit({ material: stainless })).toBeCloseTo(10 * Math.sqrt(650 / 730), 9);
    expect(limit({ material: aluminium })).toBe(10);
    expect(onRoll("capacity", { ...item, material: s355 })!.advice).toContain(
      "means of yield and tensile: plate (355 MPa + 470 MPa)/2 = 413 MPa by the materials page, rating (250 MPa + 400 MPa)/2 = 325 MPa as structural plate",
    );
  });

  it("takes the certificate's yield against the rated yield, and is wary of plate that hardens", () => {
    const certified = { certificateYieldMPa: 360 };
    expect(onRoll("thickness", { ...item, ...certified })!.limit).toBeCloseTo(10 * Math.sqrt(250 / 360), 9);
    const hardens = { material: stainless, certificateYieldMPa: 250 };
    const own = { coneRating: { thickness: 10, slant: (6 * item.slantMm.longest) / 10 / 0.97 } };
    const check = onRoll("capacity", { ...item, ...hardens }, own)!;
    expect(check.margin).toBeCloseTo(0.03, 9);
    expect(check.verdict).toBe("caution");
    const mild = { coneRating: { thickness: 10, slant: 800 } };
    expect(onRoll("capacity", { ...item, ...hardens }, mild)!.verdict).toBe("pass");
  });

  it("rates a pipe as a cylinder: neither half rule, stop nor trim", () => {
    expect(onRoll("capacity", pipe)).toMatchObject({ value: 6, limit: 10, unit: "mm", verdict: "pass" });
    const checks = formingOf(pipe, shop([roll()])).machines[0]!.checks.map(({ id }) => id);
    for (const id of [
      "cone-attachment",
      "thickness",
      "pinch-trim",
      "room-beyond-stop",
      "travel-ratio",
      "half-angle",
    ])
      expect(checks).not.toContain(id);
    expect(onRoll("capacity", { ...pipe, pieces: 2 })!.limit).toBe(10);
  });
});

describe("the tensile strength that goes with a rated yield", () => {
  it("goes on in proportion below the softest grade and at an equal distance above the hardest", () => {
    expect(nominalTensileMPa(117.5)).toBeCloseTo(180, 9);
    expect(nominalTensileMPa(460)).toBeCloseTo(575, 9);
  });

  it("rises without a step", () => {
    for (let strength = 20; strength < 800; strength++) {
      const rise = nominalTensileMPa(strength + 1) - nominalTensileMPa(strength);
      expect(rise).toBeGreaterThan(0);
      expect(rise).toBeLessThan(3);
    }
  });
});

describe("width and grip", () => {
  it("takes the stop's least reach off the working width, but not for a pipe", () => {
    const stop = {
      workingWidth: 780,
      coneAttachment: { range: [50, 300] as [number, number], clearRoom: 400 },
    };
    expect(onRoll("working-width", item, stop)).toMatchObject({ limit: 730, verdict: "fail" });
    expect(onRoll("working-width", pipe, stop)).toMatchObject({ limit: 780, verdict: "pass" });
    const early = { workingWidth: 780, coneAttachment: { range: [-40, 300] as [number, number] } };
    expect(onRoll("working-width", item, early)).toMatchObject({ limit: 780, verdict: "pass" });
  });

  it.each([
    { width: 1600, trim: undefined, limit: 800, verdict: "pass" },
    { width: 1200, trim: true, limit: null, verdict: "pass" },
    { width: 1200, trim: undefined, limit: 600, verdict: "caution" },
    { width: 1200, trim: false, limit: 600, verdict: "fail" },
  ])("pinch trim $trim on $width mm of rolls: $verdict", ({ width, trim, limit, verdict }) => {
    const more = { workingWidth: width, ...(trim !== undefined && { pinchTrim: trim }) };
    const check = onRoll("pinch-trim", item, more, trim === undefined ? ["pinchTrim"] : []);
    expect(check).toMatchObject({ limit, verdict });
  });

  it("does not ask a pyramid for pinch trim", () => {
    expect(onRoll("pinch-trim", item, { arrangement: "pyramid" })).toBeUndefined();
  });

  it("refuses a cone without a stop, and asks nothing of the room beyond it", () => {
    const none = { coneAttachment: { fitted: false } };
    expect(onRoll("cone-attachment", item, none)!.verdict).toBe("fail");
    expect(onRoll("room-beyond-stop", item, none)).toBeUndefined();
    expect(onRoll("working-width", item, none)).toMatchObject({ limit: 2000, verdict: "pass" });
  });
});

/** What a shop leaves out of its file is not known: never refused for it, never passed over, never made up. */
describe("what the shop file leaves out", () => {
  const bare: PlateRoll = {
    kind: "plate roll",
    name: "Roll",
    workingWidth: 2000,
    rating: { thickness: 10 },
    rolls: { topDiameter: 200 },
  };
  const bareBrake: PressBrake = { kind: "press brake", name: "Brake", bedLength: 3000, forceKN: 1600 };
  const full = (part: FormingCase, machine: Machine) =>
    formingOf(part, shop([machine])).machines[0]!.checks.map(({ id }) => id);

  it("takes no question away from a roll or a brake", () => {
    expect(full(item, bare)).toEqual(full(item, roll()));
    expect(full(hood, bareBrake)).toEqual(full(hood, brake()));
  });

  it.each([
    "cone-attachment",
    "capacity",
    "thickness",
    "working-width",
    "smallest-closed",
    "bend-radius",
    "room-beyond-stop",
  ])("makes %s of a roll not known", (id) => {
    expect(ask(id, item, bare)).toMatchObject({ verdict: "caution" });
  });

  it("still refuses what the plain rating or the whole width refuses", () => {
    expect(ask("capacity", cone({ thicknessMm: 14 }), bare)!.verdict).toBe("fail");
    expect(ask("thickness", cone({ thicknessMm: 10.1 }), bare)!.verdict).toBe("fail");
    expect(ask("working-width", item, { ...bare, workingWidth: 740 })!.verdict).toBe("fail");
  });

  it("asks for the die that the thickness wants, and tells its force without refusing it", () => {
    const die = ask("die-opening", hood, bareBrake)!;
    expect(die).toMatchObject({ value: null, verdict: "caution" });
    expect(die.advice).toContain("opens 48 mm or more");
    expect(ask("brake-force", hood, bareBrake)!.value).toBeCloseTo((1.33 * 360 * 760 * 36) / 48 / 1000, 9);
    const needed = ask("brake-force", hood, bareBrake)!.value!;
    const weak = { ...bareBrake, forceKN: needed / 1.5 };
    // Not even over a die twice as wide.
    expect(ask("brake-force", hood, { ...bareBrake, forceKN: needed / 2.5 })!.verdict).toBe("fail");
    expect(ask("brake-force", hood, weak)!.verdict).toBe("caution");
    expect(ask("brake-force", hood, { ...weak, dies: [50] })!.verdict).toBe("fail");
  });
});

describe("the small end", () => {
  it("must let the top roll through along the wall", () => {
    const inside = 400 - 6 / Math.cos(lean);
    const need = (top: number) => ({ rolls: { topDiameter: top, bendingDiameter: 180 } });
    expect(onRoll("small-end", item, need(inside * Math.cos(lean) - 0.1))!.verdict).toBe("pass");
    expect(onRoll("small-end", item, need(inside * Math.cos(lean) + 0.1))!.verdict).toBe("fail");
    expect(onRoll("small-end", item)!.limit).toBeCloseTo(200 / Math.cos(lean), 9);
  });

  it("of a piece need only be curved more gently than the top roll, and is not closed on it", () => {
    const big = { rolls: { topDiameter: 410, bendingDiameter: 180 } };
    expect(onRoll("small-end", item, big)!.verdict).toBe("fail");
    const half = { ...item, pieces: 2 };
    const check = onRoll("small-end", half, big)!;
    expect(check).toMatchObject({ limit: 410, verdict: "pass" });
    expect(check.value).toBeCloseTo(400 / Math.cos(lean) - 6, 9);
    expect(onRoll("smallest-closed", half, { smallestDiameter: 1000 })).toBeUndefined();
    const bigger = { rolls: { topDiameter: 420, bendingDiameter: 180 } };
    expect(onRoll("small-end", half, bigger)!.verdict).toBe("fail");
  });

  it("must be no smaller than the machine closes, and unknown is to be found out, not guessed", () => {
    expect(onRoll("smallest-closed", item, { smallestDiameter: 395 })!.verdict).toBe("fail");
    expect(onRoll("smallest-closed", item, { smallestDiameter: 390 })!.verdict).toBe("pass");
    const unknown = onRoll("smallest-closed", item, {}, ["smallestDiameter"])!;
    expect(unknown).toMatchObject({ limit: null, margin: null, verdict: "caution" });
    expect(unknown.advice).toContain("393.6 mm");
  });

  it("has a bend that the machine makes: stated, proved by what it closes, or unknown", () => {
    const radius = 200 / Math.cos(lean);
    expect(onRoll("bend-radius", item, { smallestRadius: 213 })).toMatchObject({
      limit: 213,
      verdict: "fail",
    });
    expect(onRoll("bend-radius", item)!.value).toBeCloseTo(radius, 9);
    expect(onRoll("bend-radius", item, { smallestDiameter: 300 }, ["smallestRadius"])).toMatchObject({
      limit: 153,
      verdict: "pass",
    });
    expect(onRoll("bend-radius", item, { smallestDiameter: 430 }, ["smallestRadius"])).toMatchObject({
      limit: 218,
      verdict: "caution",
    });
    expect(onRoll("bend-radius", item, {}, ["smallestRadius", "smallestDiameter"])).toMatchObject({
      limit: null,
      verdict: "caution",
    });
  });

  // Another way: the small edge lies on a sphere of the pattern's radius r about the apex, so that a piece rolled to the
  // half angle α reaches 2 r sin²α past the element at the stop. This cone's window begins at 0.6 of the
  // bend, which is more than 65 % closed, and its first trial is for 0.85 of that.
  const bent = 0.85 * 0.6 * Math.cos(lean);
  const openAt = 2 * (200 / Math.sin(lean)) * Math.sin(Math.atan2(Math.sin(lean), bent)) ** 2;

  it("asks for the reach at the first trial, and fails where even the closed piece strikes", () => {
    const closed = 400 * Math.sin(lean);
    const room = (clearRoom: number) => ({ coneAttachment: { clearRoom } });
    expect(openAt).toBeGreaterThan(1.5 * closed);
    // A model's reach: it passes only while it takes no more than 80 % of the room.
    const withMargin = openAt / 0.8;
    expect(onRoll("room-beyond-stop", item, room(withMargin + 0.1))!.verdict).toBe("pass");
    const near = onRoll("room-beyond-stop", item, room(withMargin - 0.1))!;
    expect(near).toMatchObject({ verdict: "caution", value: onRoll("room-beyond-stop", item)!.value });
    expect(near.margin).toBeGreaterThan(0);
    expect(near.advice).toContain("there is room");
    expect(onRoll("room-beyond-stop", item, room(openAt + 0.1))!.verdict).toBe("caution");
    const beyond = onRoll("room-beyond-stop", item, room(openAt - 0.1))!;
    expect(beyond.verdict).toBe("caution");
    expect(beyond.margin).toBeLessThan(0);
    expect(beyond.advice).toContain("look whether it is that high");
    expect(onRoll("room-beyond-stop", item, room(closed + 0.1))!.verdict).toBe("caution");
    expect(onRoll("room-beyond-stop", item, room(closed - 0.1))!.verdict).toBe("fail");
    expect(onRoll("room-beyond-stop", item)!.value).toBeCloseTo(openAt, 9);
    expect(onRoll("room-beyond-stop", { ...item, pieces: 4 })!.value).toBeLessThan(openAt / 1.5);
    expect(onRoll("room-beyond-stop", item, { coneAttachment: {} })).toMatchObject({
      limit: null,
      verdict: "caution",
    });
  });

  it("has to go into the room at the fixed end too, where that is given and the job is turned round", () => {
    const closed = 400 * Math.sin(lean);
    const ask = (fixed: number, drop?: number, more: Partial<PlateRoll> = {}) =>
      onRoll("room-beyond-stop", item, {
        coneAttachment: { clearRoomFixedEnd: fixed, ...(drop !== undefined && { clearRoom: drop }) },
        ...more,
      })!;
    const withMargin = openAt / 0.8;
    const wide = withMargin + 100;
    expect(ask(withMargin + 0.1, wide)).toMatchObject({ verdict: "pass", limit: withMargin + 0.1 });
    expect(ask(withMargin - 0.1, wide)).toMatchObject({ verdict: "caution", limit: withMargin - 0.1 });
    expect(ask(openAt + 0.1, wide)).toMatchObject({ verdict: "caution", limit: openAt + 0.1 });
    expect(ask(wide, openAt - 0.1).verdict).toBe("caution");
    expect(ask(openAt - 0.1, wide)).toMatchObject({ verdict: "caution", limit: openAt - 0.1 });
    expect(ask(closed - 0.1, wide).verdict).toBe("fail");
    expect(ask(closed - 0.1, wide).advice).toContain("strikes the yoke at the fixed end after");
    // Of the drop end nobody knows: enough at the other end does not pass, too little there is refused.
    expect(ask(wide)).toMatchObject({ limit: null, verdict: "caution" });
    expect(ask(wide).advice).toContain("measure from the stop to the yoke at the drop end");
    expect(ask(closed - 0.1).verdict).toBe("fail");
    // Other arrangements bend both seam edges from one end.
    expect(ask(closed - 0.1, wide, { arrangement: "four-roll" })).toMatchObject({
      verdict: "pass",
      limit: wide,
    });
  });

  it("reaches as far as its farthest point, laid out in space, whatever the number of pieces", () => {
    for (let pieces = 1; pieces <= 8; pieces++) {
      // The end's plane leans by the half angle; its rim starts on the stop and goes round one piece.
      const rim = Array.from({ length: 3601 }, (_, i) => ((i / 3600) * 2 * Math.PI) / pieces);
      const beyond = rim.map((turn) => (150 - 150 * Math.cos(turn)) * Math.sin(0.4));
      const reach = reachBeyondStopMm({ diameterMm: 300, leanRad: 0.4, pieces });
      expect(reach).toBeCloseTo(Math.max(...beyond), 9);
    }
  });

  it("that is a point goes on no roll, says what would, and goes on the brake", () => {
    const forming = formingOf(spike, shop([roll(), brake()]));
    expect(forming).toMatchObject({ route: "brake", machine: "Brake" });
    const smallEnd = forming.machines[0]!.checks.find(({ id }) => id === "small-end")!;
    expect(smallEnd).toMatchObject({ value: 0, verdict: "fail" });
    const least = 200 / Math.cos(spike.leanRad);
    expect(smallEnd.advice).toContain("capped, or formed on the press brake");
    expect(smallEnd.advice).toContain(`at least ${least.toFixed(1)} mm inside`);
    expect(formingOf({ ...spike, pieces: 3 }, shop([roll()])).machine).toBeNull();
    expect(formingOf(spike).checks.find(({ id }) => id === "travel-ratio")).toMatchObject({
      value: null,
      verdict: "caution",
    });
  });
});

describe("what the part itself asks", () => {
  it("cautions above a travel ratio of 2.5", () => {
    expect(onRoll("travel-ratio", cone({ smallRadiusMm: 180 }))).toMatchObject({
      value: 2.5,
      verdict: "pass",
    });
    expect(onRoll("travel-ratio", cone({ smallRadiusMm: 179 }))!.verdict).toBe("caution");
  });

  it("cautions where the flat blank is already 65 % closed, and where the wall leans unevenly", () => {
    const of = (halfAngleDeg: number) =>
      onRoll("half-angle", cone({ heightMm: 250 / Math.tan((halfAngleDeg * Math.PI) / 180) }))!;
    expect(of(40.5).verdict).toBe("pass");
    expect(of(40.6).verdict).toBe("caution");
    expect(of(40.6).advice).toContain("65 %");
    const eccentric = { ...hood, shape: "eccentric-cone" as const, tightestRadiusMm: item.tightestRadiusMm };
    expect(onRoll("half-angle", eccentric)).toMatchObject({ limit: null, verdict: "caution" });
  });

  it("cautions above 5 % of strain at the tightest place, and wherever there is a point", () => {
    const strain = (part: FormingCase) => formingOf(part).checks.find(({ id }) => id === "strain")!;
    expect(strain(item).value).toBeCloseTo((50 * 6 * Math.cos(lean)) / 200, 9);
    expect(strain(cone({ thicknessMm: 21.2 })).verdict).toBe("pass");
    expect(strain(cone({ thicknessMm: 21.3 })).verdict).toBe("caution");
    const stainless = { ...item.material, name: "304", family: "stainless" as const };
    expect(strain(cone({ thicknessMm: 21.3 }, { material: stainless }))).toMatchObject({
      limit: null,
      verdict: "caution",
    });
    expect(strain(cone({ thicknessMm: 6 }, { material: stainless }))).toMatchObject({
      limit: null,
      verdict: "pass",
    });
    // The code's own most, without heat treatment: 50 t / R = 40 % at R = 1.25 t.
    const tight = (thicknessMm: number) => strain(cone({ thicknessMm }));
    const radiusMm = 200 / Math.cos(lean);
    expect(tight((radiusMm / 1.25) * 0.999)).toMatchObject({ limit: 5, verdict: "caution" });
    expect(tight((radiusMm / 1.25) * 1.001)).toMatchObject({ limit: 40, verdict: "fail" });
    expect(strain(spike)).toMatchObject({ value: null, verdict: "caution" });
    // Radius 10 t = 60 at 60/tan(half angle) from the point.
    const near = 60 / Math.tan(spike.cone!.halfAngleRad);
    expect(strain(spike).advice).toContain(`${Number(near.toFixed(1))} mm`);
    expect(strain(hood)).toMatchObject({ value: null, verdict: "pass" });
  });

  it("lifts by hand what the shop's rule allows, 25 kg where it has none", () => {
    const weighing = (massKg: number) => ({ ...item, blanks: [{ lengthMm: 10, widthMm: 10, massKg }] });
    const verdict = (massKg: number, handLiftKg?: number) =>
      ask("handling", weighing(massKg), roll(), handLiftKg === undefined ? {} : { handLiftKg })!.verdict;
    expect([verdict(25), verdict(26), verdict(30, 30), verdict(16, 15)]).toEqual([
      "pass",
      "caution",
      "pass",
      "caution",
    ]);
  });
});

describe("certificate", () => {
  const { yieldMPa } = item.material;
  const of = (certificateYieldMPa: number, units: "mm" | "in" = "mm") =>
    ask("certificate", { ...item, certificateYieldMPa, units }, roll());

  it("wants care below what the grade promises, and says nothing of plate that has it", () => {
    expect(of(yieldMPa)).toBeUndefined();
    // As 36 ksi, 248.2 MPa, stands for 250 MPa.
    expect(of(0.9929 * yieldMPa)).toBeUndefined();
    expect(of(0.98 * yieldMPa)).toMatchObject({ verdict: "caution", value: 0.98 * yieldMPa });
    expect(of(36)!.advice).toContain(`says 36 MPa, and ${item.material.name} has at least ${yieldMPa} MPa`);
  });

  it("says it in ksi where the part is drawn in inches", () => {
    expect(of(137.895, "in")!.advice).toContain("The certificate says 20 ksi");
  });
});

describe("the gap at the seam", () => {
  const of = (seamGapMm: number | undefined, thicknessMm: number) =>
    ask("weld-gap", { ...item, thicknessMm, ...(seamGapMm !== undefined && { seamGapMm }) }, roll());

  it("is asked about from three thicknesses on, and on thin sheet from 6 mm", () => {
    expect(of(undefined, 5)).toBeUndefined();
    for (const [gapMm, thicknessMm] of [
      [15, 5],
      [6, 1],
    ] as const) {
      expect(of(gapMm, thicknessMm)).toBeUndefined();
      expect(of(gapMm + 0.1, thicknessMm)).toMatchObject({ verdict: "caution", limit: gapMm });
    }
    expect(of(127, 4.7625)!.advice).toContain("A gap of 127 mm is taken off the plate at the seam");
  });
});

describe("stock plate", () => {
  const blank = (lengthMm: number, widthMm: number) => ({ lengthMm, widthMm, massKg: 10 });
  const of = (blanks: FormingCase["blanks"], stock: Shop["stock"], more: Partial<FormingCase> = {}) =>
    ask("stock-plate", { ...item, ...more, blanks }, roll(), stock ? { stock } : {});
  const plate = (length: number, width: number, thickness = 6, material = "s235") => ({
    material,
    thickness,
    length,
    width,
  });

  it("holds each blank either way round, on the plate that suits it best", () => {
    expect(of([blank(1400, 2900)], [plate(3000, 1500)])!.verdict).toBe("pass");
    expect(of([blank(1600, 2900)], [plate(3000, 1500)])).toMatchObject({
      value: 1600,
      limit: 1500,
      verdict: "caution",
    });
    expect(of([blank(1600, 2900)], [plate(3000, 1500), plate(6000, 2000)])!.verdict).toBe("pass");
    expect(of([blank(500, 500), blank(3100, 100)], [plate(3000, 1500)])).toMatchObject({
      value: 3100,
      limit: 3000,
      verdict: "caution",
    });
  });

  it("lays the blank as drawn where that goes, else turned, and says which", () => {
    const turned = [{ lengthMm: 2960, widthMm: 1490, turnRad: -0.5 }];
    const both = (lengthMm: number, widthMm: number) => [{ ...blank(lengthMm, widthMm), turned }];
    expect(of(both(2900, 1495), [plate(3000, 1515)])!.advice).toContain("2900 mm × 1495 mm as drawn, goes");
    expect(of(both(2900, 1520), [plate(3000, 1515)])!.advice).toContain(
      "2960 mm × 1490 mm turned by 28.6° clockwise, goes",
    );
    expect(of(both(2900, 1505), [plate(3000, 1480)])).toMatchObject({ value: 1490, verdict: "caution" });
  });

  it("cautions where a blank only just goes, for kerf and mill edge", () => {
    expect(of([blank(2980, 1400)], [plate(3000, 1500)])).toMatchObject({ verdict: "caution" });
    expect(of([blank(2980, 1400)], [plate(3000, 1500)])!.advice).toContain("just goes");
  });

  it("names the plate as it is asked for: 3/16 in plate of A36, a gauge by its decimals", () => {
    const small = [blank(100, 100)];
    const said = (thicknessMm: number) =>
      of(small, [plate(3000, 1500, 25)], { thicknessMm, units: "in" })!.advice;
    expect(said(4.7625)).toContain(`The stock list has no 3/16 in plate of ${item.material.name}: order`);
    // 10 ga of steel is 0.1345 in.
    expect(said(0.1345 * 25.4)).toContain("The stock list has no 0.135 in plate of ");
  });

  it("counts only plate of the material, by id or name, and of the thickness", () => {
    const small = [blank(100, 100)];
    for (const other of [plate(3000, 1500, 5), plate(3000, 1500, 6, "304")])
      expect(of(small, [other])).toMatchObject({ limit: null, verdict: "caution" });
    expect(of(small, [plate(3000, 1500, 6, "S235")])!.verdict).toBe("pass");
    expect(of(small, [plate(3000, 1500, 6.005)])!.verdict).toBe("pass");
  });

  it("is not known where the shop lists none, and says what to look for", () => {
    const sought = { verdict: "caution", limit: null } as const;
    expect(of([blank(100, 200)], [])).toMatchObject(sought);
    expect(of([blank(100, 200)], undefined)!.advice).toBe(
      "The shop file lists no stock plates: see that plate of at least 220 × 120 mm is there, which takes the blank with 10 mm left along the edges.",
    );
  });
});

describe("the brake", () => {
  it("must be as long as the longest line: a bend line, or an element of a cone", () => {
    expect(onBrake("brake-bed", hood, { bedLength: 760 })).toMatchObject({ value: 760, verdict: "pass" });
    expect(onBrake("brake-bed", hood, { bedLength: 759 })!.verdict).toBe("fail");
    expect(onBrake("brake-bed", item)!.value).toBeCloseTo(743.303, 3);
  });

  it("bends over the narrowest die that opens 8 t, above 10 mm 10 t", () => {
    const die = (thicknessMm: number, dies: number[]) =>
      onBrake("die-opening", { ...hood, thicknessMm }, { dies, forceKN: 100_000 })!;
    expect(die(6, [120, 16, 48, 80])).toMatchObject({ value: 48, limit: 48, verdict: "pass" });
    expect(die(10, [80, 100])).toMatchObject({ value: 80, verdict: "pass" });
    expect(die(10.1, [80, 100, 120])).toMatchObject({ value: 120, verdict: "pass" });
    expect(die(6, [16, 40])).toMatchObject({ value: 40, limit: 48, verdict: "fail" });
  });

  it("wants no narrower a die for thicker plate", () => {
    for (let t = 0.2; t < 30; t += 0.1) expect(leastOpeningMm(t + 0.1)).toBeGreaterThan(leastOpeningMm(t));
  });

  it("takes a wider die where the narrowest asks too much force", () => {
    // 1.33 × 360 × 760 × 36 / V: 262 kN over 50 mm, 164 kN over 80 mm.
    const force = (forceKN: number) => ({
      die: onBrake("die-opening", hood, { forceKN, dies: [50, 80] })!.value,
      verdict: onBrake("brake-force", hood, { forceKN, dies: [50, 80] })!.verdict,
    });
    expect(force(400)).toEqual({ die: 50, verdict: "pass" });
    expect(force(300)).toEqual({ die: 80, verdict: "pass" });
    expect(force(180)).toEqual({ die: 80, verdict: "caution" });
    expect(force(150)).toEqual({ die: 80, verdict: "fail" });
    expect(onBrake("brake-force", hood)!.value).toBeCloseTo((1.33 * 360 * 760 * 36) / 50 / 1000, 9);
  });

  it("keeps lines half the die opening apart at the wide end", () => {
    const spacing = (dies: number[]) => onBrake("bend-spacing", hood, { dies })!;
    expect(spacing([104])).toMatchObject({ value: 52, limit: 52, verdict: "pass" });
    expect(spacing([106])).toMatchObject({ limit: 53, verdict: "caution" });
    const bordersOnly = { ...hood, bendLines: [{ lengthMm: 700, bendRad: 1.5, wideSpacingMm: null }] };
    expect(onBrake("bend-spacing", bordersOnly)).toBeUndefined();
    expect(onBrake("bend-lines", bordersOnly)).toBeUndefined();
  });

  it("counts the lines a cone has room for", () => {
    expect(onBrake("bend-lines", item, { dies: [50] })).toMatchObject({ value: 113, verdict: "pass" });
    expect(onBrake("bend-lines", item, { dies: [600] })).toMatchObject({ value: 9, verdict: "caution" });
    expect(onBrake("bend-lines", item, { dies: [1200] })).toMatchObject({ value: 4, verdict: "fail" });
  });

  it("asks whether a piece comes off the punch: up to half way round it lifts off", () => {
    expect(onBrake("off-the-punch", item)).toMatchObject({ value: 360, limit: 180, verdict: "caution" });
    expect(onBrake("off-the-punch", { ...item, pieces: 3 })).toMatchObject({ value: 120, verdict: "pass" });
    // No room is left there for what springs back.
    expect(onBrake("off-the-punch", { ...item, pieces: 2 })).toMatchObject({
      value: 180,
      margin: 0,
      verdict: "caution",
      advice: expect.stringMatching(/^It lifts off when it is released/) as string,
    });
  });

  it("asks for depth behind the line, and says how much is wanted where the shop gives none", () => {
    // No lines are known here, so nothing less than half the diagonal is sure.
    const { lengthMm, widthMm } = item.blanks[0]!;
    const half = Math.hypot(lengthMm, widthMm) / 2;
    expect(onBrake("brake-throat", item)).toMatchObject({ limit: null, verdict: "caution" });
    expect(onBrake("brake-throat", item)!.value).toBeCloseTo(half, 9);
    expect(onBrake("brake-throat", item, { throat: half + 1 })!.verdict).toBe("pass");
    expect(onBrake("brake-throat", item, { throat: half - 1 })!.verdict).toBe("caution");
  });
});

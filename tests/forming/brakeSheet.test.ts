import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { depthOf, depthsOf } from "../../src/forming/brakeDepths.ts";
import { formingOf } from "../../src/forming/forming.ts";
import type { PressBrake } from "../../src/forming/machine.ts";
import { sayIn } from "../../src/forming/say.ts";
import { loadCatalogue } from "../../src/input/loadCatalogue.ts";
import { develop } from "../../src/report/develop.ts";
import type { NamedPart } from "../../src/report/lay.ts";
import { corner } from "../../src/tables/hopperCorner.ts";
import { runs, squareToRound } from "../arbitraries.ts";
import { even } from "../even.ts";
import { askewHood, named, reportOf } from "../parts.ts";
import { brake, coneCase, reducer, shop } from "./cases.ts";

const say = sayIn("mm");
const shoe = named({
  shape: "square-to-round",
  thickness: 4,
  rectangularEnd: { length: 800, width: 800, measured: "outside" },
  roundEnd: { diameter: 400, measured: "outside" },
  height: 500,
  seam: { at: 270, joint: "butt", gap: 2 },
});
const longBrake = (more: Partial<PressBrake> = {}) =>
  brake({
    bedLength: 3050,
    forceKN: 1000,
    dies: [16, 25, 32, 40, 63, 80],
    throat: 450,
    ...more,
  });

function planOn(part: NamedPart, machine: PressBrake) {
  const made = develop(part, { catalogue: loadCatalogue().catalogue, shop: shop([machine]) });
  if (made.kind === "refused") throw new Error(made.issues.map(({ problem }) => problem).join());
  const { forming } = made.report;
  const plan = forming.plans[0]!;
  const step = (id: string) => plan.steps.find((one) => one.id === id)!;
  const said = (id: string) => [step(id).text, ...step(id).cautions].join(" ");
  return { forming, plan: plan.brake!, steps: plan.steps, step, said };
}

describe("the printed brake sheet of a duct shoe", () => {
  const { forming, plan, step, said } = planOn(shoe, longBrake());
  /** In halves each comes off the punch, and its tips are folded on the brake. */
  const halves = planOn({ ...shoe, pieces: 2 }, longBrake());

  it("brings the seam edges together to the gap of the weld, and has a line for what it came to", () => {
    expect(step("tack").text).toContain("Bring the seam edges together to 2 mm, by feeler");
    expect(said("tack")).toContain("seam edges together to 2 mm, by feeler");
    expect(step("tack").toNote).toEqual([{ label: "seam gap, measured", unit: "mm", planned: 2 }]);
    const close = planOn({ ...shoe, seam: { at: 270 } }, longBrake()).step("tack");
    expect(close.text).toContain("Bring the seam edges together. Set");
    expect(close.toNote).toEqual([]);
    const lapped = planOn({ ...shoe, seam: { at: 270, joint: "lap", lap: 20 } }, longBrake()).step("tack");
    expect(lapped.text).toContain(
      "the seam edges over each other by 20 mm: seam edge 1 inside, on the lap line, unless the drawing says otherwise",
    );
  });

  it("says the worst first, and again in the step where it bites", () => {
    expect(plan.remarks.map(({ id }) => id)).toEqual(["off-the-punch", "throat", "sharp-fold"]);
    // The deepest shallower side (brakeThroat.test.ts measures it apart); the checks of the part's page say the same.
    const throat = forming.checks.find(({ id }) => id === "brake-throat")!;
    expect(throat.value).toBe(plan.behind!.depthMm);
    const [, second] = plan.remarks;
    expect(second!.text).toBe(throat.advice);
    expect(second!.text).toContain(`behind the punch up to ${say.length(plan.behind!.depthMm)} of plate`);
    expect(second!.text).toContain("the throat is 450 mm deep: make it in 2 or 4 pieces");
    expect(forming.checks.find(({ id }) => id === "off-the-punch")!.advice).toMatch(
      /turns by 333° and closes round the punch: make it in 2 pieces \(pieces: 2\), or leave out/,
    );
    // What is to be chosen before the blank is cut is no advice any more where it lies on the brake.
    expect(said("tooling")).toContain("behind than the throat is deep: see “Look at this first”");
    expect(said("bend")).toContain("It closes round the punch: leave out lines 14 and 15.");
    expect(said("tooling") + said("bend")).not.toMatch(/pieces or more|2 or 4 pieces|foreman/);
    // A sixth of the opening is left as inside radius; 1.5 times 4 mm is advised: 36 mm, and the rack has 40.
    expect(halves.said("tips")).toMatch(
      /sharp fold at the tip.*use a wider die there, a die of 36 mm or more, here 40 mm/,
    );
    for (const { step: at, atStep } of plan.remarks) expect(step(at).cautions).toContain(atStep);
  });

  it("says which side goes behind the punch, and how deep it reaches against the throat", () => {
    const { depthMm, line } = plan.behind!.inOrder;
    expect(step("bend").text).toContain(
      "Go from seam edge 1 to the middle (lines 1 to 13), that edge’s side behind the punch, towards the frame; then turn the piece round on the table, inside still up, so that seam edge 2’s side is behind, and go from there (lines 28 to 16).",
    );
    expect(step("bend").text).toContain(
      `Plate reaches about ${say.length(depthMm)} behind at most (line ${line}), in a throat of 450 mm.`,
    );
    expect(halves.step("bend").text).toContain("(lines 1 to 7), that edge’s");
    expect(halves.step("bend").text).toContain("and go from there (lines 14 to 8).");
    for (const one of [step("bend"), halves.step("bend")])
      expect(one.text).not.toMatch(/behind instead|turn instead/);
    // A half of a hood that stands aside have a line near the middle that is shallower on its other side.
    const aside = planOn(
      named({
        shape: "square-to-round",
        thickness: 4,
        rectangularEnd: { length: 800, width: 500, measured: "inside" },
        roundEnd: { diameter: 350, measured: "outside", offset: [90, -60] },
        height: 450,
        pieces: 2,
      }),
      longBrake(),
    );
    const { turned } = aside.plan.behind!;
    expect(turned).toEqual([{ piece: 2, line: 7 }]);
    expect(aside.step("bend").text).toContain(
      "Hit line 7 of piece 2 right after the turn instead: with seam edge 2’s side behind it is shallower there. Plate",
    );
  });

  it("has a line for the foreman’s name, where a part is better made otherwise, and nowhere else", () => {
    expect(step("mark").toNote.map(({ label }) => label)).toEqual(["kept as drawn, foreman"]);
    expect(step("mark").text).toContain("Begin only with the foreman’s name in the box");
    expect(halves.step("mark").toNote).toEqual([]);
    expect(halves.step("mark").text).not.toContain("foreman");
    const quarters = planOn({ ...shoe, pieces: 4 }, longBrake({ throat: 1000, dies: [40] }));
    expect(quarters.plan.remarks).toEqual([]);
    expect(quarters.step("mark").toNote).toEqual([]);
  });

  it("says at which hand the tips hang out, as the blank lies before the brake", () => {
    const lines = reportOf(shoe).forming.plans[0]!.brake!.lines;
    // Corners have their tips at end A. From line to line towards seam 1, and from the round end to a tip, inside up.
    const middle = (one: (typeof lines)[number]) => [0, 1].map((i) => (one.from[i]! + one.to[i]!) / 2);
    const towards1 = middle(lines[0]!).map((x, i) => x - middle(lines.at(-1)!)[i]!);
    const tip = lines[0]!.from.map((x, i) => x - lines[0]!.to[i]!);
    expect(lines[0]!.alongMm.a).toBe(lines[1]!.alongMm.a);
    // With the first of them turned away from whoever stands there, the other points to the right.
    expect(tip[0]! * towards1[1]! - tip[1]! * towards1[0]!).toBeGreaterThan(0);
    expect(step("bend").text).toContain(
      "on your right while the side of seam edge 1 is behind, on your left while that of seam edge 2 is.",
    );
  });

  it("does not go in one piece where it closes round the ram and half its width does not pass the frame", () => {
    const cone = (throat?: number) => {
      const part = named({
        shape: "right-cone",
        thickness: 3,
        largeEnd: { diameter: 800, measured: "middle" },
        smallEnd: { diameter: 500, measured: "middle" },
        height: 600,
      });
      const machine = longBrake(throat === undefined ? {} : { throat });
      if (throat === undefined) delete (machine as { throat?: number }).throat;
      const made = develop(part, { catalogue: loadCatalogue().catalogue, shop: shop([machine]) });
      if (made.kind === "refused") throw new Error("refused");
      const [asked] = made.report.forming.machines;
      return asked!.checks.find(({ id }) => id === "off-the-punch")!;
    };
    const { height, half } = { height: 600, half: 400 };
    // It turns by 360° cos α; half its width square to the axis is 400 mm and half the thickness along the normal.
    const cosine = height / Math.hypot(height, 150);
    expect(cone(300).value).toBeCloseTo(360 * cosine, 1);
    expect(cone(half - 1)).toMatchObject({ verdict: "fail" });
    expect(cone(half + 3)).toMatchObject({ verdict: "caution" });
    expect(cone()).toMatchObject({ verdict: "caution" });
    expect(cone(300).advice).toMatch(
      /^Not in one piece on this brake: turning by 349° it closes round the ram, and half its width, 40\d(\.\d)? mm, does not pass the frame with a throat of 300 mm; make it in 5 pieces \(pieces: 5\)\.$/,
    );
    expect(cone(450).advice).toMatch(/make it in 3 pieces \(pieces: 3\), or leave out its last lines/);
  });

  it("goes with care where a sharp fold comes out less round than advised, however well all else goes", () => {
    // In quarters, for a half turns by all but half a turn, which wants care of its own.
    const [deep, quarters] = [{ throat: 1000 }, { ...shoe, pieces: 4 }];
    const fold = (dies?: number[]) => {
      const [asked] = planOn(quarters, longBrake({ ...deep, ...(dies && { dies }) })).forming.machines;
      const check = asked!.checks.find(({ id }) => id === "sharp-fold")!;
      const others = asked!.checks.filter((one) => one !== check && one.verdict !== "pass");
      return { check, others: others.map(({ id }) => id) };
    };
    // 32 mm leaves 32/6, 40 mm leaves 40/6; 1.5 × 4 mm is advised.
    const sharp = fold([32, 40]);
    expect(sharp.check).toMatchObject({ limit: 6, verdict: "caution", basis: "astm-a6-x4-2" });
    expect(sharp.check.value).toBeCloseTo(32 / 6, 6);
    expect(sharp.check.advice).toContain("a die of 36 mm or more, here 40 mm");
    expect(sharp.others).toEqual([]);
    const round = fold([40]);
    expect(round.check).toMatchObject({ limit: 6, verdict: "pass" });
    expect(round.others).toEqual([]);
  });

  it("asks for that care where no machine is described either", () => {
    const { verdict, checks } = reportOf({ ...shoe, pieces: 2 }).forming;
    expect(checks.find(({ id }) => id === "sharp-fold")).toMatchObject({ limit: 6, verdict: "caution" });
    expect(verdict).toBe("caution");
  });

  it("names every other caution of the brake's own checks", () => {
    const weak = planOn(shoe, longBrake({ forceKN: 120, dies: [32] }));
    const remark = weak.plan.remarks.find(({ id }) => id === "others")!;
    expect(remark.text).toBe("With care too: Force of a hit. The part’s page says why.");
    expect(weak.said("tooling")).toContain(remark.text);
    expect(plan.remarks.map(({ id }) => id)).not.toContain("others");
  });

  it("has nothing to remark on the throat where the plate finds room, and asks where it is not given", () => {
    const ids = (machine: PressBrake) => planOn(shoe, machine).plan.remarks.map(({ id }) => id);
    expect(ids(longBrake({ throat: 1000 }))).not.toContain("throat");
    const unknown = longBrake();
    delete (unknown as { throat?: number }).throat;
    expect(planOn(shoe, unknown).said("tooling")).toContain("no throat: measure it first");
  });

  it("plans a force limit by the highest constant, the same force as the part's page", () => {
    // F = K·TS·w·t²/V by hand: w the longest line less where it stops, 667.68 − 206.46 mm.
    expect(plan.longestHitMm).toBeCloseTo(461.2, 1);
    expect(plan.forceLimitKN).toBeCloseTo((1.6 * 360 * 461.217 * 16) / 32 / 1000, 2);
    expect(plan.forceKNPerM).toBeCloseTo(1.6 * 510 * 0.5, 6);
    expect(plan.forceLimitMostKN).toBeCloseTo((plan.forceLimitKN * 510) / 360, 6);
    expect(step("tooling").toNote).toContainEqual({
      label: "force limit set",
      unit: "kN",
      planned: plan.forceLimitKN,
    });
    for (const words of [step("tooling").text, said("tooling")]) {
      expect(words).toContain("110 kN to 133 kN");
      expect(words).toMatch(
        /Set the force limit to 133 kN \(the brake has \d+ kN\): what asks for more is a wrong die/,
      );
      expect(words).toContain("360 MPa tensile strength");
      expect(words).toContain("360 MPa tensile strength, the least of ");
      expect(words).toContain("408 kN for each metre");
      expect(words).toMatch(/ up to 510 MPa|to 510 MPa\./);
      expect(words).toMatch(/Without (one|a certificate) .*may stop.* (never above|to) 188 kN/);
    }
    expect(forming.checks.find(({ id }) => id === "brake-force")!.advice).toContain("110 kN to 133 kN");
  });

  it("says that plate may be stronger where the grade's greatest strength is not known", () => {
    // Under 3 mm the range of the table does not hold, and 304 has none there.
    for (const part of [
      { ...shoe, thickness: 2.5 },
      { ...shoe, material: "304" },
    ]) {
      const other = planOn(part, longBrake());
      expect(other.plan).toMatchObject({ tensileMostMPa: null, forceLimitMostKN: null });
      const tensile = part.thickness === 4 ? 515 : 360;
      const { dieMm, forceKNPerM } = other.plan;
      expect(forceKNPerM).toBeCloseTo((1.6 * tensile * part.thickness ** 2) / dieMm, 6);
      expect(other.step("tooling").text).toContain(
        "greatest tensile strength of this plate is not known here",
      );
      expect(other.said("tooling")).toContain("the ram may stop at the limit: ask for the strength");
    }
  });

  it("says what a blank weighs and that it is lifted by crane, above the shop's own rule", () => {
    const made = (handLiftKg?: number) => {
      const one = { ...shop([longBrake()]), ...(handLiftKg !== undefined && { handLiftKg }) };
      const out = develop(shoe, { catalogue: loadCatalogue().catalogue, shop: one });
      if (out.kind === "refused") throw new Error("refused");
      return out.report.forming.plans[0]!.steps.find(({ id }) => id === "mark")!;
    };
    const kg = say.mass(Math.max(...reportOf(shoe).blanks.map(({ massKg }) => massKg)));
    expect(made(5).cautions[0]).toMatch(/sharp and heavy: gloves/);
    expect(made(5).cautions.join(" ")).toContain(
      `A blank weighs ${kg}, more than is lifted by hand here (${say.mass(5)}): crane or hoist, and held up at the brake`,
    );
    expect(made(200).cautions).toEqual([
      "Cut plate is sharp and heavy: gloves, and the shop's own lifting rules.",
    ]);
  });

  it("says crane where the bent piece or the tacked part hangs, each by its own mass", () => {
    const steps = (part: NamedPart, handLiftKg: number) => {
      const one = { ...shop([longBrake()]), handLiftKg };
      const out = develop(part, { catalogue: loadCatalogue().catalogue, shop: one });
      if (out.kind === "refused") throw new Error("refused");
      const { forming, blanks } = out.report;
      return {
        at: (id: string) => forming.plans[0]!.steps.find((step) => step.id === id)!.cautions.join(" "),
        masses: blanks.map(({ massKg }) => massKg),
      };
    };
    const halves = { ...shoe, pieces: 2 };
    const { masses } = steps(halves, 1);
    const [piece, whole] = [Math.max(...masses), masses[0]! + masses[1]!];
    const heavy = steps(halves, piece - 1);
    expect(heavy.at("bend")).toContain(`Crane: ${say.mass(piece)}.`);
    expect(heavy.at("tack")).toContain(
      `a piece weighs ${say.mass(piece)}, the tacked part ${say.mass(whole)}.`,
    );
    expect(heavy.at("inspect")).toContain(`Crane: ${say.mass(whole)}.`);
    const between = steps(halves, (piece + whole) / 2);
    expect(between.at("bend")).not.toContain("Crane");
    expect(between.at("tack")).toContain(`Tacked together it weighs ${say.mass(whole)}: crane.`);
    expect(between.at("inspect")).toContain(`Crane: ${say.mass(whole)}.`);
    const [one] = steps(shoe, 1).masses;
    for (const id of ["bend", "tack", "inspect"])
      expect(steps(shoe, 1).at(id)).toContain(`Crane: ${say.mass(one!)}.`);
    const light = steps(halves, whole + 1);
    for (const id of ["bend", "tack", "inspect"]) expect(light.at(id)).not.toMatch(/crane/i);
  });

  it("says how large a trial strip is", () => {
    // Four openings of the 32 die are less than 300 mm; ten thicknesses of 4 mm less than 50 mm.
    expect(step("strip").text).toContain("at least 300 mm across the line and 50 mm along it");
    const thick = planOn({ ...shoe, thickness: 8 }, longBrake({ dies: [80] }));
    expect(thick.said("strip")).toContain("at least 320 mm across the line and 80 mm along it");
  });

  it("never sets a limit above what the brake has", () => {
    const weak = planOn(shoe, longBrake({ forceKN: 120, dies: [32] }));
    expect(weak.plan.forceLimitKN).toBe(120);
    expect(weak.said("tooling")).toContain("all that the brake has");
  });

  it("says how a part of a line is bent, and names the middle line of each corner by its number", () => {
    const { plan, step } = halves;
    const text = [step("bend").text, step("tips").text].join(" ");
    expect(plan.lines.some(({ stopsShortMm }) => stopsShortMm > 0)).toBe(true);
    expect(text).toMatch(
      /with a punch no longer than that, or with the rectangular end hung out past the end/,
    );
    const named = /middle line \(lines? ([^)]*)\)/.exec(text)![1]!;
    const numbers = [...named.matchAll(/\d+/g)].map(([one]) => Number(one));
    expect(numbers.length).toBeGreaterThan(0);
    for (const number of numbers) {
      const one = plan.lines.find((line) => line.piece === 1 && line.number === number)!;
      const zone = plan.lines.filter((line) => line.piece === 1 && line.zone === one.zone);
      const place = zone.indexOf(one);
      expect(Math.abs(place - (zone.length - 1) / 2)).toBeLessThanOrEqual(0.5);
    }
  });

  it("has a step of its own for the wider die at the tips: its limit, its strip, and why it is not for the lines", () => {
    const { plan, step } = halves;
    const { text, toNote } = step("tips");
    // Seven lines a corner: its tip is folded along the fourth, which is the shortest of them and leaves the least.
    const middle = plan.lines.filter(({ number }) => [4, 11].includes(number));
    const longest = Math.max(...middle.map(({ stopsShortMm }) => stopsShortMm));
    expect(longest).toBeLessThan(Math.max(...plan.lines.map(({ stopsShortMm }) => stopsShortMm)));
    expect(text).toContain(
      `(lines 4 and 11 of each piece), from where the bent length ends: ${say.tape(longest)} at most`,
    );
    expect(plan.tips).toMatchObject({ leastDieMm: 36, dieMm: 40, longestMm: longest });
    // F = K·TS·w·t²/V by hand over the 40 die. The report has six decimals: half of the last off the force, and off the length.
    for (const [limitKN, strengthMPa] of [
      [plan.tips!.forceLimitKN, 360],
      [plan.tips!.forceLimitMostKN!, 510],
    ] as const) {
      const perMm = (1.6 * strengthMPa * 16) / 40 / 1000;
      expect(Math.abs(limitKN - perMm * longest)).toBeLessThanOrEqual(0.5e-6 * (1 + perMm));
    }
    expect(text).toContain("change the die: 40 mm, at least 36 mm.");
    expect(text).toContain(`Set the force limit to ${say.force(plan.tips!.forceLimitKN)}, never above`);
    expect(text).toMatch(/Fold a strip .* to 97\.8° between its legs, and look for cracks/);
    // Half of 40 instead of half of 32 between the lines: a quarter further from the tips, with as many lines.
    expect(text).toMatch(
      /Not for the lines: over it they would stop short by up to [\d.]+ mm, not 206\.5 mm/,
    );
    expect(plan.tips!.throughout.stopsShortMm).toBeGreaterThan(longest);
    expect(toNote.map(({ planned }) => planned)).toEqual([40, plan.tips!.forceLimitKN]);
    expect(step("bend").text).toContain("The tips are folded in the next step.");
    const round = planOn({ ...shoe, pieces: 2 }, longBrake({ dies: [40] }));
    expect(round.plan.tips).toBeNull();
    expect(round.steps.map(({ id }) => id)).not.toContain("tips");
    expect(round.step("bend").text).toContain("fold the tip of each corner along the corner's middle line");
  });

  it("has a strip and a line to note for each different angle, borders too", () => {
    const angles = ["A, 8.3°", "B, 12.2°", "C, 12.8°", "D, 14.5°"];
    expect(step("strip").toNote.map(({ label }) => label)).toEqual([
      "reading at touch",
      ...angles.map((one) => `${one}: depth from touch`),
    ]);
    expect(step("strip").text).toContain("180° less that: A 171.7°, B 167.8°, C 167.2°, D 165.5°.");
    expect(step("strip").text).toContain("A 8.3° (the lines beside a flat); B 12.2°; C 12.8°; D 14.5°");
    expect(step("bend").toNote).toHaveLength(4);
    for (const line of plan.lines) {
      const own = plan.depths.find(({ letter }) => letter === line.depth)!;
      expect(line.bendDeg).toBeGreaterThanOrEqual(own.fromDeg);
      expect(line.bendDeg).toBeLessThanOrEqual(own.toDeg);
    }
  });

  it("says which template, how it is held, and how a corner is measured", () => {
    const inside = reportOf({ ...shoe, roundEnd: { diameter: 390, measured: "inside" } } as NamedPart);
    const bend = inside.forming.plans[0]!.steps.find(({ id }) => id === "bend")!;
    // An inside size is the drawing's own.
    expect(bend.figures.find(({ label }) => label.startsWith("template"))!.value).toBeCloseTo(195, 9);
    expect(said("bend")).toMatch(
      /Template of the round end: 195\.3 mm radius, on the inside, held in the plane/,
    );
    expect(said("corners")).toMatch(/try square .* 90° inside/);
    expect(said("corners")).toMatch(/greatest reading is 97\.8°, ± 1°\. Within that it passes/);
    expect(said("corners")).toMatch(/add up to 83\.3°: no angle to measure/);
    // A newcomer is told what a wrong reading means.
    expect(halves.said("corners")).toMatch(/If it reads more, .*deeper.*If it reads less, .*ask the foreman/);
    expect(step("corners").toNote.map(({ label }) => label)).toEqual(
      [1, 2, 3, 4].map((one) => `corner ${one}, flats`),
    );
  });

  it("says which face is up and which way the plate folds, and to turn a mirrored blank over", () => {
    expect(said("mark")).toMatch(/Inside up, as the pattern is drawn.*punch presses on the inside.*folds up/);
    const mirrored = planOn({ ...shoe, mirror: true }, longBrake());
    expect(mirrored.said("mark")).toMatch(/drawn with its outside up: turn the blank over/);
    expect(mirrored.step("bend").text).toMatch(/^Inside up/);
  });
});

it("has templates square to the element for a cone that the brake bends, and no corners", () => {
  const item = { ...coneCase(reducer), usualRoute: "brake" as const };
  const zone = {
    piece: 1,
    fromRad: 0,
    toRad: 6,
    afterFlat: false,
    beforeFlat: false,
    turnedRad: (theta: number) => theta,
    acrossRad: 0,
    edgeMm: { a: 2700, b: 1200 },
    wideRadiusMm: () => 450,
    place: () =>
      ({ planDeg: 0, lengthMm: 743, alongMm: { a: 0, b: 0 }, from: [0, 0], to: [0, 743] }) as const,
  };
  const { steps } = formingOf({ ...item, bendZones: [zone] }, shop([brake()])).plans[0]!;
  const words = steps.find(({ id }) => id === "bend")!.text;
  // Middle radius square to the element r/cos α, half the thickness less: tan α = 250/700.
  const cosine = 700 / Math.hypot(700, 250);
  expect(words).toContain(`R ${say.length(450 / cosine - 3)} and ${say.length(200 / cosine - 3)}`);
  expect(words).toContain("held square to the element line");
  expect(steps.map(({ id }) => id)).not.toContain("corners");
});

// cos(angle between two walls) = −cos(slope 1) × cos(slope 2), the trade's hopper corner (sources pyramid-60 and
// math-central-qq-09-08 recompute by it); slopes from level, by the rise over the run of each flat as it is laid out.
it("finds the same angle between two flats as the table of hopper corners", () => {
  fc.assert(
    fc.property(
      even(300, 900),
      even(300, 900),
      even(100, 280),
      even(200, 900),
      (length, width, diameter, height) => {
        const report = reportOf(
          named({
            shape: "square-to-round",
            thickness: 2,
            neutral: 0,
            rectangularEnd: { length, width, measured: "inside" },
            roundEnd: { diameter, measured: "inside" },
            height,
          }),
        );
        const slope = (side: number) => (Math.atan2(height, (side - diameter) / 2) * 180) / Math.PI;
        const { between, bend } = corner(slope(length), slope(width));
        for (const { flatsDeg, turnDeg } of report.forming.plans[0]!.brake!.zones) {
          if (flatsDeg === null) continue;
          expect(flatsDeg).toBeCloseTo(between, 6);
          // Its hits go round the cone, never the shorter way.
          expect(turnDeg).toBeGreaterThanOrEqual(bend - 1e-6);
        }
      },
    ),
    runs(30),
  );
});

describe("depths", () => {
  const hits = (...degs: number[]) => degs.map((bendDeg) => ({ bendDeg, kind: "inner" as const }));

  it("take angles within half a degree together, and never more than six", () => {
    expect(depthsOf(hits(3, 3.4, 3.6, 9)).map(({ fromDeg, toDeg }) => [fromDeg, toDeg])).toEqual([
      [3, 3.4],
      [3.6, 3.6],
      [9, 9],
    ]);
    fc.assert(
      fc.property(fc.array(even(0.5, 30), { minLength: 1, maxLength: 60 }), (degs) => {
        const depths = depthsOf(hits(...degs));
        expect(depths.length).toBeLessThanOrEqual(6);
        expect(depths.reduce((sum, { lines }) => sum + lines, 0)).toBe(degs.length);
        for (const bendDeg of degs) {
          const own = depths.find(({ letter }) => letter === depthOf(depths, { bendDeg }))!;
          expect(bendDeg >= own.fromDeg && bendDeg <= own.toDeg).toBe(true);
        }
      }),
      runs(100),
    );
  });
});

it("is written for any square-to-round without a number that is none", () => {
  fc.assert(
    fc.property(squareToRound, (part) => {
      for (const { steps } of reportOf(part).forming.plans)
        for (const { text, cautions, toNote } of steps) {
          expect([text, ...cautions].join(" ")).not.toMatch(/Infinity|NaN|undefined|null/);
          for (const { planned = 0 } of toNote) expect(Number.isFinite(planned)).toBe(true);
        }
    }),
    runs(60),
  );
});

it("names the middle of nearly equal angles, and says how unlike the lines of one depth are where angles are many", () => {
  const steps = (part: NamedPart) => reportOf(part).forming.plans[0]!.steps.find(({ id }) => id === "strip")!;
  expect(steps(shoe).text).not.toContain("not quite alike");
  const askew = steps(askewHood);
  expect(askew.toNote.filter(({ label }) => label.endsWith("depth from touch")).length).toBeLessThanOrEqual(
    6,
  );
  expect(askew.text).toMatch(
    /Lines of one letter are not quite alike: those of [A-F] run from [\d.]+° to [\d.]+°, and its depth is for [\d.]+°/,
  );
});

it("has a template for a cone to a point and for one too uneven to have zones, never an empty or a nought one", () => {
  const words = (part: NamedPart) => planOn(part, brake({ forceKN: 3000 })).step("bend").text;
  const offset = named({
    shape: "eccentric-cone",
    thickness: 2,
    largeEnd: { diameter: 320, measured: "inside" },
    smallEnd: { diameter: 0, offset: [60, 25] },
    height: 380,
  });
  const upright = named({
    shape: "right-cone",
    thickness: 2,
    largeEnd: { diameter: 320, measured: "middle" },
    smallEnd: { diameter: 0 },
    height: 380,
  });
  expect(words(offset)).toMatch(
    /large end: from R 1\d\d\.?\d* mm, where it is tightest, to R \d+\.?\d* mm; the plot/,
  );
  // Square to the element r/cos α on the middle of the wall, half the thickness less.
  const inside = 160 / (380 / Math.hypot(380, 160)) - 1;
  expect(words(upright)).toContain(`large end: R ${say.length(inside)}`);
  for (const part of [offset, upright]) expect(words(part)).not.toMatch(/R 0 mm|: [.;]/);
});

it("tells corners that are not alike each by its name, and on paper at the line for it", () => {
  const { said, step, plan } = planOn(
    named({
      shape: "square-to-round",
      thickness: 3,
      rectangularEnd: { length: 700, width: 400, measured: "inside" },
      roundEnd: { diameter: 300, measured: "inside", offset: [120, 40] },
      height: 400,
      pieces: 2,
    }),
    longBrake(),
  );
  expect(said("corners")).toMatch(/greatest reading is corner 1 of piece 1: [\d.]+°; corner 2/);
  expect(step("corners").text).toMatch(/corner 1 of piece 1: [\d.]+°; corner 2 of piece 1: /);
  expect(step("corners").toNote).toHaveLength(plan.zones.length);
});

it("has the fraction beside what is taped on an inch sheet, and a word of its own for the load on a length of tools", () => {
  const inches = planOn({ ...shoe, units: "in", seam: { at: 270, joint: "lap", lap: 19.05 } }, longBrake());
  const short = Math.max(...inches.plan.lines.map(({ stopsShortMm }) => stopsShortMm));
  const told = sayIn("in");
  expect(told.tape(short)).toMatch(/^[\d.]+ in \([\d /-]+\)$/);
  expect(inches.step("bend").text).toContain(`rectangular end, by up to ${told.tape(short)}: bend`);
  expect(inches.step("bend").text).toContain(`${told.tape(inches.plan.behind!.inOrder.depthMm)} behind`);
  expect(inches.step("tack").text).toContain(
    "over each other by 0.75 in (3/4): seam edge 1 inside, on the lap line",
  );
  expect(inches.step("mark").text).toContain(
    "Scribe the lap line too, 0.75 in (3/4) from the edge of the plate beyond seam 2",
  );
  expect(inches.step("tooling").text).toMatch(
    /Apart from that limit punch and die must be marked to bear [\d.]+ short tons for each foot of their length or more/,
  );
});

it("rises on both sides of a line, and is bent a little less deep at first", () => {
  const { step } = planOn(shoe, longBrake());
  expect(step("mark").text).toContain("the plate folds up, on both sides of a line.");
  expect(step("bend").text).toMatch(
    /by the depth of its letter as it is: at first a degree less deep, by [\d.]+ mm, then, where .* too flat/,
  );
  // Seven lines of a corner, a degree each.
  expect(step("bend").text).toContain(
    "one or two of its lines a degree deeper, then try again, for a degree on",
  );
  expect(step("bend").text).toContain("each of 7 lines closes it by 7°");
});

// Flats beside each other, turning by the angles given, from half of the middle bend on; a disc as large as the template let
// down into the hollow until it bears: how far it then stands off each bend.
it("reads the light under a template the right way: more at a line is bent too far, light at both ends too flat", () => {
  const [radius, right] = [200, 12];
  const lights = (bends: readonly number[]) => {
    const middle = (bends.length - 1) / 2;
    const space = 2 * radius * Math.tan((right * Math.PI) / 360);
    const chain: (readonly [number, number])[] = [[0, 0]];
    let [x, y, turned] = [0, 0, ((bends[middle] as number) * Math.PI) / 360];
    for (const bend of bends.slice(middle + 1)) {
      x += space * Math.cos(turned);
      y += space * Math.sin(turned);
      chain.push([x, y]);
      turned += (bend * Math.PI) / 180;
    }
    const bears = (high: number) =>
      chain.slice(1).every(([x2, y2], i) => {
        const [x1, y1] = chain[i] as readonly [number, number];
        const [dx, dy] = [x2 - x1, y2 - y1];
        const t = Math.max(0, Math.min(1, (-x1 * dx + (high - y1) * dy) / (dx * dx + dy * dy)));
        return Math.hypot(x1 + t * dx, y1 + t * dy - high) >= radius;
      });
    let [low, high] = [0, 3 * radius];
    for (let i = 0; i < 60; i++) {
      const mid = (low + high) / 2;
      if (bears(mid)) high = mid;
      else low = mid;
    }
    return chain.map(([x, y]) => Math.hypot(x, y - high) - radius);
  };
  const passes = radius * (1 / Math.cos((right * Math.PI) / 360) - 1);
  // As planned: the same at every line, and all of it passes.
  for (const light of lights([12, 12, 12, 12, 12])) expect(light).toBeCloseTo(passes, 6);
  // The middle line too far: more light there. All of them too little: none in the middle, most at the ends.
  expect(lights([12, 12, 14, 12, 12])[0]).toBeGreaterThan(1.3 * passes);
  const [inMiddle, , atEnd] = lights([10, 10, 10, 10, 10]) as [number, number, number];
  expect(inMiddle).toBeLessThan(passes);
  expect(atEnd).toBeGreaterThan(passes);
  const { step } = planOn(shoe, longBrake());
  expect(step("bend").text).toMatch(
    /where both flats beside a line bear, up to [\d.]+ mm of light at it passes; more: it is bent too far, do not hit it/,
  );
  expect(step("bend").text).toContain("shows light at both its ends, the plate is too flat");
  const { step: inHalves } = planOn({ ...shoe, pieces: 2 }, longBrake());
  const halves = inHalves("corners").text;
  expect(inHalves("tack").text).toContain("outline of the larger end (800 mm × 800 mm outside).");
  expect(halves).toMatch(
    /light at both its ends, put die 32 mm and force limit 133 kN back, and hit a line a degree deeper for each/,
  );
  expect(halves).not.toContain("more light");
});

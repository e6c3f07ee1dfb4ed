import { describe, expect, it } from "vitest";
import { formingOf } from "../../src/forming/forming.ts";
import type { FormingCase } from "../../src/forming/case.ts";
import type { NumberedStep } from "../../src/forming/sheet/step.ts";
import { firstPassShares } from "../../src/forming/firstPass.ts";
import { meanHalfAngleRad } from "../../src/forming/skin.ts";
import { sayIn } from "../../src/forming/say.ts";
import { straightedgeOf } from "../../src/forming/straightedge.ts";
import { coneCase, coneless, reducer, roll, shop } from "./cases.ts";

const machine = roll({
  slide: { origin: [230, -200], angle: 60, travel: 300 },
  bearings: [140, 160],
  dropEnd: "left",
  coneAttachment: { range: [60, 60], clearRoom: 200 },
});
const planOn = (item: FormingCase) => formingOf(item, shop([machine])).plans[0]!;
const step = (steps: readonly NumberedStep[], id: string) => steps.find((one) => one.id === id)!;
const say = sayIn("mm");

/** Half the slant, tilt, bands and the model's own middle stand in the settings table; all else is worked by. */
const IN_THE_TABLE =
  /half the slant|^tilt|bearing beyond|, low$|, high$|by the model|height of that place|needs by itself/;

/** As fine as a roll is set. */
const sum = (end: string, mm: number) => ({
  label: `${end}, set`,
  unit: "mm",
  planned: tenth(mm),
  onto: "reading at 0",
});
/** With room for what the first pass taught. */
const carried = <B>(box: B) => ({ ...box, carried: true });
const tenth = (mm: number) => Math.round(mm * 10) / 10;

describe("the steps beside the machine", () => {
  const { steps, settings } = planOn(coneCase(reducer));

  it("hold every number that is worked by", () => {
    const worked = steps.flatMap(({ id, text, figures }) =>
      figures.filter(({ label }) => !IN_THE_TABLE.test(label)).map((one) => ({ id, text, ...one })),
    );
    expect(worked.length).toBeGreaterThan(15);
    for (const { id, text, value, unit, label } of worked)
      expect(text, `${id}: ${label}`).toContain(unit === "kg" ? say.mass(value) : say.length(value));
  });

  it("tell a newcomer which face, which end, what to measure, and what comes first", () => {
    const words = (id: string) => [step(steps, id).text, ...step(steps, id).cautions].join(" ");
    expect(words("align")).toMatch(
      /inside face up.*small edge tight on the stop.*seam edge 1 lies ahead.*support/s,
    );
    expect(words("align")).toMatch(
      /hands, sleeves and gloves: gloves off.*every stop button.*tried.*nobody near the nip/,
    );
    expect(words("first-raise")).toMatch(
      /^With the plate moving raise to .*\. Bring it to 0; from there go in \d+ like steps/,
    );
    expect(words("second-raise")).toMatch(
      /^Carry over what the first pass taught.* write it into the boxes\..* Then, with the plate moving, raise towards .*, from 0 in \d+ like steps/s,
    );
    expect(words("first-measure")).toMatch(
      /Release it: bending roll lowered, run back until its seam edges are level, held, rolls off, pinch open.*In doubt stand it on its large end on a level floor\. Measure straight across the seam, inside corner to inside corner, lead and all/,
    );
    expect(words("first-correct")).toMatch(
      /Bending roll lowered, pinch lightly and run the piece back to .*; pinch as before,.*after a third raise: stop and ask the foreman/,
    );
    // The yoke is closed before the rolls turn for the first time, and again after the piece has come off over it.
    expect(words("align")).toContain("Have the yoke closed and locked.");
    expect(words("turn")).toContain("close and lock the yoke, pinch as before");
    expect(words("close")).toMatch(
      /small end open: fixed end 1 part up, drop end [\d.]+ down; large end open: drop end 1 up, fixed end [\d.]+ down: the other end stays/,
    );
    expect(words("unload")).toMatch(
      /Lower the bending roll, open the pinch and take the piece off by the manual: sideways, the top roll \(\d+ mm\) coming out between the seam edges/,
    );
  });

  it("say what hurts or spoils at each of them", () => {
    // Only the touch that nought is found by is harmless.
    const silent = steps.filter(({ cautions }) => cautions.length === 0);
    expect(silent.map(({ id }) => id)).toEqual(["zero"]);
    for (const [id, words] of [
      ["edges", /sharp and heavy: gloves/],
      ["stop", /must not strike the yoke.*hand jog \(short taps\).*look first whether the yoke is as high/],
      ["first-through", /Support the rising large end; keep clear/],
      ["first-measure", /nobody stand under or inside the piece/],
      ["unload", /do not draw the piece out under pinch pressure/],
      ["turn", /springy and awkward now: slings/],
      ["close", /Never let an overlap enter the pinch/],
      ["tack", /Hot work.*when a clamp slips/],
      ["re-round", /Stop if a tack cracks/],
      ["inspect", /Secure it against rolling and tipping/],
    ] as const)
      expect(step(steps, id).cautions.join(" "), id).toMatch(words);
  });

  it("have what is planned beside the line for what was really set, at edges and bearings", () => {
    for (const [id, pass] of [
      ["first-raise", "trial"],
      ["second-raise", "finished"],
    ] as const) {
      const start = settings!.zones[0]!.passes.find((one) => one.id === pass)!.start!;
      expect(step(steps, id).toNote).toEqual([
        // The small edge lies towards the drop end until the job is turned round.
        ...(id === "first-raise"
          ? [sum("drop end", start.smallBearingMm!), sum("fixed end", start.largeBearingMm!)]
          : [sum("drop end", start.largeBearingMm!), sum("fixed end", start.smallBearingMm!)].map(carried)),
        {
          label: "raise, large edge, set",
          unit: "mm",
          planned: tenth(start.largeMm),
        },
      ]);
    }
    expect(step(steps, "stop").toNote[0]!.planned).toBe(60);
    expect(step(steps, "turn").toNote[0]!.planned).toBe(60);
  });

  it("say which bearing is which in both passes, for turning the job round swaps them", () => {
    expect(step(steps, "first-raise").text).toMatch(
      /small edge's bearing \(now at the drop end\).*large edge's \(at the fixed end\)/,
    );
    expect(step(steps, "second-raise").text).toMatch(
      /small edge's bearing \(now at the fixed end\).*large edge's \(at the drop end\)/,
    );
    expect(step(steps, "turn").text).toContain("the small edge's bearing is now the one at the fixed end");
    expect(step(steps, "zero").text).toMatch(/the tilt \([\d.]+°, small end higher\) follows from/);
  });

  it("say how much is dressed off which face", () => {
    const off = (6 / 2) * Math.tan(coneCase(reducer).leanRad);
    expect(step(steps, "edges").text).toContain(
      `Bevel the large edge on the inside, the small edge on the outside: there ${say.length(off)} off along the wall, running out to nothing at half the thickness`,
    );
    const allowed = planOn(coneCase(reducer, { trimAllowance: true }));
    expect(step(allowed.steps, "edges").text).toContain(
      `${say.length(2 * off)} off along the wall, running out to nothing at the other face`,
    );
  });

  it("plan nothing where the roll's geometry is not known", () => {
    const [plan] = formingOf(coneCase(reducer)).plans;
    expect(step(plan!.steps, "first-raise").toNote).toEqual([
      { label: "raise, large edge, set", unit: "mm" },
      { label: "raise, small edge, set", unit: "mm" },
    ]);
  });
});

it("has a sum for both bearings of every zone, the other way round in the second pass, and those zones' settings and templates in words", () => {
  const curvature = Array.from({ length: 72 }, (_, i) => ({
    planDeg: 5 * i,
    largeRadiusMm: 500 + 150 * Math.cos((i * Math.PI) / 36),
    smallRadiusMm: 250 + 75 * Math.cos((i * Math.PI) / 36),
    slantMm: 600,
  }));
  const item = { ...coneless(coneCase(reducer)), shape: "eccentric-cone" as const, curvature };
  const { steps, settings } = planOn(item);
  const zones = settings!.zones;
  expect(zones.length).toBeGreaterThan(2);
  const raise = step(steps, "first-raise");
  // The skin is the same on both sides of its seam, and so are its zones: two of a kind share a line, till each has its own sum.
  const half = Math.ceil(zones.length / 2);
  const second = step(steps, "second-raise");
  expect(raise.toNote).toHaveLength(3 * half);
  expect(second.toNote).toHaveLength(3 * zones.length);
  for (const [i, { passes }] of zones.slice(0, half).entries()) {
    const at = (id: string) => passes.find((pass) => pass.id === id)!.start!;
    const name = i === half - 1 ? `zone ${i + 1}` : `zones ${i + 1} and ${zones.length - i}`;
    const row = (drop: number, fixed: number, large: number, of = name) => [
      { label: `${of}, drop end, set`, unit: "mm", planned: tenth(drop), onto: "reading at 0" },
      { label: "fixed end, set", unit: "mm", planned: tenth(fixed), onto: "reading at 0" },
      { label: "large edge, set", unit: "mm", planned: tenth(large) },
    ];
    const [trial, finished] = [at("trial"), at("finished")];
    expect(raise.toNote.slice(3 * i, 3 * i + 3)).toEqual(
      row(trial.smallBearingMm!, trial.largeBearingMm!, trial.largeMm),
    );
    for (const at of [i, zones.length - 1 - i])
      expect(second.toNote.slice(3 * at, 3 * at + 3)).toEqual(
        row(finished.largeBearingMm!, finished.smallBearingMm!, finished.largeMm, `zone ${at + 1}`).map(
          (one) => ("onto" in one ? carried(one) : one),
        ),
      );
    expect(step(steps, "close").text).toContain(`${name}: R `);
  }
  expect(step(steps, "first-through").text).toContain(
    "plate running, both bearings by turns a little at a time, one up, the other down",
  );

  // The window of every zone and end, by the shares that the words name, to judge what was measured by.
  const { window } = { window: firstPassShares(meanHalfAngleRad(item)) };
  const boxes = step(steps, "first-measure").toNote;
  expect(boxes).toHaveLength(2 * zones.length);
  zones.forEach(({ largeRadiusMm, smallRadiusMm }, i) => {
    const inside = (middle: number, share: number) =>
      say.tape(middle / share - item.thicknessMm / 2).replace(" mm", "");
    for (const [j, end, middle] of [
      [0, "large", largeRadiusMm],
      [1, "small", smallRadiusMm],
    ] as const)
      expect(boxes[2 * i + j]!.label.replace(/ \(.*/, "")).toBe(
        `zone ${i + 1} ${end} end R ${inside(middle, window.from)} to ${inside(middle, window.to)}`,
      );
  });
  // The same as depths, by the circle through both ends of the straightedge and the middle of what it spans.
  const reach = straightedgeOf({ item, roll: machine })! / 2;
  const told = boxes.flatMap(({ label }) => {
    const [, open, tight, least, most] = /R ([\d.]+) to ([\d.]+) \(([\d.]+) to ([\d.]+)\)$/.exec(label) ?? [];
    return open === undefined
      ? []
      : [
          [open, least],
          [tight, most],
        ].map((pair) => pair.map(Number));
  });
  expect(told.length).toBeGreaterThan(zones.length);
  for (const [radius, depth] of told)
    expect((reach ** 2 + depth! ** 2) / (2 * depth!) / radius!).toBeCloseTo(1, 2);
});

it("notes no gap left of a piece that stays open", () => {
  const labels = (pieces: number, id = "close") =>
    step(planOn(coneCase(reducer, { pieces })).steps, id).toNote.map(({ label }) => label);
  expect(labels(1)).toContain("edge out, large end");
  expect(labels(2)).toEqual([
    "scale at the end, drop end",
    "scale at the end, fixed end",
    "template, tight or open",
  ]);
  expect(labels(2, "last-edge")).toEqual(["apart, large end", "apart, small end"]);
});

import { describe, expect, it } from "vitest";
import type { PressBrake } from "../../src/forming/machine.ts";
import { morePieces } from "../../src/forming/piecesToClear.ts";
import { sayIn } from "../../src/forming/say.ts";
import { loadCatalogue } from "../../src/input/loadCatalogue.ts";
import { develop } from "../../src/report/develop.ts";
import { formingCase } from "../../src/report/formingCase.ts";
import type { NamedPart } from "../../src/report/lay.ts";
import { layOut } from "../../src/report/layOut.ts";
import { named } from "../parts.ts";
import { brake, shop } from "./cases.ts";

const say = sayIn("mm");
const tables = loadCatalogue();
const machine = brake({ bedLength: 3050, forceKN: 1000, dies: [16, 25, 32, 40, 63, 80], throat: 600 });

/** A foot of a flue in one piece, as nobody can lift it off the punch. */
const foot = named({
  shape: "square-to-round",
  thickness: 2,
  rectangularEnd: { length: 600, width: 450, measured: "outside" },
  roundEnd: { diameter: 400, measured: "outside" },
  height: 370,
  seam: { at: 90, joint: "lap", lap: 19 },
});
const sleeve = named({
  shape: "right-cone",
  thickness: 3,
  largeEnd: { diameter: 447, measured: "middle" },
  smallEnd: { diameter: 447, measured: "middle" },
  height: 600,
  seam: { at: 0, joint: "butt", gap: 2 },
});

function bent(part: NamedPart, on: PressBrake = machine) {
  const made = develop(part, { catalogue: tables.catalogue, shop: shop([on]) });
  if (made.kind === "refused") throw new Error(made.issues.map(({ problem }) => problem).join());
  const plan = made.report.forming.plans[0]!;
  const step = (id: string) => plan.steps.find((one) => one.id === id)!;
  return { plan: plan.brake!, steps: plan.steps, step };
}

const turnsOf = ({ zones }: ReturnType<typeof bent>["plan"]) =>
  [...new Set(zones.map(({ piece }) => piece))].map((piece) =>
    zones.filter((one) => one.piece === piece).reduce((sum, { turnDeg }) => sum + turnDeg, 0),
  );

describe("a part that closes round the punch as it is drawn", () => {
  const { plan, step, steps } = bent(foot);

  it("says so first of all, with the field that makes it go, and that this sheet is then void", () => {
    const [first] = plan.remarks;
    expect(first!.id).toBe("off-the-punch");
    const half = Math.round(plan.closes!.better!.turnDeg);
    expect(first!.text).toBe(
      `As drawn, in one piece, it cannot come off this punch: it turns by 367° and closes round it. Best in 2 pieces, which turn by ${half}° and come off: write pieces: 2 into the part file and print its new sheet; this one is then void. Only where the foreman keeps it as drawn: the steps below leave lines 17 to 20 out, and bend them by hand off the brake.`,
    );
  });

  it("names so many pieces as come off where they are laid out, and what they turn by", () => {
    for (const [part, pieces] of [
      [foot, 2],
      [{ ...foot, roundEnd: { diameter: 300, measured: "outside", offset: [140, 60] } } as NamedPart, 2],
      [sleeve, 2],
    ] as const) {
      const better = bent(part).plan.closes!.better!;
      expect(better.pieces).toBe(pieces);
      const made = bent({ ...part, pieces });
      // Its plan says nothing of more pieces: it has come off.
      expect(made.plan.closes).toBeNull();
      // A butt seam takes half its gap off both edges, and of a round end as much turning as that is long.
      const offDeg = (2 / 447) * (360 / Math.PI);
      expect(Math.abs(Math.max(...turnsOf(made.plan)) - better.turnDeg)).toBeLessThanOrEqual(offDeg);
    }
  });

  it("asks for more pieces where two of them turn too far, one side of the part being bent more", () => {
    const laid = layOut(foot, tables);
    if (laid.kind === "refused") throw new Error("refused");
    const item = formingCase(foot, laid);
    const [zone] = item.bendZones!;
    const [fromRad, toRad] = [zone!.fromRad, zone!.fromRad + 2 * Math.PI];
    // All its turning within a quarter and a half of the way round.
    const turnedRad = (theta: number) => {
      const share = Math.min(0.5, Math.max(0.25, (theta - fromRad) / (2 * Math.PI)));
      return (share - 0.25) * 4 * 1.9 * Math.PI;
    };
    const uneven = {
      ...item,
      shape: "eccentric-cone" as const,
      bendZones: [{ ...zone!, afterFlat: false, fromRad, toRad, turnedRad }],
    };
    // A seventh that lies within that quarter turns by 4/7 of 342°, which is 195°; an eighth by half of it.
    expect(morePieces(uneven, Infinity)).toMatchObject({
      pieces: 8,
      turnDeg: expect.closeTo(171, 6) as number,
    });
  });

  it("leaves out the lines that are hit last, alike on both sides of the middle, and holds its seam open by them", () => {
    const { left, openMm, openAt } = plan.closes!;
    expect(left).toEqual([17, 18, 19, 20].map((line) => ({ piece: 1, line })));
    const last = plan.lines.toSorted((one, other) => other.order - one.order);
    expect(last.slice(0, 2).map(({ number }) => number)).toEqual([19, 20]);
    expect(openAt).toBe("round end");
    // Fewer lines would hold it open by less than a quarter of the round end.
    const turn = (numbers: number[]) =>
      plan.lines
        .filter(({ number }) => numbers.includes(number))
        .reduce((sum, { bendDeg }) => sum + bendDeg, 0);
    const gap = (deg: number) => 2 * Math.sin((deg * Math.PI) / 360);
    expect(gap(turn([18, 19]))).toBeLessThan(0.25);
    expect(gap(turn([17, 18, 19, 20]))).toBeGreaterThan(0.25);
    expect(step("bend").text).toContain("(lines 1 to 16), that edge’s side behind");
    expect(step("bend").text).toContain("and go from there (lines 36 to 21). Leave out lines 17 to 20:");
    expect(step("bend").text).toContain(`about ${say.tape(openMm)} open at the round end.`);
  });

  it("holds a sleeve open by what its own lines leave, walked round line by line", () => {
    const { plan: round } = bent(sleeve);
    const { left, openMm } = round.closes!;
    const wholeMm = Math.PI * 447 - 2;
    const across = (leftOut: ReadonlySet<number>) => {
      let [x, y, heading, at] = [0, 0, 0, 0];
      for (const { number, bendDeg, alongMm } of [
        ...round.lines,
        { number: 0, bendDeg: 0, alongMm: { a: wholeMm } },
      ]) {
        x += (alongMm.a - at) * Math.cos(heading);
        y += (alongMm.a - at) * Math.sin(heading);
        at = alongMm.a;
        if (!leftOut.has(number)) heading += (bendDeg * Math.PI) / 180;
      }
      return Math.hypot(x, y);
    };
    const open = across(new Set(left.map(({ line }) => line)));
    // Bent by all lines it stands open by its gap; the inside is a thickness less across; and of three lines the outer two
    // lie aside of what is opposite the seam by the angle of a line, seen from there by half of that. Flats stand off the
    // circle by what the plan permits.
    const asideMm = openMm * (1 - Math.cos((round.lines[13]!.bendDeg * Math.PI) / 360));
    const shut = across(new Set());
    expect(shut).toBeLessThan(30);
    expect(Math.abs(open - openMm)).toBeLessThanOrEqual(shut + 3 + asideMm + round.permittedFacetMm);
    expect(left.length).toBe(3);
  });

  it("carries the choice out: the lines left and all tips by hand off the brake, before the corners are checked", () => {
    expect(steps.map(({ id }) => id)).toEqual([
      "mark",
      "tooling",
      "strip",
      "bend",
      "shut",
      "corners",
      "tack",
      "inspect",
    ]);
    const { text, cautions } = step("shut");
    expect(text).toContain("along each line left (lines 17 to 20)");
    expect(text).toContain("The punch no longer reaches into its corners");
    expect(text).toContain("along its middle line (lines 5, 14, 23 and 32)");
    expect(text).toContain(`rounded to ${say.length(plan.leastInsideRadiusMm)} or more`);
    expect(cautions.join(" ")).toContain("Pulled shut it is a spring");
    expect(step("bend").text).toContain("The tips are dressed in the next step.");
    expect(step("corners").text).toContain("too open: dress its tip a little more over the bar");
    // A sleeve has no corners.
    expect(bent(sleeve).step("shut").text).not.toMatch(/corner|tip/);
  });
});

it("has nothing to choose in halves, which are tilted off, their corners open to the punch", () => {
  const { plan, step, steps } = bent({ ...foot, pieces: 2 });
  expect(plan.closes).toBeNull();
  expect(plan.piecesToComeOff).toBe(2);
  expect(plan.remarks[0]).toMatchObject({ id: "off-the-punch" });
  expect(plan.remarks[0]!.text).toMatch(
    /^A piece turns by 18\d°, a little more than half a turn: tilt it off/,
  );
  expect(step("bend").cautions).toContain(plan.remarks[0]!.text);
  expect(step("mark").toNote).toEqual([]);
  expect(steps.map(({ id }) => id)).not.toContain("shut");
  expect(step("tips").text).toContain("Open on its seam side the piece lets the punch into every corner.");
  expect(step("tips").text).toContain("what stays round beyond the punch, dress over a bar inside");
});

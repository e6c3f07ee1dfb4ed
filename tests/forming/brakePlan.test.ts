import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { BendZone } from "../../src/forming/bendZone.ts";
import { hitsOf, orderOfHits } from "../../src/forming/brakeLines.ts";
import { type BrakePlan, brakePlan } from "../../src/forming/brakePlan.ts";
import { formingOf } from "../../src/forming/forming.ts";
import { sayIn } from "../../src/forming/say.ts";
import { distance2 } from "../../src/geometry/vector.ts";
import type { NamedPart } from "../../src/report/lay.ts";
import { anyPart, runs, squareToRound } from "../arbitraries.ts";
import { even } from "../even.ts";
import { loadCatalogue } from "../../src/input/loadCatalogue.ts";
import { readFolder } from "../../src/input/readFolder.ts";
import { develop } from "../../src/report/develop.ts";
import { catalogue, named, reportOf } from "../parts.ts";
import { brake, coneCase, hood, reducer, RUNS, shop } from "./cases.ts";

/** A plain cylinder's stretch: radius, turn in all; flats or seam edges beside it. */
const arc = (radiusMm: number, turn: number, flats = true): BendZone => ({
  piece: 1,
  fromRad: 0,
  toRad: turn,
  afterFlat: flats,
  beforeFlat: flats,
  turnedRad: (theta) => theta,
  acrossRad: turn,
  edgeMm: { a: radiusMm * turn, b: radiusMm * turn },
  wideRadiusMm: () => radiusMm,
  place: (theta) => ({
    planDeg: (theta * 180) / Math.PI,
    lengthMm: 100,
    alongMm: { a: radiusMm * theta, b: radiusMm * theta },
    from: [radiusMm * theta, 0],
    to: [radiusMm * theta, 100],
  }),
});
const share = (zone: BendZone, permittedMm: number, dieMm = 1) =>
  hitsOf(zone, { index: 1, permittedMm, dieMm });

// Geometry of step bending, worked apart from this code (e = R (1 − cos(θ/2n)), pitch = Rθ/n): R 300 through 90° with
// facets of at most 0.5 mm takes 14 spaces; R 150 through 90° in 45 spaces has facets of 0.022846 mm and a pitch of 5.236 mm.
describe("a quarter of a cylinder", () => {
  it("of R 300 takes 14 spaces for facets of half a millimetre", () => {
    const { zone } = share(arc(300, Math.PI / 2), 0.5);
    expect(zone.spaces).toBe(14);
    expect(zone.facetMm).toBeLessThanOrEqual(0.5);
  });

  it("of R 150 in 45 spaces stands 0.022846 mm off, 5.236 mm apart", () => {
    const { zone } = share(arc(150, Math.PI / 2), 0.0228466);
    expect(zone.spaces).toBe(45);
    expect(zone.facetMm).toBeCloseTo(0.022845727, 8);
    expect(zone.spacingMm.wide).toBeCloseTo(5.235988, 6);
  });
});

it("has n + 1 lines for n spaces between flats, a border bent by half, and a seam edge left its half space", () => {
  const quarter = arc(300, Math.PI / 2);
  const { hits, zone } = share(quarter, 2);
  expect(hits).toHaveLength(zone.spaces + 1);
  const whole = 90 / zone.spaces;
  hits.forEach(({ bendDeg, kind }, i) => {
    const border = i === 0 || i === hits.length - 1;
    expect(kind).toBe(border ? "border" : "inner");
    expect(bendDeg).toBeCloseTo(border ? whole / 2 : whole, 9);
  });
  const seamed = share(arc(300, Math.PI / 2, false), 2);
  expect(seamed.hits).toHaveLength(zone.spaces - 1);
  expect(seamed.zone.seamDeg).toBeCloseTo(whole, 9);
});

it("bends no nearer than half the die opening, and says so when the facets suffer", () => {
  fc.assert(
    fc.property(even(50, 1000), even(0.3, 3), even(0.1, 3), even(8, 120), (radius, turn, permitted, die) => {
      const { zone } = share(arc(radius, turn), permitted, die);
      if (zone.spaces > 1) expect(zone.spacingMm.wide).toBeGreaterThanOrEqual(die / 2 - 1e-9);
      expect(zone.roomForAll).toBe(zone.facetMm <= permitted);
      // One space fewer would stand further off than is permitted, unless the die is what holds it back.
      if (zone.spaces > 1 && zone.roomForAll)
        expect(radius * (1 - Math.cos(turn / (zone.spaces - 1) / 2))).toBeGreaterThan(permitted);
    }),
    RUNS,
  );
});

it("is hit from both seam edges to the middle, each line once", () => {
  expect(orderOfHits(7)).toEqual([1, 2, 3, 4, 7, 6, 5]);
  for (const count of [0, 1, 2, 8, 31])
    expect(orderOfHits(count).toSorted((a, b) => a - b)).toEqual(
      Array.from({ length: count }, (_, i) => i + 1),
    );
});

const planOf = (part: NamedPart): BrakePlan | undefined =>
  reportOf(part).forming.plans.find(({ route }) => route === "brake")?.brake ?? undefined;

describe("every square-to-round", () => {
  it("has angles that sum to each corner's turning, and to the whole skin's", () => {
    fc.assert(
      fc.property(squareToRound, (part) => {
        const report = reportOf(part);
        const { zones, lines } = report.forming.plans[0]!.brake!;
        for (const zone of zones) {
          const own = lines.filter((line) => line.piece === zone.piece && line.zone === zone.zone);
          const sum = own.reduce((all, { bendDeg }) => all + bendDeg, 0);
          expect(sum + zone.seamDeg).toBeCloseTo(zone.turnDeg, 3);
        }
        const all = zones.reduce((sum, { turnDeg }) => sum + turnDeg, 0);
        expect(all).toBeCloseTo(report.shape.turningDeg, 3);
      }),
      runs(60),
    );
  });

  it("has lines as long on the pattern as in space, stopping short of their corner where they run together", () => {
    fc.assert(
      fc.property(squareToRound, (part) => {
        const { lines, zones, dieMm } = planOf(part)!;
        for (const line of lines) {
          expect(Math.abs(distance2(line.from, line.to) - line.lengthMm)).toBeLessThan(0.05);
          expect(line.stopsShortMm).toBeGreaterThanOrEqual(0);
          expect(line.stopsShortMm).toBeLessThanOrEqual(line.lengthMm + 1e-6);
          const { spacingMm } = zones.find(({ piece, zone }) => piece === line.piece && zone === line.zone)!;
          // All lines of a corner meet in its tip, so at the stop they are half a die apart.
          if (spacingMm.wide > dieMm / 2)
            expect((spacingMm.wide * line.stopsShortMm) / line.lengthMm).toBeCloseTo(dieMm / 2, 3);
        }
      }),
      runs(60),
    );
  });
});

it("places the lines of any part along its edges where the plate as cut has them", () => {
  fc.assert(
    fc.property(anyPart, (part) => {
      const report = reportOf(part);
      for (const { lines } of report.forming.plans.flatMap(({ brake: plan }) => (plan ? [plan] : [])))
        for (const line of lines) {
          const blank = report.blanks[line.piece - 1]!;
          const count = blank.outline.length;
          for (const [end, point] of [
            [0, line.from],
            [1, line.to],
          ] as const) {
            const names = ["large end", "rectangular end", "small end", "round end"];
            const edge = blank.edges.find(({ name }) => names.indexOf(name) >> 1 === end)!;
            const at = blank.edges.indexOf(edge);
            const next = blank.edges[at + 1]?.start ?? count;
            const path = Array.from(
              { length: next - edge.start + 1 },
              (_, i) => blank.outline[(edge.start + i) % count]!,
            );
            // Inside face up the ends run from seam 2 back to seam 1, or from 1 to 2: measure from where seam 1 is.
            const mirrored = blank.faceUp === "outside";
            const fromSeam1 = (end === 1) !== mirrored ? path : path.toReversed();
            let [walked, best, off] = [0, 0, Infinity];
            for (let i = 1; i < fromSeam1.length; i++) {
              const [p, q] = [fromSeam1[i - 1]!, fromSeam1[i]!];
              const long = distance2(p, q);
              const part =
                long === 0
                  ? 0
                  : Math.min(
                      1,
                      Math.max(
                        0,
                        ((point[0] - p[0]) * (q[0] - p[0]) + (point[1] - p[1]) * (q[1] - p[1])) / long ** 2,
                      ),
                    );
              const away = distance2(point, [p[0] + part * (q[0] - p[0]), p[1] + part * (q[1] - p[1])]);
              if (away < off) [off, best] = [away, walked + part * long];
              walked += long;
            }
            const along = line.alongMm[end === 0 ? "a" : "b"];
            expect(along).toBeLessThan(walked + 0.3);
            // A line that meets the seam itself begins where the gap took half of itself off.
            if (along === 0 || along > walked - 0.3) continue;
            expect(off).toBeLessThan(0.05);
            expect(Math.abs(best - along)).toBeLessThan(0.3);
          }
        }
    }),
    runs(40),
  );
});

describe("the plan", () => {
  const part = named({
    shape: "square-to-round",
    thickness: 4,
    rectangularEnd: { length: 600, width: 450, measured: "inside" },
    roundEnd: { diameter: 400, measured: "inside" },
    height: 350,
  });

  it("says that a whole one closes round the punch, and that half shells come off", () => {
    expect(planOf(part)!.piecesToComeOff).toBe(2);
    expect(
      planOf(part)!
        .remarks.map(({ text }) => text)
        .join(" "),
    ).toMatch(
      /^As drawn, in one piece, it cannot come off this punch: it turns by 36\d° and closes round it/,
    );
    expect(
      planOf({ ...part, pieces: 2 })!
        .remarks.map(({ text }) => text)
        .join(" "),
    ).not.toMatch(/closes round/);
  });

  it("forces come from the constant that is stated, over the bent length", () => {
    const { lines, forceConstant, dieMm, greatestForceKN } = planOf(part)!;
    expect(dieMm).toBe(32);
    expect(forceConstant).toEqual({ used: 1.33, least: 1, greatest: 1.6 });
    for (const { forceKN, lengthMm, stopsShortMm } of lines)
      expect(forceKN).toBeCloseTo((1.33 * 360 * (lengthMm - stopsShortMm) * 16) / 32 / 1000, 5);
    expect(greatestForceKN).toBe(Math.max(...lines.map(({ forceKN }) => forceKN)));
  });

  it("goes over the die that the machine's checks were answered for, and has a work sheet", () => {
    const zone = arc(300, Math.PI / 2);
    const item = { ...hood, bendZones: [zone] };
    const answers = formingOf(item, shop([brake()]));
    const die = answers.machines[0]!.checks.find(({ id }) => id === "die-opening")!.value;
    const [plan] = answers.plans;
    expect(plan!.brake).toMatchObject({ dieMm: die, brakeForceKN: 1600 });
    expect(plan!.steps.map(({ id }) => id)).toEqual([
      "mark",
      "tooling",
      "strip",
      "bend",
      "corners",
      "tack",
      "inspect",
    ]);
    expect(formingOf(coneCase(reducer), shop([brake()])).plans[0]).toMatchObject({ brake: null, steps: [] });
    expect(brakePlan({ item: hood, say: sayIn("mm") })).toBeNull();
  });
});

it("begins and ends every line on the plate where a gapped seam runs into a corner", () => {
  for (const mirror of [true, false])
    for (const at of [-315, -45, 30, 135]) {
      const report = reportOf(
        named({
          shape: "square-to-round",
          thickness: 0.487,
          rectangularEnd: { length: 181.89, width: 327.28, measured: "inside" },
          roundEnd: { diameter: 67.3, measured: "inside" },
          height: 166.15,
          seam: { at, gap: 5.4 },
          mirror,
        }),
      );
      const { xMm, yMm } = report.blanks[0]!.asDrawn;
      for (const { from, to } of report.forming.plans[0]!.brake!.lines)
        for (const [x, y] of [from, to]) {
          expect(Math.min(x, y)).toBeGreaterThan(-1e-3);
          expect(x).toBeLessThan(xMm + 1e-3);
          expect(y).toBeLessThan(yMm + 1e-3);
        }
    }
});

it("keeps every line of any hood on its plate, in order along both ends, however wide the gap of its seam", () => {
  let tried = 0;
  fc.assert(
    fc.property(
      squareToRound,
      fc.record({
        gap: even(0, 8),
        at: even(-360, 360),
        mirror: fc.boolean(),
        pieces: fc.constantFrom(1, 2),
      }),
      (part, { gap, at, mirror, pieces }) => {
        const made = develop({ ...part, pieces, mirror, seam: { at, gap } }, { catalogue });
        if (made.kind === "refused") return;
        const { blanks, forming } = made.report;
        for (const { piece, asDrawn } of blanks) {
          const lines = forming.plans[0]!.brake!.lines.filter((line) => line.piece === piece);
          lines.forEach(({ from, to, alongMm, lengthMm }, i) => {
            expect(lengthMm).toBeGreaterThan(0);
            for (const [x, y] of [from, to]) {
              expect(Math.min(x, y)).toBeGreaterThan(-0.02);
              expect(x).toBeLessThan(asDrawn.xMm + 0.02);
              expect(y).toBeLessThan(asDrawn.yMm + 0.02);
            }
            const before = lines[i - 1];
            if (!before) return;
            expect(alongMm.a).toBeGreaterThan(before.alongMm.a - 0.02);
            expect(alongMm.b).toBeGreaterThan(before.alongMm.b - 0.02);
          });
        }
        tried += 1;
      },
    ),
    runs(150),
  );
  expect(tried).toBeGreaterThan(20);
});

it("takes no more off a line than half the gap where it runs into a seam, however far the pattern turns", () => {
  for (const at of [0, 45, 90, 200, 270] as const) {
    const hoodWith = (gap: number) =>
      reportOf(
        named({
          shape: "square-to-round",
          thickness: 4,
          rectangularEnd: { length: 800, width: 800, measured: "outside" },
          roundEnd: { diameter: 400, measured: "outside" },
          height: 500,
          seam: { at, gap },
        }),
      );
    const [whole, cut] = [hoodWith(0), hoodWith(2)];
    const blank = whole.blanks[0]!;
    const seams = blank.edges.flatMap(({ name, start }) => {
      if (!name.startsWith("seam")) return [];
      const [p, q] = [blank.outline[start]!, blank.outline[(start + 1) % blank.outline.length]!];
      return [[q[0] - p[0], q[1] - p[1]] as const];
    });
    expect(seams).toHaveLength(2);
    const lines = whole.forming.plans[0]!.brake!.lines;
    const shorter = cut.forming.plans[0]!.brake!.lines;
    expect(shorter).toHaveLength(lines.length);
    lines.forEach(({ from, to, lengthMm }, i) => {
      const sines = seams.map(
        ([x, y]) =>
          Math.abs(x * (to[1] - from[1]) - y * (to[0] - from[0])) / (Math.hypot(x, y) * distance2(from, to)),
      );
      // Half the gap over the sine of the angle at which it meets a seam, if it meets one at all.
      expect(lengthMm - shorter[i]!.lengthMm).toBeLessThan(1 / Math.min(...sines) + 0.1);
      expect(lengthMm - shorter[i]!.lengthMm).toBeLessThan(40);
      if (i > 8 && i < lines.length - 9) expect(shorter[i]!.lengthMm).toBeCloseTo(lengthMm, 6);
    });
  }
});

it("tells pieces too narrow for any hit from those that are bent line by line, and never an angle that is none", () => {
  const narrow = { ...arc(300, 0.05, false) };
  const item = { ...coneCase(reducer), bendZones: [narrow], pieces: 12 };
  const machine = brake({ dies: [120] });
  const plan = formingOf(item, shop([machine])).plans[0]!;
  expect(plan.brake!.lines).toEqual([]);
  const texts = plan.steps.map(({ text }) => text).join(" ");
  expect(texts).not.toMatch(/Infinity|NaN/);
  expect(texts).toContain("No bend line finds room");
});

describe("the permitted facet", () => {
  const plain = named({
    shape: "square-to-round",
    thickness: 3,
    rectangularEnd: { length: 500, width: 500, measured: "inside" },
    roundEnd: { diameter: 400, measured: "middle" },
    height: 350,
  });
  it("is met by as many bends as the height of a chord asks: half of it by about √2 times as many", () => {
    // Height of a chord: e = R (1 − cos ψ/2) ≈ R ψ²/8, so ψ goes with √e.
    const lines = (facetError: number) => planOf({ ...plain, facetError })!;
    const [one, half, tenth] = [1, 0.5, 0.1].map(lines);
    for (const plan of [one, half, tenth])
      for (const { facetMm, roomForAll } of plan!.zones)
        if (roomForAll) expect(facetMm).toBeLessThanOrEqual(plan!.permittedFacetMm);
    const spaces = (plan: BrakePlan | undefined) => plan!.zones[0]!.spaces;
    // Whole spaces: each count is the next above what the height asks, so a ratio is met within one space of either.
    const asked = (plan: BrakePlan | undefined, factor: number) => {
      const ratio = Math.sqrt(factor) * spaces(one);
      expect(spaces(plan)).toBeGreaterThan(ratio - Math.sqrt(factor) - 1);
      expect(spaces(plan)).toBeLessThan(ratio + Math.sqrt(factor) + 1);
    };
    asked(half, 2);
    asked(tenth, 10);
    expect(spaces(half)).toBeGreaterThan(spaces(one));
    expect(spaces(tenth)).toBeGreaterThan(spaces(half));
    expect(planOf(plain)!.permittedFacetMm).toBe(Math.max(0.5, plain.thickness / 2));
  });
});

const demo = readFolder("demo-data", loadCatalogue());
const demoParts = demo.parts.map(({ part }) => {
  const made = develop(part, { catalogue: loadCatalogue().catalogue, shop: demo.shop! });
  if (made.kind === "refused") throw new Error(part.name);
  return [part.name, made.report] as const;
});

it.each(demoParts)(
  "%s: the checks of the brake and its plan name the same force and the same facet",
  (_, report) => {
    const { forming } = report;
    for (const { brake: plan, machine } of forming.plans) {
      if (!plan || machine === null || plan.lines.length === 0) continue;
      const checks = forming.machines.find((one) => one.machine === machine)!.checks;
      // The checks take the constant as 1.33 as the plan does.
      expect(checks.find(({ id }) => id === "brake-force")!.value).toBeCloseTo(plan.greatestForceKN, 5);
      const facet = checks.find(({ id }) => id === "bend-spacing");
      if (facet?.unit === "mm" && facet.sense === "at most")
        expect(facet.value).toBeCloseTo(Math.max(...plan.zones.map(({ facetMm }) => facetMm)), 5);
    }
  },
);

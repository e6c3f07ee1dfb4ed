import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { behindPunch } from "../../src/forming/brakeBehind.ts";
import type { Hit } from "../../src/forming/brakeLines.ts";
import { formingOf } from "../../src/forming/forming.ts";
import { formingCase } from "../../src/report/formingCase.ts";
import { bentDeg } from "../../src/forming/offThePunch.ts";
import { piecesToClear } from "../../src/forming/piecesToClear.ts";
import { layOut } from "../../src/report/layOut.ts";
import type { NamedPart } from "../../src/report/lay.ts";
import type { Vec2 } from "../../src/geometry/vector.ts";
import { anyPart, runs, squareToRound } from "../arbitraries.ts";
import { catalogue, named } from "../parts.ts";
import { brake, coneCase, reducer, shop } from "./cases.ts";

const machine = brake({
  bedLength: 20_000,
  forceKN: 1e6,
  dies: [8, 16, 25, 40, 63, 100, 160, 600],
  throat: 600,
});

function onBrake(part: NamedPart) {
  const laid = layOut(part, { catalogue });
  if (laid.kind === "refused") throw new Error(JSON.stringify(laid.issues));
  const forming = formingOf(formingCase(part, laid), shop([machine]));
  const plan = forming.plans.find(({ route }) => route === "brake")?.brake;
  const check = forming.machines[0]?.checks.find(({ id }) => id === "brake-throat");
  return { laid, plan, check, outlines: laid.laid.map(({ blank }) => blank.outline) };
}

/** Distance of a point from the line through two others, with its side: how high it lies once the line is turned level. */
function off(from: Vec2, to: Vec2, p: Vec2): number {
  const angle = Math.atan2(to[1] - from[1], to[0] - from[0]);
  return Math.cos(angle) * (p[1] - from[1]) - Math.sin(angle) * (p[0] - from[0]);
}

/** Diagonal of the upright rectangle round an outline: no two of its points are further apart. */
function diagonal(outline: readonly Vec2[]): number {
  const extent = (pick: 0 | 1) => {
    const all = outline.map((p) => p[pick]);
    return Math.max(...all) - Math.min(...all);
  };
  return Math.hypot(extent(0), extent(1));
}

const hit = (from: Vec2, to: Vec2, piece = 1): Hit => ({
  piece,
  zone: 1,
  kind: "inner",
  bendDeg: 10,
  planDeg: 0,
  lengthMm: 1,
  stopsShortMm: 0,
  alongMm: { a: 0, b: 0 },
  from,
  to,
});
/** Hits of 10° are reckoned with three quarters of that. */
const bend = (7.5 * Math.PI) / 180;
const rectangle = (x: number, y: number): Vec2[] => [
  [0, 0],
  [x, 0],
  [x, y],
  [0, y],
];
const behind = (
  hulls: readonly (readonly Vec2[])[],
  hits: readonly Hit[],
  faceUp: "inside" | "outside" = "inside",
) =>
  behindPunch(
    {
      ...coneCase(reducer),
      faceUp,
      blanks: hulls.map((hull) => ({ lengthMm: 1, widthMm: 1, massKg: 1, hull })),
    },
    { permittedFacetMm: 1, zones: [], hits },
  );

describe("what stands behind the punch", () => {
  it("of a rectangle with upright lines is the distance to its nearer edge", () => {
    // Seam 1 is the right edge.
    const lines = [700, 550, 380, 100].map((x) => hit([x, 10], [x, 190]));
    // 380 of 800 leaves 420 on the other side; 100 has 700 on its deeper one.
    expect(behind([rectangle(800, 200)], lines)).toEqual({
      depthMm: 380,
      otherMm: 700,
      piece: 1,
      line: 3,
      // A pipe's blank in few hits: the third, the first from the left, has 280 mm to the fourth and 100 mm beyond it.
      inOrder: { depthMm: expect.closeTo(280 + 100 * Math.cos(bend), 6) as number, piece: 1, line: 3 },
      turned: [],
    });
  });

  it("is turned where the side of the edge it is come from would be deeper than all that need be behind", () => {
    // Three lines: two from seam 1, one from seam 2. At the second 600 of 800 lie on the side of seam 1, 200 on the other.
    const lines = [700, 200, 100].map((x) => hit([x, 10], [x, 190]));
    expect(behind([rectangle(800, 200)], lines)).toMatchObject({
      depthMm: 200,
      line: 2,
      turned: [{ piece: 1, line: 2 }],
    });
    // Outside up seam 1 is the left edge.
    const over = lines.map(({ from: [x] }) => hit([800 - x, 10], [800 - x, 190]));
    expect(behind([rectangle(800, 200)], over, "outside")).toMatchObject({ turned: [{ piece: 1, line: 2 }] });
  });

  it("of a square along its diagonal is half the diagonal, more than half a side", () => {
    const found = behind([rectangle(100, 100)], [hit([20, 20], [30, 30])])!;
    expect(found.depthMm).toBeCloseTo(50 * Math.SQRT2, 9);
  });

  it("is told with the piece and the line, numbered on each piece, where it is most", () => {
    const found = behind(
      [rectangle(200, 50), rectangle(300, 50)],
      [
        hit([90, 0], [90, 50]),
        hit([110, 50], [110, 0]),
        hit([40, 0], [40, 50], 2),
        hit([150, 0], [150, 50], 2),
      ],
    );
    expect(found).toMatchObject({
      depthMm: 150,
      otherMm: 260,
      piece: 2,
      line: 2,
      turned: [{ piece: 2, line: 1 }],
    });
  });

  it("is told for the first of two that are alike", () => {
    const lines = [hit([100, 0], [100, 50]), hit([200.004, 50], [200.004, 0])];
    expect(behind([rectangle(300, 50)], lines)).toMatchObject({ piece: 1, line: 1 });
    expect(behind([rectangle(300, 50)], lines.toReversed())).toMatchObject({ piece: 1, line: 1 });
  });

  it("is nothing where nothing is hit, and not known where the outline is not", () => {
    expect(behind([rectangle(200, 50)], [])).toBeNull();
    expect(behind([], [hit([90, 0], [90, 50])])).toBeNull();
  });
});

// A pipe's blank is a rectangle as long as its middle girth, so a line's place along the edge is its depth from one side.
it("of a pipe is its line's way to the nearer seam edge", () => {
  const pipe = named({
    shape: "right-cone",
    thickness: 4,
    largeEnd: { diameter: 500, measured: "middle" },
    smallEnd: { diameter: 500, measured: "middle" },
    height: 300,
  });
  const { plan } = onBrake(pipe);
  const girth = Math.PI * 500;
  const depths = plan!.lines.map(({ alongMm }) => Math.min(alongMm.a, girth - alongMm.a));
  expect(plan!.behind!.depthMm).toBeCloseTo(Math.max(...depths), 3);
  expect(plan!.lines.length).toBeGreaterThan(10);
  // Bent: facet after facet from the line, each turned up further by three quarters of the bend between them.
  const places = plan!.lines.map(({ alongMm }) => alongMm.a);
  const bent = plan!.lines.map(({ number, order }) => {
    const own =
      order === number ? [...places.slice(0, number).toReversed(), 0] : [...places.slice(number - 1), girth];
    const angles = plan!.lines
      .slice(order === number ? 0 : number)
      .map(({ bendDeg }) => (0.75 * bendDeg * Math.PI) / 180);
    const turns = order === number ? angles.slice(0, number - 1).toReversed() : angles;
    let [reach, angle, most] = [0, 0, 0];
    own.slice(1).forEach((place, i) => {
      reach += Math.abs(place - own[i]!) * Math.cos(angle);
      angle += turns[i] ?? 0;
      most = Math.max(most, reach);
    });
    return most;
  });
  expect(plan!.behind!.inOrder.depthMm).toBeCloseTo(Math.max(...bent), 2);
  expect(plan!.behind!.inOrder.depthMm).toBeLessThan(plan!.behind!.depthMm / 2);
});

// Laid flat a right cone is a sector; its element at angle ψ from a seam edge has R sin ψ of plate on that edge's side,
// and all of R once it is a right angle or more away. Angles on the sheet are plan angles times sin α.
it.each([
  { height: 600, name: "a steep cone" },
  { height: 150, name: "a flat one, whose sector goes far round" },
])("of the sector of $name is R sin ψ", ({ height }) => {
  const cone = named({
    shape: "right-cone",
    thickness: 3,
    largeEnd: { diameter: 800, measured: "middle" },
    smallEnd: { diameter: 300, measured: "middle" },
    height,
    seam: { at: 0 },
  });
  const { plan } = onBrake(cone);
  const sine = 250 / Math.hypot(250, height);
  const radius = 400 / sine;
  const side = (planDeg: number) => {
    const angle = (planDeg * Math.PI * sine) / 180;
    return radius * (angle >= Math.PI / 2 ? 1 : Math.sin(angle));
  };
  const both = plan!.lines.map(({ planDeg }) => [side(planDeg), side(360 - planDeg)] as const);
  expect(plan!.behind!.depthMm).toBeCloseTo(Math.max(...both.map((one) => Math.min(...one))), 1);
  expect(plan!.behind!.otherMm).toBeCloseTo(Math.max(...both.flat()), 1);
});

it("is found by measuring from every line to every point of a hood's outline, and is at most half the way across it", () => {
  fc.assert(
    fc.property(squareToRound, (part) => {
      const { plan, check, outlines } = onBrake(part);
      if (!plan) return;
      const depths = plan.lines.map(({ piece, from, to }) => {
        const offs = outlines[piece - 1]!.map((p) => off(from, to, p));
        return Math.min(Math.max(...offs), -Math.min(...offs));
      });
      const found = plan.behind!;
      const most = Math.max(...depths);
      expect(Math.abs(found.depthMm - most)).toBeLessThan(1e-6 * (1 + most));
      const own = plan.lines.findIndex(({ piece, number }) => piece === found.piece && number === found.line);
      // The first of those that are alike to what is one point on a plate.
      expect(depths[own]!).toBeGreaterThan(most - 0.011);
      expect(found.depthMm).toBeLessThanOrEqual(found.otherMm);
      expect(found.depthMm).toBeLessThanOrEqual(Math.max(...outlines.map(diagonal)) / 2);
      expect(check!.value).toBe(found.depthMm);
      expect(check!.advice).toContain(
        `line ${found.line}${outlines.length > 1 ? ` of piece ${found.piece})` : ")"}`,
      );
    }),
    runs(60),
  );
});

it("is asked of a brake for any part that is hit, and passes up to the throat", () => {
  fc.assert(
    fc.property(anyPart, (part) => {
      const { plan, check } = onBrake(part);
      if (!plan) return;
      expect(check === undefined).toBe(plan.lines.length === 0);
      if (check) expect(check.verdict).toBe(plan.behind!.depthMm <= 600 ? "pass" : "caution");
    }),
    runs(60),
  );
});

/** On which side of a line a point lies: 1 left of it, −1 right. */
const sideOf = (line: Pick<Hit, "from" | "to">, p: Vec2): number => Math.sign(off(line.from, line.to, p));
const middle = ({ from, to }: Pick<Hit, "from" | "to">): Vec2 => [
  (from[0] + to[0]) / 2,
  (from[1] + to[1]) / 2,
];

// The side of a seam edge is found by the neighbour that lies towards it, whichever face is up.
it("has behind the punch, in the order of hits, never more than what the throat is asked for", () => {
  const seen = { turned: false, bent: false };
  fc.assert(
    fc.property(anyPart, fc.boolean(), (part, mirror) => {
      const { plan, outlines } = onBrake({ ...part, mirror });
      if (!plan?.behind) return;
      const { depthMm, turned, inOrder } = plan.behind;
      expect(inOrder.depthMm).toBeLessThanOrEqual(depthMm + 0.011);
      for (const line of plan.lines) {
        const own = plan.lines.filter(({ piece }) => piece === line.piece);
        const half = Math.ceil(own.length / 2);
        const [before, after] = [own[line.number - 2], own[line.number]];
        if (!before && !after) continue;
        const towards1 = before ? sideOf(line, middle(before)) : -sideOf(line, middle(after!));
        const turn = turned.some((one) => one.piece === line.piece && one.line === line.number);
        const behindSide = (line.number <= half ? 1 : -1) * (turn ? -1 : 1) * towards1;
        const flat = Math.max(
          ...outlines[line.piece - 1]!.map((p) => behindSide * off(line.from, line.to, p)),
        );
        seen.turned ||= turn;
        seen.bent ||= flat > depthMm + 1;
        // Turned the other side lies flat; else the side is bent, and only where it is flat still is it measured so.
        if (turn || line.number === 1 || line.number === own.length)
          expect(flat).toBeLessThan(depthMm + 0.011);
        if (turn && flat > inOrder.depthMm) expect(flat).toBeCloseTo(inOrder.depthMm, 2);
      }
    }),
    runs(80),
  );
  expect(seen).toEqual({ turned: true, bent: true });
});

it("names how many pieces of a right cone surely clear the throat, and blanks in so many pieces do", () => {
  const part = named({
    shape: "right-cone",
    thickness: 4,
    largeEnd: { diameter: 1800, measured: "middle" },
    smallEnd: { diameter: 500, measured: "middle" },
    height: 900,
  });
  const made = (pieces: number) => {
    const laid = layOut({ ...part, pieces }, { catalogue });
    if (laid.kind === "refused") throw new Error(JSON.stringify(laid.issues));
    const item = formingCase({ ...part, pieces }, laid);
    const { check } = onBrake({ ...part, pieces });
    return { item, depthMm: check!.value! };
  };
  // By hand: sin α = 0.58547, L = 1537.2 mm, and n ≥ π sin α / asin(throat / L).
  const byHand = { 300: 10, 450: 7, 600: 5, 800: 4 };
  for (const [throatMm, pieces] of Object.entries(byHand)) {
    expect(piecesToClear(made(1).item, Number(throatMm))).toBe(pieces);
    expect(made(pieces).depthMm).toBeLessThanOrEqual(Number(throatMm));
    // And they come off the punch.
    expect(bentDeg(made(pieces).item)).toBeLessThanOrEqual(180);
  }
  const { check } = onBrake(part);
  expect(check!.advice).toContain("the throat is 600 mm deep: in 5 pieces it goes (pieces: 5)");
  expect(made(3).depthMm).toBeGreaterThan(600);
  expect(piecesToClear(made(1).item, 1)).toBeNull();
});

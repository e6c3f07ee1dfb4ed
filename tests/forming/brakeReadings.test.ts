import { describe, expect, it } from "vitest";
import { namedCorners } from "../../src/drawing/forming/cornerSketch.ts";
import { depthOfAngle } from "../../src/forming/brakeTrial.ts";
import { underLap } from "../../src/forming/lapOver.ts";
import { sayIn } from "../../src/forming/say.ts";
import type { NamedPart } from "../../src/report/lay.ts";
import { corner } from "../../src/tables/hopperCorner.ts";
import { named, reportOf } from "../parts.ts";

const say = sayIn("mm");
/** Half of a hood that stands aside: every corner has an angle of its own. */
const aside = named({
  shape: "square-to-round",
  thickness: 4,
  rectangularEnd: { length: 800, width: 500, measured: "inside" },
  roundEnd: { diameter: 350, measured: "outside", offset: [90, -60] },
  height: 450,
  pieces: 2,
  tolerance: "B",
});
const made = (part: NamedPart) => {
  const report = reportOf(part);
  const { brake, steps } = report.forming.plans[0]!;
  return { report, plan: brake!, step: (id: string) => steps.find((one) => one.id === id)! };
};

describe("what is read at the brake", () => {
  const { plan, step } = made(aside);

  it("is a depth from where the punch touches, with a box for that reading and how much a degree more is", () => {
    const { text, toNote } = step("strip");
    expect(toNote[0]).toEqual({ label: "reading at touch", unit: "mm" });
    expect(text).toContain("write down the machine’s reading. All ram depths count from there");
    const air = { dieMm: plan.dieMm, thicknessMm: 4, insideRadiusMm: plan.insideRadiusMm };
    for (const { fromDeg, toDeg, perDegreeMm } of plan.depths) {
      // Of edges V apart a plate that is thin and sharp goes V/4 for a radian: the whole depth over the whole angle is near.
      const middle = (fromDeg + toDeg) / 2;
      expect(perDegreeMm).toBeGreaterThan((0.9 * (plan.dieMm / 4) * Math.PI) / 180);
      expect(perDegreeMm).toBeLessThan((plan.dieMm / 4 / (180 / Math.PI)) * 1.02);
      const ten = depthOfAngle(air, middle + 5) - depthOfAngle(air, middle - 5);
      expect(perDegreeMm).toBeCloseTo(ten / 10, 3);
    }
    const told = new Set(plan.depths.map(({ perDegreeMm }) => say.length(perDegreeMm)));
    expect(told.size).toBe(2);
    const [first, second] = [...told];
    expect(text).toMatch(
      new RegExp(
        `A degree more wants about ${first!} \\(A( to [A-E])?\\), ${second!} \\([B-F]( to F)?\\) more\\.`,
      ),
    );
    // A thousandth of an inch would be a sixth of it or more.
    expect(made({ ...aside, units: "in" }).step("strip").text).toMatch(
      /A degree more wants about 0\.00\d\d in/,
    );
  });

  it("lies to the rolling direction as the lines do", () =>
    expect(step("strip").text).toContain(
      "Mark the rolling direction on plate and strip before they are cut apart: a strip’s line lies to it as its lines do on the blank",
    ));

  it("is within the limit of the part's class, and by how much light that is under a square", () => {
    const { text, figures } = step("corners");
    // Half a degree: the shorter side is 500 mm. tan 0.5° = 0.00873.
    expect(text).toContain("90° inside, ± 0.5°, that is up to 0.87 mm of light 100 mm from the corner");
    expect(text).toMatch(/91\.3°, ± 0\.5°\. Within that it passes\./);
    expect(figures[0]).toEqual({ label: "corner, within", value: 0.5, unit: "°", basis: "iso-13920" });
    // The shorter side counts, of both: up to 400 mm class B allows 45 minutes.
    const narrow = { ...aside, rectangularEnd: { length: 800, width: 400, measured: "inside" } } as NamedPart;
    expect(made(narrow).step("corners").text).toContain("90° inside, ± 0.75°,");
    const free: NamedPart = { ...aside };
    delete free.tolerance;
    const other = made(free).step("corners");
    expect(other.text).toContain("90° inside, ± 1°, that is up to 1.75 mm of light 100 mm from the corner");
    expect(other.figures[0]!.basis).toBe("common practice, no source");
  });

  it("is as much light under the template as the flats between lines leave, in the plane of the round end", () => {
    const found = step("bend").figures.find(({ label }) => label.startsWith("light under"))!;
    // Chords of the middle of the wall, whose arcs are those from line to line in the table.
    const radius = 175 - 2;
    const chords = plan.lines.flatMap((one, i) => {
      const next = plan.lines[i + 1];
      return next && next.piece === one.piece && next.zone === one.zone
        ? [next.alongMm.b - one.alongMm.b]
        : [];
    });
    const sagitta = radius * (1 - Math.cos(Math.max(...chords) / 2 / radius));
    // Outside sizes are held at the wall's own slope: the middle is a little off 173 mm.
    expect(found.value).toBeGreaterThan(0.97 * sagitta);
    expect(found.value).toBeLessThan(1.03 * sagitta);
    expect(step("bend").text).toContain(`up to ${say.length(found.value)} of light at it passes`);
  });
});

it("shows each corner where its two flats meet at its angle", () => {
  const { report, plan } = made({
    ...aside,
    neutral: 0,
    roundEnd: { diameter: 350, measured: "inside", offset: [90, -60] },
  } as NamedPart);
  const corners = namedCorners(report, plan);
  expect(corners.map(({ name }) => name)).toEqual([
    "corner 1 of piece 1",
    "corner 2 of piece 1",
    "corner 1 of piece 2",
    "corner 2 of piece 2",
  ]);
  // Slopes of the four flats from level, by rise over run: the round end stands 90 to the right and 60 to the near side.
  const slope = (run: number) => (Math.atan2(450, run) * 180) / Math.PI;
  const sides = {
    x: { 1: slope(400 - 90 - 175), "-1": slope(400 + 90 - 175) },
    y: { 1: slope(250 + 60 - 175), "-1": slope(250 - 60 - 175) },
  };
  plan.zones.forEach(({ flatsDeg }, i) => {
    const { at, towardsDeg } = corners[i]!;
    const [x, y] = at.map((one) => (one > 0 ? "1" : "-1")) as ["1" | "-1", "1" | "-1"];
    expect(flatsDeg).toBeCloseTo(corner(sides.x[x], sides.y[y]).between, 6);
    expect([Math.cos((towardsDeg * Math.PI) / 180) > 0, Math.sin((towardsDeg * Math.PI) / 180) > 0]).toEqual([
      x === "1",
      y === "1",
    ]);
  });
});

describe("a lap over a bend", () => {
  const lapped = named({
    shape: "square-to-round",
    thickness: 2,
    rectangularEnd: { length: 600, width: 450, measured: "outside" },
    roundEnd: { diameter: 400, measured: "outside" },
    height: 370,
    pieces: 2,
    seam: { at: 90, joint: "lap", lap: 19 },
  });

  it("is dressed down to it: which line, at which end, how far", () => {
    const { plan, step } = made(lapped);
    const under = underLap(plan, { seamLapMm: 19 });
    expect(under.map(({ piece, line, end }) => [piece, line, end])).toEqual([
      [1, 1, "b"],
      [2, 1, "b"],
    ]);
    // Line 1 runs from the seam's own top to the corner, half a side from the seam: 19 mm of that are so much of its length.
    const [line] = plan.lines;
    expect(line!.alongMm.b).toBeCloseTo(0, 6);
    expect(under[0]!.lengthMm).toBeCloseTo((19 / line!.alongMm.a) * line!.lengthMm, 6);
    expect(step("tack").text).toContain(
      `The lap lies over line 1 of each piece next to the round end, for about ${say.tape(under[0]!.lengthMm)}: dress it down to that bend over a bar. Set sound tacks`,
    );
  });

  it("is not spoken of where a seam has no lap, or no bend so near", () => {
    expect(made(aside).step("tack").text).not.toContain("The lap");
    const { plan } = made(lapped);
    expect(underLap(plan, {})).toEqual([]);
  });
});

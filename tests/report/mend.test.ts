import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { develop } from "../../src/report/develop.ts";
import type { NamedPart } from "../../src/report/layOut.ts";
import type { Refusal } from "../../src/shapes/refusal.ts";
import { eccentricCone, mm, rightCone, runs, squareToRound } from "../arbitraries.ts";
import { catalogue, named } from "../parts.ts";

const MM_PER_INCH = 25.4;

const issuesOf = (part: NamedPart): readonly Refusal[] => {
  const developed = develop(part, { catalogue });
  return developed.kind === "refused" ? developed.issues : [];
};
/** The number that a remedy names, in mm. */
const numberIn = (remedy: string): number | undefined => {
  const [, digits, units] = /at (?:most|least) ([\d.]+) (mm|in)/.exec(remedy) ?? [];
  return digits === undefined ? undefined : Number(digits) * (units === "in" ? MM_PER_INCH : 1);
};
const told = (issues: readonly Refusal[], field: string) =>
  issues.filter(({ path }) => path.join(".") === field);

describe("a remedy that names a number, put in, is the end of that refusal", () => {
  it("the thickness", () => {
    let named = 0;
    fc.assert(
      fc.property(
        fc.oneof(rightCone, eccentricCone, squareToRound),
        mm(2, 100),
        fc.boolean(),
        (part, times, inches) => {
          const thick: NamedPart = {
            ...part,
            thickness: Math.min(200, part.thickness * times),
            units: inches ? "in" : "mm",
          };
          for (const { remedy } of told(issuesOf(thick), "thickness")) {
            const most = numberIn(remedy);
            if (most === undefined) continue;
            named += 1;
            expect(most).toBeLessThan(thick.thickness);
            expect(most).toBeGreaterThanOrEqual(0.2);
            expect(told(issuesOf({ ...thick, thickness: most }), "thickness")).toEqual([]);
          }
        },
      ),
      runs(300),
    );
    expect(named).toBeGreaterThan(20);
  });

  it("the slant", () => {
    let named = 0;
    fc.assert(
      fc.property(rightCone, mm(0.2, 1.05), fc.boolean(), (part, share, inches) => {
        if (part.shape !== "right-cone") return;
        const { height, ...rest } = part;
        expect(height).toBeDefined();
        const taper = (part.largeEnd.diameter - part.smallEnd.diameter) / 2;
        const short: NamedPart = { ...rest, slant: share * taper, units: inches ? "in" : "mm" };
        for (const { remedy } of told(issuesOf(short), "slant")) {
          const least = numberIn(remedy);
          if (least === undefined) continue;
          named += 1;
          expect(told(issuesOf({ ...short, slant: least }), "slant")).toEqual([]);
        }
      }),
      runs(60),
    );
    expect(named).toBeGreaterThan(20);
  });

  it("the lap, the pieces and the place of the seam", () => {
    let named = 0;
    fc.assert(
      fc.property(squareToRound, mm(5, 500), (part, lap) => {
        const lapped: NamedPart = { ...part, pieces: 1, seam: { at: 40, joint: "lap", lap } };
        const issues = issuesOf(lapped);
        for (const { remedy } of [...told(issues, "seam.lap"), ...told(issues, "pieces")]) {
          const most = numberIn(remedy);
          if (most !== undefined) {
            named += 1;
            expect(issuesOf({ ...lapped, seam: { ...lapped.seam, lap: most } })).toEqual([]);
          }
          if (!remedy.includes("leave out seam.at")) continue;
          named += 1;
          expect(issuesOf({ ...lapped, seam: { joint: "lap", lap } })).toEqual([]);
        }
      }),
      runs(16),
    );
    expect(named).toBeGreaterThan(5);
  });
});

it("a lap in a conical corner is mended by moving the seam", () => {
  const part = named({
    shape: "square-to-round",
    thickness: 3,
    rectangularEnd: { length: 400, width: 400, measured: "inside" },
    roundEnd: { diameter: 300, measured: "inside" },
    height: 300,
    seam: { at: 45, joint: "lap", lap: 20 },
  });
  const [issue] = issuesOf(part);
  expect(issue?.remedy).toMatch(/^move the seam to the middle of a side: leave out seam\.at/);
});

it.each([
  { thickness: 7, length: 1462, width: 2000, diameter: 960, offset: [486, -480], height: 100, at: 360 },
  { thickness: 11, length: 100, width: 100, diameter: 1500, offset: [-484, 707], height: 114, at: 95 },
  { thickness: 15, length: 1686, width: 1698, diameter: 650, offset: [744, -113], height: 211, at: 0 },
] as const)(
  "an allowance that crosses a seam at $at° is mended by a seam that was tried",
  ({ thickness, length, width, diameter, offset, height, at }) => {
    const part = (seamAt: number) =>
      named({
        shape: "square-to-round",
        thickness,
        rectangularEnd: { length, width, measured: "middle" },
        roundEnd: { diameter, measured: "middle", offset: [offset[0], offset[1]] },
        height,
        seam: { at: seamAt },
        trimAllowance: true,
      });
    const [issue] = issuesOf(part(at));
    expect(issue?.path).toEqual(["trimAllowance"]);
    const tried = /^move the seam: seam\.at: ([\d.]+), or leave/.exec(issue?.remedy ?? "")?.[1];
    expect(issuesOf(part(Number(tried ?? at)))).toEqual([]);
  },
);

it("where no plate is thin enough none is named", () => {
  const part = named({
    shape: "right-cone",
    thickness: 0.5,
    largeEnd: { diameter: 100, measured: "outside" },
    smallEnd: { diameter: 0.3, measured: "outside" },
    height: 100,
  });
  expect(issuesOf(part)).toEqual([
    {
      path: ["thickness"],
      problem: "0.5 mm plate is thicker than the small end allows",
      remedy: "check the sizes and how each end is measured",
    },
  ]);
});

import { describe, expect, it } from "vitest";
import { develop } from "../../src/report/develop.ts";
import type { NamedPart } from "../../src/report/lay.ts";
import { partName } from "../../src/input/partName.ts";
import { catalogue, named, reportOf } from "../parts.ts";

const problemOf = (part: NamedPart): string | undefined => {
  const developed = develop(part, { catalogue });
  return developed.kind === "refused" ? developed.issues[0]?.problem : undefined;
};
const end = (diameter: number, measured: "inside" | "middle" | "outside" = "outside") => ({
  diameter,
  measured,
});

describe("what no pattern could be true to", () => {
  it.each([
    ["to a point", { diameter: 0 }, 150],
    ["cut off", end(200, "inside"), 50],
  ])("a slant shorter than the taper, %s", (_, smallEnd, slant) => {
    const part = named({ shape: "right-cone", thickness: 1, largeEnd: end(400), smallEnd, slant });
    expect(problemOf(part)).toContain("shorter than the taper");
  });

  it.each([
    [900, 1800, 0, 1.59, 0.2],
    [20_000, 9677.749, 2518.169, 13.23, 0.2],
    [900, 4500, 0, 6.94, 5],
    [900, 1800, 0, 5.36, 3],
  ])(
    "a wall that lies almost level: Ø%d to a point at %d, %d over %d",
    (diameter, x, y, height, thickness) => {
      const part = named({
        shape: "eccentric-cone",
        thickness,
        largeEnd: end(diameter, "inside"),
        smallEnd: { diameter: 0, offset: [x, y] },
        height,
      });
      expect(problemOf(part)).toBeDefined();
    },
  );

  it("a wall whose tightest bend lies between whole degrees", () => {
    const part = named({
      shape: "eccentric-cone",
      thickness: 4,
      largeEnd: end(900, "middle"),
      smallEnd: { ...end(681, "middle"), offset: [974, 0] },
      height: 74,
    });
    expect(problemOf(part)).toContain("tightest bend");
  });
});

it("the neutral surface changes the blank of a cone given by its slant, not the cone", () => {
  const heights = [0, 0.4, 0.5, 1].map(
    (neutral) =>
      reportOf(
        named({
          shape: "right-cone",
          thickness: 10,
          largeEnd: end(400, "middle"),
          smallEnd: { diameter: 0 },
          slant: 300,
          neutral,
        }),
      ).shape.heightMm,
  );
  for (const height of heights) expect(height).toBeCloseTo(223.606798, 5);
});

it.each(["x.html", "a.json", "index.html", "x.css"])(
  "a part is not named like a file of the site: %s",
  (name) => {
    expect(partName(`parts/${name}.yaml`).kind).toBe("unreadable");
  },
);

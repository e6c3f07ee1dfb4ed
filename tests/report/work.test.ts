import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { develop } from "../../src/report/develop.ts";
import type { NamedPart } from "../../src/report/lay.ts";
import type { Measured } from "../../src/shapes/fields.ts";
import { mm, runs, share } from "../arbitraries.ts";
import { catalogue, named } from "../parts.ts";

/**
 * Cosines taken till a part is answered: whatever is asked of a skin at one angle takes at least one of each round rim, so
 * this is the work, on any machine. The remedies of a refusal try up to forty parts more.
 */
const MOST_COSINES = 2_000_000;

/** The answer to a part and the work it took; a part that takes more than the most is not waited for. */
function answered(part: NamedPart) {
  const cosine = Math.cos;
  let cosines = 0;
  // By hand and not by a spy, which would keep every call.
  Math.cos = (x) => {
    cosines += 1;
    if (cosines > MOST_COSINES) throw new Error(`too much work: ${JSON.stringify(part)}`);
    return cosine(x);
  };
  try {
    const developed = develop(part, { catalogue });
    const told =
      developed.kind === "refused"
        ? developed.issues.map(({ path, problem, remedy }) => `${path.join(".")}: ${problem}; ${remedy}`)
        : [];
    return { developed, told, cosines };
  } finally {
    Math.cos = cosine;
  }
}

type End = readonly [number, Measured];
const eccentric = (
  thickness: number,
  large: End,
  small: End,
  { height, offset = [0, 0], ...rest }: { height: number; offset?: [number, number]; pieces?: number },
) =>
  named({
    shape: "eccentric-cone",
    thickness,
    largeEnd: { diameter: large[0], measured: large[1] },
    smallEnd: { diameter: small[0], measured: small[1], offset },
    height,
    ...rest,
  });

const LEVEL =
  "height: the wall lies within 1° of level; check height, offset and how each end is measured: such a part is a flat plate";

describe("a part that cannot be is refused at little cost", () => {
  it.each([
    [
      "ends on unlike faces of a wall thicker than the part is high",
      eccentric(20, [900, "inside"], [898, "outside"], { height: 2 }),
      "thickness: 20 mm plate is thicker than this height allows; use plate of at most 1.98 mm, or give more height",
    ],
    [
      "ends on unlike faces of a wall as thick as the part is high",
      eccentric(20, [900, "inside"], [898, "outside"], { height: 20 }),
      LEVEL,
    ],
    [
      "nearly one size on unlike faces",
      eccentric(10, [900, "inside"], [899.99, "outside"], { height: 10 }),
      LEVEL,
    ],
    [
      "a ring out of heavy plate",
      eccentric(5, [100, "middle"], [99.99, "outside"], { height: 0.3 }),
      "thickness: 5 mm plate is thicker than this height allows; use plate of at most 0.59 mm, or give more height",
    ],
    [
      "a pipe that lies down",
      eccentric(5, [1000, "inside"], [1000, "inside"], { height: 0.3, offset: [2000, 0] }),
      "height: the wall lies within 1° of level; check height and offset: such a part is a flat plate",
    ],
  ])("%s", (_, part, refusal) => {
    const { told, cosines } = answered(part);
    expect(told).toEqual([refusal]);
    expect(cosines).toBeLessThan(MOST_COSINES);
  });
});

const face = fc.constantFrom<Measured>("inside", "middle", "outside");
const turned = (reach: number, turn: number): [number, number] => [
  reach * Math.cos(2 * Math.PI * turn),
  reach * Math.sin(2 * Math.PI * turn),
];
const reaches = fc.oneof(fc.constant(0), mm(1e-6, 20_000));

/** Cones of nearly one size, nearly to a point, nearly level, or of a wall that just fits: sound or not. */
const nearlyNone = fc
  .record({
    large: mm(1, 20_000),
    less: mm(1e-6, 200),
    small: fc.constantFrom("a little less", "a share", "as large", "a point"),
    height: mm(1e-3, 5000),
    /** Height from thickness, a little more or less than it or half of it. */
    brink: fc.option(fc.tuple(fc.constantFrom(0.5, 1), fc.constantFrom(-1, 0, 1), mm(1e-12, 0.5)), {
      nil: undefined,
    }),
    reach: reaches,
    turn: share,
    faces: fc.tuple(face, face),
    thickness: mm(0.2, 200),
    neutral: fc.constantFrom(undefined, 0, 1),
    pieces: fc.constantFrom(1, 2, 5),
  })
  .map(({ large, less, small, height, brink, reach, turn, faces, thickness, neutral, pieces }) => {
    const diameters = {
      "a little less": Math.max(0.01, large - less),
      "a share": large * (less / 200),
      "as large": large,
      "a point": 0,
    };
    const high = brink ? thickness * brink[0] * (1 + brink[1] * brink[2]) : height;
    return named({
      shape: "eccentric-cone",
      thickness,
      ...(neutral !== undefined && { neutral }),
      pieces,
      largeEnd: { diameter: large, measured: faces[0] },
      smallEnd: {
        diameter: diameters[small],
        measured: faces[1],
        offset: turned(reach, turn),
      },
      height: high,
    });
  });

const anySize = fc.oneof(mm(1e-9, 1), mm(1, 20_000), mm(1, 20_000), mm(1, 20_000));

/** Square-to-rounds with any side, end or height as good as nothing. */
const nearlyFlat = fc
  .record({
    length: anySize,
    width: anySize,
    diameter: anySize,
    height: anySize,
    reach: reaches,
    turn: share,
    faces: fc.tuple(face, face),
    thickness: mm(0.2, 200),
    pieces: fc.constantFrom(1, 2, 4),
  })
  .map(({ length, width, diameter, height, reach, turn, faces, thickness, pieces }) =>
    named({
      shape: "square-to-round",
      thickness,
      pieces,
      rectangularEnd: { length, width, measured: faces[0] },
      roundEnd: { diameter, measured: faces[1], offset: turned(reach, turn) },
      height,
    }),
  );

/** The first number anywhere in a report that is none. */
function notFinite(tree: unknown, path = ""): string | undefined {
  if (typeof tree === "number") return Number.isFinite(tree) ? undefined : path;
  if (tree === null || typeof tree !== "object") return undefined;
  for (const [key, value] of Object.entries(tree)) {
    const found = notFinite(value, `${path}.${key}`);
    if (found !== undefined) return found;
  }
  return undefined;
}

describe("every part that is nearly none", () => {
  it.each([
    ["eccentric cones", nearlyNone, 400],
    ["square-to-rounds", nearlyFlat, 800],
  ] as const)(
    "is answered within a bound of work, with a report of finite numbers or a remedy: %s",
    (_, parts, count) => {
      const kinds = { report: 0, refused: 0 };
      fc.assert(
        fc.property(parts, (part) => {
          const { developed, told } = answered(part);
          kinds[developed.kind] += 1;
          if (developed.kind === "report") expect(notFinite(developed.report)).toBeUndefined();
          for (const sentence of told) expect(sentence).toMatch(/^[A-Za-z.]+: .+; .+/);
        }),
        runs(count),
      );
      expect(kinds.report).toBeGreaterThan(count / 50);
      expect(kinds.refused).toBeGreaterThan(count / 50);
    },
  );
});

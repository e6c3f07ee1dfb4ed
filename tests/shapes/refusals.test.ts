import { describe, expect, it } from "vitest";
import { develop } from "../../src/report/develop.ts";
import type { NamedPart } from "../../src/report/lay.ts";
import { catalogue, named } from "../parts.ts";

const cone = (over: object) =>
  named({
    shape: "right-cone",
    thickness: 4,
    largeEnd: { diameter: 900, measured: "outside" },
    smallEnd: { diameter: 400, measured: "outside" },
    ...(!("slant" in over || "halfAngle" in over || "height" in over) && { height: 700 }),
    ...over,
  });
const eccentric = (over: object) =>
  named({
    shape: "eccentric-cone",
    thickness: 4,
    largeEnd: { diameter: 900, measured: "outside" },
    smallEnd: { diameter: 400, measured: "outside", offset: [150, 0] },
    height: 700,
    ...over,
  });
const transition = (over: object) =>
  named({
    shape: "square-to-round",
    thickness: 4,
    rectangularEnd: { length: 600, width: 400, measured: "inside" },
    roundEnd: { diameter: 300, measured: "inside" },
    height: 500,
    ...over,
  });

function refusalOf(part: NamedPart): string[] {
  const developed = develop(part, { catalogue });
  if (developed.kind === "report") return [];
  return developed.issues.map(({ path, problem, remedy }) => `${path.join(".")}: ${problem}; ${remedy}`);
}

const rows: [string, NamedPart, string[]][] = [
  [
    "no height",
    cone({ height: undefined }),
    [": no height is given; give exactly one of height, slant and halfAngle"],
  ],
  [
    "two heights",
    cone({ height: 700, slant: 800 }),
    ["slant: height and slant are both given; give exactly one of height, slant and halfAngle"],
  ],
  [
    "ends swapped",
    cone({ smallEnd: { diameter: 950, measured: "outside" } }),
    ["largeEnd.diameter: the large end is smaller than the small end; swap them"],
  ],
  [
    "slant shorter than the taper",
    cone({ slant: 240 }),
    [
      "slant: a slant of 240 mm is shorter than the taper from end to end, 250 mm; give at least 250.06 mm, or check the diameters",
    ],
  ],
  [
    "wall thicker than the small end, told in the file's own units",
    cone({ units: "in", thickness: 25.4, smallEnd: { diameter: 38.1, measured: "outside" } }),
    [
      "thickness: 1 in plate is thicker than the small end allows; use plate of at most 0.638 in, or make that end larger",
    ],
  ],
  [
    "equal ends with a half angle",
    cone({ halfAngle: 20, smallEnd: { diameter: 900, measured: "outside" } }),
    ["halfAngle: ends of one size make a pipe, which a half angle does not describe; give height instead"],
  ],
  [
    "middles the other way round",
    cone({ smallEnd: { diameter: 899, measured: "inside" } }),
    [
      "smallEnd.measured: measured so, the middle of the small end is larger than that of the large end; swap the ends, or check how each is measured",
    ],
  ],
  [
    "middles of offset ends the other way round",
    eccentric({ smallEnd: { diameter: 899, measured: "inside", offset: [120, 0] } }),
    [
      "smallEnd.measured: measured so, the middle of the small end is larger than that of the large end; swap the ends, or check how each is measured",
    ],
  ],
  [
    "allowance with square edges",
    cone({ edges: "square", trimAllowance: true }),
    [
      "trimAllowance: edges left square are not dressed level, so there is nothing to allow for; leave out trimAllowance, or make edges level",
    ],
  ],
  [
    "half angle that makes a tower",
    cone({ halfAngle: 0.05 }),
    ["halfAngle: the cone would be 286478.82 mm high; keep the height within 20000 mm"],
  ],
  [
    "gap wider than an end",
    cone({ seam: { gap: 600 }, pieces: 8 }),
    [
      "seam.gap: the gap is wider than an end of the blank; make it smaller, as a weld needs a few millimetres at most",
    ],
  ],
  [
    "lap that would meet seam 1",
    cone({
      halfAngle: 85,
      smallEnd: { diameter: 300, measured: "outside" },
      seam: { joint: "lap", lap: 60 },
    }),
    [
      "pieces: the flat blank would overlap itself; split the part in 2 pieces, or make the lap at most 3.04 mm",
    ],
  ],
  [
    "lap without width",
    cone({ seam: { joint: "lap" } }),
    ["seam.lap: a lap joint needs its width; give lap, the width by which the plate runs on past the seam"],
  ],
  [
    "width without lap",
    cone({ seam: { lap: 20 } }),
    ["seam.lap: a lap width is given for a butt joint; use joint: lap, or leave out lap"],
  ],
  [
    "square edges on an eccentric cone",
    eccentric({ edges: "square" }),
    [
      "edges: edges left square do not lie in one plane where the wall leans differently round the part; use edges: level, and trimAllowance: true where the edges are cut square and dressed",
    ],
  ],
  [
    "eccentric wall too thick",
    eccentric({ thickness: 60, smallEnd: { diameter: 100, measured: "outside", offset: [500, 0] } }),
    [
      expect.stringMatching(
        /^thickness: 60 mm plate is thicker than the small end at plan angle \d+° allows; use plate of at most [\d.]+ mm, or make that end larger$/,
      ) as string,
    ],
  ],
  [
    "square-to-round in three",
    transition({ pieces: 3 }),
    ["pieces: a square-to-round is not split in 3; split it in 2 or 4, at the middles of its sides"],
  ],
  [
    "pieces that do not meet at the middle of a side",
    transition({ pieces: 2, seam: { at: 30 } }),
    ["seam.at: pieces of a square-to-round meet at the middles of its sides; use 0, 90, 180 or 270"],
  ],
  [
    "square-to-round wall too thick",
    transition({ thickness: 180, roundEnd: { diameter: 300, measured: "outside" } }),
    [
      expect.stringMatching(
        /^thickness: 180 mm plate is thicker than the smaller end allows; use plate of at most [\d.]+ mm/,
      ) as string,
    ],
  ],
];

/** Less than the thinnest sheet, at every size that a shape has. */
const small = 1e-9;
const SMALL = "the size is smaller than the thinnest sheet that is formed; give at least 0.2 mm";
const tiny: [string, NamedPart, string[]][] = [
  [
    "large end",
    cone({ largeEnd: { diameter: small, measured: "outside" }, smallEnd: { diameter: 0 } }),
    [`largeEnd.diameter: ${SMALL}, or check its units`],
  ],
  [
    "small end",
    cone({ smallEnd: { diameter: 0.19, measured: "outside" } }),
    [`smallEnd.diameter: ${SMALL}, or 0 for a point, or check its units`],
  ],
  ["height", cone({ height: small }), [`height: ${SMALL}, or check its units`]],
  [
    "slant, with the least that was tried",
    cone({ slant: small }),
    ["slant: the size is smaller than the thinnest sheet that is formed; give at least 250.06 mm"],
  ],
  ["lap", cone({ seam: { joint: "lap", lap: small } }), [`seam.lap: ${SMALL}, or check its units`]],
  [
    "offset small end",
    eccentric({ smallEnd: { diameter: small, measured: "outside", offset: [150, 0] } }),
    [`smallEnd.diameter: ${SMALL}, or 0 for a point, or check its units`],
  ],
  ["height of an eccentric cone", eccentric({ height: 1e-3 }), [`height: ${SMALL}, or check its units`]],
  [
    "sides, round end and height of a square-to-round, all told",
    transition({
      rectangularEnd: { length: small, width: small, measured: "inside" },
      roundEnd: { diameter: small, measured: "inside" },
      height: small,
    }),
    ["rectangularEnd.length", "rectangularEnd.width", "roundEnd.diameter", "height"].map(
      (field) => `${field}: ${SMALL}, or check its units`,
    ),
  ],
  [
    "in inches",
    transition({ units: "in", height: 0.1 }),
    [
      "height: the size is smaller than the thinnest sheet that is formed; give at least 0.008 in, or check its units",
    ],
  ],
];

describe("sizes that are as good as none", () => {
  it.each(tiny)("%s", (_, part, expected) => {
    expect(refusalOf(part)).toEqual(expected);
  });

  it("the least that is named goes", () => {
    const least = { length: 0.2, width: 0.2, measured: "inside" as const };
    expect(refusalOf(transition({ rectangularEnd: least }))).toEqual([]);
  });
});

describe("parts that cannot be laid out", () => {
  it.each(rows)("%s", (_, part, expected) => {
    expect(refusalOf(part)).toEqual(expected);
  });

  it("the thickness named as the most does fit, and a little more does not", () => {
    const part = (thickness: number) =>
      eccentric({ thickness, smallEnd: { diameter: 100, measured: "outside", offset: [500, 0] } });
    const [message = ""] = refusalOf(part(60));
    const most = Number(/at most ([\d.]+) mm/.exec(message)?.[1]);
    expect(most).toBeGreaterThan(1);
    expect(refusalOf(part(most))).toEqual([]);
    expect(refusalOf(part(most + 0.02))).toHaveLength(1);
  });
});

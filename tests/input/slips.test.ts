import { describe, expect, it } from "vitest";
import { printProblems } from "../../src/input/problem.ts";
import { readPart } from "../../src/input/readPart.ts";
import { readShop } from "../../src/input/readShop.ts";
import { readJob } from "../../src/input/readJob.ts";
import { GOOD, linesOf, spoilt, tables } from "./files.ts";

const INCHES = `shape: eccentric-cone
title: Spout
units: in
material: a36
thickness: 1/4
largeEnd: { diameter: 36, measured: outside }
smallEnd: { diameter: 16, measured: outside, offset: [0, 6] }
height: 28
`;

describe("usual slips in a part file", () => {
  it.each<[string, string, string[]]>([
    [
      "another name for a shape",
      spoilt("eccentric-cone", "eccentric-reducer"),
      [
        "1:8: shape: eccentric-reducer is not known; did you mean eccentric-cone? Known are right-cone, eccentric-cone, square-to-round",
      ],
    ],
    [
      "inch for in",
      spoilt("units: in", "units: inch", INCHES),
      ["3:8: units: inch is not known; did you mean in? Known are mm, in"],
    ],
    [
      "OD for outside",
      spoilt("outside", "OD"),
      ["6:38: largeEnd.measured: OD is not known; did you mean outside? Known are inside, outside, middle"],
    ],
    [
      "a letter too many in gauge",
      spoilt("thickness: 4", "thickness: 10 guage"),
      ["5:12: thickness: 10 guage is not a thickness; did you mean the sheet gauge 10 ga?"],
    ],
    [
      "a gauge that becomes a comment",
      spoilt("thickness: 4", "thickness: #10"),
      [
        "5:1: thickness: has no value, for what follows # is a comment and is not read; write it without, as in 10 ga",
      ],
    ],
    [
      "a quoted gauge number",
      spoilt("thickness: 4", 'thickness: "#10"'),
      ["5:12: thickness: #10 is not a thickness; did you mean the sheet gauge 10 ga?"],
    ],
    [
      "a gauge number in a file in inches",
      spoilt("1/4", "14", INCHES),
      [
        "5:12: thickness: 14 would be 14 inches thick; write 14 ga for a sheet gauge, or 14 mm for millimetres",
      ],
    ],
    [
      "millimetres in a file in inches",
      spoilt("28", "700", INCHES),
      [
        "8:9: height: 700 would be 700 inches, more than 58 feet; write 700 mm for millimetres, or 700 in if it is as long as that",
      ],
    ],
    [
      "ksi without saying so, in a file in inches",
      `${INCHES}certificate: { yieldMPa: 36 }\n`,
      [
        "9:26: certificate.yieldMPa: 36 would be 36 MPa, which is 5.2 ksi; write 36 ksi or 248 MPa, or 36 MPa if it is as weak as that",
      ],
    ],
    [
      "no offset",
      spoilt(", offset: [150, 0]", ""),
      [
        "7:1: smallEnd.offset: is missing; give how far the upper end's centre lies from the lower end's, [right, away], as in [0, 150]",
      ],
    ],
    [
      "another name for a key",
      spoilt("thickness: 4", "gauge: 10 ga"),
      ["5:1: gauge: is not a key here; did you mean thickness?"],
    ],
    [
      "a title that shows nothing",
      spoilt("Feed spout reducer", '"\\u200b\\u2060"'),
      ["2:8: title: shows nothing; give a text of up to 120 characters"],
    ],
  ])("%s", (_, text, lines) => {
    expect(linesOf(text)).toEqual(lines.map((line) => `a.yaml:${line}`));
  });

  it("inches that are meant are read, with their unit", () => {
    const { part } = readPart(spoilt("28", "400 in", spoilt("1/4", "3 in", INCHES)), {
      path: "a.yaml",
      ...tables,
    });
    expect(part).toMatchObject({ thickness: 76.2, height: 10_160 });
  });

  it.each([
    ["right", 0],
    ["back", 90],
    ["Left", 180],
    ["front", 270],
  ])("a seam at the %s lies at %d°", (word, deg) => {
    expect(readPart(`${GOOD}seam: { at: ${word} }\n`, { path: "a.yaml", ...tables }).part?.seam?.at).toBe(
      deg,
    );
  });

  it("a certificate's yield is read with its unit too", () => {
    const { part } = readPart(`${GOOD}certificate: { yield: 45 ksi }\n`, { path: "a.yaml", ...tables });
    expect(part?.certificate?.yieldMPa).toBeCloseTo(310.264, 3);
    const inInches = (written: string) =>
      readPart(`${INCHES}certificate: { yieldMPa: ${written} }\n`, { path: "a.yaml", ...tables }).part
        ?.certificate?.yieldMPa;
    expect(inInches("36 ksi")).toBeCloseTo(248.211, 3);
    expect(["36 MPa", "100", "36"].map(inInches)).toEqual([36, 100, undefined]);
  });
});

describe("everything that can be told is told at once", () => {
  it("where the shape is not known, by what the keys look like; and what the keys have to do with each other", () => {
    const text = `title: x
units: in
material: a36
thickness: 14
largeEnd: { diameter: 30, measured: ID }
smallEnd: { diameter: 40, measured: inside }
seam: { at: left, lap: 3 }
pieces: 13
`;
    expect(linesOf(text)).toEqual(
      [
        "1:1: file: no height is given; give exactly one of height, slant and halfAngle",
        "1:1: shape: is missing; give right-cone, eccentric-cone or square-to-round",
        "4:12: thickness: 14 would be 14 inches thick; write 14 ga for a sheet gauge, or 14 mm for millimetres",
        "5:23: largeEnd.diameter: the large end is smaller than the small end; swap them",
        "5:37: largeEnd.measured: ID is not known; did you mean inside? Known are inside, outside, middle",
        "7:24: seam.lap: a lap width is given for a butt joint; use joint: lap, or leave out lap",
        "8:9: pieces: 13 is too large; give a whole number from 1 to 12",
      ].map((line) => `a.yaml:${line}`),
    );
  });

  it("a misspelt key's value is judged as what was meant", () => {
    expect(linesOf(spoilt("height: 700", "hieght: -3"))).toEqual([
      "a.yaml:8:1: hieght: is not a key here; did you mean height?",
      "a.yaml:8:9: hieght: -3 is not a size; give a number greater than 0",
    ]);
  });

  it("but nothing is said between sizes whose units nobody knows", () => {
    const text = spoilt("units: mm\n", "", spoilt("900", "3 in", spoilt("400", "50")));
    expect(linesOf(text)).toEqual(["a.yaml:1:1: units: is missing; give mm or in"]);
  });

  it("a job's unknown parts are told beside its other mistakes", () => {
    const { problems } = readJob("titel: x\nparts: [a, b, a]\n", { path: "job.yaml", ...tables }, ["a"]);
    expect(printProblems(problems)).toEqual([
      "job.yaml:1:1: titel: is not a key here; did you mean title?",
      "job.yaml:2:12: parts[2]: there is no part b; give a",
      "job.yaml:2:15: parts[3]: a is in the list already, in place 1; keep it once",
    ]);
  });
});

describe("a shop file", () => {
  const LEAST = `name: Our shop
units: in
machines:
  - kind: plate roll
    name: Roll
    workingWidth: 8'
    rating: { thickness: 1/2, yield: 36 ksi }
    rolls: { topDiameter: 10 }
    coneAttachment: true
  - kind: press brake
    name: Brake
    bedLength: 10'
    force: 150 tons
handLift: 50 lb
`;
  const lines = (text: string) => printProblems(readShop(text, { path: "s.yaml", ...tables }).problems);

  it("needs no more than this, and takes forces, strengths and masses with their units", () => {
    const { value } = readShop(LEAST, { path: "s.yaml", ...tables });
    expect(lines(LEAST)).toEqual([]);
    expect(value?.machines[0]).toMatchObject({
      coneAttachment: { fitted: true },
      rating: { thickness: 12.7 },
    });
    expect(value?.machines[1]).toMatchObject({ forceKN: expect.closeTo(1334.466, 3) as number });
    expect(value?.handLiftKg).toBeCloseTo(22.68, 2);
  });

  it.each<[string, string, string[]]>([
    [
      "a force without its unit",
      spoilt("150 tons", "150", LEAST),
      ["13:12: machines[2].force: 150 has no unit; write it with its unit, as in 1000 kN or 150 US tons"],
    ],
    [
      "a force twice",
      spoilt("150 tons", "150 tons\n    forceKN: 1000", LEAST),
      ["13:5: machines[2].force: is given as forceKN too; keep one of them"],
    ],
    [
      "no force",
      spoilt("    force: 150 tons\n", "", LEAST),
      [
        "10:5: machines[2].forceKN: is missing; give kN greater than 0 and at most 100000, or a force with its unit, as in force: 150 US tons",
      ],
    ],
    [
      "too much force",
      spoilt("150 tons", "150000 tons", LEAST),
      [
        "13:12: machines[2].force: 150000 tons is too large; give kN greater than 0 and at most 100000, or a force with its unit, as in force: 150 US tons",
      ],
    ],
    [
      "tonnage",
      spoilt("force: 150", "tonnage: 150", LEAST),
      ["13:5: machines[2].tonnage: is not a key here; did you mean force?"],
    ],
    [
      "machines in lists of their own",
      LEAST.replace("machines:", "rolls:"),
      [
        "3:1: rolls: is not a key here; did you mean machines? It lists rolls and brakes, each with kind: plate roll or kind: press brake",
      ],
    ],
    [
      "a width and a length",
      LEAST.replace("workingWidth", "width").replace("bedLength", "length"),
      [
        "6:5: machines[1].width: is not a key here; did you mean workingWidth?",
        "12:5: machines[2].length: is not a key here; did you mean bedLength?",
      ],
    ],
    [
      "machines without a kind, each judged by its keys",
      LEAST.replace("kind: plate roll\n    ", "")
        .replace("kind: press brake\n    ", "")
        .replace("8'", "-1")
        .replace("10'", "-1"),
      [
        "4:5: machines[1].kind: is missing; give plate roll or press brake",
        "5:19: machines[1].workingWidth: -1 is not a size; give a number greater than 0",
        "9:5: machines[2].kind: is missing; give plate roll or press brake",
        "10:16: machines[2].bedLength: -1 is not a size; give a number greater than 0",
      ],
    ],
    [
      "a range that runs backwards",
      spoilt("coneAttachment: true", "coneAttachment: { range: [30, 20] }", LEAST),
      [
        "9:30: machines[1].coneAttachment.range: runs backwards; give the end nearest the drop end first, then the farthest",
      ],
    ],
    ...(
      [
        ["[0, 0]", "is the centre of the top roll itself"],
        ["[9, 9]", "lies no lower than the centre of the top roll"],
        ["[-9, -9]", "is not on the bending side of the top roll"],
        ["[3, -3]", "puts the bending roll into the top roll"],
      ] as const
    ).map(([origin, why]): [string, string, string[]] => [
      `a slide from ${origin}`,
      spoilt("coneAttachment: true", `slide: { origin: ${origin}, angle: 60, travel: 9 }`, LEAST),
      [
        `9:22: machines[1].slide.origin: ${why}; give the centre of the bending roll where it touches a flat plate from below, measured from the centre of the top roll: [towards the bending side, up], with a minus for down, as in [150, -129]`,
      ],
    ]),
    [
      "a level slide",
      spoilt("coneAttachment: true", "slide: { origin: [9, -9], angle: 0, travel: 9 }", LEAST),
      [
        "9:38: machines[1].slide.angle: is level, and a level slide never bends the plate; give its rise above level in degrees, 90 for straight up",
      ],
    ],
  ])("refuses %s", (_, text, told) => {
    expect(lines(text)).toEqual(told.map((line) => `s.yaml:${line}`));
  });
});

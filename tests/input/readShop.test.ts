import { expect, it } from "vitest";
import { printProblems } from "../../src/input/problem.ts";
import { readShop } from "../../src/input/readShop.ts";
import { spoilt, tables } from "./files.ts";

const SHOP = `name: Test shop
units: in
machines:
  - kind: plate roll
    name: Big roll
    arrangement: initial-pinch
    workingWidth: 8'
    rating: { thickness: 1/2, yieldMPa: 250 }
    coneRating: { thickness: 5 mm, slant: 48 }
    rolls: { topDiameter: 10, bendingDiameter: 9-1/2 }
    slide: { origin: [8, -10], angle: 60°, travel: 6 }
    bearings: [6, 12]
    coneAttachment: { range: [-10 mm, 4], clearRoom: 10 }
  - kind: press brake
    name: Long brake
    bedLength: 10'
    forceKN: 1000
    dies: [1, 1-1/2, 50 mm]
stock:
  - { material: "304", thickness: 10 ga, length: 8', width: 4' }
  - { material: 5052-h32, thickness: 10 ga, length: 8', width: 4' }
handLiftKg: 25
`;

const read = (text: string) => readShop(text, { path: "shop.yaml", ...tables });

it("reads all sizes in the units of the file, strengths and forces as they are", () => {
  const { value, problems } = read(SHOP);
  expect(problems).toEqual([]);
  expect(value).toMatchObject({
    machines: [
      {
        workingWidth: 2438.4,
        rating: { thickness: 12.7, yieldMPa: 250 },
        coneRating: { thickness: 5, slant: 1219.2 },
        rolls: { topDiameter: 254, bendingDiameter: 241.3 },
        slide: { origin: [203.2, -254], angle: 60, travel: 152.4 },
        bearings: [152.4, 304.8],
        coneAttachment: { range: [-10, 101.6], clearRoom: 254 },
      },
      { bedLength: 3048, forceKN: 1000, dies: [25.4, 38.1, 50] },
    ],
    // The same gauge in two metals.
    stock: [{ thickness: 3.571875 }, { thickness: 2.58826 }],
    handLiftKg: 25,
  });
});

it.each(["-9.75]", "-10.25]", "-10.75]"])(
  "takes a slide that touches a plate up to the rated thickness, or none: %s",
  (up) => {
    expect(read(spoilt("-10]", up, SHOP)).problems).toEqual([]);
  },
);

it("allows a roll for thin plate what a tape between the centres of its rolls may be off", () => {
  // 9.75 in and 2 mm are 249.65 mm.
  const thin = spoilt("thickness: 1/2, yield", "thickness: 2 mm, yield", SHOP);
  expect(read(spoilt("-10]", "-254.6 mm]", thin)).problems).toEqual([]);
  expect(read(spoilt("-10]", "-254.7 mm]", thin)).problems).toMatchObject([
    { field: "machines[1].slide.origin[2]" },
  ]);
});

it("asks nothing of a slide whose rolls stand another way, or are not known", () => {
  for (const other of [
    spoilt("initial-pinch", "pyramid", SHOP),
    spoilt(", bendingDiameter: 9-1/2", "", SHOP),
    spoilt("    arrangement: initial-pinch\n", "", SHOP),
  ])
    expect(read(spoilt("-10]", "-20]", other)).problems).toEqual([]);
});

it.each<[string, string, string[]]>([
  [
    "a die whose opening would be many inches",
    spoilt("1-1/2, 50 mm", "12, 5.5, 6.0, 8 in", SHOP),
    [
      "18:15: machines[2].dies[2]: 12 would be 12 inches; write 12 mm for millimetres, or 12 in if it is as large as that",
      "18:24: machines[2].dies[4]: 6.0 would be 6 inches; write 6 mm for millimetres, or 6 in if it is as large as that",
    ],
  ],
  [
    "a machine's name in use",
    spoilt("Long brake", "big ROLL", SHOP),
    ["15:11: machines[2].name: big ROLL is the name of machine 1 too; give each machine a name of its own"],
  ],
  [
    "a gauge where no metal is named",
    spoilt("1/2, yield", "10 ga, yield", SHOP),
    [
      "8:26: machines[1].rating.thickness: 10 ga differs from metal to metal, and none is named here; give it in mm or in",
    ],
  ],
  [
    "an unknown gauge in stock",
    spoilt("10 ga", "2 ga", SHOP),
    ["20:35: stock[1].thickness: there is no 2 gauge in stainless sheet; the gauges there are 3 to 30"],
  ],
  [
    "an unknown material in stock",
    spoilt("5052-h32", "5052-h23", SHOP),
    [
      "21:17: stock[2].material: there is no material 5052-h23; did you mean 5052-h32? The materials are 304, 316, 5083, s235, s275, s355, a36, s250gd-z, 5052-h32",
    ],
  ],
  [
    "a misspelt kind, the rest read as the one meant",
    spoilt("forceKN: 1000", "forceKN: 0", spoilt("press brake", "pres brake", SHOP)),
    [
      "14:11: machines[2].kind: pres brake is not known; did you mean press brake? Known are plate roll, press brake",
      "17:14: machines[2].forceKN: 0 is too small; give kN greater than 0 and at most 100000, or a force with its unit, as in force: 150 US tons",
    ],
  ],
  [
    "an unknown kind",
    spoilt("press brake", "guillotine", SHOP),
    ["14:11: machines[2].kind: guillotine is not known; give plate roll or press brake"],
  ],
  [
    "no kind",
    spoilt("kind: press brake\n    name", "name", SHOP),
    ["14:5: machines[2].kind: is missing; give plate roll or press brake"],
  ],
  [
    "an unknown arrangement",
    spoilt("initial-pinch", "initial", SHOP),
    [
      "6:18: machines[1].arrangement: initial is not known; give initial-pinch, double-pinch, pyramid or four-roll",
    ],
  ],
  [
    "no dies",
    spoilt("[1, 1-1/2, 50 mm]", "[]", SHOP),
    [
      "18:11: machines[2].dies: is an empty list; give a list, each item on a line that begins with a hyphen, or in square brackets",
    ],
  ],
  [
    "one die, not in a list",
    spoilt("[1, 1-1/2, 50 mm]", "2", SHOP),
    [
      "18:11: machines[2].dies: 2 is not a list; give a list, each item on a line that begins with a hyphen, or in square brackets",
    ],
  ],
  [
    "a bad die",
    spoilt("1-1/2", "1-1/0", SHOP),
    ["18:15: machines[2].dies[2]: 1-1/0 divides by 0; write the fraction as in 5/8"],
  ],
  [
    "a machine that is a word",
    spoilt(/ {2}- kind: press[^]*?mm]/, "  - brake", SHOP),
    [
      "14:5: machines[2]: brake is a single value where a group of keys belongs; give a group of keys with kind: plate roll or press brake",
    ],
  ],
  [
    "a cone attachment without a word",
    spoilt(/coneAttachment.*/, "coneAttachment:", SHOP),
    [
      "13:5: machines[1].coneAttachment: has no value; give true or false, or what is known of it, as in { range: …, clearRoom: … }, or leave the key out",
    ],
  ],
  [
    "a steep slide",
    spoilt("60°", "95", SHOP),
    ["11:39: machines[1].slide.angle: 95 is too large; give degrees from 0 to 90"],
  ],
  [
    // 5 in and 4-3/4 in of rolls with 1/2 in of plate between: 10.25 in; the rated thickness to either side is let pass.
    "a slide that does not begin under a flat plate",
    spoilt("-10]", "-9-11/16]", SHOP),
    [
      "11:26: machines[1].slide.origin[2]: is -9.688 up, but the bending roll touches a flat plate of the rated thickness at about -10.25 (half the top roll, 5, the plate, 0.5, and half the bending roll, 4.75 in); give -10.25, or measure the rolls and the slide again",
    ],
  ],
  [
    "a slide that begins too low",
    spoilt("-10]", "-10.76]", SHOP),
    [
      "11:26: machines[1].slide.origin[2]: is -10.76 up, but the bending roll touches a flat plate of the rated thickness at about -10.25 (half the top roll, 5, the plate, 0.5, and half the bending roll, 4.75 in); give -10.25, or measure the rolls and the slide again",
    ],
  ],
  [
    "a bending roll inside the pinch roll",
    spoilt("topDiameter: 10,", "topDiameter: 10, pinchDiameter: 9,", spoilt("[8, -10]", "[9, -10]", SHOP)),
    [
      "11:22: machines[1].slide.origin: puts the bending roll into the pinch roll, which is under the same plate; give the centre of the bending roll where it touches a flat plate from below, measured from the centre of the top roll: [towards the bending side, up], with a minus for down, as in [150, -129]",
    ],
  ],
  [
    "a roll beyond all rolls",
    spoilt("8'", "80'", SHOP),
    ["7:19: machines[1].workingWidth: 80' is too large; give at most 787.4 in"],
  ],
  [
    "no machines",
    spoilt(/machines:[^]*stock/, "stock", SHOP),
    [
      "1:1: machines: is missing; give a list, each item on a line that begins with a hyphen, or in square brackets",
    ],
  ],
  ["an empty file", "", ['1:1: file: it is empty; begin it with "name: Our shop"']],
])("refuses %s", (_, text, lines) => {
  expect(printProblems(read(text).problems)).toEqual(lines.map((line) => `shop.yaml:${line}`));
});

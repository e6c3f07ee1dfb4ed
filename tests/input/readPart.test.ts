import { describe, expect, it } from "vitest";
import { readPart } from "../../src/input/readPart.ts";
import { GOOD, linesOf, spoilt, tables } from "./files.ts";

const readA = (text: string) => readPart(text, { path: "parts/a.yaml", ...tables }).part;

describe("a good file", () => {
  it("comes out as it was written, with the name of its file", () => {
    expect(readA(GOOD)).toEqual({
      name: "a",
      shape: "eccentric-cone",
      title: "Feed spout reducer",
      units: "mm",
      material: "s235",
      thickness: 4,
      largeEnd: { diameter: 900, measured: "outside" },
      smallEnd: { diameter: 400, measured: "outside", offset: [150, 0] },
      height: 700,
    });
    expect(linesOf(GOOD)).toEqual([]);
  });

  it("comes out in millimetres where it is written in inches", () => {
    const text = `shape: square-to-round
title: 42
units: in
material: 304
thickness: 10 ga
rectangularEnd: { length: 3' 4-1/2", width: 24, measured: inside }
roundEnd: { diameter: 12-3/8, measured: middle, offset: [-½, 25.4 mm] }
height: 30"
seam: { at: 90°, gap: 1/8 }
pieces: 2
notes: |
  Two lines
  of notes.
certificate: { yieldMPa: 310 }
`;
    expect(linesOf(text)).toEqual([]);
    expect(readA(text)).toMatchObject({
      title: "42",
      material: "304",
      thickness: 3.571875,
      rectangularEnd: { length: 1028.7, width: 609.6 },
      roundEnd: { diameter: 314.325, offset: [-12.7, 25.4] },
      height: 762,
      seam: { at: 90, gap: 3.175 },
      notes: "Two lines\nof notes.",
      certificate: { yieldMPa: 310 },
    });
  });

  it.each([
    ["a mark in front of it", `\ufeff${GOOD}`],
    ["the line ends of another system", GOOD.replaceAll("\n", "\r\n")],
    ["comments and blank lines", `# a part\n\n${GOOD}\n# end\n`],
    ["an end-of-document line", `---\n${GOOD}...\n`],
    ["a value given by reference", spoilt("height: 700", "height: *d", spoilt("900", "&d 900"))],
    ["tags that say what is plain anyway", spoilt("900", "!!int 900")],
    ["quotes round numbers", spoilt("900", '"900"')],
  ])("may have %s", (_, text) => {
    expect(linesOf(text)).toEqual([]);
  });
});

/** What is wrong, the text, and exactly what is printed. */
const refusals: [string, string, string[]][] = [
  // --- Numbers
  [
    "negative",
    spoilt("900", "-3"),
    ["6:23: largeEnd.diameter: -3 is not a size; give a number greater than 0"],
  ],
  [
    "zero where there must be a size",
    spoilt("900", "0"),
    ["6:23: largeEnd.diameter: 0 is not a size; give a number greater than 0"],
  ],
  [
    "negative where zero is a point",
    spoilt("400", "-1"),
    ["7:23: smallEnd.diameter: -1 is not a size; give 0 or a number greater than 0"],
  ],
  [
    "smaller than any sheet is thick",
    spoilt("400", "0.001"),
    [
      "7:23: smallEnd.diameter: the size is smaller than the thinnest sheet that is formed; give at least 0.2 mm, or 0 for a point, or check its units",
    ],
  ],
  [
    "not a number",
    spoilt("900", ".nan"),
    ["6:23: largeEnd.diameter: .nan is not a length; give a number, as in 12.5"],
  ],
  [
    "infinite",
    spoilt("900", ".inf"),
    ["6:23: largeEnd.diameter: .inf is not a length; give a number, as in 12.5"],
  ],
  [
    "1e308",
    spoilt("900", "1e308"),
    ["6:23: largeEnd.diameter: 1e308 is a power of ten; write the number out, as in 1000"],
  ],
  [
    "a word",
    spoilt("900", "big"),
    ["6:23: largeEnd.diameter: big is not a length; give a number, as in 12.5"],
  ],
  [
    "true",
    spoilt("900", "true"),
    ["6:23: largeEnd.diameter: true is not a length; give a number, as in 12.5"],
  ],
  [
    "a decimal comma in quotes",
    spoilt("900", '"4,625"'),
    ["6:23: largeEnd.diameter: 4,625 has a comma; use a point for decimals, and nothing between thousands"],
  ],
  [
    "a decimal comma in braces",
    spoilt("900", "4,625"),
    ["6:25: largeEnd.625: stands after a comma; use a point for decimals"],
  ],
  [
    "a decimal comma",
    spoilt("700", "700,5"),
    ["8:9: height: 700,5 has a comma; use a point for decimals, and nothing between thousands"],
  ],
  [
    "too large",
    spoilt("900", "25000"),
    ["6:23: largeEnd.diameter: 25000 is too large; give at most 20000 mm"],
  ],
  [
    "too large in inches",
    spoilt("900", "1000", spoilt("units: mm", "units: in")),
    [
      "5:12: thickness: 4 would be 4 inches thick; write 4 ga for a sheet gauge, or 4 mm for millimetres, or 4 in if it is as thick as that",
      "6:23: largeEnd.diameter: 1000 is too large; give at most 787.4 in, or write 1000 mm for millimetres",
      "7:23: smallEnd.diameter: 400 would be 400 inches, more than 33 feet; write 400 mm for millimetres, or 400 in if it is as long as that",
      "8:9: height: 700 would be 700 inches, more than 58 feet; write 700 mm for millimetres, or 700 in if it is as long as that",
    ],
  ],
  [
    "too far the other way",
    spoilt("150", "-30000"),
    ["7:56: smallEnd.offset[1]: -30000 is too far below 0; give at least -20000 mm"],
  ],
  [
    "too many digits",
    spoilt("900", "9".repeat(400)),
    [`6:23: largeEnd.diameter: ${"9".repeat(39)}… is not a length; give a number, as in 12.5`],
  ],
  [
    "foil",
    spoilt("thickness: 4", "thickness: 0.1"),
    ["5:12: thickness: 0.1 is too thin; give at least 0.2 mm"],
  ],
  [
    "foil in inches",
    spoilt(
      "thickness: 4",
      "thickness: 0.001",
      spoilt("400", "12", spoilt("height: 700", "height: 30", spoilt("units: mm", "units: in"))),
    ),
    [
      "5:12: thickness: 0.001 is too thin; give at least 0.007875 in",
      "6:23: largeEnd.diameter: 900 is too large; give at most 787.4 in, or write 900 mm for millimetres",
    ],
  ],
  [
    "armour",
    spoilt("thickness: 4", "thickness: 201"),
    ["5:12: thickness: 201 is too thick; give at most 200 mm"],
  ],
  [
    "no thickness at all",
    spoilt("thickness: 4", "thickness: -4"),
    [
      "5:12: thickness: -4 is not a thickness; give a thickness from 0.2 mm to 200 mm, or a gauge as in 10 ga",
    ],
  ],
  [
    "an angle too far round",
    `${GOOD}seam: { at: 400° }\n`,
    ["9:13: seam.at: 400° is too large; give degrees from -360 to 360, or right, back, left or front"],
  ],
  [
    "an angle in words",
    `${GOOD}seam: { at: north }\n`,
    [
      "9:13: seam.at: north is not a direction; give degrees counter-clockwise from the right, as in 22.5, or one of right, back, left, front",
    ],
  ],
  [
    "parts of a piece",
    `${GOOD}pieces: 1.5\n`,
    ["9:9: pieces: 1.5 is not a whole number; give a whole number from 1 to 12"],
  ],
  ["no pieces", `${GOOD}pieces: 0\n`, ["9:9: pieces: 0 is too small; give a whole number from 1 to 12"]],
  [
    "pieces in words",
    `${GOOD}pieces: two\n`,
    ["9:9: pieces: two is not a number; give a whole number from 1 to 12"],
  ],
  [
    "odd divisions",
    `${GOOD}divisions: 5\n`,
    ["9:12: divisions: 5 is not even; give an even number from 4 to 96"],
  ],
  [
    "a neutral surface outside the plate",
    `${GOOD}neutral: 1.5\n`,
    ["9:10: neutral: 1.5 is too large; give a number from 0 to 1"],
  ],
  [
    "a number that is infinite",
    `${GOOD}neutral: .inf\n`,
    ["9:10: neutral: .inf is not a number; give a number from 0 to 1"],
  ],

  // --- Gauges and materials
  [
    "an unknown gauge",
    spoilt("thickness: 4", "thickness: 99 ga"),
    ["5:12: thickness: there is no 99 gauge in steel sheet; the gauges there are 3 to 30"],
  ],
  [
    "a misspelt material",
    spoilt("s235", "s253"),
    [
      "4:11: material: there is no material s253; did you mean s235? The materials are 304, 316, 5083, s235, s275, s355, a36, s250gd-z, 5052-h32",
    ],
  ],
  [
    "an unknown material, and its gauge left alone",
    spoilt("thickness: 4", "thickness: 10 ga", spoilt("s235", "zinc")),
    [
      "4:11: material: there is no material zinc; the materials are 304, 316, 5083, s235, s275, s355, a36, s250gd-z, 5052-h32, or add one by copying an entry of content/materials.yaml",
    ],
  ],
  [
    "a material named like a part of the language",
    spoilt("s235", "constructor"),
    [
      "4:11: material: there is no material constructor; the materials are 304, 316, 5083, s235, s275, s355, a36, s250gd-z, 5052-h32, or add one by copying an entry of content/materials.yaml",
    ],
  ],
  [
    "no material, and its gauge left alone",
    spoilt("thickness: 4", "thickness: 10 ga", spoilt("material: s235\n", "")),
    [
      "1:1: material: is missing; the materials are 304, 316, 5083, s235, s275, s355, a36, s250gd-z, 5052-h32",
    ],
  ],
  [
    "an empty material",
    spoilt("s235", "~"),
    [
      "4:11: material: has no value; the materials are 304, 316, 5083, s235, s275, s355, a36, s250gd-z, 5052-h32",
    ],
  ],
  [
    "a list of materials",
    spoilt("s235", "[s235]"),
    ["4:11: material: is a list, which does not belong here; give a text of up to 60 characters"],
  ],
  [
    "a misspelt key for the material, told once",
    spoilt("material:", "materail:"),
    ["4:1: materail: is not a key here; did you mean material?"],
  ],

  // --- Words
  [
    "a misspelt shape, the rest read as the one meant",
    spoilt("900", "-1", spoilt("eccentric-cone", "ecentric cone")),
    [
      "1:8: shape: ecentric cone is not known; did you mean eccentric-cone? Known are right-cone, eccentric-cone, square-to-round",
      "6:23: largeEnd.diameter: -1 is not a size; give a number greater than 0",
    ],
  ],
  [
    "an unknown shape, the rest read as far as all shapes agree",
    spoilt(
      "title: Feed spout reducer\n",
      "",
      spoilt("thickness: 4", "thickness: 999", spoilt("eccentric-cone", "pyramid")),
    ),
    [
      "1:1: title: is missing; give a text of up to 120 characters",
      "1:8: shape: pyramid is not known; give right-cone, eccentric-cone or square-to-round",
      "4:12: thickness: 999 is too thick; give at most 200 mm",
    ],
  ],
  [
    "a shape that is a list",
    spoilt("eccentric-cone", "[cone]"),
    ["1:8: shape: is not one word; give right-cone, eccentric-cone or square-to-round"],
  ],
  [
    "no shape",
    spoilt("shape: eccentric-cone\n", ""),
    ["1:1: shape: is missing; give right-cone, eccentric-cone or square-to-round"],
  ],
  [
    "an empty shape",
    spoilt("eccentric-cone", ""),
    ["1:1: shape: has no value; give right-cone, eccentric-cone or square-to-round"],
  ],
  [
    "unknown units, sizes still judged as far as they can be",
    spoilt("400", "-2", spoilt("900", "25000", spoilt("units: mm", "units: cm"))),
    [
      "3:8: units: cm is not known; give mm or in",
      "7:23: smallEnd.diameter: -2 is not a size; give 0 or a number greater than 0",
    ],
  ],
  ["no units", spoilt("units: mm\n", ""), ["1:1: units: is missing; give mm or in"]],
  [
    "a misspelt face",
    spoilt("outside", "outsid"),
    ["6:38: largeEnd.measured: outsid is not known; did you mean outside? Known are inside, outside, middle"],
  ],
  [
    "a face that is a number",
    spoilt("outside", "3"),
    ["6:38: largeEnd.measured: 3 is not known; give inside, outside or middle"],
  ],
  [
    "a face that is a list",
    spoilt("outside", "[inside, outside]"),
    ["6:38: largeEnd.measured: is a list, which does not belong here; give inside, outside or middle"],
  ],
  [
    "yes for true",
    `${GOOD}mirror: yes\n`,
    ["9:9: mirror: yes is neither true nor false; give true or false"],
  ],
  [
    "an empty title",
    spoilt("Feed spout reducer", '" "'),
    ["2:8: title: is empty; give a text of up to 120 characters"],
  ],
  [
    "no title after the colon",
    spoilt("Feed spout reducer", ""),
    ["2:1: title: has no value; give a text of up to 120 characters"],
  ],
  [
    "a title without end",
    spoilt("Feed spout reducer", "a".repeat(130)),
    ["2:8: title: is 130 characters long; give a text of up to 120 characters"],
  ],
  [
    "a title of two lines",
    spoilt("Feed spout reducer", "|\n  Feed\n  spout"),
    ["2:8: title: runs over more than one line; keep it to one line"],
  ],
  [
    "a title that rings the bell",
    spoilt("Feed spout reducer", '"a\\u0007b"'),
    ["2:8: title: a\\u0007b holds signs that cannot be printed; take them out"],
  ],
  [
    "a title with half a character",
    spoilt("Feed spout reducer", '"a\\uD800b"'),
    ["2:8: title: a\\ud800b holds signs that cannot be printed; take them out"],
  ],
  [
    "a title that turns the line round",
    spoilt("Feed spout reducer", '"a\\u202Eb"'),
    ["2:8: title: a\\u202eb holds signs that cannot be printed; take them out"],
  ],
  [
    "a title that is a list",
    spoilt("Feed spout reducer", "[a]"),
    ["2:8: title: is a list, which does not belong here; give a text of up to 120 characters"],
  ],

  // --- Keys and groups
  ["a missing key", spoilt("height: 700\n", ""), ["1:1: height: is missing; give a number greater than 0"]],
  [
    "a missing key after comments",
    `# one\n\n${spoilt("height: 700\n", "")}`,
    ["3:1: height: is missing; give a number greater than 0"],
  ],
  [
    "a missing key of a group",
    spoilt("diameter: 900, ", ""),
    ["6:1: largeEnd.diameter: is missing; give a number greater than 0"],
  ],
  [
    "a missing group",
    spoilt(/largeEnd.*\n/, ""),
    ["1:1: largeEnd: is missing; give diameter and measured, as in { diameter: …, measured: … }"],
  ],
  [
    "an empty group",
    spoilt(/largeEnd.*\n/, "largeEnd:\n"),
    ["6:1: largeEnd: has no value; give diameter and measured, as in { diameter: …, measured: … }"],
  ],
  [
    "a value for a group",
    spoilt(/largeEnd.*\n/, "largeEnd: 900\n"),
    [
      "6:11: largeEnd: 900 is a single value where a group of keys belongs; give diameter and measured, as in { diameter: …, measured: … }",
    ],
  ],
  [
    "a value for a group that may stay empty",
    `${GOOD}seam: 3\n`,
    [
      "9:7: seam: 3 is a single value where a group of keys belongs; give any of at, joint, gap, lap, as in { at: … }, or {} for none of them",
    ],
  ],
  [
    "a list for a group",
    spoilt(/largeEnd.*\n/, "largeEnd: [900, outside]\n"),
    [
      "6:11: largeEnd: is a list, which does not belong here; give diameter and measured, as in { diameter: …, measured: … }",
    ],
  ],
  [
    "a group for a value",
    spoilt("700", "{ mm: 700 }"),
    ["8:9: height: is a group of keys, which does not belong here; give a number greater than 0"],
  ],
  [
    "a value for a pair",
    spoilt("[150, 0]", "150"),
    [
      "7:55: smallEnd.offset: 150 is not a list; give how far the upper end's centre lies from the lower end's, [right, away], as in [0, 150]",
    ],
  ],
  [
    "half a pair",
    spoilt("[150, 0]", "[150]"),
    [
      "7:55: smallEnd.offset: has 1 item; give how far the upper end's centre lies from the lower end's, [right, away], as in [0, 150]",
    ],
  ],
  [
    "no pair",
    spoilt("[150, 0]", "[]"),
    [
      "7:55: smallEnd.offset: is an empty list; give how far the upper end's centre lies from the lower end's, [right, away], as in [0, 150]",
    ],
  ],
  [
    "three for a pair",
    spoilt("[150, 0]", "[1, 2, 3]"),
    [
      "7:55: smallEnd.offset: has 3 items; give how far the upper end's centre lies from the lower end's, [right, away], as in [0, 150]",
    ],
  ],
  [
    "a bad number in a pair",
    spoilt("[150, 0]", "[150, right]"),
    ["7:61: smallEnd.offset[2]: right is not a length; give a number, as in 12.5"],
  ],
  [
    "no value for a key that may be left out",
    `${GOOD}trimAllowance:\n`,
    ["9:1: trimAllowance: has no value; give true or false, or leave the key out"],
  ],
  ["nothing for a value", spoilt("700", "~"), ["8:9: height: has no value; give a number greater than 0"]],
  [
    "a misspelt key, told once",
    spoilt("thickness", "thikness"),
    ["5:1: thikness: is not a key here; did you mean thickness?"],
  ],
  [
    "a misspelt key of a group",
    spoilt("diameter", "diametre"),
    ["6:13: largeEnd.diametre: is not a key here; did you mean diameter?"],
  ],
  [
    "a misspelt key for the shape",
    spoilt("shape:", "shap:"),
    ["1:1: shap: is not a key here; did you mean shape?"],
  ],
  [
    "an unknown key",
    `${GOOD}seam: { colour: red }\n`,
    ["9:9: seam.colour: is not a key here; the keys here are at, joint, gap, lap"],
  ],
  [
    "a key of another shape",
    `${GOOD}halfAngle: 30\n`,
    [
      "9:1: halfAngle: is not a key here; the keys here are shape, title, units, material, thickness, seam, pieces, quantity, mirror, divisions, neutral, trimAllowance, facetError, notes, certificate, tolerance, largeEnd, smallEnd, height, edges",
    ],
  ],
  [
    "keys named like parts of the language",
    spoilt("diameter: 900,", "diameter: 900, __proto__: { measured: inside }, constructor: 1,"),
    [
      "6:28: largeEnd.__proto__: is not a key here; the keys here are diameter, measured",
      "6:61: largeEnd.constructor: is not a key here; the keys here are diameter, measured",
    ],
  ],
  [
    "a key given twice",
    `${GOOD}height: 800\n`,
    ["9:1: height: is given again, first on line 8; keep one of them"],
  ],
  [
    "a key of a group given twice",
    spoilt("diameter: 900,", "diameter: 900, diameter: 901,"),
    ["6:28: largeEnd.diameter: is given again, first on line 6; keep one of them"],
  ],
  [
    "a key that is a list",
    `${GOOD}? [a]\n: 1\n`,
    ["9:3: file: a key is missing or is not a word; write it as key: value"],
  ],
  ["no key", `${GOOD}: 1\n`, ["9:1: file: a key is missing or is not a word; write it as key: value"]],

  // --- The file as a whole
  ["an empty file", "", ['1:1: file: it is empty; begin it with "shape: right-cone"']],
  ["a file of blank lines", "\n \n", ['1:1: file: it is empty; begin it with "shape: right-cone"']],
  [
    "a file of comments",
    "# nothing\n# at all\n",
    ['1:1: file: there is nothing in it but comments; begin it with "shape: right-cone"'],
  ],
  [
    "a list at the top",
    "# parts\n- a\n- b\n",
    ['2:1: file: it holds a list where keys and values belong; begin it with "shape: right-cone"'],
  ],
  [
    "one word",
    "hello\n",
    ['1:1: file: there are no keys and values in it; begin it with "shape: right-cone"'],
  ],
  [
    "two documents",
    `${GOOD}---\n${GOOD}`,
    ["9:1: file: a line --- begins a second document; keep one part or list in each file"],
  ],
  [
    "a file that is no text",
    "shape: \0\n",
    ["1:1: file: it is not a text file; check that this is the file you mean"],
  ],
  [
    "a file of more than a megabyte",
    `${GOOD}# ${"x".repeat(1_000_000)}`,
    ["1:1: file: it is larger than 1 MB; check that this is the file you mean"],
  ],
  [
    "deep nesting",
    `${GOOD}notes: ${"[".repeat(30)}${"]".repeat(30)}\n`,
    ["9:27: file: groups are nested too deeply; keep to the keys of a part or shop file"],
  ],
  [
    "nesting without end",
    "[".repeat(20_000),
    ["1:1: file: groups are nested too deeply; keep to the keys of a part or shop file"],
  ],
  [
    "a reference to nothing",
    spoilt("900", "*other"),
    ["6:23: largeEnd.diameter: *other refers to a value that is not there; write the value out"],
  ],
  [
    "a reference to itself",
    `${GOOD}seam: &s { at: *s }\n`,
    ["9:16: seam.at: *s stands inside the value it refers to; write the value out"],
  ],
  ["a bomb of references", bomb(), ["1:1: file: it has far too many references (*); write the values out"]],
  [
    "more values than a part has",
    `${GOOD}notes: [${"1,".repeat(12_000)}]\n`,
    ["1:1: file: it holds far too many values; keep one part in each file"],
  ],

  // --- Syntax
  [
    "a tab in front of a key",
    spoilt("height", "\theight"),
    ["8:1: file: this line is indented with a tab; use spaces"],
  ],
  [
    "a colon in a text",
    spoilt("Feed spout", "Feed: spout"),
    [
      "2:8: file: this line has a second colon, or is indented further than the one above it; put a text with a colon in quotes, and start every key of a group in the same column",
    ],
  ],
  [
    "no colon",
    spoilt("height:", "height"),
    ["8:1: file: this line has no key, colon and space; write it as key: value"],
  ],
  [
    "no space after the colon",
    spoilt("title: ", "title:"),
    ["2:1: file: this line has no key, colon and space; write it as key: value"],
  ],
  [
    "a brace left open",
    spoilt("0] }", "0]"),
    [
      "8:1: file: a bracket is not closed, or this line does not start in the column of its group; close the bracket, or line the keys of a group up",
    ],
  ],
  [
    "a quote left open",
    spoilt("Feed spout reducer", '"Feed'),
    ["9:1: file: a quote is not closed; put the closing quote after the text"],
  ],
  [
    "feet and inches in quotes",
    spoilt("700", `'3' 4"'`),
    [
      "8:13: file: there is something here that does not belong; check quotes and brackets, and write inches inside quotes as 3 in",
    ],
  ],
  [
    "a sign that YAML keeps for itself",
    spoilt("Feed spout reducer", "@home"),
    ["2:8: file: a value cannot begin with this sign; put the value in quotes"],
  ],
  [
    "a backslash in double quotes",
    spoilt("Feed spout reducer", '"a\\q"'),
    [
      "2:10: file: a backslash inside double quotes has a meaning of its own; use single quotes, or write the backslash twice",
    ],
  ],
  [
    "a tag of another program",
    spoilt("900", "!size 900"),
    ["6:23: file: a word that begins with ! is not understood; write the value without it"],
  ],
  [
    "binary data",
    spoilt("900", "!!binary aGk="),
    ["6:32: largeEnd.diameter: has a word that begins with ! before its value; write the value without it"],
  ],
  [
    "two bad lines",
    "a: @x\nb: `y\n",
    [
      "1:4: file: a value cannot begin with this sign; put the value in quotes",
      "2:4: file: a value cannot begin with this sign; put the value in quotes",
    ],
  ],

  // --- Many at once, in the order of the file
  [
    "everything at once",
    spoilt(
      "700",
      "x",
      spoilt("150", "y", spoilt("900", "-1", spoilt("s235", "tin", spoilt("title", "titel")))),
    ),
    [
      "2:1: titel: is not a key here; did you mean title?",
      "4:11: material: there is no material tin; the materials are 304, 316, 5083, s235, s275, s355, a36, s250gd-z, 5052-h32, or add one by copying an entry of content/materials.yaml",
      "6:23: largeEnd.diameter: -1 is not a size; give a number greater than 0",
      "7:56: smallEnd.offset[1]: y is not a length; give a number, as in 12.5",
      "8:9: height: x is not a length; give a number, as in 12.5",
    ],
  ],
];

/** Thirty values, each twice the one before: a thousand million in the end. */
function bomb(): string {
  const lines = Array.from({ length: 30 }, (_, i) => `a${i + 1}: &a${i + 1} [*a${i}, *a${i}]`);
  return `a0: &a0 [x, x]\n${lines.join("\n")}\n`;
}

it.each(refusals)("refuses %s", (_, text, lines) => {
  expect(linesOf(text)).toEqual(lines.map((line) => `a.yaml:${line}`));
});

it("tells nobody about the library that checks", () => {
  const said = refusals.flatMap(([, text]) => linesOf(text)).join("\n");
  expect(said).not.toMatch(
    /zod|[Ii]nvalid|expected|received|undefined|null|NaN|object|array|string|boolean|schema|discriminator/,
  );
});

it("has one ; in every line, between what is wrong and what would be right", () => {
  for (const [, text] of refusals) for (const line of linesOf(text)) expect(line.split(";")).toHaveLength(2);
});

it("answers a megabyte of keys in a moment", () => {
  const text = Array.from({ length: 60_000 }, (_, i) => `key${i}: 1`).join("\n");
  const before = performance.now();
  expect(linesOf(text)).toEqual([
    "a.yaml:1:1: file: it holds far too many values; keep one part in each file",
  ]);
  // A parser that compares each key with each takes half a minute.
  expect(performance.now() - before).toBeLessThan(10_000);
});

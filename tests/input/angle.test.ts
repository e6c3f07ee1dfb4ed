import { expect, it } from "vitest";
import { readAngle } from "../../src/input/angle.ts";

it.each([
  ["30", 30],
  ["30°", 30],
  ["30 °", 30],
  ["30º", 30],
  ["22.5 deg", 22.5],
  ["22.5 degrees", 22.5],
  ["-45°", -45],
  ["−45°", -45],
  ["- 45", -45],
  ["+90", 90],
  [".5°", 0.5],
  ["-0", 0],
])("reads %s as %d degrees", (text, degrees) => {
  expect(readAngle(text)).toEqual({ kind: "read", value: degrees });
});

const LIKE = "give degrees as a number, as in 22.5";

it.each([
  ["", "there is no number here", LIKE],
  ["°", "° is not an angle", LIKE],
  ["abc", "abc is not an angle", LIKE],
  [".inf", ".inf is not an angle", LIKE],
  [".nan", ".nan is not an angle", LIKE],
  ["22,5", "22,5 has a comma", "use a point for decimals"],
  ["1e2", "1e2 is a power of ten", "write the number out, as in 22.5"],
  ["22°30'", "22°30' has minutes of arc", "write them as a decimal, as in 22.5 for 22°30'"],
  ["1.2 rad", "1.2 rad is in radians", LIKE],
  ["9".repeat(150), `${"9".repeat(39)}… is not an angle`, LIKE],
])("refuses %j", (text, problem, remedy) => {
  expect(readAngle(text)).toEqual({ kind: "unreadable", problem, remedy });
});

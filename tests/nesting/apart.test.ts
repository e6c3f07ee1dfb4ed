import { expect, it } from "vitest";
import { liesApart } from "../../src/nesting/apart.ts";
import type { Vec2 } from "../../src/geometry/vector.ts";
import { placed } from "./judge.ts";
import { rectangle } from "./shapes.ts";

const box = (long: number, high: number, at: Vec2) => placed(rectangle(long, high), 0, at);
const plate = box(100, 100, [0, 0]);

it.each([
  ["side by side, just as far as wanted", box(50, 50, [105, 0]), 5, true],
  ["a tenth too near", box(50, 50, [104.9, 0]), 5, false],
  ["corner to corner, just as far", box(50, 50, [103, 104]), 5, true],
  ["corner to corner, too near", box(50, 50, [103, 103.9]), 5, false],
  ["touching, where touching is allowed", box(50, 50, [100, 10]), 0, true],
  ["overlapping by a tenth", box(50, 50, [99.9, 10]), 0, false],
  ["one within the other", box(50, 50, [20, 20]), 0, false],
  ["one within the other, with spacing", box(50, 50, [20, 20]), 5, false],
  ["crosswise, without a corner in each other", box(300, 20, [-100, 40]), 0, false],
  ["crosswise, with spacing", box(300, 20, [-100, 40]), 5, false],
] as const)("%s", (_, other, spacing, answer) => {
  expect(liesApart([plate, other], spacing)).toBe(answer);
  expect(liesApart([other, plate], spacing)).toBe(answer);
});

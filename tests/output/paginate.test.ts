import { expect, it } from "vitest";
import type { Block } from "../../src/output/pdf/block.ts";
import { paginated } from "../../src/output/pdf/paginate.ts";

const AREA = { x: 0, y: 0, widthMm: 100, bottom: 100 };
const block = (heightMm: number): Block => ({ height: () => heightMm, draw: () => undefined });
const counts = (blocks: readonly (Block | null)[]) => paginated(blocks, AREA).map((page) => page.length);
const tens = (count: number) => Array.from({ length: count }, () => block(10));

it("begins a page where it is asked to, and nowhere twice", () => {
  expect(counts([block(10), null, null, block(10), block(10)])).toEqual([1, 2]);
});

it("sets blocks closer where that saves a page, and only there", () => {
  // Nine of 10 mm with gaps of 1.2 mm take 99.6 mm; with the usual 1.7 mm they take 103.6 mm.
  expect(counts(tens(9))).toEqual([9]);
  const [first] = paginated(tens(4), AREA);
  expect(first?.[1]?.y).toBeCloseTo(11.7, 9);
});

it("leaves no last page nearly empty", () => {
  const [first, last] = counts(tens(10)) as [number, number];
  expect(first + last).toBe(10);
  expect(last).toBeGreaterThanOrEqual(3);
  expect(first).toBeGreaterThanOrEqual(last);
});

const led = (heightMm: number): Block => ({ ...block(heightMm), withNext: true });

it("leaves neither a heading nor the words that it leads to without what they are about", () => {
  // 60 + 5 + 5 + 40 mm and gaps: the last does not fit, so that heading and words go with it.
  expect(counts([block(60), led(5), led(5), block(40)])).toEqual([1, 3]);
  expect(counts([block(60), led(5), block(5), block(40)])).toEqual([3, 1]);
});

it("does not look for a page that holds what no page can", () => {
  expect(counts([block(10), led(5), led(50), block(60)])).toEqual([3, 1]);
});

import fc from "fast-check";
import type { LayItem } from "../../src/nesting/model.ts";
import type { Vec2 } from "../../src/geometry/vector.ts";
import { mm, share } from "../arbitraries.ts";
import { even } from "../even.ts";
import { area } from "./judge.ts";

export const rectangle = (long: number, high: number): Vec2[] => [
  [0, 0],
  [long, 0],
  [long, high],
  [0, high],
];

/** An L, a wedge, or a sector of a ring with straight sides: hollow and pointed shapes. */
const angle = fc
  .record({ long: mm(30, 900), high: mm(30, 900), armX: share, armY: share })
  .map(({ long, high, armX, armY }): Vec2[] => {
    const [x, y] = [long * (0.1 + 0.8 * armX), high * (0.1 + 0.8 * armY)];
    return [
      [0, 0],
      [long, 0],
      [long, y],
      [x, y],
      [x, high],
      [0, high],
    ];
  });
const wedge = fc
  .record({ long: mm(30, 900), high: mm(10, 600), lean: even(-0.5, 1.5) })
  .map(({ long, high, lean }): Vec2[] => [
    [0, 0],
    [long, 0],
    [lean * long, high],
  ]);
const sector = fc
  .record({
    outer: mm(40, 700),
    hole: even(0.1, 0.9),
    sweep: even(0.3, 6),
    sides: fc.integer({ min: 4, max: 24 }),
  })
  .map(({ outer, hole, sweep, sides }): Vec2[] => {
    const at = (radius: number, i: number): Vec2 => [
      radius * Math.cos((sweep * i) / sides),
      radius * Math.sin((sweep * i) / sides),
    ];
    const steps = Array.from({ length: sides + 1 }, (_, i) => i);
    return [...steps.map((i) => at(outer, i)), ...steps.toReversed().map((i) => at(outer * hole, i))];
  });
const block = fc
  .record({ long: mm(20, 1000), high: mm(20, 600) })
  .map(({ long, high }) => rectangle(long, high));

export const outlines = fc.oneof(angle, wedge, sector, block);

export const itemOf = (outline: readonly Vec2[], count = 1, part = "part"): LayItem => ({
  part,
  piece: 1,
  count,
  areaMm2: area(outline),
  outline,
});

export const items = fc
  .array(fc.record({ outline: outlines, count: fc.integer({ min: 1, max: 4 }) }), {
    minLength: 1,
    maxLength: 5,
  })
  .map((list) => list.map(({ outline, count }, i) => itemOf(outline, count, `part-${i}`)));

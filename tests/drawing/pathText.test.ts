import { pathRound } from "d3";
import fc from "fast-check";
import { expect, it } from "vitest";
import { pathText } from "../../src/drawing/pathText.ts";
import { even } from "../even.ts";

const TURN = 2 * Math.PI;
const place = even(-500, 500);

/** Turns as they are drawn: any, both ways, and those at which a path is written in another way. */
const turns = fc.oneof(
  even(-TURN, TURN),
  fc.constantFrom(0, 1e-7, Math.PI, -Math.PI, TURN, -TURN, 3.1415, -3.1416),
);

it("writes lines and arcs as a library for paths does", () => {
  fc.assert(
    fc.property(
      fc.tuple(place, place, even(0.001, 900), even(-TURN, TURN), turns, fc.boolean()),
      ([x, y, radius, from, turn, closed]) => {
        const [own, theirs] = [pathText(), pathRound(3)];
        const start = [x + radius * Math.cos(from), y + radius * Math.sin(from)] as const;
        for (const path of [own, theirs]) {
          path.moveTo(...start);
          path.lineTo(y, x);
          path.moveTo(...start);
        }
        own.arc(x, y, radius, from, from + turn);
        theirs.arc(x, y, radius, from, from + turn, turn < 0);
        if (closed) for (const path of [own, theirs]) path.closePath();
        expect(own.toString()).toBe(theirs.toString());
      },
    ),
    { seed: 7, numRuns: 500 },
  );
});

it("writes a circle as two halves, and nothing for an arc of no radius", () => {
  const circle = pathText();
  circle.moveTo(10, 0);
  circle.arc(0, 0, 10, 0, TURN);
  circle.closePath();
  expect(circle.toString()).toBe("M10,0A10,10,0,1,1,-10,0A10,10,0,1,1,10,0Z");
  const point = pathText();
  point.moveTo(1.23456, -0.0001);
  point.arc(1, 0, 0, 0, 1);
  expect(point.toString()).toBe("M1.235,0");
});

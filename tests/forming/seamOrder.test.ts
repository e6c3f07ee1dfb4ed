import fc from "fast-check";
import { expect, it } from "vitest";
import { formingOf } from "../../src/forming/forming.ts";
import type { PlateRoll } from "../../src/forming/machine.ts";
import { seamOrder } from "../../src/forming/seamOrder.ts";
import { openReach } from "../../src/forming/openReach.ts";
import { rollSettings } from "../../src/forming/rollSettings.ts";
import { sayIn } from "../../src/forming/say.ts";
import { stopPlace } from "../../src/forming/stopPlace.ts";
import { sub2, type Vec2 } from "../../src/geometry/vector.ts";
import { runs } from "../arbitraries.ts";
import { even } from "../even.ts";
import { named, reportOf } from "../parts.ts";
import { coneCase, reducer, roll, shop } from "./cases.ts";

const SLIDE: Partial<PlateRoll> = { slide: { origin: [230, -200], angle: 60, travel: 300 } };

/** The blank on the rolls seen from above, x to the right, y the way that the plate goes: the small end at one hand. */
const turned = ([x, y]: Vec2, small: Vec2, hand: "left" | "right"): Vec2 => {
  // Turns the direction towards the small end to that hand.
  const to: Vec2 = hand === "left" ? [-1, 0] : [1, 0];
  const long = Math.hypot(...small);
  const c = (small[0] * to[0] + small[1] * to[1]) / long;
  const s = (small[0] * to[1] - small[1] * to[0]) / long;
  return [c * x - s * y, s * x + c * y];
};

it("names the seam edge that lies ahead when the blank is turned, inside up, until its small end is at the drop end", () => {
  fc.assert(
    fc.property(
      even(200, 900),
      even(0.2, 0.9),
      even(0, 0.6),
      fc.constantFrom("left" as const, "right" as const),
      fc.boolean(),
      (wide, ratio, offset, hand, mirror) => {
        const report = reportOf(
          named({
            shape: "eccentric-cone",
            thickness: 3,
            largeEnd: { diameter: wide, measured: "outside" },
            smallEnd: {
              diameter: ratio * wide,
              measured: "outside",
              offset: [offset * (1 - ratio) * wide, 0],
            },
            height: wide,
            pieces: 2,
            mirror,
          }),
        );
        for (const { faceUp, lines } of report.blanks) {
          const [one, two] = [lines[0]!, lines[1]!];
          const inside = ([x, y]: Vec2): Vec2 => (faceUp === "inside" ? [x, y] : [-x, y]);
          const small = inside(sub2(one.to, one.from));
          const next = inside(sub2(two.from, one.from));
          const ahead = turned(next, small, hand)[1] < 0 ? 1 : 2;
          expect(seamOrder({ item: coneCase(reducer), roll: roll({ dropEnd: hand }) }).leads).toBe(ahead);
        }
      },
    ),
    runs(50),
  );
});

it("goes through every step: the edge that leads, the other one in the second pass, and how to see it where nobody knows", () => {
  const plan = (more: Parameters<typeof roll>[0]) =>
    formingOf(coneCase(reducer), shop([roll({ ...SLIDE, ...more })])).plans[0]!.steps;
  const text = (steps: ReturnType<typeof plan>, id: string) => steps.find((one) => one.id === id)!.text;
  const right = plan({ dropEnd: "right" });
  expect(text(right, "align")).toContain("So seam edge 2 lies ahead: never turn the blank over");
  expect(text(right, "first-through")).toContain("Stop before seam edge 1 leaves the pinch");
  expect(text(right, "turn")).toContain("now seam edge 1 lies ahead");
  expect(text(right, "second-raise")).toContain("Roll from seam edge 1");
  const left = plan({ dropEnd: "left" });
  expect(text(left, "align")).toContain("So seam edge 1 lies ahead");
  expect(text(left, "close")).toContain("back to seam edge 2");
  const unknown = plan({});
  expect(text(unknown, "align")).toContain("chalk “first” on it and “second” on the other");
  for (const { text: words } of unknown.slice(3)) expect(words).not.toMatch(/seam edge [12]/);
});

it("sets the stop so far in that the open piece leaves a fifth of the room before the yoke, never past its reach or off the rolls", () => {
  const item = coneCase(reducer);
  fc.assert(
    fc.property(even(0, 200), even(0, 600), even(20, 900), even(900, 2000), (near, more, room, width) => {
      const machine = roll({
        workingWidth: width,
        coneAttachment: { range: [near, near + more], clearRoom: room },
      });
      const at = stopPlace({ item, roll: machine })!;
      const set = rollSettings({ item, roll: { ...machine, ...SLIDE }, say: sayIn("mm") });
      // A fifth of the room is to stay free.
      const wanted = openReach(item)!.pastMm / 0.8;
      expect(at.mm).toBeGreaterThanOrEqual(near);
      expect(at.mm - at.furtherInMm).toBeCloseTo(near, 9);
      expect(set.kind === "settings" && set.settings.stopMm).toBe(at.mm);
      if (at.furtherInMm > 0) expect(at.mm).toBeLessThanOrEqual(near + more);
      if (at.furtherInMm > 0) expect(at.mm + item.slantMm.longest).toBeLessThanOrEqual(width + 1e-9);
      const enough = room + at.furtherInMm >= wanted - 1e-9;
      const most = Math.min(near + more, width - item.slantMm.longest);
      if (!enough) expect(at.mm).toBeCloseTo(Math.max(near, most), 9);
      // No further than is wanted.
      if (enough && at.furtherInMm > 0) expect(room + at.furtherInMm).toBeCloseTo(wanted, 9);
    }),
    runs(100),
  );
});

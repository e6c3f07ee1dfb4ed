import { expect, it } from "vitest";
import { readBinder } from "../../src/site/binder/binder.ts";
import { loadCatalogue } from "../../src/input/loadCatalogue.ts";
import { develop } from "../../src/report/develop.ts";

const { parts, shop } = readBinder();
const spout = parts.find(({ report }) => report.part.name === "feed-spout-reducer")!.report.part;

it("tells the small end's window as depths under the very straightedge of the large end's table", () => {
  if (spout.shape !== "eccentric-cone") throw new Error("the spout is an eccentric cone");
  const developed = develop(
    {
      ...spout,
      height: 900,
      largeEnd: { ...spout.largeEnd, diameter: 600 },
      smallEnd: { ...spout.smallEnd, diameter: 360, offset: [20, 0] },
    },
    { ...loadCatalogue(), shop: shop! },
  );
  if (developed.kind === "refused") throw new Error("it can be laid out");
  const steps = developed.report.forming.plans.flatMap((plan) => plan.steps);
  const measure = steps.find(({ id }) => id === "first-measure")!;
  const depths = /at the small end ([\d.]+) to ([\d.]+)\)/.exec(measure.text)!.slice(1).map(Number);
  const box = measure.toNote.find(({ label }) => label.startsWith("small end R "))!;
  const radii = /R ([\d.]+) to ([\d.]+)/.exec(box.label)!.slice(1).map(Number);
  const chord = Number(/"chordMm":(\d+)/.exec(JSON.stringify(steps))![1]);
  // R = c²/8h + h/2, the circle through three points; depths are told to a tenth.
  for (const [i, h] of depths.entries()) {
    const radius = chord ** 2 / (8 * h) + h / 2;
    expect(Math.abs(radius / radii[i]! - 1)).toBeLessThan(0.06 / h);
  }
  expect(depths[0]).toBeLessThan(depths[1]!);
});

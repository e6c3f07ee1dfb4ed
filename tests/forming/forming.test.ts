import { describe, expect, it } from "vitest";
import { type Check, worst } from "../../src/forming/check.ts";
import { formingOf } from "../../src/forming/forming.ts";
import { brake, coneCase, hood, reducer, roll, shop } from "./cases.ts";

const item = coneCase(reducer);
const ids = (checks: readonly Check[]) => checks.map(({ id }) => id);
const named = (name: string) => ({ name });

describe("without a shop", () => {
  it("asks only what needs no machine, and still gives the closure table", () => {
    const forming = formingOf(item);
    expect(ids(forming.checks)).toEqual(["strain", "handling", "half-angle", "travel-ratio"]);
    expect(forming).toMatchObject({ route: "roll", machine: null, machines: [] });
    expect(forming.closure.length).toBeGreaterThan(5);
  });

  it("does not ask a folded part about rolling", () => {
    const forming = formingOf(hood);
    expect(ids(forming.checks)).toEqual(["strain", "handling"]);
    expect(forming).toMatchObject({ route: "brake", closure: [] });
  });

  it("asks the same where the shop lists no machines, and of its plates", () => {
    const stock = [{ material: "s235", thickness: 6, length: 3000, width: 1500 }];
    expect(ids(formingOf(item, shop([], { stock })).checks)).toEqual([
      "strain",
      "handling",
      "stock-plate",
      "half-angle",
      "travel-ratio",
    ]);
  });
});

/** What a machine answers, without what is asked of the part itself. */
const answered = ({ checks }: { checks: readonly Check[] }) => worst(checks.map(({ verdict }) => verdict));

describe("the choice of a machine", () => {
  it("is the usual route's, before one of the other route with less to remark", () => {
    const near = roll({ ...named("Near its limit"), rating: { thickness: 5.5, yieldMPa: 250 } });
    const tight = roll({ ...named("Tight"), rating: { thickness: 8, yieldMPa: 250 }, smallestDiameter: 390 });
    // Three pieces, for in one the cone would close round the punch, and two have no room for what springs back.
    const forming = formingOf({ ...item, pieces: 3 }, shop([brake({ throat: 2000 }), near, tight]));
    expect(forming).toMatchObject({ route: "roll", machine: "Tight" });
    expect(forming.machines.map(answered)).toEqual(["pass", "fail", "pass"]);
  });

  it("stays on the usual route though the other has less to remark", () => {
    const near = roll({ rating: { thickness: 5, yieldMPa: 250 } });
    delete (near as { pinchTrim?: boolean }).pinchTrim;
    const careful = roll({ workingWidth: 1400, pinchTrim: true, coneAttachment: {} });
    expect(formingOf(item, shop([brake(), near, careful]))).toMatchObject({ route: "roll", machine: "Roll" });
    const thirds = { ...item, pieces: 3 };
    const { machines } = formingOf(thirds, shop([brake({ throat: 2000 }), careful]));
    expect(machines.map(answered)).toEqual(["pass", "caution"]);
  });

  it("prefers fewer cautions, then the shop's own order", () => {
    const blank = roll(named("Numbers missing"));
    delete (blank as { smallestRadius?: number }).smallestRadius;
    delete (blank as { smallestDiameter?: number }).smallestDiameter;
    const machines = [blank, roll(named("First")), roll(named("Second"))];
    expect(formingOf(item, shop(machines)).machine).toBe("First");
    expect(formingOf(item, shop([blank])).machine).toBe("Numbers missing");
  });

  it("falls to the brake where no roll takes the cone", () => {
    const forming = formingOf(item, shop([roll({ workingWidth: 600 }), brake()]));
    expect(forming).toMatchObject({ route: "brake", machine: "Brake" });
    expect(ids(forming.checks)).toContain("bend-lines");
    expect(ids(forming.checks)).not.toContain("travel-ratio");
  });

  it("shows the nearest miss of the usual route where none takes it", () => {
    const far = roll({ ...named("Far"), workingWidth: 500, smallestDiameter: 500 });
    const miss = roll({ ...named("Near"), workingWidth: 730 });
    const forming = formingOf(item, shop([far, miss, brake({ bedLength: 700 })]));
    expect(forming).toMatchObject({ route: "roll", machine: null, verdict: "fail" });
    const shown = forming.machines[1]!;
    expect(shown.machine).toBe("Near");
    // One refusal by far is nearer than two by little.
    const once = roll({ ...named("Once"), smallestDiameter: 4000 });
    const twice = roll({
      ...named("Twice"),
      rating: { thickness: 5.9, yieldMPa: 250 },
      smallestDiameter: 394,
    });
    const nearest = formingOf(item, shop([twice, once]));
    expect(nearest.checks.filter(({ verdict }) => verdict === "fail").map(({ id }) => id)).toEqual(
      nearest.machines[1]!.checks.filter(({ verdict }) => verdict === "fail").map(({ id }) => id),
    );
    expect(forming.checks.slice(-shown.checks.length)).toEqual(shown.checks);
  });

  it("never rolls a part with flats and corners", () => {
    const forming = formingOf(hood, shop([roll(), brake()]));
    expect(forming).toMatchObject({ route: "brake", machine: "Brake" });
    expect(forming.machines[0]).toMatchObject({ verdict: "fail", checks: [{ id: "round-ends" }] });
    expect(formingOf(hood, shop([roll()]))).toMatchObject({ route: "roll", machine: null, verdict: "fail" });
  });
});

it("reads lengths in the part's units, else the shop's, and leaves the numbers in mm", () => {
  const inches = formingOf({ ...item, units: "in" }, shop([roll()]));
  const place = formingOf(item, shop([roll()], { units: "in" }));
  const metric = formingOf(item, shop([roll()]));
  expect(inches).toEqual(place);
  expect(inches.checks.map(({ value }) => value)).toEqual(metric.checks.map(({ value }) => value));
  const width = (checks: readonly Check[]) => checks.find(({ id }) => id === "working-width")!.advice;
  expect(width(metric.checks)).toContain("743.3 mm");
  expect(width(inches.checks)).toContain("29.264 in");
  for (const { advice } of inches.checks) expect(advice).not.toMatch(/\d mm/);
});

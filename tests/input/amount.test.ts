import { describe, expect, it } from "vitest";
import { readAmount, type Amount } from "../../src/input/amount.ts";

/** Expected values: kilograms and metres as the pound and the inch are defined (1959), fall 9.80665 m/s². */
const LB = 0.45359237;
const G = 9.80665;

describe("amounts with units of their own", () => {
  it.each<[Amount, string, number]>([
    ["force", "1000 kN", 1000],
    ["force", "1.5 MN", 1500],
    ["force", "150 US tons", (150 * 2000 * LB * G) / 1000],
    ["force", "150 short tons", (150 * 2000 * LB * G) / 1000],
    ["force", "150 long tons", (150 * 2240 * LB * G) / 1000],
    ["force", "150 tonnes", 150 * G],
    ["force", "150 metric tons", 150 * G],
    ["force", "300 kips", 300 * LB * G],
    ["force", "2000 lbf", (2000 * LB * G) / 1000],
    ["strength", "250 MPa", 250],
    ["strength", "250 N/mm²", 250],
    ["strength", "36 ksi", (36_000 * LB * G) / 25.4 ** 2],
    ["strength", "36000psi", (36_000 * LB * G) / 25.4 ** 2],
    ["mass", "50 lb", 50 * LB],
    ["mass", "50 lbs", 50 * LB],
    ["mass", "25 kg", 25],
  ])("reads the %s %s", (amount, text, value) => {
    for (const units of ["mm", "in"] as const) {
      const reading = readAmount(amount, text, { units, bare: false });
      expect(reading.kind === "read" && reading.value).toBeCloseTo(value, 9);
    }
  });

  it("takes a plain ton for the US one in inches, and asks in millimetres", () => {
    const us = readAmount("force", "150 tons", { units: "in", bare: false });
    expect(us.kind === "read" && us.value).toBeCloseTo((150 * 2000 * LB * G) / 1000, 9);
    const metric = readAmount("force", "150 t", { units: "mm", bare: false });
    expect(metric.kind === "read" && metric.value).toBeCloseTo(150 * G, 9);
    for (const [text, units] of [
      ["150 tons", "mm"],
      ["150 t", "in"],
    ] as const)
      expect(readAmount("force", text, { units, bare: false })).toMatchObject({
        problem: `${text} may be US tons of 8.896 kN or metric tonnes of 9.807 kN`,
        remedy: "write 150 US tons or 150 tonnes",
      });
  });

  it("takes a number without a unit only where the key names one", () => {
    expect(readAmount("force", "150", { units: "in", bare: true })).toEqual({ kind: "read", value: 150 });
    expect(readAmount("force", "150", { units: "in", bare: false })).toMatchObject({
      problem: "150 has no unit",
      remedy: "write it with its unit, as in 1000 kN or 150 US tons",
    });
  });

  it.each<[Amount, string, string]>([
    ["force", "150 bar", "bar is not a unit of force here"],
    ["strength", "36 kN", "kN is not a unit of strength here"],
    ["mass", "50 stone", "stone is not a unit of mass here"],
    ["force", "1,000 kN", "1,000 kN has a comma"],
    ["force", "-5 kN", "-5 kN is not a force"],
    ["force", "much", "much is not a force"],
    ["force", "", "there is no number here"],
    ["force", "150 constructor", "constructor is not a unit of force here"],
  ])("refuses the %s %j", (amount, text, problem) => {
    expect(readAmount(amount, text, { units: "in", bare: false })).toMatchObject({
      kind: "unreadable",
      problem,
    });
  });
});

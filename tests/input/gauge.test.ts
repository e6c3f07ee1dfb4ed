import { expect, it } from "vitest";
import { gaugeNumber, gaugeThickness, type Gauges } from "../../src/input/gauge.ts";
import { loadCatalogue } from "../../src/input/loadCatalogue.ts";
import type { GaugeFamily } from "../../src/shapes/material.ts";

const { gauges } = loadCatalogue();

it.each([
  "10 ga",
  "10ga",
  "10 GA",
  "10 ga.",
  "10 gauge",
  "10 gage",
  "10-gauge",
  "ga 10",
  "gauge 10",
  "Ga. 10",
  "10\u00a0ga",
])("knows %s for a gauge", (text) => expect(gaugeNumber(text)).toBe("10"));

it.each(["10", "10 mm", "ga", "10 g", "10.5 ga", "-10 ga", "10 ga 3", "10 garden"])(
  "knows that %s is none",
  (text) => expect(gaugeNumber(text)).toBeUndefined(),
);

/** 16 gauge is four different thicknesses; in thousandths of an inch the ones every trade table prints. */
it.each<[GaugeFamily, string, number]>([
  ["steel", "16", 0.0598],
  ["galvanised", "16", 0.0635],
  ["stainless", "16", 0.0625],
  ["aluminium", "16", 0.0508],
  ["steel", "10", 0.1345],
  ["stainless", "10", 0.140625],
  ["aluminium", "3", 0.2294],
])("%s of %s gauge is %d in", (family, gauge, inches) => {
  const reading = gaugeThickness(gauges, family, gauge);
  expect(reading.kind === "read" && reading.value).toBeCloseTo(inches * 25.4, 12);
});

it("names the gauges that there are where one is not", () => {
  expect(gaugeThickness(gauges, "steel", "45")).toEqual({
    kind: "unreadable",
    problem: "there is no 45 gauge in steel sheet",
    remedy: "the gauges there are 3 to 30",
  });
  const rows = ["00", "7", "9"].map((gauge) => ({ gauge, inches: 0.2, provenance: "read" as const }));
  const gaps: Gauges = { ...gauges, steel: { ...gauges.steel, rows } };
  expect(gaugeThickness(gaps, "steel", "8")).toMatchObject({ remedy: "the gauges there are 00, 7, 9" });
});

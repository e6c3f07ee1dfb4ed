import { onMachine } from "../../src/forming/onMachine.ts";
import { loadCatalogue } from "../../src/input/loadCatalogue.ts";
import { readFolder } from "../../src/input/readFolder.ts";
import { develop } from "../../src/report/develop.ts";
import type { Report } from "../../src/report/report.ts";
import { yamlOf } from "../content/read.ts";
import { keyIn } from "../tables/arithmetic.ts";

export const tables = loadCatalogue();
export const { parts, shop } = readFolder("demo-data", tables);
/** What an answer may rest on. */
export const SOURCES = new Set([
  ...Object.keys(yamlOf("content/sources.yaml") as Record<string, unknown>),
  "derived here",
  "common practice, no source",
  "as drawn",
]);

/** Every part of the example, on each machine that takes it. */
export const reports: [string, Report][] = parts.flatMap(({ part }) => {
  const made = develop(part, { ...tables, shop: shop! });
  if (made.kind === "refused") throw new Error(part.name);
  const { report } = made;
  return [
    ...report.forming.plans.map(({ machine }) => machine!),
    ...(report.forming.plans.length ? [] : [""]),
  ].map((machine): [string, Report] => [
    `${part.name} on ${machine || "none"}`,
    { ...report, forming: onMachine(report.forming, machine) },
  ]);
});

/** A sum that was written for a reader, keyed in again. */
export const worth = (sum: string): number =>
  keyIn(
    sum
      .replaceAll("\u00a0", " ")
      .replaceAll(/\s(?:mm|in)\b|Ø/g, "")
      .replaceAll(/ \/ /g, " ÷ "),
  );

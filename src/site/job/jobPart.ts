import { gaugeOf } from "../../input/gaugeName.ts";
import type { Tables } from "../../input/context.ts";
import type { JobPart } from "../../job/job.ts";
import type { Report } from "../../report/report.ts";
import type { Material } from "../../shapes/material.ts";

/** A part that was worked out, with its material and the sheet gauge that it is. */
export function jobPartOf(report: Report, tables: Tables): JobPart & { readonly material: Material } {
  const { material: id, thickness } = report.part;
  const material = tables.catalogue.materials[id];
  if (!material) throw new RangeError(`no material ${id}`);
  return { report, material, gauge: gaugeOf(tables.gauges, material.family, thickness) };
}

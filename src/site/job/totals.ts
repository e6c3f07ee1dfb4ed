import type { Units } from "../../drawing/format.ts";
import type { BinderPart } from "../binder/binder.ts";

/** What one material and thickness of plate has to yield for the whole job. */
export interface Total {
  readonly material: string;
  readonly thicknessMm: number;
  /** As the first of the parts has it. */
  readonly units: Units;
  readonly gauge: string | null;
  readonly parts: number;
  readonly blanks: number;
  readonly areaMm2: number;
  readonly massKg: number;
}

/** Sums over the job by material and thickness, in order of material, then thickness. */
export function totals(parts: readonly BinderPart[]): Total[] {
  const sums = new Map<string, Total>();
  for (const { report, material, gauge } of parts) {
    const { part, blanks, massKg } = report;
    const quantity = part.quantity ?? 1;
    const key = `${material.name}\n${part.thickness}`;
    const sum = sums.get(key) ?? {
      material: material.name,
      thicknessMm: part.thickness,
      units: part.units,
      gauge,
      parts: 0,
      blanks: 0,
      areaMm2: 0,
      massKg: 0,
    };
    sums.set(key, {
      ...sum,
      parts: sum.parts + quantity,
      blanks: sum.blanks + blanks.length * quantity,
      areaMm2: sum.areaMm2 + quantity * blanks.reduce((area, blank) => area + blank.areaMm2, 0),
      massKg: sum.massKg + quantity * massKg,
    });
  }
  return [...sums.values()].toSorted(
    (a, b) => a.material.localeCompare(b.material, "en") || a.thicknessMm - b.thicknessMm,
  );
}

import { strengthText } from "../../drawing/format.ts";
import type { Strength } from "../../forming/ratedThickness.ts";
import type { Report } from "../../report/report.ts";
import type { Binder } from "../binder/binder.ts";

/** Plate that a chart is drawn for: its strength, and what it is called. */
export interface Plate {
  readonly name: string;
  readonly strength: Strength;
}

/** A roll is rated for a yield strength, which a certificate tells better; a brake is asked for the grade's tensile strength. */
export type Known = "by certificate" | "by grade";

/** The plate of a part; a certificate makes it a plate of its own. */
export function plateOf(
  { part }: Report,
  { materials }: Binder["tables"]["catalogue"],
  known: Known,
): Plate | undefined {
  const material = materials[part.material];
  if (!material) return undefined;
  const certificate = known === "by certificate" ? part.certificate?.yieldMPa : undefined;
  return certificate === undefined
    ? { name: material.name, strength: { material } }
    : {
        name: `${material.name} with a certificate of ${strengthText(certificate, part.units)}`,
        strength: { material, certificateYieldMPa: certificate },
      };
}

/** Every plate of the shop's stock and of the job's parts, each once. */
export function platesOf({ shop, parts, tables: { catalogue } }: Binder, known: Known): Plate[] {
  const stock = (shop?.stock ?? []).flatMap((plate): Plate[] => {
    const material = catalogue.materials[plate.material];
    return material ? [{ name: material.name, strength: { material } }] : [];
  });
  const own = parts.flatMap(({ report }) => plateOf(report, catalogue, known) ?? []);
  return [...new Map([...stock, ...own].map((plate) => [plate.name, plate])).values()];
}

/** Plates that a machine has the same limits for share a chart. */
export function alike<Limits>(
  plates: readonly Plate[],
  limitsOf: (plate: Plate) => Limits,
): { names: string[]; limits: Limits }[] {
  const groups = new Map<string, { names: string[]; limits: Limits }>();
  for (const plate of plates) {
    const limits = limitsOf(plate);
    const key = JSON.stringify(limits);
    const group = groups.get(key);
    if (group) group.names.push(plate.name);
    else groups.set(key, { names: [plate.name], limits });
  }
  return [...groups.values()];
}

/** The name of a chart for several plates: no more than stand beside each other above it. */
export function chartTitle(names: readonly string[]): string {
  const [first = "", ...rest] = names;
  return rest.length > 2 ? `${first} and ${rest.length} more` : names.join(", ");
}

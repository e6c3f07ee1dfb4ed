import type { Catalogue } from "../shapes/catalogue.ts";
import { GaugeFamily, type Material } from "../shapes/material.ts";

/** Materials that a table need not tell apart. */
export interface MaterialGroup {
  /** "304, 316". */
  readonly names: string;
  /** Any of them. */
  readonly material: Material;
  readonly members: readonly Material[];
}

/**
 * Materials put together by what a table asks of them: metal by metal, in the order of the catalogue. (Ids that are
 * numbers come first in any list of keys, 304 before s235.)
 */
export function groupsBy(
  materials: Catalogue["materials"],
  asked: (material: Material) => string,
): MaterialGroup[] {
  const groups = new Map<string, Material[]>();
  const byMetal = GaugeFamily.options.flatMap((metal) =>
    Object.values(materials).filter(({ family }) => family === metal),
  );
  for (const one of byMetal) groups.set(asked(one), [...(groups.get(asked(one)) ?? []), one]);
  return [...groups.values()].map((members) => ({
    names: members.map(({ name }) => name).join(", "),
    material: members[0] as Material,
    members,
  }));
}

/** The sources of one kind of figure over all materials, each once. */
export const sourcesOf = (
  materials: Catalogue["materials"],
  kind: keyof Material["sources"],
): readonly string[] => [...new Set(Object.values(materials).map(({ sources }) => sources[kind]))];

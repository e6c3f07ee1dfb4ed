import type { GaugeFamily, Material } from "./material.ts";

/** What the core needs to look up: the materials a part file may name. */
export interface Catalogue {
  readonly materials: Readonly<Record<string, Material>>;
}

/** Words that name a metal but no grade of it. */
const METALS: Readonly<Record<string, GaugeFamily>> = {
  steel: "steel",
  mildsteel: "steel",
  carbonsteel: "steel",
  blacksteel: "steel",
  ms: "steel",
  galvanised: "galvanised",
  galvanized: "galvanised",
  galv: "galvanised",
  galvanisedsteel: "galvanised",
  galvanizedsteel: "galvanised",
  galvanisedsheet: "galvanised",
  galvanizedsheet: "galvanised",
  zinccoated: "galvanised",
  stainless: "stainless",
  stainlesssteel: "stainless",
  ss: "stainless",
  inox: "stainless",
  aluminium: "aluminium",
  aluminum: "aluminium",
  alu: "aluminium",
};

/** What a name in a file means. */
export type MaterialNamed =
  | { readonly kind: "one"; readonly id: string }
  /** A metal of which the catalogue has several grades. */
  | { readonly kind: "several"; readonly ids: readonly string[] }
  /** Not in the catalogue, but its name begins with that of a grade which is: 304L and 304. */
  | { readonly kind: "other grade"; readonly id: string }
  | { readonly kind: "none" };

/** Small letters, without spaces, hyphens and points: "S 235-JR" and "s235jr" are one name. */
export const foldName = (name: string): string => name.toLowerCase().replace(/[\s._-]+/g, "");

/** Every name of a material: its id, its name, and what else it is called. */
export function namesOf(id: string, { name, aliases = [] }: Material): readonly string[] {
  return [id, name, ...aliases];
}

/**
 * The material that a file means: by id, name or usual other name, capitals, spaces, hyphens and points aside. A metal
 * alone serves where the catalogue has one grade of it. A name that goes on where a known one ends is another grade.
 */
export function materialNamed({ materials }: Catalogue, written: string): MaterialNamed {
  const wanted = foldName(written);
  const known = Object.entries(materials).flatMap(([id, one]) =>
    namesOf(id, one).map((name) => ({ id, folded: foldName(name) })),
  );
  const same = known.find(({ folded }) => folded === wanted);
  if (same) return { kind: "one", id: same.id };
  const family = Object.hasOwn(METALS, wanted) ? METALS[wanted] : undefined;
  const ids = Object.entries(materials)
    .filter(([, one]) => one.family === family)
    .map(([id]) => id);
  if (ids.length > 1) return { kind: "several", ids };
  const [only] = ids;
  if (only !== undefined) return { kind: "one", id: only };
  const longest = known
    .filter(
      ({ folded }) =>
        folded.length > 2 && wanted.startsWith(folded) && /^[^\d]/.test(wanted.slice(folded.length)),
    )
    .toSorted((a, b) => b.folded.length - a.folded.length)[0];
  return longest ? { kind: "other grade", id: longest.id } : { kind: "none" };
}

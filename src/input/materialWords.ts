import { materialNamed, namesOf, type Catalogue } from "../shapes/catalogue.ts";
import { either, nearest } from "./nearest.ts";
import { shown } from "./reading.ts";

/** Where a shop may add what the list does not have. */
const TABLE = "content/materials.yaml";

export const materialList = ({ materials }: Catalogue): string =>
  `the materials are ${Object.keys(materials).join(", ")}`;

/** The id of the material that a file names, or what is wrong with the name. */
export function findMaterial(
  catalogue: Catalogue,
  written: string,
): { readonly id: string } | { readonly problem: string; readonly remedy: string } {
  const found = materialNamed(catalogue, written);
  const list = materialList(catalogue);
  const seen = shown(written.trim());
  switch (found.kind) {
    case "one":
      return { id: found.id };
    case "several":
      return { problem: `${seen} may be one of several materials`, remedy: `name it: ${either(found.ids)}` };
    case "other grade":
      return {
        problem: `there is no material ${seen}`,
        remedy: `the nearest in the list is ${found.id}, which is another grade: name that one if its figures will do, or add ${seen} to ${TABLE}`,
      };
    case "none": {
      const guess = guessOf(catalogue, written);
      const add = `, or add one by copying an entry of ${TABLE}`;
      return {
        problem: `there is no material ${seen}`,
        remedy: guess === undefined ? `${list}${add}` : `did you mean ${guess}? T${list.slice(1)}`,
      };
    }
  }
}

/** The id that a mistyped name comes nearest to. A number is no slip of another number: 1.4307 is not 1.4301. */
function guessOf(catalogue: Catalogue, written: string): string | undefined {
  if (/^[\d\s.]+$/.test(written)) return undefined;
  const ids = Object.keys(catalogue.materials);
  const near = nearest(written, ids);
  if (near !== undefined) return near;
  const entries = Object.entries(catalogue.materials);
  const name = nearest(
    written,
    entries.flatMap(([id, one]) => namesOf(id, one)).filter((one) => !/^[\d\s.]+$/.test(one)),
  );
  return entries.find(([id, one]) => name !== undefined && namesOf(id, one).includes(name))?.[0];
}

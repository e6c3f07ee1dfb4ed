import type { Catalogue } from "../shapes/catalogue.ts";
import type { Refused } from "../shapes/layout.ts";
import { shapes } from "../shapes/registry.ts";
import { lay, type LaidOut, materialOf, type NamedPart, surface } from "./lay.ts";
import { mended } from "./mend.ts";

/**
 * From sizes to blanks; where there are none, the refusals name remedies that were tried.
 *
 * @throws RangeError where the part names a material that the catalogue does not have: the reader checks that
 */
export function layOut(part: NamedPart, { catalogue }: { readonly catalogue: Catalogue }): LaidOut | Refused {
  const shape = shapes[part.shape];
  const material = materialOf(part, catalogue);
  const made = lay(part, shape, material);
  if (made.kind === "laid") return made;
  const trials = {
    layable: (nearly: NamedPart) => surface(nearly, shape).kind === "layout",
    cuttable: (nearly: NamedPart) => lay(nearly, shape, material).kind === "laid",
  };
  return { kind: "refused", issues: mended(part, made.issues, trials) };
}

import { allRound } from "../geometry/measure.ts";
import type { Skin } from "../geometry/skin.ts";
import type { Catalogue } from "../shapes/catalogue.ts";
import { type Layout, type Refused, refused } from "../shapes/layout.ts";
import { levelProblem } from "../shapes/level.ts";
import { givenIn } from "../shapes/loose.ts";
import type { Material } from "../shapes/material.ts";
import type { Refusal } from "../shapes/refusal.ts";
import type { Part } from "../shapes/part.ts";
import type { Shape } from "../shapes/shape.ts";
import { seamProblems } from "../shapes/seamProblems.ts";
import { sizeProblems } from "../shapes/sizeProblems.ts";
import { blanksOf, type LaidBlank } from "./blanks.ts";
import { type ElementRange, elementRange } from "./elements.ts";
import { ordersFor } from "./order.ts";

/** A part with the name of its file. */
export type NamedPart = Part & { readonly name: string };

/** Normal angles at which the bend of the wall is looked at: to a quarter degree. */
const LOOKED_AT = allRound(1440);
/** The ends of a right cone are circles: they bend alike all round. */
const ALIKE = [0];

/** Is a face bent the wrong way anywhere, at either end? A parallel face works out both ends of an element together. */
const isOverbent = ({ a, b }: Skin, thetas: readonly number[]): boolean =>
  thetas.some((theta) => a.support(theta, 1).rho < 0 || b.support(theta, 1).rho < 0);

/** Why a surface cannot be laid out truly although every size is allowed. */
function soundness(part: Part, { skin, faces, cone }: Layout): Refusal | undefined {
  const given = (["slant", "halfAngle"] as const).find((key) => key in part);
  const level = levelProblem(skin, given ?? "height");
  if (level) return level;
  if (part.shape === "square-to-round") return undefined;
  const thetas = cone ? ALIKE : LOOKED_AT;
  const overbent = isOverbent(skin, thetas) || (faces.inside !== null && isOverbent(faces.inside, thetas));
  return overbent
    ? {
        path: ["thickness"],
        problem: "the wall is thicker than its tightest bend allows",
        remedy: "use a smaller offset or more height",
        otherwise: "use a smaller offset or more height",
      }
    : undefined;
}

/** A surface that can be laid out truly, or why there is none. */
export function surface(part: Part, shape: Shape): Layout | Refused {
  const small = sizeProblems(part);
  if (small.length > 0) return refused(...small);
  const layout = shape.lay(part);
  const issues = [...seamProblems(part, givenIn(part)), ...(layout.kind === "refused" ? layout.issues : [])];
  if (issues.length > 0 || layout.kind === "refused") return refused(...issues);
  const unsound = soundness(part, layout);
  return unsound ? refused(unsound) : layout;
}

/** A part laid out flat, with all that a report or a correction is made from. */
export interface LaidOut {
  readonly kind: "laid";
  readonly shape: Shape;
  readonly layout: Layout;
  readonly laid: readonly LaidBlank[];
  /** Shortest and longest element of the developed skin. [mm] */
  readonly elementMm: ElementRange;
  readonly material: Material;
}

/** The material that a part names. @throws RangeError where the catalogue does not have it: the reader checks that */
export function materialOf({ material: id }: Pick<Part, "material">, { materials }: Catalogue): Material {
  const material = Object.hasOwn(materials, id) ? materials[id] : undefined;
  if (!material) throw new RangeError(`material: ${id}`);
  return material;
}

/** From sizes to blanks, or why there are none, each refusal with the remedy that its rule knows. */
export function lay(part: Part, shape: Shape, material: Material): LaidOut | Refused {
  const layout = surface(part, shape);
  if (layout.kind === "refused") return layout;
  const made = blanksOf(part, shape, layout, ordersFor(part, layout), material);
  if ("issue" in made) return refused(made.issue);
  const { laid } = made;
  return { kind: "laid", shape, layout, laid, elementMm: elementRange(laid), material };
}

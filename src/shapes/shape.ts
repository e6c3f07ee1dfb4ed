import type { Layout, Refused } from "./layout.ts";
import type { Given, Loose } from "./loose.ts";
import type { Part, ShapeId } from "./part.ts";
import type { Refusal } from "./refusal.ts";
import { seamProblems } from "./seamProblems.ts";
import { sizeProblems } from "./sizeProblems.ts";

/** What is special to a shape. All the rest of the work is the same for every one. */
export interface Shape {
  readonly title: string;
  /** What the ends are called on the pattern. */
  readonly ends: { readonly a: string; readonly b: string };
  /** How it is usually formed; the brake's pattern carries bend lines. */
  readonly route: "roll" | "brake";
  /** Part → surface to lay out, or why there is none. */
  readonly lay: (part: Part) => Layout | Refused;
  /** Keys of its file that do not go together, told as far as the file is right. */
  readonly problems: (part: Loose<Part>, given: Given) => Refusal[];
}

type PartOf<Id extends ShapeId> = Extract<Part, { shape: Id }>;

/** A shape from functions of its own parts alone: it is only ever asked by them. */
export function shapeOf<Id extends ShapeId>(
  id: Id,
  own: Pick<Shape, "title" | "ends" | "route"> & {
    readonly lay: (part: PartOf<Id>) => Layout | Refused;
    readonly problems: (part: Loose<PartOf<Id>>, given: Given) => Refusal[];
  },
): Shape {
  const check = ({ shape }: { readonly shape?: string | undefined }): void => {
    if (shape !== id) throw new RangeError(`a ${shape ?? "part of no shape"} is not a ${id}`);
  };
  return {
    ...own,
    lay: (part) => {
      check(part);
      return own.lay(part as PartOf<Id>);
    },
    problems: (part, given) => {
      check(part);
      return [
        ...sizeProblems(part),
        ...own.problems(part as Loose<PartOf<Id>>, given),
        ...seamProblems(part, given),
      ];
    },
  };
}

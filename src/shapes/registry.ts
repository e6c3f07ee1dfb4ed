import { eccentricConeProblems, layEccentricCone } from "./eccentric-cone/lay.ts";
import type { Layout, Refused } from "./layout.ts";
import type { Given, Loose } from "./loose.ts";
import type { Part, ShapeId } from "./part.ts";
import type { Refusal } from "./refusal.ts";
import { layRightCone, rightConeProblems } from "./right-cone/lay.ts";
import { laySquareToRound, squareToRoundProblems } from "./square-to-round/lay.ts";
import { seamProblems } from "./seamProblems.ts";

/** Is it the word for a shape in a part file? */
export const isShapeId = (word: unknown): word is ShapeId =>
  typeof word === "string" && Object.hasOwn(shapes, word);

/** What is special to a shape. All the rest of the work is the same for every one. */
export interface Shape {
  readonly title: string;
  /** What the ends are called on the pattern. */
  readonly ends: { readonly a: string; readonly b: string };
  /** How it is usually formed; the brake's pattern carries bend lines. */
  readonly route: "roll" | "brake";
  /** Part → surface to lay out, or why there is none. */
  readonly lay: (part: Part) => Layout | Refused;
}

const coneEnds = { a: "large end", b: "small end" };

export const shapes: Readonly<Record<ShapeId, Shape>> = {
  "right-cone": { title: "Right cone", ends: coneEnds, route: "roll", lay: only("right-cone", layRightCone) },
  "eccentric-cone": {
    title: "Eccentric cone",
    ends: coneEnds,
    route: "roll",
    lay: only("eccentric-cone", layEccentricCone),
  },
  "square-to-round": {
    title: "Square-to-round",
    ends: { a: "rectangular end", b: "round end" },
    route: "brake",
    lay: only("square-to-round", laySquareToRound),
  },
};

/** Lets a shape's own function stand in the table for every part; the table is only ever asked by a part's own shape. */
function only<Id extends ShapeId>(
  id: Id,
  lay: (part: Extract<Part, { shape: Id }>) => Layout | Refused,
): Shape["lay"] {
  return (part) => {
    if (part.shape !== id) throw new RangeError(`a ${part.shape} is not a ${id}`);
    return lay(part as Extract<Part, { shape: Id }>);
  };
}

/** Keys of a part file that do not go together, told as far as the file is right. */
export function fieldProblems(part: Loose<Part>, given: Given): Refusal[] {
  return [...ownProblems(part, given), ...seamProblems(part, given)];
}

function ownProblems(part: Loose<Part>, given: Given): Refusal[] {
  switch (part.shape) {
    case "right-cone":
      return rightConeProblems(part, given);
    case "eccentric-cone":
      return eccentricConeProblems(part, given);
    case "square-to-round":
      return squareToRoundProblems(part);
    case undefined:
      return [];
  }
}

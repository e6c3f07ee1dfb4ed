import { eccentricCone } from "./eccentric-cone/shape.ts";
import type { Given, Loose } from "./loose.ts";
import type { Part, ShapeId } from "./part.ts";
import type { Refusal } from "./refusal.ts";
import { rightCone } from "./right-cone/shape.ts";
import { seamProblems } from "./seamProblems.ts";
import type { Shape } from "./shape.ts";
import { sizeProblems } from "./sizeProblems.ts";
import { squareToRound } from "./square-to-round/shape.ts";

export const shapes: Readonly<Record<ShapeId, Shape>> = {
  "right-cone": rightCone,
  "eccentric-cone": eccentricCone,
  "square-to-round": squareToRound,
};

/** Keys of a part file that do not go together, told as far as the file is right. */
export const fieldProblems = (part: Loose<Part>, given: Given): Refusal[] =>
  part.shape === undefined
    ? [...sizeProblems(part), ...seamProblems(part, given)]
    : shapes[part.shape].problems(part, given);

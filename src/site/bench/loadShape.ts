import type { ShapeId } from "../../shapes/part.ts";
import type { Shape } from "../../shapes/shape.ts";

const WAYS: Readonly<Record<ShapeId, () => Promise<{ readonly shape: Shape }>>> = {
  "right-cone": () => import("./shapes/rightCone.ts"),
  "eccentric-cone": () => import("./shapes/eccentricCone.ts"),
  "square-to-round": () => import("./shapes/squareToRound.ts"),
};

/** How one shape is laid out: a bench needs no other. */
export const loadShape = async (id: ShapeId): Promise<Shape> => (await WAYS[id]()).shape;

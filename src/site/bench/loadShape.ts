import type { ShapeId } from "../../shapes/part.ts";
import type { Shape } from "../../shapes/shape.ts";

const WAYS: Readonly<Record<ShapeId, () => Promise<Shape>>> = {
  "right-cone": async () => (await import("../../shapes/right-cone/shape.ts")).rightCone,
  "eccentric-cone": async () => (await import("../../shapes/eccentric-cone/shape.ts")).eccentricCone,
  "square-to-round": async () => (await import("../../shapes/square-to-round/shape.ts")).squareToRound,
};

/** How one shape is laid out: a bench needs no other. */
export const loadShape = (id: ShapeId): Promise<Shape> => WAYS[id]();

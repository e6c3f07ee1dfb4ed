import { shapeOf } from "../shape.ts";
import { layRightCone, rightConeProblems } from "./lay.ts";

export const rightCone = shapeOf("right-cone", {
  title: "Right cone",
  ends: { a: "large end", b: "small end" },
  route: "roll",
  lay: layRightCone,
  problems: rightConeProblems,
});

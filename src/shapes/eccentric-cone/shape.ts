import { shapeOf } from "../shape.ts";
import { eccentricConeProblems, layEccentricCone } from "./lay.ts";

export const eccentricCone = shapeOf("eccentric-cone", {
  title: "Eccentric cone",
  ends: { a: "large end", b: "small end" },
  route: "roll",
  lay: layEccentricCone,
  problems: eccentricConeProblems,
});

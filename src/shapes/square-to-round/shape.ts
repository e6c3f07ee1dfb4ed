import { shapeOf } from "../shape.ts";
import { laySquareToRound, squareToRoundProblems } from "./lay.ts";

export const squareToRound = shapeOf("square-to-round", {
  title: "Square-to-round",
  ends: { a: "rectangular end", b: "round end" },
  route: "brake",
  lay: laySquareToRound,
  problems: squareToRoundProblems,
});

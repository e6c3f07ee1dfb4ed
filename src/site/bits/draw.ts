import type { Drawing } from "../../drawing/model.ts";
import type { Paper } from "../../drawing/paper.ts";

/** Makes one drawing for whatever paper it is to stand on. */
export type Draw = (paper: Paper) => Drawing;

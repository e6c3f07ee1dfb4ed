export { squareToRound as shape } from "../../../shapes/square-to-round/shape.ts";

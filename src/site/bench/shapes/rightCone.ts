export { rightCone as shape } from "../../../shapes/right-cone/shape.ts";

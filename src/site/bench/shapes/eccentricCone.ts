export { eccentricCone as shape } from "../../../shapes/eccentric-cone/shape.ts";

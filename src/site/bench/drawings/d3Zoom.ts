export { select, zoom, zoomIdentity } from "d3";

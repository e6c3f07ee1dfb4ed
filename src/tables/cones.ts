import { DUCTS, HEIGHTS_IN, HEIGHTS_MM, PIPES_IN, PIPES_MM, WHOLE_INCHES } from "./coneSizes.ts";
import { coneTable } from "./coneTable.ts";
import type { ReckonerTable } from "./table.ts";

const PIPE_SIZES =
  "The diameters are the outside ones of steel pipe, by its nominal size in inches: a pipe of size 6 is 168.3 mm or 6.625 in across.";

/** Cones between round ducts. [mm] */
export const ductCones = (): ReckonerTable =>
  coneTable({
    id: "cones-ducts",
    twin: "cones-inch",
    title: "Cones between round ducts, millimetres",
    about:
      "Flat patterns of reducers between the usual diameters of round ducts, a short and a long one of each.",
    sizesAre: "The diameters are the nominal ones of round sheet metal ducts.",
    units: "mm",
    sizes: DUCTS,
    heights: HEIGHTS_MM,
    leastRatio: 1.25,
    basis: ["en-1506", "derived here"],
    worked: { large: 500, small: 400, height: 200 },
    plate: { thickness: 3, face: "inside" },
  });

/** Cones between whole inches. [in] */
export const inchCones = (): ReckonerTable =>
  coneTable({
    id: "cones-inch",
    twin: "cones-ducts",
    title: "Cones between whole inches",
    about: "Flat patterns of reducers between diameters in whole inches, a short and a long one of each.",
    sizesAre:
      "The diameters are whole inches, as round ducts and spouts are often made; no standard stands behind them.",
    units: "in",
    sizes: WHOLE_INCHES,
    heights: HEIGHTS_IN,
    leastRatio: 1.25,
    basis: ["common practice, no source", "derived here"],
    worked: { large: 20, small: 16, height: 8 },
    plate: { thickness: 0.125, face: "inside" },
  });

/** Cones between steel pipes. [mm] */
export const pipeConesMm = (): ReckonerTable =>
  coneTable({
    id: "cones-pipes-mm",
    twin: "cones-pipes-inch",
    title: "Cones between pipes, millimetres",
    about: "Flat patterns of reducers rolled from plate between steel pipes, a short and a long one of each.",
    sizesAre: PIPE_SIZES,
    units: "mm",
    sizes: PIPES_MM,
    heights: HEIGHTS_MM,
    leastRatio: 1.08,
    basis: ["asme-b36-10", "derived here"],
    worked: { large: 323.9, small: 219.1, height: 200 },
    plate: { thickness: 6, face: "outside" },
  });

/** The same. [in] */
export const pipeConesInch = (): ReckonerTable =>
  coneTable({
    id: "cones-pipes-inch",
    twin: "cones-pipes-mm",
    title: "Cones between pipes, inches",
    about: "Flat patterns of reducers rolled from plate between steel pipes, a short and a long one of each.",
    sizesAre: PIPE_SIZES,
    units: "in",
    sizes: PIPES_IN,
    heights: HEIGHTS_IN,
    leastRatio: 1.08,
    basis: ["asme-b36-10", "derived here"],
    worked: { large: 12.75, small: 8.625, height: 8 },
    plate: { thickness: 0.25, face: "outside" },
  });

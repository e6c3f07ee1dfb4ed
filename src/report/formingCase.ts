import { degrees, radians, wrap } from "../geometry/angle.ts";
import { allRound, leanRange, rimLength } from "../geometry/measure.ts";
import { boxesRound } from "../geometry/polygon.ts";
import { squareRadii } from "../geometry/squareRadius.ts";
import { elementMm } from "../geometry/station.ts";
import { distance3 } from "../geometry/vector.ts";
import type { FormingCase } from "../forming/case.ts";
import type { Layout } from "../shapes/layout.ts";
import type { Part } from "../shapes/part.ts";
import { bendZones } from "./bendZones.ts";
import type { LaidBlank } from "./blanks.ts";
import { finishOf } from "./finish.ts";
import type { LaidOut } from "./lay.ts";
import { leastWidths, tightestSquares } from "./skinExtremes.ts";

/** Steps of the normal angle at which an uneven skin is looked at: 5°. */
const CURVATURE_STEPS = 72;

/** Radius square to the element at both ends, all round from the seam. */
function curvatureOf({ skin, seamRad }: Layout): NonNullable<FormingCase["curvature"]> {
  return allRound(CURVATURE_STEPS).map((turn) => {
    const theta = wrap(seamRad + turn);
    const { a, b } = squareRadii(skin, theta, 1);
    return {
      planDeg: degrees(theta),
      largeRadiusMm: a,
      smallRadiusMm: b,
      slantMm: elementMm(skin, theta, 1),
    };
  });
}

/** Distance at the wide end from each bend line to its nearer neighbour in the same corner. [mm] */
function bendLines({ blank, elements }: LaidBlank): NonNullable<FormingCase["bendLines"]> {
  const inner = elements.filter(({ seam }) => !seam);
  const spacing = (i: number, j: number): number[] => {
    const [p, q] = [inner[i], inner[j]];
    if (!p || !q || p.station.theta === q.station.theta) return [];
    return [Math.max(distance3(p.station.a, q.station.a), distance3(p.station.b, q.station.b))];
  };
  return inner.map((_, i) => {
    const near = [...spacing(i - 1, i), ...spacing(i, i + 1)];
    const line = blank.lines[i];
    return {
      lengthMm: line?.lengthMm ?? 0,
      bendRad: radians(line?.bendDeg ?? 0),
      wideSpacingMm: near.length > 0 ? Math.min(...near) : null,
    };
  });
}

/** The plain numbers that the forming rules, and so a correction, ask about of a laid out part. */
export function formingCase(part: Part, { shape, layout, laid, elementMm, material }: LaidOut): FormingCase {
  const { skin, cone } = layout;
  const stations = laid.flatMap(({ flat }) => flat.development.stations);
  const leans = leanRange(skin);
  const round = shape.route === "roll";
  return {
    shape: part.shape,
    usualRoute: shape.route,
    thicknessMm: part.thickness,
    material,
    materialId: part.material,
    units: part.units,
    ...(part.certificate && { certificateYieldMPa: part.certificate.yieldMPa }),
    ...(part.facetError !== undefined && { permittedFacetMm: part.facetError }),
    pieces: part.pieces ?? 1,
    quantity: part.quantity ?? 1,
    ...(part.seam?.joint !== "lap" && part.seam?.gap !== undefined && { seamGapMm: part.seam.gap }),
    edges: part.edges ?? "level",
    ...(part.trimAllowance !== undefined && { trimAllowance: part.trimAllowance }),
    ...(part.seam?.lap !== undefined && { seamLapMm: part.seam.lap }),
    ...(part.mirror && { faceUp: "outside" as const }),
    slantMm: elementMm,
    rimsMm: { large: rimLength(skin, "a"), small: rimLength(skin, "b") },
    insideDiameterMm: leastWidths(layout.faces.inside, cone !== undefined),
    leanRad: Math.max(Math.abs(leans.least), Math.abs(leans.greatest)),
    tightestRadiusMm: round ? tightestSquares(skin, stations, cone !== undefined) : null,
    ...(cone && {
      cone: {
        halfAngleRad: cone.halfAngleRad,
        slantMm: cone.slantMm,
        largeRadiusMm: skin.a.support(0, 1).rho,
        smallRadiusMm: skin.b.support(0, 1).rho,
      },
    }),
    ...(round && !cone && { curvature: curvatureOf(layout) }),
    bendZones: bendZones(skin, laid),
    finish: finishOf(part, shape, layout),
    blanks: laid.map(({ blank, flat }) => ({
      lengthMm: Math.max(blank.asDrawn.xMm, blank.asDrawn.yMm),
      widthMm: Math.min(blank.asDrawn.xMm, blank.asDrawn.yMm),
      massKg: blank.massKg,
      hull: flat.hull,
      turned: boxesRound(flat.hull, flat.box),
    })),
    ...(!round && { bendLines: laid.flatMap(bendLines) }),
  };
}

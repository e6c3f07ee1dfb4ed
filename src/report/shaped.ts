import { degrees, TURN } from "../geometry/angle.ts";
import { leanRange, rimLength, skinArea, turning, volume } from "../geometry/measure.ts";
import type { Skin } from "../geometry/skin.ts";
import { distance2, distance3, type Vec2 } from "../geometry/vector.ts";
import type { Layout } from "../shapes/layout.ts";
import type { Part } from "../shapes/part.ts";
import type { LaidBlank } from "./blanks.ts";
import { handLayout } from "./hand.ts";
import type { LaidOut, NamedPart } from "./lay.ts";
import { divisionsOf } from "./order.ts";
import type { Accuracy, Report, Shaped } from "./report.ts";
import { rounded } from "./rounded.ts";
import { solidOf } from "./solid.ts";

/** Length of an element on the sheet against its length in space: how well the strip came round. [mm] */
function closure(laid: readonly LaidBlank[]): number {
  const off = laid.map(({ flat, elements }) => {
    const last = elements.at(-1);
    if (!last) return 0;
    const { a, b } = flat.development.flat;
    const laidMm = distance2(a[last.index] as Vec2, b[last.index] as Vec2);
    return Math.abs(laidMm - distance3(last.station.a, last.station.b));
  });
  return Math.max(...off);
}

/** (t/2) tan β, the least and the greatest round the part. [mm] */
function edgeLoss(part: Part, skin: Skin): Report["shape"]["edgeLossMm"] {
  const half = part.edges === "square" ? 0 : part.thickness / 2;
  const { least, greatest } = leanRange(skin);
  const [p, q] = [Math.abs(least), Math.abs(greatest)];
  // Where the wall leans in on one side and out on the other it is upright somewhere between.
  const upright = least < 0 && greatest > 0;
  return { least: upright ? 0 : half * Math.tan(Math.min(p, q)), greatest: half * Math.tan(Math.max(p, q)) };
}

function accuracyOf(layout: Layout, laid: readonly LaidBlank[]): Accuracy {
  const most = (f: (one: LaidBlank) => number) => Math.max(...laid.map(f));
  return {
    outlineMm: most(({ flat }) => flat.development.outlineMm),
    rimMm: most(({ flat }) => flat.check.rimMm),
    areaRel: most(({ flat }) => flat.check.areaRel),
    wallMm: layout.wallMm,
    lengthMm: most(({ flat }) => flat.development.lengthMm),
    closureMm: closure(laid),
    stations: laid.reduce((sum, { flat }) => sum + flat.development.stations.length, 0),
  };
}

function coneOf(layout: Layout): Pick<Report, "cone"> {
  const { cone } = layout;
  if (!cone) return {};
  return {
    cone: {
      halfAngleDeg: degrees(cone.halfAngleRad),
      slantMm: cone.slantMm,
      outerRadiusMm: cone.outerRadiusMm,
      innerRadiusMm: cone.innerRadiusMm,
      sectorDeg: degrees(cone.sectorRad),
    },
  };
}

/** The report of a part as far as its shape goes: all but whether and how it can be formed. */
export function shapedOf(part: NamedPart, { layout, laid, elementMm }: LaidOut): Shaped {
  const { skin } = layout;
  const inside = layout.faces.inside;
  const report: Shaped = {
    part,
    shape: {
      areaMm2: skinArea(skin),
      volumeMm3: volume(skin),
      contentsMm3: inside ? volume(inside) : 0,
      rims: { a: rimLength(skin, "a"), b: rimLength(skin, "b") },
      heightMm: layout.heightMm,
      elementMm,
      seamDeg: degrees(layout.seamRad % TURN),
      turningDeg: degrees(turning(skin)),
      edgeLossMm: edgeLoss(part, skin),
    },
    blanks: laid.map(({ blank }) => blank),
    massKg: laid.reduce((sum, { blank }) => sum + blank.massKg, 0),
    ...coneOf(layout),
    hand: handLayout(skin, laid, divisionsOf(part)),
    solid: solidOf(layout, laid),
    accuracy: accuracyOf(layout, laid),
    notes: layout.notes,
  };
  return rounded(report);
}

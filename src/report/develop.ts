import { degrees, radians, TURN } from "../geometry/angle.ts";
import { allRound, leanRange, rimLength, skinArea, turning, volume } from "../geometry/measure.ts";
import { type Skin } from "../geometry/skin.ts";
import { tightest } from "../geometry/wall.ts";
import { distance2, distance3, type Vec2 } from "../geometry/vector.ts";
import { formingOf } from "../forming/forming.ts";
import { type Shop } from "../forming/machine.ts";
import { type Catalogue } from "../shapes/catalogue.ts";
import { type Layout } from "../shapes/layout.ts";
import { type Refusal } from "../shapes/refusal.ts";
import { type Material } from "../shapes/material.ts";
import { type Part, type Shape, shapes } from "../shapes/registry.ts";
import { blanksOf, type LaidBlank } from "./blanks.ts";
import { formingCase } from "./formingCase.ts";
import { handLayout } from "./hand.ts";
import { divisionsOf, ordersFor } from "./order.ts";
import { type Accuracy, type Report } from "./report.ts";
import { elementRange } from "./elements.ts";
import { rounded } from "./rounded.ts";
import { seamProblems } from "./seamProblems.ts";
import { solidOf } from "./solid.ts";

/** A part with the name of its file. */
export type NamedPart = Part & { readonly name: string };

export interface Context {
  readonly catalogue: Catalogue;
  readonly shop?: Shop;
}

export type Developed =
  | { readonly kind: "report"; readonly report: Report }
  | { readonly kind: "refused"; readonly issues: readonly Refusal[] };

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

/** Nearer to level than this a wall is a disc, and no strip of few millimetres' height can be laid out truly. [rad] */
const LEVEL = radians(89.001);
/** Normal angles at which the bend of the wall is looked at: to a quarter degree. */
const LOOKED_AT = 1440;

/** Why a surface cannot be laid out truly although every size is allowed. */
function soundness(part: Part, { skin, faces }: Layout): Refusal | undefined {
  const { least, greatest } = leanRange(skin);
  const given = (["slant", "halfAngle"] as const).find((key) => key in part);
  if (Math.max(-least, greatest) > LEVEL)
    return {
      path: [given ?? "height"],
      problem: "the wall lies within 1° of level",
      remedy: "check height and offset: such a part is a flat plate",
    };
  if (part.shape === "square-to-round") return undefined;
  const overbent = [skin, faces.inside].some(
    (face) =>
      face !== null &&
      (tightest(face.a, allRound(LOOKED_AT)).rho < 0 || tightest(face.b, allRound(LOOKED_AT)).rho < 0),
  );
  return overbent
    ? {
        path: ["thickness"],
        problem: "the wall is thicker than its tightest bend allows",
        remedy: "use thinner plate, a smaller offset or more height",
      }
    : undefined;
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

/** A part laid out flat, with all that a report or a correction is made from. */
interface LaidOut {
  readonly kind: "laid";
  readonly shape: Shape;
  readonly layout: Layout;
  readonly laid: readonly LaidBlank[];
  readonly material: Material;
}

/**
 * From sizes to blanks.
 *
 * @throws RangeError where the part names a material that the catalogue does not have: the reader checks that
 */
export function layOut(
  part: NamedPart,
  { catalogue }: Context,
): LaidOut | Extract<Developed, { kind: "refused" }> {
  const material = catalogue.materials[part.material];
  if (!material) throw new RangeError(`material: ${part.material}`);
  const shape = shapes[part.shape];
  const layout = shape.lay(part);
  const issues = [...seamProblems(part), ...(layout.kind === "refused" ? layout.issues : [])];
  if (issues.length > 0 || layout.kind === "refused") return { kind: "refused", issues };
  const unsound = soundness(part, layout);
  if (unsound) return { kind: "refused", issues: [unsound] };
  const made = blanksOf(part, shape, layout, ordersFor(part, layout), material);
  if ("issue" in made) return { kind: "refused", issues: [made.issue] };
  return { kind: "laid", shape, layout, laid: made.laid, material };
}

/** One part file's worth of work: from sizes to blanks, and whether they can be formed. The one door to the core. */
export function develop(part: NamedPart, context: Context): Developed {
  const made = layOut(part, context);
  if (made.kind === "refused") return made;
  const { shape, layout, laid, material } = made;
  const { skin } = layout;
  const inside = layout.faces.inside;
  const report: Report = {
    part,
    shape: {
      areaMm2: skinArea(skin),
      volumeMm3: volume(skin),
      contentsMm3: inside ? volume(inside) : 0,
      rims: { a: rimLength(skin, "a"), b: rimLength(skin, "b") },
      heightMm: layout.heightMm,
      elementMm: elementRange(laid),
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
    forming: formingOf(formingCase(part, shape, layout, laid, material), context.shop),
    notes: layout.notes,
  };
  return { kind: "report", report: rounded(report) };
}

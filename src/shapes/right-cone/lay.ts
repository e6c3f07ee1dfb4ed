import { degrees } from "../../geometry/angle.ts";
import type { Skin } from "../../geometry/skin.ts";
import { NO_LENGTH_MM } from "../../geometry/tolerance.ts";
import { MAX_LENGTH_MM } from "../limits.ts";
import { type ConeForm, type Layout, type Refused, refused, seamAt } from "../layout.ts";
import { type Given, givenIn, type Loose } from "../loose.ts";
import type { Refusal } from "../refusal.ts";
import { endProblems, shown, swapMiddles, wallTooThick } from "../words.ts";
import { type Drawn, drawn, faceHeight, faceRadius, faceSkin, halfAngleOf, squareHeight } from "./faces.ts";
import type { RightCone } from "./schema.ts";

const WAYS = ["height", "slant", "halfAngle"] as const;

/** Keys that do not go together, as far as the file is right. */
export function rightConeProblems(part: Loose<RightCone>, given: Given): Refusal[] {
  const issues: Refusal[] = [];
  const ways = WAYS.filter((way) => given([way]));
  if (ways.length !== 1)
    issues.push({
      path: ways.slice(1, 2),
      problem: ways.length === 0 ? "no height is given" : `${ways.join(" and ")} are both given`,
      remedy: "give exactly one of height, slant and halfAngle",
    });
  issues.push(...endProblems(part, given));
  if (part.trimAllowance && part.edges === "square")
    issues.push({
      path: ["trimAllowance"],
      problem: "edges left square are not dressed level, so there is nothing to allow for",
      remedy: "leave out trimAllowance, or make edges level",
    });
  return issues;
}

function refuseAngle(d: Drawn): Refused {
  const taper = d.large.radius - (d.small?.radius ?? 0);
  return d.part.slant !== undefined
    ? refused({
        path: ["slant"],
        problem: `a slant of ${shown(d.part.slant, d.part.units)} is shorter than the taper from end to end, ${shown(taper, d.part.units)}`,
        remedy: "check the diameters",
        otherwise: "check the diameters",
      })
    : refused({
        path: ["thickness"],
        problem: "the wall is too thick for a cone of this height",
        remedy: "check height and how each end is measured",
        otherwise: "give more height",
      });
}

function wallProblems(d: Drawn, alpha: number): Refusal[] {
  const ends = (["large", "small"] as const).filter((end) => d[end] && faceRadius(d, alpha, end, 0) <= 0);
  return ends.map((end) => wallTooThick(`the ${end} end`, d.t, d.part.units));
}

function formOf(d: Drawn, alpha: number, skin: Skin): ConeForm {
  const sin = Math.sin(alpha);
  const radius = (end: "large" | "small") => faceRadius(d, alpha, end, d.neutral);
  const pipe = alpha === 0;
  return {
    halfAngleRad: alpha,
    slantMm: skin.heightMm / Math.cos(alpha),
    outerRadiusMm: pipe ? null : radius("large") / sin,
    innerRadiusMm: pipe ? null : radius("small") / sin,
    sectorRad: 2 * Math.PI * sin,
  };
}

function notesOf(d: Drawn, form: ConeForm): string[] {
  const notes: string[] = [];
  const sector = degrees(form.sectorRad);
  if (form.outerRadiusMm === null)
    notes.push("Both ends are alike: this is a straight pipe, and its blank a rectangle.");
  else if (sector > 330)
    notes.push(
      `The whole blank is nearly a full disc (${sector.toFixed(1)}°): look whether it is better cut in pieces.`,
    );
  else if (sector < 5)
    notes.push(`The whole blank is nearly straight (${sector.toFixed(2)}°): its radii are very long.`);
  if (!d.small)
    notes.push(
      "To a point: the blank runs to the middle surface's own tip. At the tip itself there is no inside.",
    );
  if (d.edges === "square")
    notes.push("Edges are left square to the plate: sizes and height are to the corners of the edges.");
  return notes;
}

/** A right cone as the surface to lay out; its closed form beside it. */
export function layRightCone(part: RightCone): Layout | Refused {
  const issues = rightConeProblems(part, givenIn(part));
  if (issues.length > 0) return refused(...issues);
  const d = drawn(part);
  const found = halfAngleOf(d);
  if (found === undefined) return refuseAngle(d);
  const taper = (alpha: number) =>
    faceRadius(d, alpha, "large", d.neutral) - faceRadius(d, alpha, "small", d.neutral);
  const alpha = Math.abs(taper(found)) < NO_LENGTH_MM ? 0 : found;
  if (alpha < 0 || taper(alpha) < -NO_LENGTH_MM) return refused(swapMiddles);
  if (taper(alpha) < NO_LENGTH_MM && part.halfAngle !== undefined)
    return refused({
      path: ["halfAngle"],
      problem: "ends of one size make a pipe, which a half angle does not describe",
      remedy: "give height instead",
    });
  const walls = wallProblems(d, alpha);
  if (walls.length > 0) return refused(...walls);
  const skin = faceSkin(d, alpha, d.neutral) as Skin;
  const [inside, middle, outside] = [0, 0.5, 1].map((share) => faceSkin(d, alpha, share)) as [
    Skin,
    Skin,
    Skin,
  ];
  const heightMm =
    part.height ??
    (d.small ? faceHeight(d, alpha) : d.large.radius / Math.tan(alpha)) + squareHeight(d, alpha);
  if (heightMm > MAX_LENGTH_MM)
    return refused({
      path: [part.halfAngle === undefined ? "slant" : "halfAngle"],
      problem: `the cone would be ${shown(heightMm, part.units)} high`,
      remedy: `keep the height within ${shown(MAX_LENGTH_MM, part.units)}`,
    });
  const cone = formOf(d, alpha, skin);
  const seamRad = seamAt(part.seam?.at, 0);
  return {
    kind: "layout",
    skin,
    faces: { inside, middle, outside },
    wallMm: 0,
    heightMm,
    seamRad,
    cone,
    notes: notesOf(d, cone),
  };
}

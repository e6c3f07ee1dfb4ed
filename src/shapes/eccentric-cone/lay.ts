import { degrees, TURN } from "../../geometry/angle.ts";
import { allRound, rimLength } from "../../geometry/measure.ts";
import { hasParallel, type Offsets, parallelSkin } from "../../geometry/parallel.ts";
import { circleRim, pointRim } from "../../geometry/rim.ts";
import type { Skin } from "../../geometry/skin.ts";
import { NO_LENGTH_MM } from "../../geometry/tolerance.ts";
import { tightest, toShare } from "../../geometry/wall.ts";
import { type Face, type Layout, MIDDLE, type Refused, refused, seamAt } from "../layout.ts";
import { levelProblem } from "../level.ts";
import { type Given, givenIn, type Loose } from "../loose.ts";
import type { Refusal } from "../refusal.ts";
import { endProblems, swapMiddles, wallTooThick } from "../words.ts";
import { movedApex } from "./apex.ts";
import type { EccentricCone } from "./schema.ts";

/** Keys that do not go together, as far as the file is right. */
export function eccentricConeProblems(part: Loose<EccentricCone>, given: Given): Refusal[] {
  const issues = endProblems(part, given);
  if (part.edges === "square")
    issues.push({
      path: ["edges"],
      problem: "edges left square do not lie in one plane where the wall leans differently round the part",
      remedy: "use edges: level, and trimAllowance: true where the edges are cut square and dressed",
    });
  return issues;
}

/** The skin on the surface each end is drawn on. */
function drawnSkin(part: EccentricCone): Skin {
  const { largeEnd, smallEnd, height } = part;
  return {
    a: circleRim([0, 0], largeEnd.diameter / 2),
    b:
      smallEnd.diameter === 0 ? pointRim(smallEnd.offset) : circleRim(smallEnd.offset, smallEnd.diameter / 2),
    baseMm: 0,
    heightMm: height,
  };
}

/** Sizes on unlike faces of a wall that is as thick as the part is high make it level, whatever the sizes are. */
const LEVEL_BY_FACES = "check height, offset and how each end is measured: such a part is a flat plate";

/** Are both ends measured to one face of the wall? A point is on every one. */
const measuredAlike = ({ largeEnd, smallEnd }: EccentricCone): boolean =>
  smallEnd.diameter === 0 || smallEnd.measured === largeEnd.measured;

/** Distances from the drawn ends to one surface of the wall. To a point both ends move together. */
function offsetsTo(part: EccentricCone, share: number): Offsets {
  const to = (measured: "inside" | "middle" | "outside") =>
    toShare({ measured, thicknessMm: part.thickness, share });
  const a = to(part.largeEnd.measured);
  return { a, b: part.smallEnd.diameter === 0 ? a : to(part.smallEnd.measured ?? "middle") };
}

/** One face of the wall; null where it does not exist all round. */
function faceSkin(part: EccentricCone, drawn: Skin, share: number): { skin: Skin; wallMm: number } | null {
  const offsets = offsetsTo(part, share);
  if (!hasParallel(drawn, offsets, allRound())) return null;
  const exact = parallelSkin(drawn, offsets);
  if (part.smallEnd.diameter > 0) return { skin: exact, wallMm: 0 };
  if (offsets.a === 0) return { skin: drawn, wallMm: 0 };
  const { perMm, departure } = movedApex(drawn);
  const [x, y] = part.smallEnd.offset;
  const apex = pointRim([x + offsets.a * perMm[0], y + offsets.a * perMm[1]]);
  const heightMm = drawn.heightMm + offsets.a * perMm[2];
  if (heightMm <= 0) return null;
  return { skin: { ...exact, b: apex, heightMm }, wallMm: Math.abs(offsets.a) * departure };
}

/** The end at which a face would have to bend tighter than to nothing, if there is one. */
function overbent(part: EccentricCone, skin: Skin): { end: "large" | "small"; theta: number } | undefined {
  const large = tightest(skin.a, allRound());
  if (large.rho <= 0) return { end: "large", theta: large.theta };
  if (part.smallEnd.diameter === 0) return undefined;
  const small = tightest(skin.b, allRound());
  return small.rho <= 0 ? { end: "small", theta: small.theta } : undefined;
}

type FaceAt = (share: number) => ReturnType<typeof faceSkin>;

/** Faces of one part's wall: each is asked for more than once, and looked at all round the first time. */
function facesOf(part: EccentricCone, drawn: Skin): FaceAt {
  const known = new Map<number, ReturnType<FaceAt>>();
  return (share) => {
    if (!known.has(share)) known.set(share, faceSkin(part, drawn, share));
    return known.get(share) ?? null;
  };
}

/** Does the wall leave an inside all round with this thickness? */
const fits = (part: EccentricCone, faceAt: FaceAt): boolean =>
  [0, part.neutral ?? MIDDLE].every((share) => {
    const face = faceAt(share);
    return face !== null && overbent(part, face.skin) === undefined;
  });

function refuseWall(part: EccentricCone, faceAt: FaceAt): Refused {
  const face = faceAt(0);
  const where = face && overbent(part, face.skin);
  if (!where)
    return refused({
      ...wallTooThick("this height", part.thickness, part.units),
      otherwise: "give more height",
    });
  const place = `the ${where.end} end at plan angle ${degrees(where.theta).toFixed(0)}°`;
  return refused(wallTooThick(place, part.thickness, part.units));
}

function notesOf(part: EccentricCone, wallMm: number): string[] {
  const notes: string[] = [];
  const [x, y] = part.smallEnd.offset;
  const alike = part.smallEnd.diameter === part.largeEnd.diameter;
  if (Math.hypot(x, y) === 0)
    notes.push(
      alike ? "Equal ends without offset: this is a straight pipe." : "Without offset this is a right cone.",
    );
  else if (alike) notes.push("Equal ends with an offset: an oblique pipe, whose elements are all parallel.");
  if (part.smallEnd.diameter === 0)
    notes.push(
      `To a point: the tip of the middle surface is placed by least squares over all tangent planes; it is within ${wallMm.toFixed(2)} mm of each. At the tip itself there is no inside.`,
    );
  return notes;
}

/** An eccentric cone as the surface to lay out: parallel surfaces of a smooth skin are exact. */
export function layEccentricCone(part: EccentricCone): Layout | Refused {
  const issues = eccentricConeProblems(part, givenIn(part));
  if (issues.length > 0) return refused(...issues);
  const drawn = drawnSkin(part);
  const faceAt = facesOf(part, drawn);
  const laid = faceAt(part.neutral ?? MIDDLE);
  if (!laid || !fits(part, faceAt)) return refuseWall(part, faceAt);
  const level = levelProblem(laid.skin, "height");
  if (level) return refused(measuredAlike(part) ? level : { ...level, remedy: LEVEL_BY_FACES });
  const face = (share: number) => faceAt(share)?.skin ?? null;
  const middle = face(MIDDLE);
  if (middle && rimLength(middle, "b") > rimLength(middle, "a") + NO_LENGTH_MM) return refused(swapMiddles);
  const faces: Record<Face, Skin | null> = { inside: face(0), middle, outside: face(1) };
  const [x, y] = part.smallEnd.offset;
  // The shortest element lies on the side to which the small end is offset, and there the seam is shortest.
  const usual = Math.hypot(x, y) > NO_LENGTH_MM ? (Math.atan2(y, x) + TURN) % TURN : 0;
  const seamRad = seamAt(part.seam?.at, usual);
  return {
    kind: "layout",
    skin: laid.skin,
    faces,
    wallMm: laid.wallMm,
    heightMm: part.height,
    seamRad,
    notes: notesOf(part, laid.wallMm),
  };
}

import { cutRadii } from "../../report/cutRadii.ts";
import type { Blank, Report } from "../../report/report.ts";
import { listed } from "../../forming/words.ts";
import { degrees, numbersIn, type Numbers, percent, tiny } from "./numbers.ts";
import { END_NAMES } from "./shapes.ts";

/** How the blank comes out of the plate, in sentences. */
function blankSentences(report: Report): string[] {
  const { part, blanks, cone } = report;
  const say = numbersIn(part.units);
  const [first] = blanks;
  if (!first) return [];
  const sentences: string[] = [];
  const radii = cutRadii(report);
  if (cone && radii) {
    const { outerMm, innerMm, trimMm } = radii;
    const what = innerMm > 0 ? "ring sector" : "sector";
    const struck =
      innerMm > 0
        ? `struck with radii of ${say.length(outerMm)} and ${say.length(innerMm)}`
        : `struck with a radius of ${say.length(outerMm)}`;
    const dressed =
      trimMm > 0
        ? `; the element lines end on the finished edge, ${say.length(trimMm)} inside the cut one`
        : "";
    sentences.push(`The whole pattern is a ${what} of ${degrees(cone.sectorDeg)}, ${struck}${dressed}.`);
  } else if (cone) sentences.push("The pattern is a plain rectangle: the part is a pipe.");

  sentences.push(plateSentence(blanks, say));
  const others = blanks.filter(({ sameAs }) => sameAs !== null);
  if (others.length > 0)
    sentences.push(
      others.length === blanks.length - 1
        ? "All pieces are cut from the same pattern."
        : `${others.map(({ piece, sameAs }) => `Piece ${piece} is cut like piece ${sameAs ?? 0}`).join("; ")}.`,
    );
  sentences.push(
    first.faceUp === "inside"
      ? "It is drawn inside face up: marks end inside, and bends go up."
      : "It is drawn outside face up, as a mirror image: marks end outside, and bends go down.",
  );
  return sentences;
}

/** The patterns that differ from the others. */
const ownOf = (blanks: Report["blanks"]): Report["blanks"] => blanks.filter(({ sameAs }) => sameAs === null);

/** Plate, mass and cutting of a blank: of each one that has a pattern of its own. */
function plateSentence(blanks: Report["blanks"], say: Numbers): string {
  const own = ownOf(blanks);
  const size = ({ asDrawn }: Blank) => `${say.bare(asDrawn.xMm)} × ${say.bare(asDrawn.yMm)} ${say.unit}`;
  const whole = (blank: Blank) =>
    `comes out of a plate of ${size(blank)} as drawn, weighs ${say.mass(blank.massKg)} and takes ${say.length(blank.cutLengthMm)} of cutting`;
  const [first, ...more] = own as [Blank, ...Blank[]];
  if (blanks.length === 1) return `The blank ${whole(first)}.`;
  const count = `There are ${blanks.length} blanks`;
  if (more.length === 0) return `${count}; each ${whole(first)}.`;
  const others = more.map(
    (blank) =>
      `; piece ${blank.piece}: ${size(blank)}, ${say.mass(blank.massKg)}, ${say.length(blank.cutLengthMm)}`,
  );
  return `${count}. Piece ${first.piece} ${whole(first)}${others.join("")}.`;
}

/** Where the seam lies and how it is joined, in sentences. */
function seamSentences({ part, shape }: Report): string[] {
  const say = numbersIn(part.units);
  const seam = part.seam ?? {};
  const pieces = part.pieces ?? 1;
  // The pieces share the round out evenly, from the seam that the part names on.
  const seams = Array.from({ length: pieces }, (_, i) => degrees((shape.seamDeg + (i * 360) / pieces) % 360));
  const where = `${pieces > 1 ? `The ${pieces} seams lie` : "The seam lies"} at ${listed(seams)} in plan, counter-clockwise from the right.`;
  if (seam.joint === "lap" || seam.lap !== undefined)
    return [
      where,
      `Lap joint: the plate${pieces > 1 ? " of each piece" : ""} runs on ${say.length(seam.lap ?? 0)} past seam 2.`,
    ];
  const gap = seam.gap ?? 0;
  return [
    where,
    gap > 0
      ? `Butt joint with a gap of ${say.length(gap)}: half of it is taken off each seam edge.`
      : "Butt joint without a gap.",
  ];
}

/** How the plate edges are left at the ends. */
function edgeSentences({ part, shape }: Report): string[] {
  if (part.edges === "square") return ["The plate edges stay square to the plate as cut."];
  const say = numbersIn(part.units);
  const { least, greatest } = shape.edgeLossMm;
  if (greatest === 0) return ["The wall is upright: edges cut square to the plate lie in the end planes."];
  const [p, q] = [say.length(least), say.length(greatest)];
  const loss = p === q ? q : `${p} to ${q}`;
  return [
    part.trimAllowance === true
      ? `Edges are cut square and dressed level: ${loss} is added for it at each end.`
      : `Cut square, an edge lacks ${loss} of its end plane at one face: bevel it, or lay it out with the allowance for dressing the edges.`,
  ];
}

/** What can be trusted, in sentences. */
function accuracySentences({ part, accuracy, hand }: Report): string[] {
  const say = numbersIn(part.units);
  const ends = END_NAMES[part.shape];
  const { a, b } = hand.shortfallMm;
  const sentences = [
    `No point of the pattern lies further than ${tiny(accuracy.outlineMm, part.units)} from the exact development; the ends agree with their exact girth within ${tiny(accuracy.rimMm, part.units)} and the area within ${share(accuracy.areaRel)}.`,
  ];
  if (accuracy.wallMm > 0)
    sentences.push(
      part.shape === "square-to-round"
        ? `For a wall with corners the trade’s rule is used; it departs from the exact surface of the wall by up to ${tiny(accuracy.wallMm, part.units)}.`
        : `The surface laid out departs from the exact one of the wall by up to ${tiny(accuracy.wallMm, part.units)}.`,
    );
  sentences.push(
    `The marking table is exact. Laid out instead from plan and height with ${hand.divisions} divisions, stepped chords come out ${say.length(a)} short round the ${ends.a}${b > 0 ? ` and ${say.length(b)} short round the ${ends.b}` : ""}; a point may lie ${say.length(hand.pointMm)} from where it belongs.`,
  );
  return sentences;
}

/** A hundredth of a percent is closer than anybody weighs or paints by; what lies below it is told as that. */
const HUNDREDTHS = 1e4;
const share = (rel: number): string => percent(Math.max(1, Math.ceil(rel * HUNDREDTHS)) / HUNDREDTHS, 2);

/** What the tape shows along the edges of every flat blank, before it is bent; in inches with their fractions, unless it is to be brief. */
export function girthSentence({ part, blanks }: Report, { brief }: { readonly brief: boolean }): string {
  const say = numbersIn(part.units);
  const own = ownOf(blanks);
  const tape = ({ edges }: Blank) =>
    edges
      .filter(({ lengthMm }) => lengthMm > 0)
      .map(({ name, lengthMm }) => `${name}: ${brief ? say.bare(lengthMm) : say.taped(lengthMm)}`)
      .join(", ");
  const which = blanks.length > 1 ? "each blank" : "the blank";
  const all =
    own.length > 1
      ? own.map((blank) => `piece ${blank.piece}, ${tape(blank)}`).join("; ")
      : own.map(tape).join("");
  return `Before bending, tape ${which}: ${all} ${say.unit}.`;
}

type Paragraphs = readonly (readonly string[])[];

/** The plate, the seam and the edges. */
export const cutParagraphs = (report: Report): Paragraphs => [
  blankSentences(report),
  [...seamSentences(report), ...edgeSentences(report)],
];

/** How it was laid out, and how far that can be trusted. */
export const trustParagraphs = (report: Report): Paragraphs =>
  [report.notes, accuracySentences(report)].filter((sentences) => sentences.length > 0);

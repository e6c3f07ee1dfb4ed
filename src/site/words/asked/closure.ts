import { plain } from "../../../drawing/format.ts";
import type { ClosureEnd, ClosureRow } from "../../../forming/answer.ts";
import { takenAtSeamMm } from "../../../forming/closure.ts";
import type { FormingCase } from "../../../forming/case.ts";
import { closureOfShare } from "../../../forming/firstPass.ts";
import { bentSweepRad, leadTip } from "../../../geometry/straightLead.ts";
import { degrees as inDegrees, TURN } from "../../../geometry/angle.ts";
import type { Units } from "../../../geometry/units.ts";
import { closely } from "../girth.ts";
import { degrees, numbersIn, type Numbers } from "../numbers.ts";
import type { Worked } from "../worked.ts";
import { type TableAnswers, withUnitOf } from "./answers.ts";
import { CLOSURE_COLUMNS, closureRow } from "./closureColumns.ts";

/** Figures of a share of the turn: a gap across a large end asks for as many. */
const PLACES = 6;

interface Asked {
  readonly row: ClosureRow;
  readonly item: FormingCase;
  readonly cone: NonNullable<FormingCase["cone"]>;
  readonly say: Numbers;
}

/** How the figures of the closure table were worked out, by column and row. */
export function askedClosure(rows: readonly ClosureRow[], item: FormingCase, units: Units): TableAnswers {
  const { cone } = item;
  if (!cone) return new Map();
  const say = numbersIn(units);
  return new Map(
    CLOSURE_COLUMNS.map(({ id, name }) => [
      id,
      {
        name,
        rows: rows
          .filter((row) => id === "closed" || (id === "share" ? row.share : row[id]) !== null)
          .map((row) => ({ row: closureRow(row), worked: WORKED[id]({ row, item, cone, say }) })),
      },
    ]),
  );
}

const WORKED: Readonly<Record<(typeof CLOSURE_COLUMNS)[number]["id"], (asked: Asked) => Worked>> = {
  closed: ({ row, cone }) => ({
    rule: "How much of the turn the blank sweeps as it is rolled: the flat blank sweeps the sine of the half angle of it already, the finished cone all of it. The window of the first pass is common practice for steep cones, from 65 to 80 % and never above 85 %; for wide cones it is carried over by the share of the bend.",
    numbers: `Flat: sin(${half(cone)}) = ${plain(closureOfShare({ halfAngleRad: cone.halfAngleRad, share: 0 }), 4)}\nThis row: ${plain(row.closed, 4)}${row.mark === null ? "" : `, ${row.mark}`}.`,
    basis: "common practice, no source",
  }),
  share: ({ row, cone }) => ({
    rule: "How much of the finished bend the plate has: the flat blank has none of it, though it is part of a ring. √(closed² − sin² of the half angle) / cos of the half angle.",
    numbers: `Share: √(${plain(row.closed, PLACES)}² − sin(${half(cone)})²) / cos(${half(cone)}) = ${plain(row.share ?? 0, 3)}`,
    basis: "derived here",
  }),
  large: (asked) => end(asked, asked.row.large, asked.cone.largeRadiusMm),
  small: (asked) => end(asked, asked.row.small, asked.cone.smallRadiusMm),
};

const half = ({ halfAngleRad }: Asked["cone"]): string => degrees(inDegrees(halfAngleRad), 5);

/** A figure that cannot be below nought, though its sum would be. */
const noLess = (mm: number): string => (mm === 0 ? "Nought: no inside is left there." : "");

/** Angles that a gap across a large end is reckoned from. [places] */
const ANGLE_PLACES = 5;

/** The sums that a gap with a straight lead is reckoned by, and its own. */
function ledGap(
  { row, cone, say, pieces }: Pick<Asked, "row" | "cone" | "say"> & { readonly pieces: number },
  radiusMm: number,
  inside: string,
): { readonly before: readonly string[]; readonly across: string } {
  const { closed, leadMm } = row;
  const sine = closureOfShare({ halfAngleRad: cone.halfAngleRad, share: 0 });
  const end = { levelMm: radiusMm / closed, sine: sine / closed, sweepRad: (TURN * closed) / pieces, leadMm };
  const bentRad = bentSweepRad(end);
  // A lead as long as the blank leaves nothing to bend.
  const leftMm = Math.min(leadMm, end.sweepRad * end.levelMm);
  const tip = leadTip(end, leftMm);
  const [r, lead, level, along, nearer, deeper] = [
    ...[radiusMm, leftMm, end.levelMm],
    ...[tip.alongMm, tip.inMm, tip.deeperMm],
  ].map((mm) => closely(say, mm));
  const k = plain(closed, PLACES);
  const turned = plain(inDegrees(bentRad), ANGLE_PLACES);
  const psi = plain(inDegrees((leftMm * sine) / radiusMm), ANGLE_PLACES);
  const bend = `√(${k}² − sin(${half(cone)})²)`;
  const out = `(${inside} − ${nearer})`;
  return {
    before: [
      `Radius of the middle so far: ${r} / ${k} = ${level}\u00a0${say.unit}`,
      `Turn of the bent part: 360 × ${k} / ${pieces} − 57.29578 × ${lead} / ${level} = ${turned} degrees`,
      `Lead in the flat blank: 57.29578 × ${lead} × sin(${half(cone)}) / ${r} = ${psi} degrees`,
      `Its end along the tangent: ${r} / sin(${half(cone)}) × sin(${psi}°) = ${along}\u00a0${say.unit}`,
      `Nearer to the axis: ${level} × (1 − cos(${psi}°)) = ${nearer}\u00a0${say.unit}`,
      `Deeper: ${r} / sin(${half(cone)}) × (1 − cos(${psi}°)) × ${bend} / ${k} = ${deeper}\u00a0${say.unit}`,
    ],
    across: `√((${out} × cos(${turned}°) − ${along} × sin(${turned}°) − ${inside})² + (${out} × sin(${turned}°) + ${along} × cos(${turned}°))² + ${deeper}²)`,
  };
}

function end({ row, item, cone, say }: Asked, told: ClosureEnd | null, radiusMm: number): Worked {
  const { thicknessMm, edges, pieces } = item;
  const seamMm = takenAtSeamMm(item);
  const k = plain(row.closed, PLACES);
  const [r, t, inside] = [radiusMm, thicknessMm, told?.insideLevelRadiusMm ?? 0].map((mm) =>
    closely(say, mm),
  );
  const bend = `√(${k}² − sin(${half(cone)})²)`;
  const turn = pieces === 1 ? `180° × (1 − ${k})` : `180° × ${k} / ${pieces}`;
  const led = row.leadMm > 0 ? ledGap({ row, cone, say, pieces }, radiusMm, inside ?? "") : null;
  const weld =
    seamMm === 0
      ? ""
      : ` ${(pieces === 1) === seamMm > 0 ? "+" : "−"} ${closely(say, Math.abs(seamMm))} × cos(${turn})`;
  const sum = (name: string, left: string, mm: number, nought = noLess(mm)): string =>
    mm === 0 ? `${name}: ${nought}` : `${name}: ${left} = ${withUnitOf(say, mm)}`;
  const lapped = seamMm < 0 ? "Nought: the seam edges lap there." : undefined;
  return {
    rule: `Rolled so far the blank is part of a cone whose end is as long and wider: its radius r grows to r / closed, and its wall leans less. Template level lies in the plane of the end, template square stands square to the lines; both go inside, so that ${edges === "square" ? "half the thickness × the cosine of the lean is taken off where the edges are square" : "half the thickness, over the cosine of the lean where the edges are level, is taken off"}. The gap is straight across from inside corner to inside corner${seamMm === 0 ? "" : seamMm > 0 ? ", with what is left for the weld" : ", the lap reckoned in"}.${led ? ` The first pass leaves a straight lead of ${say.length(row.leadMm)} at one seam edge, as far as the bending roll stands from the pinch: it lies in the plane that touches the bent part where the bend ends. The gap is reckoned with it, the templates hold beside it.` : ""}`,
    numbers: [
      `Middle radius r of the finished end: ${r}\u00a0${say.unit}. Closed: ${k}.`,
      sum(
        "Template level",
        edges === "square"
          ? `${r} / ${k} − ${t} / 2 × ${bend} / ${k}`
          : `${r} / ${k} − ${t} / 2 × ${k} / ${bend}`,
        told?.insideLevelRadiusMm ?? 0,
      ),
      sum("Template square", `${r} / ${bend} − ${t} / 2`, told?.insideSquareRadiusMm ?? 0),
      ...(led?.before ?? []),
      sum("Gap", `${led?.across ?? `2 × ${inside} × sin(${turn})`}${weld}`, told?.insideGapMm ?? 0, lapped),
    ].join("\n"),
    basis: "derived here",
  };
}

import { strengthText, unitName } from "../../drawing/format.ts";
import type { Units } from "../../geometry/units.ts";
import type { Report } from "../../report/report.ts";
import type { Inspection } from "../../forming/inspection.ts";
import { degrees, numbersIn, type Numbers } from "../words/numbers.ts";
import { bentFrom } from "../words/shapes.ts";

/** Sentences of the work sheet that its page and its PDF both have. */

export const LOT_HEADING = "The lot: a line for every blank";

/** Under the table of a lot that has more blanks than the table has lines, and of any other. */
export const lotNote = (blanks: number, lines: number, units: Units): string =>
  [
    ...(blanks > lines
      ? [`${blanks - lines} more than there are lines: copy this sheet and number on from ${lines + 1}.`]
      : []),
    `Lengths in ${unitName(units)}.`,
    "A blank whose gap differs from the others’ at the same setting is of stronger or weaker plate: correct it on its own.",
  ].join(" ");

/** Under the picture of the blank in hand. */
export const blankNote = (faceUp: string, pieces: number, zoned: boolean): string =>
  [
    `As it lies with its ${faceUp} face up: seam edges, element lines by their numbers, both ends${zoned ? ", chain-dotted where each further zone begins" : ""}.`,
    ...(pieces > 1 ? ["One piece is shown."] : []),
    "The arrow shows which end is above as the part is drawn.",
    "Mark seam 1 and seam 2 on the plate itself. Sizes and marking table are on the part’s own sheets.",
  ].join(" ");

/** In the place of a limit that nothing gives. */
const NO_LIMIT = "none given";

/** Has any row of an inspection a limit? */
export const isLimited = ({ rows }: Inspection): boolean =>
  rows.some(({ withinMm, withinDeg }) => withinMm !== null || withinDeg !== null);

/** What a row allows to either side; of a fault, which has one side, at most. */
export const withinWords = (
  { nominalMm, withinMm, withinDeg }: Inspection["rows"][number],
  say: Pick<Numbers, "column">,
): string =>
  withinDeg !== null
    ? `± ${degrees(withinDeg, 2)}`
    : withinMm === null
      ? NO_LIMIT
      : nominalMm === 0
        ? say.column(withinMm)
        : `± ${say.column(withinMm)}`;

/** What the range is that settings speak of. */
export const WINDOW_NOTE = "The window is the range in which the first pass may end.";

/** Under the picture of the bend lines. */
export const hitsNote = ({ shape, seam }: Pick<Report["part"], "shape" | "seam">): string =>
  `Solid: bent, measured from the ${bentFrom(shape)}. Dashed: not bent.${seam?.joint === "lap" ? " Chain-dotted: the lap line, to which seam edge 1 comes; not bent either." : ""} The lines of the hits, numbered on their own: the marking table of the part’s page numbers the lines of the layout.`;

/** Where both numberings stand side by side. */
export const BESIDE_NOTE =
  "Beside each bend line: the two lines of the marking table that it lies between, or the one that it lies on.";

/** How the letters of footnotes are read. */
export const BASIS_NOTE = "Basis, by the letter behind a step’s title (how it is done) or behind a figure:";

type Springback = NonNullable<Report["forming"]["springback"]>;

/** Under the curve of springback. */
export function springbackNote({ places, yieldMPa, strongYieldMPa, rule }: Springback, units: Units): string {
  const say = numbersIn(units);
  const all = places.map(
    ({ place, loadedMm, freeMm }) => `${place} ${say.length(loadedMm)} for ${say.length(freeMm)}`,
  );
  return [
    `Bend to under load, middle radius square to the element: ${all.join("; ")}.`,
    strongYieldMPa === null
      ? `Reckoned with ${strengthText(yieldMPa, units)} yield, the certificate’s.`
      : `Reckoned with ${strengthText(yieldMPa, units)} yield, the least of the grade. The hatched band is plate stronger than its grade says, up to ${strengthText(strongYieldMPa, units)}; it springs back further.`,
    `Formula: ${rule}.`,
  ].join(" ");
}

/** Under the plot of curvature round the part. */
export const evennessNote = (reason: string, rolled: boolean): string =>
  rolled ? reason : "Radius square to the element, all round.";

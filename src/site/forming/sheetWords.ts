import { strengthText, unitName } from "../../drawing/format.ts";
import type { Units } from "../../geometry/units.ts";
import type { Inspection } from "../../forming/inspection.ts";
import type { Report } from "../../report/report.ts";
import { degrees, numbersIn } from "../words/numbers.ts";
import type { Lot } from "./lot.ts";
import { bentFrom } from "../words/shapes.ts";

/** Sentences of the work sheet that its page and its PDF both have. */

export const LOT_HEADING = "The lot: a line for every blank";

/** Under the table of a lot that has more blanks than the table has lines, and of any other. */
export const lotNote = ({ blanks, names, next, groups }: Lot, units: Units): string =>
  [
    ...(blanks > names.length
      ? [`${blanks - names.length} more than there are lines: copy this sheet and go on from ${next}.`]
      : []),
    `Lengths in ${unitName(units)}.`,
    ...(groups.some(({ columns }) => columns.includes("drop end"))
      ? ["Drop end and fixed end: what the scales there show."]
      : []),
    "A blank whose gap differs from the others’ at the same setting is of stronger or weaker plate: correct it on its own.",
  ].join(" ");

/** Under the picture of the blank in hand. */
export function blankNote({ part, blanks, hand }: Report, zones: string): string {
  const [blank] = blanks;
  const last = hand.rows.findLast(({ piece }) => piece === blank?.piece);
  return [
    `As it lies with its ${blank?.faceUp ?? "inside"} face up: seam edges, element lines by their numbers, both ends${zones === "" ? "" : ", chain-dotted where each further zone begins"}.`,
    ...(zones === "" ? [] : [zones]),
    ...(part.seam?.joint === "lap" && last ? [`Line ${last.number}, beside seam 2, is the lap line.`] : []),
    ...(blanks.length > 1 ? ["One piece is shown."] : []),
    "The arrow shows which end is above as the part is drawn.",
    "Mark seam 1 and seam 2 on the plate itself. Sizes and marking table are on the part’s own sheets.",
  ].join(" ");
}

/** In the place of a limit that the tolerance class does not give. */
const NO_LIMIT = "none given: the foreman decides";

/** Heads of the columns of limits and of what is ticked. Without a class limits are written in. */
export const limitHead = (toleranceClass: Inspection["toleranceClass"]): string =>
  toleranceClass === null ? "Limits, from the drawing" : "Limits";
export const PASSES = "Passes";

/** Is there neither a class nor another rule that gives a row's limit, so that it is written in? */
export const isWrittenIn = (
  { withinMm, withinDeg }: Inspection["rows"][number],
  toleranceClass: Inspection["toleranceClass"],
): boolean => toleranceClass === null && withinMm === null && withinDeg === null;

/** From the least to the most that passes, and how far that is to either side; what ought not to be there has a most alone. */
export function limitWords(
  { nominalMm, withinMm, nominalDeg, withinDeg }: Inspection["rows"][number],
  units: Units,
): { readonly range: string; readonly within: string } {
  const say = numbersIn(units);
  if (withinDeg !== null && nominalDeg !== null)
    return {
      range: `${degrees(nominalDeg - withinDeg, 2)} to ${degrees(nominalDeg + withinDeg, 2)}`,
      within: `± ${degrees(withinDeg, 2)}`,
    };
  if (withinMm === null) return { range: NO_LIMIT, within: "" };
  return nominalMm === 0
    ? { range: `at most ${say.column(withinMm)}`, within: "" }
    : {
        range: `${say.column(nominalMm - withinMm)} to ${say.column(nominalMm + withinMm)}`,
        within: `± ${say.column(withinMm)}`,
      };
}

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

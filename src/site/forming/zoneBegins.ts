import type { RollZone } from "../../forming/zones.ts";
import { sayIn } from "../../forming/say.ts";
import type { Report } from "../../report/report.ts";

/** Where each further zone begins on the blank, with its name; nothing where one setting serves all round. */
export const zoneBegins = (zones: readonly Pick<RollZone, "begins">[]) =>
  zones.flatMap(({ begins }, i) => (begins ? [{ ...begins, name: `zone ${i + 1}` }] : []));

const FULL_TURN_DEG = 360;
/** Nearer than this nobody scribes two lines. [degrees] */
const ON_LINE_DEG = 0.05;

/** Round from one direction to another, counter-clockwise. [degrees] */
const onward = (fromDeg: number, toDeg: number): number =>
  (((toDeg - fromDeg) % FULL_TURN_DEG) + FULL_TURN_DEG) % FULL_TURN_DEG;

/** "on line 5" or "between lines 5 and 6": where a direction lies among a piece's element lines; empty where it has none. */
function amongLines({ hand }: Report, piece: number, deg: number): string {
  const rows = hand.rows.filter((row) => row.piece === piece);
  const [first] = rows;
  if (!first) return "";
  const at = onward(first.planDeg, deg);
  const near = rows.find(({ planDeg }) => {
    const by = onward(planDeg, deg);
    return Math.min(by, FULL_TURN_DEG - by) < ON_LINE_DEG;
  });
  if (near) return ` (on line ${near.number})`;
  const before = rows.findLast(
    ({ planDeg }, i) => i < rows.length - 1 && onward(first.planDeg, planDeg) < at,
  );
  return before ? ` (between lines ${before.number} and ${before.number + 1})` : "";
}

/** Where to mark the zones, in a sentence: along both edges from seam 1, and among the element lines; empty for one zone. */
export function zoneMarksSaid(
  report: Report,
  zones: readonly Pick<RollZone, "begins" | "fromDeg">[],
): string {
  if (zones.length < 2) return "";
  const say = sayIn(report.part.units);
  const several = report.blanks.length > 1;
  const all = zones.map(({ begins, fromDeg }, i) => {
    if (!begins) return `${i + 1} at seam 1${several ? " of piece 1" : ""}`;
    const { piece, largeMm, smallMm } = begins;
    return `${i + 1} at ${say.tape(largeMm)} and ${say.tape(smallMm)}${several ? ` of piece ${piece}` : ""}${amongLines(report, piece, fromDeg)}`;
  });
  return `Zones begin, along the large and the small edge from seam 1: ${all.join("; ")}.`;
}

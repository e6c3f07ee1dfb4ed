import { planHundredths } from "../geometry/angle.ts";
import type { Refusal } from "../shapes/refusal.ts";
import type { Part } from "../shapes/part.ts";
import { MAX_LENGTH_MM, MIN_SIZE_MM, MIN_THICKNESS_MM } from "../shapes/limits.ts";
import { morePiecesThan } from "../shapes/pieces.ts";
import { roundedIn, shown } from "../shapes/words.ts";

/** Asks the core about a part that is nearly the one refused. */
export interface Trials<P extends Part> {
  /** Is there a sound surface to lay out? */
  readonly layable: (part: P) => boolean;
  /** Are there blanks too? */
  readonly cuttable: (part: P) => boolean;
}

/** Halvings between a value that goes and one that does not: a thousandth part for blanks, far below what is shown for surfaces. */
const COARSE = 10;
const FINE = 40;

/** The last value that goes on the way from one that goes to one that does not. */
function lastGood(goes: (value: number) => boolean, good: number, bad: number, steps: number): number {
  let [near, far] = [good, bad];
  for (let i = 0; i < steps; i++) {
    const middle = (near + far) / 2;
    if (goes(middle)) near = middle;
    else far = middle;
  }
  return near;
}

/**
 * The same refusals with remedies that were tried: a number that is named was put in and went. Where no number goes, none
 * is named.
 */
export function mended<P extends Part>(part: P, issues: readonly Refusal[], trials: Trials<P>): Refusal[] {
  return issues.map(({ path, problem, remedy, otherwise }) => {
    const ways = waysOut(part, path.join("."), trials);
    const rest = otherwise === undefined ? [] : [otherwise];
    return { path, problem, remedy: ways.length > 0 ? [...ways, ...rest].join(", or ") : remedy };
  });
}

function waysOut<P extends Part>(part: P, field: string, trials: Trials<P>): string[] {
  switch (field) {
    case "thickness":
      return thinner(part, trials);
    case "slant":
      return longer(part, trials);
    case "seam.lap":
    case "pieces":
      // A surface without blanks; what is wrong with the keys themselves has its own remedy.
      return trials.layable(part)
        ? [...movedSeam(part, trials), ...morePieces(part, trials), ...narrowerLap(part, trials)]
        : [];
    case "trimAllowance":
      return seamElsewhere(part, trials);
    default:
      return [];
  }
}

/** Plan angles at which a seam is tried, the least turned from where it lies first. [degrees] */
const TURNS = [30, -30, 45, -45, 60, -60, 90, -90, 120, -120, 135, -135, 150, -150, 180];

/** Where an edge runs nearly along the seam an allowance has no corner to end in; elsewhere round the part it may. */
function seamElsewhere<P extends Part>(part: P, { layable, cuttable }: Trials<P>): string[] {
  if (!layable(part)) return [];
  const from = part.seam?.at ?? 0;
  const at = TURNS.map((turn) => planHundredths(from + turn)).find((angle) =>
    cuttable({ ...part, seam: { ...part.seam, at: angle } }),
  );
  return at === undefined ? [] : [`move the seam: seam.at: ${at}`];
}

function thinner<P extends Part>(part: P, { layable, cuttable }: Trials<P>): string[] {
  const goes = (thickness: number) => layable({ ...part, thickness });
  if (part.thickness <= MIN_THICKNESS_MM || !goes(MIN_THICKNESS_MM)) return [];
  const most = roundedIn(lastGood(goes, MIN_THICKNESS_MM, part.thickness, FINE), part.units, "down");
  // Sound as a surface is not enough: lap, gap or allowance may refuse the blanks all the same.
  return most >= MIN_THICKNESS_MM && cuttable({ ...part, thickness: most })
    ? [`use plate of at most ${shown(most, part.units)}`]
    : [];
}

function longer<P extends Part>(part: P, { layable, cuttable }: Trials<P>): string[] {
  const { slant } = part as { slant?: number };
  if (slant === undefined) return [];
  const goes = (value: number) => layable({ ...part, slant: value });
  let enough = 2 * slant;
  while (enough < MAX_LENGTH_MM && !goes(enough)) enough *= 2;
  if (enough > MAX_LENGTH_MM || !goes(enough)) return [];
  const least = roundedIn(lastGood(goes, enough, slant, FINE), part.units, "up");
  return cuttable({ ...part, slant: least }) ? [`give at least ${shown(least, part.units)}`] : [];
}

function narrowerLap<P extends Part>(part: P, { cuttable }: Trials<P>): string[] {
  const wide = part.seam?.lap;
  if (wide === undefined) return [];
  const goes = (value: number) => cuttable({ ...part, seam: { ...part.seam, lap: value } });
  const least = wide / 2 ** COARSE;
  if (!goes(Math.max(least, MIN_SIZE_MM))) return [];
  const most = roundedIn(lastGood(goes, least, wide, COARSE), part.units, "down");
  return most > 0 && goes(most) ? [`make the lap at most ${shown(most, part.units)}`] : [];
}

/** In a conical corner a lap has nowhere to go that the middle of a side would give it. */
function movedSeam<P extends Part>(part: P, { cuttable }: Trials<P>): string[] {
  if (part.shape !== "square-to-round" || part.seam?.at === undefined) return [];
  const seam = { ...part.seam };
  delete seam.at;
  return cuttable({ ...part, seam }) ? ["move the seam to the middle of a side: leave out seam.at"] : [];
}

function morePieces<P extends Part>(part: P, { cuttable }: Trials<P>): string[] {
  const pieces = morePiecesThan(part.shape, part.pieces ?? 1).find((more) =>
    cuttable({ ...part, pieces: more }),
  );
  return pieces === undefined ? [] : [`split the part in ${pieces} pieces`];
}

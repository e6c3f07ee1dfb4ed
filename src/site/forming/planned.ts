import type { Units } from "../../drawing/format.ts";
import { number, sayIn } from "../../forming/say.ts";
import type { NoteBox } from "../../forming/sheet/step.ts";

/** What the plan has beside a line to write on, in the unit of its box. */
export function plannedWords(planned: number, unit: string, units: Units, inShop?: Units): string {
  const say = sayIn(units, inShop);
  return unit === "kN" ? say.force(planned) : unit === "°" ? `${number(planned, 1)}°` : say.shops(planned);
}

/** What is added to the reading at 0, or taken off it, with its sign: the same beside every sum. */
export const addedWords = (planned: number, unit: string, units: Units): string =>
  `${planned < 0 ? "−" : "+"} ${plannedWords(Math.abs(planned), unit, units)}`;

/** Room for what comes on top of what is planned, or off it. */
export const carriedBlank = ({ carried }: NoteBox): string => (carried ? " ± ____" : "");

/** A line to write on says by itself that something is set or measured. */
export const boxName = (label: string): string => label.replace(/, (?:set|measured)$/, "");

/** Before the line for the reading at 0 that something is added to. */
export const sumStart = (label: string): string => `${boxName(label)}: at 0`;

/** Is what is written the sum of a reading and what the plan has? */
export const isSum = ({ planned, onto }: NoteBox): boolean => planned !== undefined && onto !== undefined;

const FEW_BOXES = 4;
/** A row of zone's boxes: both bearings and the large edge. */
const ROW = 3;
/** A row of a further raise: both bearings, the large edge, and what it left. */
const FOUR = 4;

interface Boxed {
  readonly id: string;
  readonly toNote: readonly NoteBox[];
}

/**
 * How the lines to write on stand, each a class of its step: "sums" below the words, in one row; "zone-sums" the same, a
 * row a zone; "fours" below the words, a row a further raise: both bearings, the large edge, what it left; "pairs" below the words, two in a row; "wide" beside the words, large and small edge in one row.
 */
export const GRIDS = ["sums", "zone-sums", "fours", "pairs", "wide"] as const;
export type Grid = (typeof GRIDS)[number];

/** How a step's lines to write on stand; null where one below the other beside the words. */
export function gridOf({ id, toNote }: Boxed): Grid | null {
  if (toNote.some(({ onto }) => onto)) return toNote.length > ROW ? "zone-sums" : "sums";
  // The closing has words enough for its lines to stand beside them.
  if (toNote.length <= FEW_BOXES || id === "close") return null;
  if (id === "first-correct" && toNote.length % FOUR === 0) return "fours";
  return id.endsWith("-raise") ? "wide" : "pairs";
}

/** What stands before a line to write on that nothing is planned for. */
export function openBox(label: string, unit: string, units: Units): string {
  const here = unit === "mm" ? units : unit === "kN" && units === "in" ? "short tons" : unit;
  return `${boxName(label)}${unit === "-" ? "" : `, ${here}`}`;
}

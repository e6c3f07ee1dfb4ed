import type { Units } from "../../geometry/units.ts";
import type { ByHand } from "../byHand.ts";
import { DERIVED } from "../judge.ts";
import type { ZoneByHand } from "../zoneByHand.ts";
import type { ModelTable } from "./modelTable.ts";

/** A number of the work sheet with its unit and where it comes from. Lengths in mm, angles in degrees. */
export interface Figure {
  readonly label: string;
  readonly value: number;
  /** "mm", "°", "%", "kN", "kN/m", "MPa" or "-". */
  readonly unit: string;
  /** A source id, "common practice, no source", or "derived here". */
  readonly basis: string;
  /** A setting on a machine's scale is a decimal; what a tape or a template tells has its fraction beside it in inches. */
  readonly read?: "scale" | "tape";
  /** The shop's units where they are others than the part's and the number is one of the shop's, as a die: told in them first. */
  readonly inShop?: Units;
}

/** A length of the work sheet. [mm] */
export const mm = (label: string, value: number, basis: string): Figure => ({
  label,
  value,
  unit: "mm",
  basis,
});

/** The same, where a tape or a template tells it. [mm] */
export const taped = (label: string, value: number, basis: string): Figure => ({
  ...mm(label, value, basis),
  read: "tape",
});

/** A setting on a machine's scale, which is reckoned here. [mm] */
export const scaled = (label: string, value: number): Figure => ({
  ...mm(label, value, DERIVED),
  read: "scale",
});

/** A box on the sheet, to write down what was really set or measured. */
export interface NoteBox {
  readonly label: string;
  readonly unit: string;
  /** What the plan has there, in the unit of the box, to stand beside what it came to; not present where the plan has no one number. */
  readonly planned?: number;
  /** As for a figure. */
  readonly inShop?: Units;
  /** The scale shows more than what is planned: its reading here is written first, then the sum of both. */
  readonly onto?: "reading at 0";
  /** What the first pass taught comes on top of what is planned, or off it: room for that, and for the sum. */
  readonly carried?: true;
}

/** The parts of the work sheet, in the order of the work. */
type Phase =
  | "set-up"
  | "first pass"
  | "turning the job round"
  | "second pass"
  | "closing"
  | "bending"
  | "tack and re-round"
  | "inspection";

/** One thing to do. */
export interface PlanStep {
  /** Fixed word for the step, e.g. "align". */
  readonly id: string;
  readonly phase: Phase;
  readonly title: string;
  /** What to do, in sentences with this part's own numbers. */
  readonly text: string;
  readonly figures: readonly Figure[];
  /** What can hurt or spoil at this very step. */
  readonly cautions: readonly string[];
  readonly toNote: readonly NoteBox[];
  /** For a correction without a screen: what came out, and by how much more to raise. */
  readonly byHand?: readonly ByHand[];
  /** The same where the skin is curved unevenly, for every setting. */
  readonly byHandZones?: readonly ZoneByHand[];
  /** What the model asks for what the first pass may leave, to carry its correction over to the second without a screen. */
  readonly model?: readonly ModelTable[];
  /** One worked with this part's own numbers, for another sheet: its own paragraph has no room. */
  readonly example?: string;
  /** Zones, counted from 1 (one goes all round), whose setting by the plan this part's own trials overrule here. */
  readonly overruled?: readonly number[];
  /** Where the way of doing it comes from. */
  readonly basis: string;
}

/** A step with its place in the sequence, from 1. */
export interface NumberedStep extends PlanStep {
  readonly number: number;
}

/** Points from one step's words at another of the same sheet, before anybody knows its number. */
export const stepNamed = (id: string): string => `step {${id}}`;

/**
 * Steps in their order; those that do not arise are left out.
 *
 * @throws where the words of a step point at one that is not on the sheet
 */
export function numbered(steps: readonly (PlanStep | null)[]): NumberedStep[] {
  const all = steps.filter((step) => step !== null);
  const numberOf = (id: string): string => {
    const at = all.findIndex((step) => step.id === id);
    if (at < 0) throw new Error(`a step points at “${id}”, which is not on its sheet`);
    return String(at + 1);
  };
  return all.map((step, i) => ({
    number: i + 1,
    ...step,
    text: step.text.replaceAll(/\{([a-z-]+)\}/g, (_, id: string) => numberOf(id)),
  }));
}

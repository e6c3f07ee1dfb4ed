import { NO_COMMA, readLength } from "../../input/length.ts";
import type { Units } from "../../input/units.ts";

/** A part of the form by its name. */
export const find = <T extends Element>(root: Element, name: string, kind: new () => T): T => {
  const found = root.querySelector(`[data-trial="${name}"]`);
  if (!(found instanceof kind)) throw new RangeError(`trial form: ${name}`);
  return found;
};

/** Steeper than any slide, wider than any gap: a slip of the keys. [mm] */
export const LARGEST_MM = 100_000;

/** As it is typed, with a plain minus. */
const tidied = (text: string): string => text.trim().replace(/^[−–]\s*/, "-");

const within = (value: number, [least, most]: readonly [number, number]): number | undefined =>
  Number.isFinite(value) && value >= least && value <= most ? value : undefined;

/** A number as it is typed, any minus sign allowed; undefined where it is none that can be meant. */
export function numberIn(text: string, range: readonly [number, number]): number | undefined {
  return text.trim() === "" ? undefined : within(Number(tidied(text)), range);
}

/** A length as a part file has it, fractions and feet too; undefined where it is none that can be meant. [mm] */
export function lengthIn(text: string, units: Units, range: readonly [number, number]): number | undefined {
  const length = readLength(tidied(text), units);
  return length.kind === "read" ? within(length.value, range) : undefined;
}

/** What is wrong with what is typed, as a sentence; where that holds a comma, with what to write instead, as at any field of a part. */
export const wrongWith = (sentence: string, ...texts: readonly string[]): string =>
  texts.some((text) => text.includes(",")) ? `${sentence.replace(/\.$/, "")}; ${NO_COMMA}.` : sentence;

/** How a length may be typed. */
export const lengthHow = (units: Units): string =>
  units === "in" ? "inches, as in 12.5, 12-1/2 or 1' 0-1/2\"" : "millimetres, as in 12.5";

import type { Typed, TypedGroup } from "../../input/typed.ts";
import { asCarried, type Carried } from "./ownTrials.ts";

/** A part with the name of its file, as it goes from hand to hand. */
export interface NamedTyped {
  readonly name: string;
  readonly part: TypedGroup;
  /** Trials of it that go with it; a link carries none. */
  readonly trials?: Carried | undefined;
  /** Has it its name from the title that was typed here? One from a file or from whoever called it so stays. */
  readonly isTitled?: boolean;
}

/** Deeper than any file goes. */
const DEEPEST = 6;

function isTyped(value: unknown, deep: number): value is Typed {
  if (typeof value === "string" || typeof value === "boolean") return true;
  if (typeof value !== "object" || value === null || deep > DEEPEST) return false;
  return Object.values(value).every((one) => isTyped(one, deep + 1));
}

const isGroup = (value: unknown): value is TypedGroup =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** A group as typed, from what a browser kept. */
export const asTypedGroup = (value: unknown): TypedGroup | undefined =>
  isGroup(value) && isTyped(value, 0) ? value : undefined;

/** The states of a part, from what a browser kept: earlier versions kept the last one alone. */
export function asDraft(value: unknown): readonly NamedTyped[] | undefined {
  const states: readonly unknown[] = Array.isArray(value) ? value : [value];
  return states.length > 0 && states.every(isNamed) ? states.map(withSoundTrials) : undefined;
}

/** A part with its trials as far as they are trials. */
export function withSoundTrials({ name, part, trials, isTitled }: NamedTyped): NamedTyped {
  const carried = asCarried(trials);
  return { name, part, ...(carried && { trials: carried }), ...(isTitled === true && { isTitled }) };
}

export const isNamed = (value: unknown): value is NamedTyped =>
  isGroup(value) && typeof value["name"] === "string" && asTypedGroup(value["part"]) !== undefined;

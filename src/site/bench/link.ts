import type { Typed, TypedGroup } from "../../input/typed.ts";
import { asCarried, type Carried } from "./ownTrials.ts";

/** A part with the name of its file, as it goes from hand to hand. */
export interface NamedTyped {
  readonly name: string;
  readonly part: TypedGroup;
  /** Trials of it that go with it; a link carries none. */
  readonly trials?: Carried | undefined;
}

export const MARK = "#part=";
/** Longer than any part; an address beyond it was not made here. */
export const LONGEST = 20_000;
const DEEPEST = 6;

/** The whole part in the address behind #, which a browser sends to nobody. */
export const linkOf = ({ name, part }: NamedTyped): string =>
  MARK + encodeURIComponent(JSON.stringify({ name, part }));

export type LinkReading =
  | { readonly kind: "none" }
  | { readonly kind: "read"; readonly value: NamedTyped }
  | { readonly kind: "broken"; readonly why: string };

/** The part that an address carries; what is wrong with one that carries none is told, and nothing else happens. */
export function partInLink(hash: string): LinkReading {
  if (!hash.startsWith(MARK)) return { kind: "none" };
  const broken = (why: string): LinkReading => ({ kind: "broken", why });
  if (hash.length > LONGEST) return broken("it is far longer than any part");
  let data: unknown;
  try {
    data = JSON.parse(decodeURIComponent(hash.slice(MARK.length)));
  } catch {
    return broken("it was cut off or changed on its way");
  }
  if (
    !isGroup(data) ||
    typeof data["name"] !== "string" ||
    !isGroup(data["part"]) ||
    !isTyped(data["part"], 0)
  )
    return broken("it holds no part");
  return { kind: "read", value: { name: data["name"], part: data["part"] } };
}

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
export function withSoundTrials({ name, part, trials }: NamedTyped): NamedTyped {
  const carried = asCarried(trials);
  return { name, part, ...(carried && { trials: carried }) };
}
const isNamed = (value: unknown): value is NamedTyped =>
  isGroup(value) && typeof value["name"] === "string" && asTypedGroup(value["part"]) !== undefined;

import { limitsOf, type Schema } from "./introspect.ts";
import { shown } from "./reading.ts";
import { remedyFor } from "./remedy.ts";
import type { Units } from "./units.ts";

/** Texts that may be no longer than this are names and titles: one line. */
const MAX_ONE_LINE = 200;

/** Signs that leave nothing to see: a title of them alone would stand empty on every page. */
const SHOWN = /[^\s\p{Cc}\p{Cf}\p{Mn}\u115f\u1160\u2800\u3164\uffa0]/u;
/** Control signs and those that turn the way of writing about: they would let a text look like another. */
const UNPRINTABLE = /[^\P{Cc}\n\t]|\p{Cs}|[\u202a-\u202e\u2066-\u2069\ufffe\uffff]/u;

/** What keeps a text from being printed as it is. */
export function textProblems(
  text: string,
  { schema, units }: { readonly schema: Schema; readonly units: Units },
): { readonly problem: string; readonly remedy: string }[] {
  const { max } = limitsOf(schema);
  const oneLine = max && max.value <= MAX_ONE_LINE && text.includes("\n");
  const signs =
    text !== "" && !SHOWN.test(text)
      ? [{ problem: "shows nothing", remedy: remedyFor(schema, units) }]
      : UNPRINTABLE.test(text)
        ? [{ problem: `${shown(text)} holds signs that cannot be printed`, remedy: "take them out" }]
        : [];
  return oneLine
    ? [...signs, { problem: "runs over more than one line", remedy: "keep it to one line" }]
    : signs;
}

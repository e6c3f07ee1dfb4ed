import { isList, typedAt, typedWith, type Typed, type TypedGroup } from "../../input/typed.ts";
import type { Units } from "../../input/units.ts";
import type { FieldItem } from "./form.ts";

/** A number without a unit of its own: 900, 12-3/8, -.5 */
const BARE = /^[-+]?[\d./][\d\s./-]*$/;
/** From here on "in" stays where it is said: a plate or a die as large as that is asked about without. [in] */
const SAID_IN = 3;
/** Words for a force whose size hangs on the units of the file, each with the one that says the same in any. */
const TONS: Readonly<Record<Units, readonly [RegExp, string]>> = {
  in: [/(\d)\s*ton(?:s|fs?|-?\s?force)?\.?$/i, "$1 US tons"],
  mm: [/(\d)\s*t\.?$/i, "$1 tonnes"],
};

/**
 * The same part or shop in other units: every size that stood there as a bare number now says which unit it was
 * typed in, so that no size changes and nothing is rounded; one that already says the new unit needs to no more. A force in
 * tons says in which.
 */
export function inOtherUnits(part: TypedGroup, units: Units, fields: readonly FieldItem[]): TypedGroup {
  const before: Units = part["units"] === "in" ? "in" : "mm";
  let now: TypedGroup = { ...part, units };
  if (before === units) return now;
  for (const { kind, path } of fields) {
    const how = kind === "length" || kind === "thickness" || kind === "lengths" ? sizeIn : forceIn;
    if (how === forceIn && path.at(-1) !== "force") continue;
    const typed = typedAt(now, path);
    if (typed !== undefined) now = typedWith(now, path, eachText(typed, how(units, before))) as TypedGroup;
  }
  return now;
}

const eachText = (typed: Typed, write: (text: string) => string): Typed => {
  if (typeof typed === "string") return write(typed.trim());
  return typeof typed === "object" && isList(typed) ? typed.map((one) => eachText(one, write)) : typed;
};

const sizeIn =
  (units: Units, before: Units) =>
  (text: string): string => {
    if (BARE.test(text)) return `${text} ${before}`;
    const own = text.replace(new RegExp(`\\s*${units}$`), "");
    return BARE.test(own) && !(Number(own) >= SAID_IN && units === "in") ? own : text;
  };

const forceIn =
  (_: Units, before: Units) =>
  (text: string): string =>
    text.replace(...TONS[before]);

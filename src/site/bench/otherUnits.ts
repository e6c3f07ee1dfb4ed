import { typedAt, typedWith, type TypedGroup } from "../../input/typed.ts";
import type { Units } from "../../input/units.ts";
import type { FieldItem } from "./form.ts";

/** A number without a unit of its own: 900, 12-3/8, -.5 */
const BARE = /^[-+]?[\d./][\d\s./-]*$/;

/**
 * The same part in a drawing of other units: every size that stood there as a bare number now says which unit it was
 * typed in, so that no size changes and nothing is rounded; one that already says the new unit needs to no more.
 */
export function inOtherUnits(part: TypedGroup, units: Units, fields: readonly FieldItem[]): TypedGroup {
  const before: Units = part["units"] === "in" ? "in" : "mm";
  let now: TypedGroup = { ...part, units };
  if (before === units) return now;
  for (const { kind, path } of fields) {
    if (kind !== "length" && kind !== "thickness") continue;
    const text = typedAt(now, path);
    if (typeof text !== "string") continue;
    const own = text.trim().replace(new RegExp(`\\s*${units}$`), "");
    if (BARE.test(text.trim())) now = typedWith(now, path, `${text.trim()} ${before}`) as TypedGroup;
    else if (BARE.test(own)) now = typedWith(now, path, own) as TypedGroup;
  }
  return now;
}

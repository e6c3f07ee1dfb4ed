import type { Quantity } from "../shapes/fields.ts";
import type { Catalogue } from "../shapes/catalogue.ts";
import type { Limits } from "./introspect.ts";
import type { Outline } from "./outline.ts";
import { filledIn, isList, type Typed, type TypedGroup } from "./typed.ts";

/** Neither sign nor decimals where there are none, and few enough digits: every reader takes it for the same number. */
const NUMBER = /^-?\d{1,9}(?:\.\d{1,9})?$/;
/** What a bare number is read as it stands: a size in millimetres, degrees, or a number without a unit. */
const AS_IT_STANDS = new Set<Quantity | undefined>([undefined, "length", "thickness", "angle", "direction"]);
/** One line of letters, digits and signs of which each shows and prints. */
const TEXT = /^[ -~¡-¬®-ſ]+$/;

/**
 * Reads what was typed where all of it is right and written in the plainest way: sizes as decimal numbers of millimetres,
 * words and names as they stand in their lists. What it reads, the reader of files reads alike; of everything else, right
 * or wrong, it knows nothing.
 *
 * @returns undefined where anything is missing, wrong, or written in another way
 */
export function readPlainly(outline: Outline, typed: TypedGroup, { materials }: Catalogue): unknown {
  return typed["units"] === "mm" ? valueOf(outline, typed, materials) : undefined;
}

type Materials = Catalogue["materials"];

function valueOf(outline: Outline, typed: Typed, materials: Materials): unknown {
  if (outline.ruled) return undefined;
  switch (outline.kind) {
    case "group":
      return typeof typed === "object" && !isList(typed)
        ? groupOf(outline.keys, typed, materials)
        : undefined;
    case "pair": {
      if (typeof typed !== "object" || !isList(typed) || typed.length !== outline.items.length)
        return undefined;
      const values = outline.items.map((item, i) => valueOf(item, typed[i] ?? "", materials));
      return values.includes(undefined) ? undefined : values;
    }
    case "yes":
      return typeof typed === "boolean" ? typed : undefined;
    case "number":
    case "text":
    case "choice":
      return typeof typed === "string" ? wordOf(outline, typed.trim()) : undefined;
    case "list":
    case "other":
      return undefined;
  }
}

/** In the order of the schema, as the schema's own reader gives them. */
function groupOf(keys: Readonly<Record<string, Outline>>, typed: TypedGroup, materials: Materials): unknown {
  const given = new Map(
    Object.entries(typed)
      .map(([key, value]) => [key, filledIn(key, value)] as const)
      .filter(([, value]) => isFilled(value)),
  );
  if ([...given.keys()].some((key) => !Object.hasOwn(keys, key))) return undefined;
  const group: Record<string, unknown> = {};
  for (const [key, inner] of Object.entries(keys)) {
    const written = given.get(key);
    const value = written === undefined ? undefined : valueOf(inner, written, materials);
    if (value !== undefined) group[key] = value;
    else if (written !== undefined || !inner.optional) return undefined;
  }
  const { material } = group;
  const isKnown = typeof material === "string" && Object.hasOwn(materials, material);
  return material === undefined || isKnown ? group : undefined;
}

/** Empty fields count as left out, and so do groups of them. */
function isFilled(typed: Typed): boolean {
  if (typeof typed === "string") return typed.trim() !== "";
  return typeof typed === "boolean" || Object.values(typed).some(isFilled);
}

function wordOf(
  outline: Extract<Outline, { kind: "number" | "text" | "choice" }>,
  written: string,
): string | number | undefined {
  switch (outline.kind) {
    case "choice":
      return outline.words.find((word) => word === written);
    case "text":
      return TEXT.test(written) && isWithin(outline.limits, written.length) ? written : undefined;
    case "number": {
      const value = Number(written);
      const isPlain = AS_IT_STANDS.has(outline.quantity) && NUMBER.test(written) && !Object.is(value, -0);
      const isWhole = !outline.whole || Number.isInteger(value);
      return isPlain && isWhole && isWithin(outline.limits, value) ? value : undefined;
    }
  }
}

const isWithin = ({ min, max, multipleOf = 0 }: Limits, value: number): boolean =>
  (!min || value > min.value || (min.inclusive && value === min.value)) &&
  (!max || value < max.value || (max.inclusive && value === max.value)) &&
  (multipleOf === 0 || value % multipleOf === 0);

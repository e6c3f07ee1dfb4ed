import type * as z from "zod/mini";
import { pairs, quantities, type Pair, type Quantity } from "../shapes/fields.ts";

export type Schema = z.core.$ZodType;
type Known = z.core.$ZodTypes;

/** The schema inside "may be left out". */
export function bare(schema: Schema): Known {
  let here = schema as Known;
  while (here._zod.def.type === "optional" || here._zod.def.type === "nullable")
    here = here._zod.def.innerType as Known;
  return here;
}

export function isOptional(schema: Schema): boolean {
  return (schema as Known)._zod.def.type === "optional";
}

export function quantityOf(schema: Schema): Quantity | undefined {
  return quantities.get(bare(schema))?.quantity;
}

/** From how many inches on a bare number is asked about; undefined where it is as of any size. [in] */
export function askFromOf(schema: Schema): number | undefined {
  return quantities.get(bare(schema))?.askFromIn;
}

/** What two numbers in square brackets are; undefined for anything but a marked pair. */
export function pairOf(schema: Schema): Pair | undefined {
  return pairs.get(bare(schema));
}

/** Keys without a unit in their name, each with the key it stands for: force for forceKN. */
export function plainKeysOf(shape: Readonly<Record<string, Schema>>): ReadonlyMap<string, string> {
  return new Map(
    Object.entries(shape).flatMap(([key, schema]) => {
      const plainKey = quantities.get(bare(schema))?.plainKey;
      return plainKey === undefined ? [] : [[plainKey, key] as const];
    }),
  );
}

interface Limit {
  readonly value: number;
  readonly inclusive: boolean;
}

/** What the checks of a number, a text or a list allow. */
export interface Limits {
  readonly min?: Limit;
  readonly max?: Limit;
  readonly multipleOf?: number;
}

export function limitsOf(schema: Schema): Limits {
  let limits: Limits = {};
  for (const check of bare(schema)._zod.def.checks ?? []) {
    const def = (check as z.core.$ZodChecks)._zod.def;
    if (def.check === "greater_than")
      limits = { ...limits, min: { value: Number(def.value), inclusive: def.inclusive } };
    if (def.check === "less_than")
      limits = { ...limits, max: { value: Number(def.value), inclusive: def.inclusive } };
    if (def.check === "min_length") limits = { ...limits, min: { value: def.minimum, inclusive: true } };
    if (def.check === "max_length") limits = { ...limits, max: { value: def.maximum, inclusive: true } };
    if (def.check === "multiple_of") limits = { ...limits, multipleOf: Number(def.value) };
  }
  return limits;
}

const LIMITS = new Set(["greater_than", "less_than", "min_length", "max_length", "multiple_of"]);

/** Are a schema's own rules all limits, as `limitsOf` tells them, or are there others? */
export const rulesOf = (schema: Schema): "limits" | "others" =>
  (bare(schema)._zod.def.checks ?? []).every((check) =>
    LIMITS.has((check as z.core.$ZodChecks)._zod.def.check),
  )
    ? "limits"
    : "others";

/** Is it a whole number? */
export function isWhole(schema: Schema): boolean {
  const { def } = bare(schema)._zod;
  return def.type === "number" && "format" in def && def.format === "safeint";
}

/** Keys of a group and their schemas; undefined for anything but a group. */
export function shapeOf(schema: Schema): Readonly<Record<string, Schema>> | undefined {
  const { def } = bare(schema)._zod;
  return def.type === "object" ? def.shape : undefined;
}

/** The schema of every value of a table with free keys; undefined for anything but such a table. */
export function entryOf(schema: Schema): Schema | undefined {
  const { def } = bare(schema)._zod;
  return def.type === "record" ? def.valueType : undefined;
}

/** Words one of which must be given; undefined for anything but a choice of words. */
export function choicesOf(schema: Schema): readonly string[] | undefined {
  const { def } = bare(schema)._zod;
  if (def.type === "enum") return Object.values(def.entries).map(String);
  return def.type === "literal" ? def.values.map(String) : undefined;
}

/** Groups told apart by the word under one key. */
export interface Alternatives {
  readonly key: string;
  readonly options: ReadonlyMap<string, Schema>;
}

export function alternativesOf(schema: Schema): Alternatives | undefined {
  const { def } = bare(schema)._zod;
  if (def.type !== "union" || !("discriminator" in def) || typeof def.discriminator !== "string")
    return undefined;
  const key = def.discriminator;
  const options = new Map<string, Schema>();
  for (const option of def.options) {
    const word = shapeOf(option)?.[key];
    for (const choice of (word && choicesOf(word)) ?? []) options.set(choice, option);
  }
  return { key, options };
}

/** The schema of the list's item at an index; undefined for anything but a list. */
export function itemOf(schema: Schema, index: number): Schema | undefined {
  const { def } = bare(schema)._zod;
  if (def.type === "array") return def.element;
  return def.type === "tuple" ? def.items[index] : undefined;
}

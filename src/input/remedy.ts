import { listed } from "../forming/words.ts";
import { either } from "./nearest.ts";
import {
  alternativesOf,
  bare,
  choicesOf,
  isOptional,
  isWhole,
  limitsOf,
  pairOf,
  quantityOf,
  shapeOf,
  type Limits,
  type Schema,
} from "./introspect.ts";
import { showLength, type Units } from "./units.ts";

/** What would be right for a field, as an instruction: "give a number greater than 0". Limits in the file's own units. */
export function remedyFor(schema: Schema, units: Units): string {
  const alternatives = alternativesOf(schema);
  if (alternatives) {
    return `give a group of keys with ${alternatives.key}: ${either([...alternatives.options.keys()])}`;
  }
  const choices = choicesOf(schema);
  if (choices) return `give ${either(choices)}`;
  const shape = shapeOf(schema);
  if (shape) return groupRemedy(shape);
  const { def } = bare(schema)._zod;
  const { max } = limitsOf(schema);
  if (def.type === "number") return numberRemedy(schema, units);
  if (def.type === "string") return max ? `give a text of up to ${max.value} characters` : "give a text";
  if (def.type === "boolean") return "give true or false";
  const pair = pairOf(schema);
  if (pair) return `give ${pair.words}, as in ${pair.example}`;
  if (def.type === "tuple") {
    const example = def.items.map((_, i) => 150 * (i + 1)).join(", ");
    return `give ${def.items.length} numbers in square brackets, as in [${example}]`;
  }
  if (def.type === "array")
    return "give a list, each item on a line that begins with a hyphen, or in square brackets";
  return "look the key up in the description of the file";
}

/** Names the keys that a group must have, or may have where it need not have any. */
function groupRemedy(shape: Readonly<Record<string, Schema>>): string {
  const all = Object.keys(shape);
  // coneAttachment: true says that it is there, and no more.
  if (Object.hasOwn(shape, "fitted"))
    return `give true or false, or what is known of it, as in { ${all[1] ?? ""}: …, ${all[2] ?? ""}: … }`;
  const needed = all.filter((key) => shape[key] && !isOptional(shape[key]));
  if (needed.length > 0)
    return `give ${listed(needed)}, as in { ${needed.map((key) => `${key}: …`).join(", ")} }`;
  return `give any of ${all.join(", ")}, as in { ${all[0] ?? ""}: … }, or {} for none of them`;
}

function numberRemedy(schema: Schema, units: Units): string {
  const limits = limitsOf(schema);
  switch (quantityOf(schema)) {
    case "length":
      return `give ${lengthWords(limits, units)}`;
    case "thickness":
      return `give a thickness ${range(limits, units)}, or a gauge as in 10 ga`;
    case "angle":
      return `give degrees ${range(limits)}`.trimEnd();
    case "direction":
      return `give degrees ${range(limits)}, or right, back, left or front`;
    case "force":
      return `give kN ${range(limits)}, or a force with its unit, as in force: 150 US tons`;
    case "strength":
      return `give MPa ${range(limits)}, or a yield with its unit, as in yield: 36 ksi`;
    case "mass":
      return `give kg ${range(limits)}, or with its unit, as in handLift: 50 lb`;
    case undefined:
      return `give ${kindOfNumber(schema, limits)} ${range(limits)}`.trimEnd();
  }
}

function lengthWords(limits: Limits, units: Units): string {
  if (limits.min?.value !== 0) return `a number ${range(limits, units)}`.trimEnd();
  return limits.min.inclusive ? "0 or a number greater than 0" : "a number greater than 0";
}

function kindOfNumber(schema: Schema, { multipleOf }: Limits): string {
  if (multipleOf === 2) return "an even number";
  if (multipleOf !== undefined) return `a multiple of ${multipleOf}`;
  return isWhole(schema) ? "a whole number" : "a number";
}

/** "from 1 to 12", "greater than 0 and at most 89", "of at least 0", or nothing. */
function range({ min, max }: Limits, units?: Units): string {
  const low = min && limitText(min.value, units, "up");
  const high = max && limitText(max.value, units, "down");
  if (low !== undefined && high !== undefined) {
    return min?.inclusive === true ? `from ${low} to ${high}` : `greater than ${low} and at most ${high}`;
  }
  if (low !== undefined) return min?.inclusive === true ? `of at least ${low}` : `greater than ${low}`;
  return high === undefined ? "" : `of at most ${high}`;
}

/** A limit as it would be written in the file; lengths with their unit. */
export function limitText(value: number, units: Units | undefined, inwards: "up" | "down"): string {
  return units && value !== 0 ? showLength(value, units, inwards) : String(value);
}

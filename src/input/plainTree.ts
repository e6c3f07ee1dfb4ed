import type { Quantity } from "../shapes/fields.ts";
import type { GaugeFamily } from "../shapes/material.ts";
import { readAngle } from "./angle.ts";
import type { Tables } from "./context.ts";
import { gaugeNumber, gaugeThickness } from "./gauge.ts";
import {
  alternativesOf,
  bare,
  choicesOf,
  entryOf,
  isOptional,
  itemOf,
  limitsOf,
  quantityOf,
  shapeOf,
  type Alternatives,
  type Schema,
} from "./introspect.ts";
import { readLength } from "./length.ts";
import { either, nearest } from "./nearest.ts";
import type { FieldPath, Place } from "./problem.ts";
import { shown, unreadable, type Reading } from "./reading.ts";
import type { MapTree, ScalarTree, Tree } from "./tree.ts";
import { remedyFor } from "./remedy.ts";
import type { Units } from "./units.ts";

/** Texts that may be no longer than this are names and titles: one line. */
const MAX_ONE_LINE = 200;

/** Something wrong with a field, found before or by the schema. */
export interface FieldProblem {
  readonly path: FieldPath;
  /** Where it is not the place of the value. */
  readonly at?: Place;
  readonly problem: string;
  readonly remedy: string;
}

interface Apart {
  readonly schema: Schema;
  readonly plain: unknown;
  readonly path: FieldPath;
}

export interface Converted {
  /** Plain data for the schema: lengths in mm, angles in degrees, whatever the file's own units. */
  readonly plain: unknown;
  readonly problems: readonly FieldProblem[];
  /** Fields of groups that are not known as a whole, to be judged one by one. */
  readonly apart: readonly Apart[];
  /** Paths, as text, about which nothing more need be said. */
  readonly settled: ReadonlySet<string>;
}

export const pathKey = (path: FieldPath) => JSON.stringify(path);

/** Walks schema and tree together, and turns what the file says into what the schema asks for. */
export function toPlain(schema: Schema, tree: Tree, tables: Tables, units: Units | undefined): Converted {
  const walk = new Walk(tables, units);
  const plain = walk.value(schema, tree, [], undefined);
  return { plain, problems: walk.problems, apart: walk.apart, settled: walk.settled };
}

/** Metal whose gauges count; "unknown" where the file names one that is not in the catalogue, which is told there. */
type Metal = GaugeFamily | "unknown" | undefined;

class Walk {
  readonly problems: FieldProblem[] = [];
  readonly apart: Apart[] = [];
  readonly settled = new Set<string>();
  private readonly tables: Tables;
  private readonly units: Units | undefined;

  constructor(tables: Tables, units: Units | undefined) {
    this.tables = tables;
    this.units = units;
  }

  value(schema: Schema, tree: Tree, path: FieldPath, metal: Metal): unknown {
    switch (tree.kind) {
      case "map":
        return this.group(schema, tree, path, metal);
      case "list":
        return tree.items.map((item, i) => {
          const inner = itemOf(schema, i);
          return inner ? this.value(inner, item, [...path, i], metal) : raw(item);
        });
      case "scalar":
        return this.scalar(schema, tree, path, metal);
    }
  }

  private group(schema: Schema, tree: MapTree, path: FieldPath, metalAround: Metal): unknown {
    const entry = entryOf(schema);
    if (entry) return this.table(entry, tree, path, metalAround);
    const alternatives = alternativesOf(schema);
    const chosen = alternatives && this.choose(alternatives, tree, path);
    const options = alternatives ? [...alternatives.options.values()] : [schema];
    const shape = alternatives && !chosen ? sharedShape(options) : shapeOf(chosen?.schema ?? schema);
    if (!shape) return raw(tree);
    const known = chosen
      ? Object.keys(shape)
      : [...new Set(options.flatMap((one) => Object.keys(shapeOf(one) ?? {})))];
    const metal = Object.hasOwn(shape, "material") ? this.material(tree, path) : metalAround;
    const plain: Record<string, unknown> = {};
    for (const [key, { keyAt, tree: value }] of tree.entries) {
      if (key === alternatives?.key) continue;
      const inner = Object.hasOwn(shape, key) ? shape[key] : undefined;
      if (inner) plain[key] = this.value(inner, value, [...path, key], metal);
      else if (!known.includes(key)) this.unknownKey(key, keyAt, value, known, tree, path);
    }
    if (alternatives && chosen) plain[alternatives.key] = chosen.word;
    if (!alternatives || chosen) return plain;
    // What it is stays open; the keys that all alternatives share can be judged all the same.
    for (const [key, inner] of Object.entries(shape)) {
      this.apart.push({ schema: inner, plain: plain[key], path: [...path, key] });
    }
    return {};
  }

  private table(entry: Schema, tree: MapTree, path: FieldPath, metal: Metal): unknown {
    const rows = [...tree.entries].map(([key, { tree: value }]) => [
      key,
      this.value(entry, value, [...path, key], metal),
    ]);
    return Object.fromEntries(rows);
  }

  /** Which of several groups is meant: by its word, or by the word that a mistyped one comes nearest to. */
  private choose({ key, options }: Alternatives, tree: MapTree, path: FieldPath) {
    const words = [...options.keys()];
    const word = tree.entries.get(key)?.tree;
    const written = word?.kind === "scalar" && word.value !== null ? word.written : undefined;
    const exact = written === undefined ? undefined : options.get(written);
    if (written !== undefined && exact) return { word: written, schema: exact };
    // A misspelt key is told as such, and its word taken: one slip, one message.
    const slip = word ? undefined : slipOf(key, tree, words);
    if (slip !== undefined) return { word: slip, schema: options.get(slip) ?? fail(slip) };
    const guess = written === undefined ? undefined : nearest(written, words);
    this.tell(
      [...path, key],
      whatIsWrong(word),
      guess === undefined ? `give ${either(words)}` : didYouMean(guess, words),
    );
    return guess === undefined ? undefined : { word: guess, schema: options.get(guess) ?? fail(guess) };
  }

  /** Looks the material up, so that gauges can be read; what is wrong with it is told here, with the list of them. */
  private material(tree: MapTree, path: FieldPath): Metal {
    const { materials } = this.tables.catalogue;
    const known = Object.keys(materials);
    const list = `the materials are ${known.join(", ")}`;
    const named = tree.entries.get("material")?.tree;
    if (named && named.kind !== "scalar") return "unknown";
    if (!named || (!named.told && (named.value === null || named.written.trim() === ""))) {
      const slip = !named && nearest("material", [...tree.entries.keys()]) !== undefined;
      if (!slip) this.tell([...path, "material"], named ? "has no value" : "is missing", list);
      return "unknown";
    }
    const id = named.written.trim();
    const material = Object.hasOwn(materials, id) ? materials[id] : undefined;
    if (material) return material.family;
    const guess = nearest(id, known);
    const remedy = guess === undefined ? list : `did you mean ${guess}? T${list.slice(1)}`;
    if (!named.told) this.tell([...path, "material"], `there is no material ${shown(id)}`, remedy);
    return "unknown";
  }

  private unknownKey(
    key: string,
    at: Place,
    value: Tree,
    known: readonly string[],
    tree: MapTree,
    path: FieldPath,
  ): void {
    const missing = known.filter((one) => !tree.entries.has(one));
    const guess = nearest(key, missing);
    const list = `the keys here are ${known.join(", ")}`;
    // In braces a comma ends a value: { diameter: 4,625 } holds 4 and a key 625.
    const comma = /^\d+$/.test(key) && value.kind === "scalar" && value.value === null;
    const remedy = comma ? "use a point for decimals" : guess === undefined ? list : `did you mean ${guess}?`;
    const problem = comma ? "stands after a comma" : "is not a key here";
    this.problems.push({ path: [...path, key], at, problem, remedy });
    if (guess !== undefined) this.settle([...path, guess]);
  }

  private scalar(schema: Schema, tree: ScalarTree, path: FieldPath, metal: Metal): unknown {
    if (tree.told) this.settle(path);
    if (this.settled.has(pathKey(path))) return undefined;
    if (tree.value === null) {
      const leave = isOptional(schema) ? ", or leave the key out" : "";
      this.tell(path, "has no value", `${remedyFor(schema, this.units ?? "mm")}${leave}`);
      return undefined;
    }
    if (bare(schema)._zod.def.type === "string") return this.text(schema, tree, path);
    const choices = choicesOf(schema);
    if (choices) return this.choice(choices, tree, path);
    const quantity = quantityOf(schema);
    return quantity ? this.quantity(quantity, tree, path, metal) : tree.value;
  }

  private quantity(
    quantity: Quantity,
    { written }: ScalarTree,
    path: FieldPath,
    metal: Metal,
  ): number | undefined {
    const reading = this.reading(quantity, written, metal);
    if (reading?.kind === "read") return reading.value;
    if (reading) this.tell(path, reading.problem, reading.remedy);
    else this.settle(path);
    return undefined;
  }

  private reading(quantity: Quantity, written: string, metal: Metal): Reading<number> | undefined {
    switch (quantity) {
      case "angle":
        return readAngle(written);
      case "thickness":
        return this.thickness(written, metal);
      case "length":
        return readLength(written, this.units);
    }
  }

  /** A gauge or a length; undefined where the gauge hangs on a material that is itself in question. */
  private thickness(written: string, metal: Metal): Reading<number> | undefined {
    const gauge = gaugeNumber(written);
    if (gauge === undefined && /\d\s*-?ga(?:uge|ge)?\b/i.test(written))
      return unreadable(`${shown(written)} is not a gauge`, "write the number and ga, as in 10 ga");
    if (gauge === undefined) return readLength(written, this.units);
    if (metal === "unknown") return undefined;
    if (metal) return gaugeThickness(this.tables.gauges, metal, gauge);
    return unreadable(
      `${shown(written)} differs from metal to metal, and none is named here`,
      "give it in mm or in",
    );
  }

  private choice(choices: readonly string[], tree: ScalarTree, path: FieldPath): string {
    if (!choices.includes(tree.written)) {
      const guess = nearest(tree.written, choices);
      const remedy = guess === undefined ? `give ${either(choices)}` : didYouMean(guess, choices);
      this.tell(path, `${seen(tree)} is not known`, remedy);
    }
    return tree.written;
  }

  private text(schema: Schema, tree: ScalarTree, path: FieldPath): string {
    const text = (typeof tree.value === "string" ? tree.value : tree.written).trim();
    if (/[^\P{Cc}\n\t]|\p{Cs}|[\u202a-\u202e\u2066-\u2069\ufffe\uffff]/u.test(text)) {
      this.tell(path, `${shown(text)} holds signs that cannot be printed`, "take them out");
    }
    const { max } = limitsOf(schema);
    if (max && max.value <= MAX_ONE_LINE && text.includes("\n")) {
      this.tell(path, "runs over more than one line", "keep it to one line");
    }
    return text;
  }

  private tell(path: FieldPath, problem: string, remedy: string): void {
    this.problems.push({ path, problem, remedy });
    this.settle(path);
  }

  private settle(path: FieldPath): void {
    this.settled.add(pathKey(path));
  }
}

/** Keys whose meaning is the same in every alternative. */
function sharedShape(options: readonly Schema[]): Record<string, Schema> {
  const [first = {}, ...others] = options.map((option) => shapeOf(option) ?? {});
  return Object.fromEntries(
    Object.entries(first).filter(([key, schema]) => others.every((one) => one[key] === schema)),
  );
}

function whatIsWrong(word: Tree | undefined): string {
  if (!word) return "is missing";
  if (word.kind !== "scalar") return "is not one word";
  return word.value === null ? "has no value" : `${seen(word)} is not known`;
}

const didYouMean = (guess: string, words: readonly string[]) =>
  words.length < 2 ? `did you mean ${guess}?` : `did you mean ${guess}? Known are ${words.join(", ")}`;

/** The word under a key that is nearly the one looked for. */
function slipOf(key: string, tree: MapTree, words: readonly string[]): string | undefined {
  for (const [written, { tree: value }] of tree.entries) {
    if (value.kind === "scalar" && words.includes(value.written) && nearest(written, [key]))
      return value.written;
  }
  return undefined;
}

/** A value as it stands in the file, for a message. */
export function seen(tree: ScalarTree): string {
  return tree.written.trim() === "" ? "an empty text" : shown(tree.written);
}

/** The tree without places, for what the schema will refuse anyway. */
function raw(tree: Tree): unknown {
  if (tree.kind === "scalar") return tree.value;
  if (tree.kind === "list") return tree.items.map(raw);
  return Object.fromEntries([...tree.entries].map(([key, entry]) => [key, raw(entry.tree)]));
}

function fail(word: string): never {
  throw new RangeError(`no alternative ${word}`);
}

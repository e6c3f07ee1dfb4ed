import { chosenOf, sharedShape } from "./alternatives.ts";
import type { Tables } from "./context.ts";
import {
  alternativesOf,
  askFromOf,
  bare,
  choicesOf,
  entryOf,
  isOptional,
  itemOf,
  plainKeysOf,
  quantityOf,
  shapeOf,
  type Alternatives,
  type Schema,
} from "./introspect.ts";
import { findMaterial, materialList } from "./materialWords.ts";
import { either, nearest } from "./nearest.ts";
import type { FieldPath, Place } from "./problem.ts";
import { readQuantity, type Metal } from "./quantity.ts";
import { remedyFor } from "./remedy.ts";
import { keyFor, wordFor } from "./synonyms.ts";
import type { MapTree, ScalarTree, Tree } from "./tree.ts";
import { textProblems } from "./textProblems.ts";
import { unknownKeyWords } from "./unknownKey.ts";
import { didYouMean, hashWords, seen } from "./treeWords.ts";
import type { Units } from "./units.ts";

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
  /** Where a field stands under another key than the schema's: path in the schema, as text, to path in the file. */
  readonly spelt: ReadonlyMap<string, FieldPath>;
  /** Sizes of a file that does not say its units: good for their own limits, not to be compared with each other. */
  readonly vague: ReadonlySet<string>;
  /** Words that say which of several groups it is: as given, or as guessed. */
  readonly taken: ReadonlySet<string>;
}

export const pathKey = (path: FieldPath) => JSON.stringify(path);

/** Walks schema and tree together, and turns what the file says into what the schema asks for. */
export function toPlain(schema: Schema, tree: Tree, tables: Tables, units: Units | undefined): Converted {
  const walk = new Walk(tables, units);
  const plain = walk.value(schema, tree, [], undefined);
  const { problems, apart, settled, spelt, vague, taken } = walk;
  return { plain, problems, apart, settled, spelt, vague, taken };
}

class Walk {
  readonly problems: FieldProblem[] = [];
  readonly apart: Apart[] = [];
  readonly settled = new Set<string>();
  readonly spelt = new Map<string, FieldPath>();
  readonly vague = new Set<string>();
  readonly taken = new Set<string>();
  /** Paths of values whose key does not name the unit of a bare number. */
  private readonly unitless = new Set<string>();
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
    const named = Object.hasOwn(shape, "material") ? this.material(tree, path) : undefined;
    const metal = named ? named.metal : metalAround;
    const plain: Record<string, unknown> = {};
    const plainKeys = plainKeysOf(shape);
    for (const [key, { keyAt, tree: value }] of tree.entries) {
      if (key === alternatives?.key) continue;
      const field = plainKeys.get(key) ?? key;
      const inner = Object.hasOwn(shape, field) ? shape[field] : undefined;
      const at = [...path, key];
      if (field !== key && tree.entries.has(field)) {
        this.problems.push({
          path: at,
          at: keyAt,
          problem: `is given as ${field} too`,
          remedy: "keep one of them",
        });
        continue;
      }
      if (field !== key) this.unitless.add(pathKey(at));
      if (field !== key) this.spelt.set(pathKey([...path, field]), at);
      if (inner) plain[field] = this.value(inner, value, at, metal);
      if (inner || known.includes(key)) continue;
      const meant = this.unknownKey(key, keyAt, value, { known, plainKeys }, tree, path);
      // A slip of the keyboard: its value is judged as what was meant, in the same go.
      const slipped = meant === undefined ? undefined : shape[meant];
      if (meant !== undefined && slipped) {
        this.spelt.set(pathKey([...path, meant]), at);
        plain[meant] = this.value(slipped, value, at, metal);
      }
    }
    if (named?.id !== undefined) plain["material"] = named.id;
    if (alternatives && chosen) {
      plain[alternatives.key] = chosen.word;
      this.taken.add(pathKey([...path, alternatives.key]));
    }
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

  /** Which of several groups is meant; what is wrong with the word that says so is told. */
  private choose(alternatives: Alternatives, tree: MapTree, path: FieldPath) {
    const { problem, taken } = chosenOf(alternatives, tree);
    if (problem) this.tell([...path, alternatives.key], problem.problem, problem.remedy);
    return taken;
  }

  /** Looks the material up, so that gauges can be read; what is wrong with it is told here, with the list of them. */
  private material(tree: MapTree, path: FieldPath): { readonly metal: Metal; readonly id?: string } {
    const { catalogue } = this.tables;
    const unknown = { metal: "unknown" } as const;
    const named = tree.entries.get("material")?.tree;
    if (named && named.kind !== "scalar") return unknown;
    if (!named || (!named.told && (named.value === null || named.written.trim() === ""))) {
      const keys = [...tree.entries.keys()];
      const slip = keys.some((key) => nearest(key, ["material"]) ?? keyFor(key, ["material"]));
      const hash = named && hashWords(named, "304");
      const problem = named ? "has no value" : "is missing";
      if (named || !slip)
        this.tell([...path, "material"], hash?.problem ?? problem, hash?.remedy ?? materialList(catalogue));
      return unknown;
    }
    const found = findMaterial(catalogue, named.written);
    if ("id" in found) return { metal: catalogue.materials[found.id]?.family, id: found.id };
    if (!named.told) this.tell([...path, "material"], found.problem, found.remedy);
    return unknown;
  }

  /** @returns the key that it is a slip of the keyboard for, where its value can be judged as that key's */
  private unknownKey(
    key: string,
    at: Place,
    value: Tree,
    { known, plainKeys }: { known: readonly string[]; plainKeys: ReadonlyMap<string, string> },
    tree: MapTree,
    path: FieldPath,
  ): string | undefined {
    const all = [...known, ...plainKeys.keys()];
    const { slip, guess, comma, problem, remedy } = unknownKeyWords(key, value, {
      all,
      missing: all.filter((one) => !tree.entries.has(one)),
    });
    this.problems.push({ path: [...path, key], at, problem, remedy });
    // What the comma cut off belongs to the value before it, which is no more than half a number.
    const before = [...tree.entries.keys()];
    const cut = comma ? before[before.indexOf(key) - 1] : undefined;
    if (cut !== undefined) this.settle([...path, cut]);
    if (slip !== undefined && slip !== "material") return slip;
    if (guess !== undefined) this.settle([...path, plainKeys.get(guess) ?? guess]);
    return undefined;
  }

  private scalar(schema: Schema, tree: ScalarTree, path: FieldPath, metal: Metal): unknown {
    if (tree.told) this.settle(path);
    if (this.settled.has(pathKey(path))) return undefined;
    if (tree.value === null) {
      const leave = isOptional(schema) ? ", or leave the key out" : "";
      const example = quantityOf(schema) === "thickness" ? "10 ga" : undefined;
      const hash = hashWords(tree, example);
      const remedy = hash?.remedy ?? `${remedyFor(schema, this.units ?? "mm")}${leave}`;
      this.tell(path, hash?.problem ?? "has no value", remedy);
      return undefined;
    }
    // coneAttachment: true is short for { fitted: true }.
    if (typeof tree.value === "boolean" && Object.hasOwn(shapeOf(schema) ?? {}, "fitted"))
      return { fitted: tree.value };
    if (bare(schema)._zod.def.type === "string") return this.text(schema, tree, path);
    const choices = choicesOf(schema);
    if (choices) return this.choice(choices, tree, path);
    const quantity = quantityOf(schema);
    if (!quantity) return tree.value;
    const bareNumber = !this.unitless.has(pathKey(path));
    const { tables, units } = this;
    const askFromIn = askFromOf(schema);
    const around = { tables, units, metal, bare: bareNumber, askFromIn };
    const reading = readQuantity(quantity, tree.written, around);
    const sized = quantity === "length" || quantity === "thickness";
    if (units === undefined && sized) this.vague.add(pathKey(path));
    if (reading?.kind === "read") return reading.value;
    if (reading) this.tell(path, reading.problem, reading.remedy);
    else this.settle(path);
    return undefined;
  }

  private choice(choices: readonly string[], tree: ScalarTree, path: FieldPath): string {
    if (!choices.includes(tree.written)) {
      const guess = nearest(tree.written, choices) ?? wordFor(tree.written, choices);
      const remedy = guess === undefined ? `give ${either(choices)}` : didYouMean(guess, choices);
      this.tell(path, `${seen(tree)} is not known`, remedy);
    }
    return tree.written;
  }

  private text(schema: Schema, tree: ScalarTree, path: FieldPath): string {
    const text = (typeof tree.value === "string" ? tree.value : tree.written).trim();
    for (const { problem, remedy } of textProblems(text, { schema, units: this.units ?? "mm" }))
      this.tell(path, problem, remedy);
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

/** The tree without places, for what the schema will refuse anyway. */
function raw(tree: Tree): unknown {
  if (tree.kind === "scalar") return tree.value;
  if (tree.kind === "list") return tree.items.map(raw);
  return Object.fromEntries([...tree.entries].map(([key, entry]) => [key, raw(entry.tree)]));
}

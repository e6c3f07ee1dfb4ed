import {
  isAlias,
  isMap,
  isScalar,
  isSeq,
  type Alias,
  type Document,
  type Node,
  type YAMLMap,
  type YAMLSeq,
} from "yaml";
import { fieldName, type FieldPath, type Place } from "./problem.ts";
import { shown } from "./reading.ts";
import type { ScalarTree, Tree } from "./tree.ts";
import { yamlWords } from "./yamlWords.ts";

/** A part file nests four deep; this leaves room and keeps malice shallow. */
const MAX_DEPTH = 20;
/** References to a value written elsewhere (*name): a handful saves typing, thousands are a bomb. */
const MAX_ALIASES = 50;
/** Values in one file, those that references repeat counted each time. */
const MAX_VALUES = 10_000;

/** Something wrong with the syntax, or with what the syntax adds up to. */
export interface TreeProblem {
  readonly at: Place;
  readonly field: string;
  readonly problem: string;
  readonly remedy: string;
}

const TOP: Place = { line: 1, column: 1 };

export const TOO_DEEP: TreeProblem = { at: TOP, field: "file", ...yamlWords("RESOURCE_EXHAUSTION", "") };

/** Values that every YAML reader knows without being told. */
const PLAIN_TAG = /^tag:yaml\.org,2002:(?:str|int|float|bool|null|map|seq)$/;

/** Turns the parser's nodes into the tree, following references and counting what they cost. */
export class Planter {
  readonly problems: TreeProblem[] = [];
  /** Set where the file is beyond all measure; then nothing else in it is worth telling. */
  overgrown: TreeProblem | undefined;
  private aliases = 0;
  private values = 0;
  private readonly document: Document.Parsed;
  private readonly place: (offset: number) => Place;
  /** Groups and lists around the value at hand: a value may not hold itself. */
  private readonly open = new Set<Node>();

  constructor(document: Document.Parsed, place: (offset: number) => Place) {
    this.document = document;
    this.place = place;
  }

  /** @param fallback the place of the key, for a value that is not there */
  plant(node: unknown, path: FieldPath, fallback: Place): Tree {
    const nothing: ScalarTree = { kind: "scalar", value: null, written: "", told: false, at: fallback };
    if (this.overgrown) return nothing;
    if (path.length > MAX_DEPTH) return this.stop({ ...TOO_DEEP, at: fallback }, nothing);
    if (++this.values > MAX_VALUES) {
      const remedy = "keep one part in each file";
      return this.stop({ at: TOP, field: "file", problem: "it holds far too many values", remedy }, nothing);
    }
    if (isAlias(node)) return this.follow(node, path, nothing);
    if (isMap(node)) return this.map(node, path, this.at(node, fallback));
    if (isSeq(node)) return this.list(node, path, this.at(node, fallback));
    if (!isScalar(node)) return nothing;
    const told = this.refuseTag(node, path);
    const { value } = node;
    const written = node.source ?? "";
    if (value === null && written === "") {
      const hash = typeof node.comment === "string" ? { hash: node.comment } : {};
      return { ...nothing, told, ...hash };
    }
    const at = this.at(node, fallback);
    if (typeof value === "string" || typeof value === "number" || typeof value === "boolean") {
      return { kind: "scalar", value, written, told, at };
    }
    return { kind: "scalar", value: null, written, told, at };
  }

  private list(node: YAMLSeq, path: FieldPath, at: Place): Tree {
    this.refuseTag(node, path);
    this.open.add(node);
    const items = node.items.map((item, i) => this.plant(item, [...path, i], at));
    this.open.delete(node);
    return { kind: "list", items, at };
  }

  private map(node: YAMLMap, path: FieldPath, at: Place): Tree {
    this.refuseTag(node, path);
    this.open.add(node);
    const entries = new Map<string, { keyAt: Place; tree: Tree }>();
    for (const pair of node.items) {
      const keyAt = this.at(pair.key, at);
      const key = isScalar(pair.key) && pair.key.value !== null ? (pair.key.source ?? "") : "";
      const before = entries.get(key);
      if (key === "") this.tell(keyAt, path, "a key is missing or is not a word", "write it as key: value");
      else if (before) this.tellTwice(keyAt, [...path, key], before.keyAt);
      else entries.set(key, { keyAt, tree: this.plant(pair.value, [...path, key], keyAt) });
    }
    this.open.delete(node);
    return { kind: "map", entries, at };
  }

  private follow(alias: Alias, path: FieldPath, nothing: ScalarTree): Tree {
    if (++this.aliases > MAX_ALIASES) {
      const remedy = "write the values out";
      return this.stop(
        { at: TOP, field: "file", problem: "it has far too many references (*)", remedy },
        nothing,
      );
    }
    const target = alias.resolve(this.document);
    if (target && !this.open.has(target)) return this.plant(target, path, nothing.at);
    const why = target ? "stands inside the value it refers to" : "refers to a value that is not there";
    this.tell(this.at(alias, nothing.at), path, `*${shown(alias.source)} ${why}`, "write the value out");
    return { ...nothing, told: true };
  }

  /** Was there a word with ! that has a meaning of its own? */
  private refuseTag(node: Node, path: FieldPath): boolean {
    const tag = "tag" in node && typeof node.tag === "string" ? node.tag : undefined;
    if (tag === undefined || PLAIN_TAG.test(tag)) return false;
    const problem = "has a word that begins with ! before its value";
    this.tell(this.at(node, TOP), path, problem, "write the value without it");
    return true;
  }

  private at(node: unknown, fallback: Place): Place {
    const range = node && typeof node === "object" && "range" in node ? node.range : undefined;
    const start: unknown = Array.isArray(range) ? range[0] : undefined;
    return typeof start === "number" ? this.place(start) : fallback;
  }

  private tellTwice(at: Place, path: FieldPath, first: Place): void {
    this.tell(at, path, `is given again, first on line ${first.line}`, "keep one of them");
  }

  private tell(at: Place, path: FieldPath, problem: string, remedy: string): void {
    this.problems.push({ at, field: fieldName(path), problem, remedy });
  }

  private stop(problem: TreeProblem, nothing: Tree): Tree {
    this.overgrown = problem;
    return nothing;
  }
}

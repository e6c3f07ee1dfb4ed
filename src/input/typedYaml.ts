import { Document, isCollection, isMap, isPair, isScalar, type Node, type ScalarTag } from "yaml";
import { filledIn, isList, type Typed, type TypedGroup, type TypedList } from "./typed.ts";
import { NUMBER } from "./typedTree.ts";

/** Keys in the order in which the README and the demo job write them; others follow as they come. */
const ORDER = [
  ...["shape", "title", "name", "reference", "date", "units", "material", "thickness"],
  ...["diameter", "length", "width", "measured", "offset"],
  ...["largeEnd", "rectangularEnd", "smallEnd", "roundEnd", "height", "slant", "halfAngle", "edges"],
  ...["seam", "at", "joint", "gap", "lap", "pieces", "quantity", "mirror", "divisions", "neutral"],
  ...["trimAllowance", "facetError", "certificate", "tolerance", "notes", "parts"],
];
const PLACE = new Map(ORDER.map((key, i) => [key, i]));

/** A group or list longer than this has a line for each of its values. [signs] */
const ONE_LINE = 100;

/** A number as it was typed: 12.50 stays 12.50. */
class Written {
  readonly text: string;
  constructor(text: string) {
    this.text = text;
  }
  toJSON(): string {
    return this.text;
  }
}

const number: ScalarTag = {
  tag: "tag:yaml.org,2002:float",
  default: true,
  identify: (value) => value instanceof Written,
  resolve: (text) => text,
  stringify: ({ value }) => (value as Written).text,
};

/**
 * A file that says what was typed, value by value, and is read back to the same: the way back of `typedOf`. Fields that
 * are empty are left out.
 */
export function typedYaml(typed: TypedGroup): string {
  const document = new Document(plainGroup(typed) ?? {}, { customTags: (tags) => [...tags, number] });
  if (isMap(document.contents)) {
    for (const pair of document.contents.items) if (isPair(pair)) layOut(pair.value as Node | null);
  }
  return document.toString({
    lineWidth: 0,
    blockQuote: "literal",
    flowCollectionPadding: true,
    nullStr: "null",
  });
}

function plainOf(typed: Typed): unknown {
  if (typeof typed === "boolean") return typed;
  if (typeof typed !== "string") return isList(typed) ? plainList(typed) : plainGroup(typed);
  const written = typed.trim();
  if (written === "") return undefined;
  return NUMBER.test(written) ? new Written(written) : written;
}

function plainList(typed: TypedList): unknown {
  const items = typed.map(plainOf);
  return items.length > 0 && items.every((item) => item === undefined)
    ? undefined
    : items.map((item) => item ?? null);
}

function plainGroup(typed: TypedGroup): Map<string, unknown> | undefined {
  const rank = ([key]: readonly [string, Typed]) => PLACE.get(key) ?? ORDER.length;
  const entries = Object.entries(typed)
    .sort((a, b) => rank(a) - rank(b))
    .flatMap(([key, value]) => {
      const plain = plainOf(filledIn(key, value));
      return plain === undefined ? [] : [[key, plain] as const];
    });
  // A Map, so that a key named __proto__ is a key like any other.
  return entries.length === 0 ? undefined : new Map(entries);
}

/** Short groups of plain values on one line, as { diameter: 900, measured: outside }. */
function layOut(node: Node | null): void {
  if (!isCollection(node)) return;
  const inner = node.items.map((item) => (isPair(item) ? item.value : item) as Node | null);
  const flat = inner.every((one) => isScalar(one) || (isCollection(one) && one.items.every(isScalar)));
  const text = JSON.stringify(node);
  if (flat && text.length <= ONE_LINE && !text.includes(String.raw`\n`)) node.flow = true;
  else inner.forEach(layOut);
}

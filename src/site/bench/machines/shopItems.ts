import { Shop } from "../../../forming/machine.ts";
import { alternativesOf, itemOf, shapeOf } from "../../../input/introspect.ts";
import { SHOP_FIELDS } from "../../words/shopFields.ts";
import type { FieldItem } from "../form.ts";
import { formOf } from "../formOf.ts";

const shape = shapeOf(Shop) ?? {};
const machines = shape["machines"] && itemOf(shape["machines"], 0);
const stock = shape["stock"] && itemOf(shape["stock"], 0);
const form = formOf(Shop);

/** Keys with a unit in their name, each with the one under which the form writes a size with its unit. */
const PLAIN: Readonly<Record<string, string>> = {
  forceKN: "force",
  yieldMPa: "yield",
  handLiftKg: "handLift",
};
const LONG: Readonly<Record<string, string>> = Object.fromEntries(
  Object.entries(PLAIN).map(([long, short]) => [short, long]),
);

/** Sizes with a unit are written with it, and what is not known may stay open. */
function asWritten(item: FieldItem): FieldItem {
  const plain = PLAIN[String(item.path.at(-1))];
  const kind = item.kind === "yes" ? "yes or no" : plain ? "text" : item.kind;
  return { ...item, kind, path: plain ? [...item.path.slice(0, -1), plain] : item.path };
}

/** What the shop says of itself; its units stand apart, because they change how every size is written. */
export const generalItems: readonly FieldItem[] = form.fields
  .filter(({ path }) => !["units", "machines", "stock"].includes(String(path[0])))
  .map(asWritten);

/** How blanks are kept apart on a plate. */
export const cuttingItems: readonly FieldItem[] = form.sets
  .filter(({ path }) => path[0] === "cutting")
  .flatMap(({ fields }) => fields);

/** The fields of one machine by its kind; none where it has no known kind. */
export function machineItems(kind: unknown, i: number): FieldItem[] {
  const schema =
    machines && typeof kind === "string" ? alternativesOf(machines)?.options.get(kind) : undefined;
  if (!schema) return [];
  const { fields, sets } = formOf(schema, ["machines", i]);
  return [...fields, ...sets.flatMap((set) => set.fields)]
    .filter(({ path }) => path.at(-1) !== "kind")
    .map(asWritten);
}

/** The fields of one stock plate. */
export const plateItems = (i: number): readonly FieldItem[] =>
  stock ? formOf(stock, ["stock", i]).fields : [];

/** What a field of the shop means, as the file's own description says it. */
export function shopHint({ path }: Pick<FieldItem, "path">): string | undefined {
  const keys = path.filter((step) => typeof step === "string").map((step) => LONG[step] ?? step);
  return SHOP_FIELDS[keys.join(".").replace(/^(machines|stock)\./, "$1[].")];
}

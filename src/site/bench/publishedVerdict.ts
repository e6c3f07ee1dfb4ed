import type { TypedGroup } from "../../input/typed.ts";
import type { Report } from "../../report/report.ts";
import { fieldKey } from "../words/fieldLabels.ts";
import { type Care, caresBeside } from "./cares.ts";
import { fieldsOf, formFrom, tallKey } from "./form.ts";
import { partOutlines } from "./partOutlines.ts";

/** What a page knows from its build of whether its part goes, for as long as its bench has not found out by itself. */
export interface PublishedVerdict {
  readonly route: "roll" | "brake";
  /** What is said beside the fields of the form, by their keys. */
  readonly cares: readonly (readonly [string, readonly Care[]])[];
}

/** @param typed the part as its file says it */
export function publishedVerdict({ part, forming }: Report, typed: TypedGroup): PublishedVerdict {
  const fields = fieldsOf(formFrom(partOutlines()[part.shape]));
  const keys = new Set(fields.map(({ path }) => fieldKey(path)));
  const cares = caresBeside(forming.checks, keys, tallKey(typed) ?? "height");
  return { route: forming.route, cares: [...cares] };
}

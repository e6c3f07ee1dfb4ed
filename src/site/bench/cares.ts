import type { Check } from "../../forming/check.ts";
import { fieldOfCheck } from "../words/checkFields.ts";

/** What a check says beside the field that decides it. */
export interface Care {
  readonly fails: boolean;
  readonly text: string;
}

/**
 * Checks that want care or do not go, by the field they stand beside.
 * @param fields keys that the form has
 * @param tall the key under which this part's height is given
 */
export function caresBeside(
  checks: readonly Check[],
  fields: ReadonlySet<string>,
  tall: string,
): ReadonlyMap<string, readonly Care[]> {
  const beside = new Map<string, Care[]>();
  for (const check of checks) {
    const { verdict, advice, title } = check;
    const field = verdict === "pass" ? undefined : fieldOfCheck(check, fields);
    if (field === undefined) continue;
    const at = field === "height" ? tall : field;
    beside.set(at, [...(beside.get(at) ?? []), { fails: verdict === "fail", text: `${title}: ${advice}` }]);
  }
  return beside;
}

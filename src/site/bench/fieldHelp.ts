import { PART_FIELDS } from "../words/partFields.ts";
import { inFieldWords } from "./fieldWords.ts";

/** What a field means, in words of the form; undefined where nothing is said of its key. */
export function fieldHelp(key: string): string | undefined {
  const said = PART_FIELDS[key];
  return said === undefined ? undefined : inFieldWords(said);
}

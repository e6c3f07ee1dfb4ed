import { PART_FIELDS } from "../words/partFields.ts";
import { inFieldWords } from "./fieldWords.ts";

/** Fields that a form fills in otherwise than a file is written: what the file's description says would mislead. */
const AT_A_FORM: Readonly<Record<string, string>> = {
  material:
    "The grade of the plate, with what the trade calls it. Its strengths decide which machine takes it and how far it springs back, its density the mass; the page of materials says where they are from.",
};

/** Said under a field without being asked: two counts that stand side by side. */
export const FIELD_NOTES: Readonly<Record<string, string>> = {
  pieces: "Blanks that one part is welded up from, a seam between each two.",
  quantity: "Whole parts to make, all alike.",
};

/** What a field means, in words of the form; undefined where nothing is said of its key. */
export function fieldHelp(key: string): string | undefined {
  const said = AT_A_FORM[key] ?? PART_FIELDS[key];
  return said === undefined ? undefined : inFieldWords(said);
}

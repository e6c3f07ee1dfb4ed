import type { Tables } from "../../input/context.ts";
import { layOut } from "../../report/layOut.ts";
import type { NamedTyped } from "./asTyped.ts";
import type { Worked } from "./partWork.ts";
import { readTypedPart } from "./readTyped.ts";

export { inFieldWords } from "./fieldWords.ts";

/** Reads whatever is typed as a part file is read and lays it out, and says all that is wrong and what would go. */
export function work({ name, part: typed }: NamedTyped, tables: Tables): Worked {
  const reading = readTypedPart(typed, tables);
  if (reading.kind === "problems") return reading;
  const part = { ...reading.value, name };
  const made = layOut(part, tables);
  return made.kind === "laid" ? { kind: "laid", part, made } : { kind: "problems", problems: made.issues };
}

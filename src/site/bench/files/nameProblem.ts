import { partName } from "../../../input/partName.ts";

/** What is wrong with a part's name as that of its file; undefined where nothing is. */
export function nameProblem(name: string): string | undefined {
  // A path would be taken for the name at its end.
  if (/[/\\]/.test(name)) return "its name holds a stroke, which stands between folders; take it out";
  const reading = partName(`${name}.yaml`);
  return reading.kind === "read" ? undefined : `${reading.problem}; ${reading.remedy}`;
}

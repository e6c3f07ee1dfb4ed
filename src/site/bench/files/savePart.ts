import { typedYaml } from "../../../input/typedYaml.ts";
import type { Bench } from "../bench.svelte.ts";
import { saveFile } from "./saveFile.ts";
import type { Told } from "./told.ts";

/** The part as it is typed, right or not, as the file that a binder is built from. */
export function savePart({ name, typed, problems }: Bench): Told {
  const file = `${name}.yaml`;
  saveFile(file, typedYaml(typed), "application/yaml");
  if (problems.length === 0) return { words: `${file} went to the browser's downloads.` };
  return {
    words: `${file} went to the browser's downloads as it stands, with something wrong in it: put this right before a binder is built from it.`,
    lines: problems.map(({ path, problem, remedy }) => `${path.join(".")}: ${problem}; ${remedy}`),
    isWrong: true,
  };
}

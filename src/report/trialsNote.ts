import { correctPart } from "./correct.ts";
import type { Context } from "./develop.ts";
import type { NamedPart } from "./lay.ts";

/**
 * That the trials kept beside a part give no next setting on their machine, and why, in a sentence: nobody should find it
 * only on the work sheet. None where they do, and where there are none.
 *
 * @param file what the file of the trials is called
 */
export function trialsNote(part: NamedPart, file: string, context: Context): string[] {
  const { shop, trials } = context;
  if (!shop || !trials || trials.seen.length === 0) return [];
  const answer = correctPart(part, context, trials.machine, trials.seen);
  return answer.kind === "none" ? [`${file}: these trials give no next setting: ${answer.why}`] : [];
}

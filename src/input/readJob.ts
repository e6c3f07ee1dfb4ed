import * as z from "zod/mini";
import type { Loose } from "../shapes/loose.ts";
import type { FileContext } from "./context.ts";
import { readDocument, type DocumentReading } from "./document.ts";
import { either, nearest } from "./nearest.ts";
import type { FieldProblem } from "./plainTree.ts";
import { shown } from "./reading.ts";

const line = () => z.string().check(z.minLength(1), z.maxLength(120));

/** The job file: what the binder is called, and in which order its parts come. */
export const Job = z.strictObject({
  title: line(),
  /** Order or drawing number, as the shop or the customer counts them. */
  reference: z.optional(line()),
  /** As it shall stand in the title block; never taken from the clock, so that the same files give the same binder. */
  date: z.optional(line()),
  notes: z.optional(z.string().check(z.maxLength(2000))),
  /** Names of parts in the order in which they are shown; parts that are not named follow by name. */
  parts: z.optional(z.array(z.string().check(z.minLength(1), z.maxLength(80))).check(z.maxLength(1000))),
});
export type Job = z.infer<typeof Job>;

export type JobReading = DocumentReading<Job>;

/**
 * Reads the text of a job file.
 * @param names the parts there are; undefined where nobody knows, then the order list is taken as it is
 */
export function readJob(text: string, file: FileContext, names: readonly string[] | undefined): JobReading {
  return readDocument(
    { schema: Job, begins: "title: Our job", rules: (job) => rules(job, names) },
    text,
    file,
  );
}

function rules({ parts = [] }: Loose<Job>, names: readonly string[] | undefined): FieldProblem[] {
  return parts.flatMap((name, i): FieldProblem[] => {
    if (name === undefined) return [];
    const path = ["parts", i];
    const before = parts.indexOf(name);
    if (before < i) {
      return [
        {
          path,
          problem: `${shown(name)} is in the list already, in place ${before + 1}`,
          remedy: "keep it once",
        },
      ];
    }
    if (!names || names.includes(name)) return [];
    return [{ path, problem: `there is no part ${shown(name)}`, remedy: remedy(name, names) }];
  });
}

function remedy(name: string, names: readonly string[]): string {
  const guess = nearest(name.replace(/\.ya?ml$/i, ""), names);
  if (guess !== undefined) return `did you mean ${guess}?`;
  if (names.length === 0) return "put its file into the folder parts";
  return names.length > 12 ? "give the name of a file in the folder parts" : `give ${either(names)}`;
}

import * as z from "zod/mini";
import type { TrialsKept } from "../forming/tried.ts";
import { MOST_TOLD, type TrialSeen } from "../forming/trialSeen.ts";
import { distance, size } from "../shapes/fields.ts";
import type { Loose } from "../shapes/loose.ts";
import type { FileContext } from "./context.ts";
import { readDocument, type DocumentReading } from "./document.ts";
import type { FieldProblem } from "./plainTree.ts";

const HUNDRED = 100;
/** Per cent of the turn: further round no blank goes. */
export const MOST_CLOSED = MOST_TOLD * HUNDRED;

/** One trial: where the roll was set, and one of what came out. */
const TrialRow = z.strictObject({
  /** Raise of the bending roll at the large edge, from where it touches the flat plate, along its slide. [mm] */
  setting: size(),
  /** Straight across at the large end, inside corner to inside corner; with a minus where the edges overlap. [mm] */
  gap: z.optional(distance()),
  /** Or how far closed, in per cent of the turn; above 100 where the edges overlap. */
  closed: z.optional(z.number().check(z.minimum(0), z.maximum(MOST_CLOSED))),
  /** Or that it sprang back flat. */
  flat: z.optional(z.boolean()),
});

/** The trials of a part's first pass, kept in PART.trials.yaml next to PART.yaml. */
export const Trials = z.strictObject({
  units: z.enum(["mm", "in"]),
  /** A plate roll of the shop file. */
  machine: z.string().check(z.minLength(1)),
  trials: z.array(TrialRow).check(z.minLength(1), z.maxLength(100)),
});
export type Trials = z.infer<typeof Trials>;

/** Reads the text of a file of trials. */
export function readTrials(text: string, file: FileContext): DocumentReading<Trials> {
  return readDocument({ schema: Trials, begins: "machine: Big roll", rules }, text, file);
}

function rules({ trials = [] }: Loose<Trials>): FieldProblem[] {
  return trials.flatMap((trial, i) =>
    !trial ||
    [trial.gap, trial.closed, trial.flat || undefined].filter((one) => one !== undefined).length === 1
      ? []
      : [
          {
            path: ["trials", i],
            problem: "a trial tells one thing that came out",
            remedy: "give exactly one of gap, closed and flat",
          },
        ],
  );
}

/** A row of the file as the correction takes it. */
export function seenOf({ setting, gap, closed }: Trials["trials"][number]): TrialSeen {
  if (gap !== undefined) return { settingMm: setting, gapMm: gap };
  return closed === undefined
    ? { settingMm: setting, flat: true }
    : { settingMm: setting, closed: closed / HUNDRED };
}

/** The whole file as the work sheet takes it. */
export const keptOf = ({ machine, trials }: Trials): TrialsKept => ({ machine, seen: trials.map(seenOf) });

const TRIALS = /\.trials\.ya?ml$/i;

/** Is this the file of a part's trials rather than of a part? */
export const isTrialsFile = (path: string): boolean => TRIALS.test(path);

/** Where the trials of a part are kept. */
export const trialsPath = (partPath: string): string => partPath.replace(/\.ya?ml$/i, ".trials.yaml");

import * as z from "zod/mini";
import { type AnyTold, settleTrials } from "../forming/settleTrials.ts";
import type { BearingsRead } from "../forming/bearingsRead.ts";
import type { TrialsKept } from "../forming/tried.ts";
import { MOST_TOLD } from "../forming/trialSeen.ts";
import { deepest, radiusOfDepth } from "../forming/zoneSeen.ts";
import { distance, size } from "../shapes/fields.ts";
import type { Loose } from "../shapes/loose.ts";
import type { FileContext } from "./context.ts";
import { readDocument, type DocumentReading } from "./document.ts";
import type { FieldProblem } from "./plainTree.ts";

const HUNDRED = 100;
/** Per cent of the turn: further round no blank goes. */
export const MOST_CLOSED = MOST_TOLD * HUNDRED;

/** A higher number of a zone is a slip of the pen. */
const MOST_NUMBERED = 99;

/** One trial: where the roll was set, and one of what came out. */
const TrialRow = z.strictObject({
  /** Eccentric cones: the zone, from seam edge 1; the only one where it is left out. */
  zone: z.optional(z.int().check(z.minimum(1), z.maximum(MOST_NUMBERED))),
  /** Raise of the bending roll at the large edge, from where it touches the flat plate, along its slide. [mm] */
  setting: z.optional(size()),
  /** Or, in the first pass, what the scales at the bearings showed, drop end and fixed end: raises from their own 0. [mm] */
  drop: z.optional(distance()),
  fixed: z.optional(distance()),
  /** What they show on the flat plate, where that is not 0. [mm] */
  dropAt0: z.optional(distance()),
  fixedAt0: z.optional(distance()),
  /** Straight across at the large end, inside corner to inside corner; with a minus where the edges overlap. [mm] */
  gap: z.optional(distance()),
  /** Or how far closed, in per cent of the turn; above 100 where the edges overlap. */
  closed: z.optional(z.number().check(z.minimum(0), z.maximum(MOST_CLOSED))),
  /** Or that it sprang back flat. */
  flat: z.optional(z.boolean()),
  /** Or, in a zone, the inside radius at the large and at the small end, square to the element line. [mm] */
  large: z.optional(size()),
  small: z.optional(size()),
  /** Or the depth of the inside there under a straightedge of this length. [mm] */
  chord: z.optional(size()),
  largeDepth: z.optional(size()),
  smallDepth: z.optional(size()),
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

type Row = Trials["trials"][number];
type Told = "gap" | "closed" | "flat" | "radius" | "depth";

/** The kinds of things that a row tells. */
function toldBy(trial: Loose<Row>): Told[] {
  const { gap, closed, flat, large, small, largeDepth, smallDepth } = trial;
  const all: [Told, unknown][] = [
    ["gap", gap],
    ["closed", closed],
    ["flat", flat || undefined],
    ["radius", large ?? small],
    ["depth", largeDepth ?? smallDepth],
  ];
  return all.flatMap(([told, value]) => (value === undefined ? [] : [told]));
}

interface RowProblem {
  readonly problem: string;
  readonly remedy: string;
}

/** What is wrong between the keys that say how the roll was set; whether raise and bearings agree is asked where the roll is known. */
function setProblem({ setting, drop, fixed, dropAt0, fixedAt0 }: Loose<Row>): RowProblem | null {
  const bearings = [drop, fixed].filter((one) => one !== undefined).length;
  const zeros = [dropAt0, fixedAt0].filter((one) => one !== undefined).length;
  if (bearings === 1)
    return {
      problem: "one bearing alone does not say how the roll stood",
      remedy: "give drop and fixed, the drop end and the fixed end, or setting, the raise at the large edge",
    };
  if (zeros > 0 && bearings === 0)
    return {
      problem: "readings at 0 go with those of the trial",
      remedy: "give drop and fixed, what the scales showed, or leave out dropAt0 and fixedAt0",
    };
  if (zeros === 1)
    return {
      problem: "the reading at 0 of one bearing is left out",
      remedy: "give dropAt0 and fixedAt0, or neither where both were read from their own 0",
    };
  return setting === undefined && bearings === 0
    ? {
        problem: "a trial tells how the roll was set",
        remedy:
          "give setting, the raise at the large edge, or drop and fixed, what the bearings' scales showed",
      }
    : null;
}

/** What is wrong between the keys of one trial, as the file's problem; null where nothing is. */
export function rowProblem(trial: Loose<Row>): RowProblem | null {
  return setProblem(trial) ?? outcomeProblem(trial);
}

function outcomeProblem(trial: Loose<Row>): RowProblem | null {
  const told = toldBy(trial);
  if (told.length !== 1)
    return {
      problem: "a trial tells one thing that came out",
      remedy:
        "give exactly one of gap, closed and flat, or in a zone large and small (or largeDepth and smallDepth)",
    };
  const { zone, chord, largeDepth, smallDepth } = trial;
  if (zone !== undefined && (told[0] === "gap" || told[0] === "closed"))
    return { problem: "a zone has no gap and no closure", remedy: "give large and small, the inside radii" };
  if ((chord !== undefined) !== (told[0] === "depth"))
    return {
      problem: "a depth is measured under a straightedge",
      remedy: "give chord, its length, together with largeDepth and smallDepth",
    };
  const most = deepest(chord ?? 0);
  return told[0] === "depth" && [largeDepth, smallDepth].some((depth) => depth !== undefined && depth > most)
    ? { problem: "a depth is more than half the straightedge", remedy: "check chord and depth" }
    : null;
}

function rules({ trials = [] }: Loose<Trials>): FieldProblem[] {
  return trials.flatMap((trial, i) => {
    const wrong = trial && rowProblem(trial);
    return wrong ? [{ path: ["trials", i], ...wrong }] : [];
  });
}

/** What the bearings' scales showed; undefined where nobody wrote it down. */
function bearingsIn({ drop, fixed, dropAt0, fixedAt0 }: Row): BearingsRead | undefined {
  if (drop === undefined || fixed === undefined) return undefined;
  return {
    dropMm: drop,
    fixedMm: fixed,
    ...(dropAt0 !== undefined && { dropAt0Mm: dropAt0 }),
    ...(fixedAt0 !== undefined && { fixedAt0Mm: fixedAt0 }),
  };
}

/** A row of the file as the correction takes it. */
export function seenOf(row: Row): AnyTold {
  const { zone, setting, gap, closed, flat, chord: chordMm } = row;
  const bearings = bearingsIn(row);
  const set = { ...(setting !== undefined && { settingMm: setting }), ...(bearings && { bearings }) };
  if (gap !== undefined) return { ...set, gapMm: gap };
  if (closed !== undefined) return { ...set, closed: closed / HUNDRED };
  if (flat) return { ...(zone !== undefined && { zone }), ...set, flat: true };
  const radius = (depthMm: number | undefined) =>
    depthMm === undefined || chordMm === undefined ? undefined : radiusOfDepth({ chordMm, depthMm });
  const [largeMm, smallMm] = [row.large ?? radius(row.largeDepth), row.small ?? radius(row.smallDepth)];
  return {
    zone: zone ?? 1,
    ...set,
    ...(largeMm !== undefined && { largeMm }),
    ...(smallMm !== undefined && { smallMm }),
  };
}

/** The whole file as the work sheet takes it. */
export const keptOf = ({ machine, trials }: Trials): TrialsKept => ({
  machine,
  seen: trials.map(seenOf),
  settle: settleTrials,
});

const TRIALS = /\.trials\.ya?ml$/i;

/** Is this the file of a part's trials rather than of a part? */
export const isTrialsFile = (path: string): boolean => TRIALS.test(path);

/** Where the trials of a part are kept. */
export const trialsPath = (partPath: string): string => partPath.replace(/\.ya?ml$/i, ".trials.yaml");

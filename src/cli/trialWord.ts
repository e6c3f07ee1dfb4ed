import { readLength } from "../input/length.ts";
import { MOST_CLOSED, rowProblem, type Trials } from "../input/readTrials.ts";
import type { Units } from "../input/units.ts";

type Row = Trials["trials"][number];

/** Lengths that are more than nothing; a gap may be an overlap. */
const SIZES = ["large", "small", "chord", "largeDepth", "smallDepth"] as const;
/** What the scales at the bearings show, which may be below 0. */
const BEARINGS = ["drop", "fixed", "dropAt0", "fixedAt0"] as const;
const LENGTHS = ["setting", "gap", ...BEARINGS, ...SIZES] as const;
const KEYS = [...LENGTHS, "closed", "flat", "zone"] as const;
const OUTCOMES = KEYS.filter((key) => !["setting", "zone", "chord", ...BEARINGS].includes(key));
const HOW =
  "write setting=12.5,gap=840 (or closed=45, or flat, in place of the gap; gap=-40 where the edges overlap by 40; drop=31,fixed=12, the raises at the two bearings, in place of the setting); of an eccentric cone zone=2,setting=12.5,large=830,small=520";

/**
 * Reads one trial of the command line: setting=12.5,gap=840, or closed=45 per cent, or flat; of a zone
 * zone=2,setting=12.5,large=830,small=520, or chord=300,largeDepth=13,smallDepth=21. In place of the setting the bearings
 * as they were read, drop=31,fixed=12, with dropAt0=150,fixedAt0=150 where the scales show that on the flat plate. Lengths
 * as in the part file.
 *
 * @returns the trial, or what is wrong with it as a sentence
 */
export function trialOfWord(text: string, units: Units): Row | string {
  const found = new Map<string, string>();
  for (const piece of text.split(",")) {
    const [key = "", value = ""] = piece.trim().split(/\s*=\s*/, 2);
    if (/[/\\]|\.ya?ml$/i.test(key))
      return `the trial ${text} looks like a path: --trial file takes the trials kept in PART.trials.yaml next to the part, where file is that very word; or ${HOW}`;
    if (!KEYS.some((one) => one === key))
      return `the trial ${text} has no use for ${key || "nothing"}; ${HOW}`;
    if (found.has(key)) return `the trial ${text} gives ${key} twice; ${HOW}`;
    found.set(key, value);
  }
  if (!OUTCOMES.some((key) => found.has(key)))
    return `the trial ${text} needs a setting and one thing that came out; ${HOW}`;
  const row: { -readonly [K in keyof Row]?: Row[K] } = {};
  for (const key of LENGTHS) {
    const value = found.get(key);
    if (value === undefined) continue;
    const length = readLength(value, units);
    if (length.kind === "unreadable") return `the trial ${text}: ${length.problem}; ${length.remedy}`;
    row[key] = length.value;
  }
  if (found.has("flat")) row.flat = true;
  const zone = found.get("zone");
  if (zone !== undefined) {
    if (!/^[1-9]\d?$/.test(zone)) return `the trial ${text}: a zone is a number from 1 to 99; ${HOW}`;
    row.zone = Number(zone);
  }
  const per = found.get("closed")?.replace(/\s*%$/, "");
  if (per !== undefined) {
    const closed = per === "" ? Number.NaN : Number(per);
    if (!(closed >= 0 && closed <= MOST_CLOSED))
      return `the trial ${text}: closed is in per cent of the turn, from 0 to ${MOST_CLOSED}, above 100 where the edges overlap; ${HOW}`;
    row.closed = closed;
  }
  if (LENGTHS.every((key) => !["setting", ...BEARINGS].includes(key) || row[key] === undefined))
    return `the trial ${text} needs a setting and one thing that came out; ${HOW}`;
  if (row.setting !== undefined && row.setting <= 0)
    return `the trial ${text} has a setting of nought or less; ${HOW}`;
  const nothing = SIZES.find((key) => (row[key] ?? 1) <= 0);
  if (nothing !== undefined) return `the trial ${text} has ${nothing} of nought or less; ${HOW}`;
  const wrong = rowProblem(row);
  if (wrong) return `the trial ${text}: ${wrong.problem}; ${wrong.remedy}`;
  return row;
}

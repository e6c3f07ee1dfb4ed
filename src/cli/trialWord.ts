import { readLength } from "../input/length.ts";
import { MOST_CLOSED, type Trials } from "../input/readTrials.ts";
import type { Units } from "../input/units.ts";

type Row = Trials["trials"][number];

const KEYS = ["setting", "gap", "closed", "flat"] as const;
const HOW =
  "write setting=12.5,gap=840 (or closed=45, or flat, in place of the gap; gap=-40 where the edges overlap by 40)";

/**
 * Reads one trial of the command line: setting=12.5,gap=840, or closed=45 per cent, or flat. Lengths as in the part file.
 *
 * @returns the trial, or what is wrong with it as a sentence
 */
export function trialOfWord(text: string, units: Units): Row | string {
  const found = new Map<string, string>();
  for (const piece of text.split(",")) {
    const [key = "", value = ""] = piece.trim().split(/\s*=\s*/, 2);
    if (!KEYS.some((one) => one === key))
      return `the trial ${text} has no use for ${key || "nothing"}; ${HOW}`;
    if (found.has(key)) return `the trial ${text} gives ${key} twice; ${HOW}`;
    found.set(key, value);
  }
  const outcomes = ["gap", "closed", "flat"].filter((key) => found.has(key));
  if (!found.has("setting") || outcomes.length !== 1)
    return `the trial ${text} needs a setting and one thing that came out; ${HOW}`;
  const lengthOf = (key: string) => readLength(found.get(key) ?? "", units);
  const setting = lengthOf("setting");
  if (setting.kind === "unreadable") return `the trial ${text}: ${setting.problem}; ${setting.remedy}`;
  if (setting.value <= 0) return `the trial ${text} has a setting of nought or less; ${HOW}`;
  if (found.has("flat")) return { setting: setting.value, flat: true };
  if (found.has("gap")) {
    const gap = lengthOf("gap");
    if (gap.kind === "unreadable") return `the trial ${text}: ${gap.problem}; ${gap.remedy}`;
    return { setting: setting.value, gap: gap.value };
  }
  const per = (found.get("closed") ?? "").replace(/\s*%$/, "");
  const closed = per === "" ? Number.NaN : Number(per);
  if (!(closed >= 0 && closed <= MOST_CLOSED))
    return `the trial ${text}: closed is in per cent of the turn, from 0 to ${MOST_CLOSED}, above 100 where the edges overlap; ${HOW}`;
  return { setting: setting.value, closed };
}

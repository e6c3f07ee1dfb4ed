import type { RollAsked } from "../../forming/asked.ts";
import { type BearingsRead, type SetAt, settleSet } from "../../forming/bearingsRead.ts";
import { sumOf, wrongOf } from "../../forming/setWords.ts";
import { settable } from "../../forming/rollPlaces.ts";
import { SAME_SETTING_MM } from "../../forming/trialSlope.ts";
import { capital } from "../../forming/words.ts";
import type { Units } from "../../drawing/format.ts";
import { find, LARGEST_MM, lengthHow, lengthIn, wrongWith } from "./find.ts";
import { typed } from "./keptTrials.ts";

const ENDS = ["drop", "fixed"] as const;
const ANY = [-LARGEST_MM, LARGEST_MM] as const;

/** What stands in the fields of both bearings, as text. */
type BearingTexts = Readonly<Record<"drop" | "fixed" | "dropAt0" | "fixedAt0", string>>;

/** What the scales showed, or what is wrong with what is typed, as a sentence. */
function bearingsOfTexts(texts: BearingTexts, units: Units): BearingsRead | string {
  const how = lengthHow(units);
  const read = (text: string) => lengthIn(text, units, ANY);
  const zeros = [texts.dropAt0, texts.fixedAt0].map((text) => text.trim() !== "");
  const byScale = zeros.some(Boolean);
  if (byScale && !zeros.every(Boolean))
    return "Write what the scales show on the flat plate at both ends, or at neither where the raises are written.";
  const [dropAt0Mm, fixedAt0Mm] = [read(texts.dropAt0), read(texts.fixedAt0)];
  if (byScale && (dropAt0Mm === undefined || fixedAt0Mm === undefined))
    return wrongWith(
      `Write the scales’ readings at 0 as ${how}, or leave both empty where the raises are written.`,
      texts.dropAt0,
      texts.fixedAt0,
    );
  const [dropMm, fixedMm] = [read(texts.drop), read(texts.fixed)];
  if (dropMm === undefined || fixedMm === undefined)
    return wrongWith(
      `Write ${byScale ? "what the scales showed" : "the raises"} at the drop end and at the fixed end as ${how}${byScale ? "" : ", below 0 with a minus"}.`,
      texts.drop,
      texts.fixed,
    );
  return {
    dropMm,
    fixedMm,
    ...(dropAt0Mm !== undefined && { dropAt0Mm }),
    ...(fixedAt0Mm !== undefined && { fixedAt0Mm }),
  };
}

/** What the two bearings come to in a zone, while they are typed: the sum, and how their tilt compares with the plan's. */
export function comeTo(asked: RollAsked, set: SetAt, zone: number): string {
  const { units } = asked.say;
  const settled = settleSet(asked, set, zone);
  if (typeof settled === "string")
    return `No raise by these: ${wrongOf(asked, set, { why: settled, zone }).problem}.`;
  const { tiltMm } = settled;
  const off =
    Math.abs(tiltMm) > SAME_SETTING_MM
      ? `The drop end stands ${typed(settable(Math.abs(tiltMm), units), units)} ${units} ${tiltMm > 0 ? "higher" : "lower"} above the fixed end than in the plan.`
      : "The tilt is the plan’s.";
  return `${capital(set.bearings ? sumOf(asked, set.bearings, zone) : "")}. ${off}`;
}

/** The fields of the setting that are asked for bearings. */
export interface BearingFields {
  readonly read: () => SetAt | string;
  readonly clear: () => void;
  /** Tells anew what they come to. */
  readonly show: () => void;
}

/**
 * Brings to life the fields of both bearings; this browser keeps what the scales show on the flat plate.
 *
 * @param key under which it is kept
 * @param comes what a setting comes to, in words, on this roll, in the zone that is chosen
 */
export function bearingFields(
  root: Element,
  units: Units,
  { key, comes }: { readonly key: string; readonly comes: (set: SetAt) => string },
): BearingFields {
  const inputs = ENDS.map((end) => find(root, end, HTMLInputElement));
  const zeros = ENDS.map((end) => find(root, `${end}-zero`, HTMLInputElement));
  const labels = ENDS.map((end) => find(root, `${end}-label`, HTMLSpanElement));
  const sum = find(root, "sum", HTMLParagraphElement);
  try {
    const kept = JSON.parse(localStorage.getItem(key) ?? "[]") as unknown;
    if (Array.isArray(kept)) zeros.forEach((zero, i) => (zero.value = String(kept[i] ?? "")));
  } catch {
    // A browser that keeps nothing says so at the first trial.
  }
  const texts = (): BearingTexts => {
    const [drop, fixed] = inputs.map(({ value }) => value) as [string, string];
    const [dropAt0, fixedAt0] = zeros.map(({ value }) => value) as [string, string];
    return { drop, fixed, dropAt0, fixedAt0 };
  };
  const read = (): SetAt | string => {
    const bearings = bearingsOfTexts(texts(), units);
    return typeof bearings === "string" ? bearings : { bearings };
  };
  const show = () => {
    const byScale = zeros.some(({ value }) => value.trim() !== "");
    labels.forEach(
      (label, i) =>
        (label.textContent = `${byScale ? "Scale’s reading" : "Raise"} at the ${ENDS[i] ?? ""} end`),
    );
    const set = read();
    sum.textContent = typeof set === "string" ? "" : comes(set);
  };
  for (const input of inputs) input.addEventListener("input", show);
  for (const zero of zeros)
    zero.addEventListener("input", () => {
      try {
        localStorage.setItem(key, JSON.stringify(zeros.map(({ value }) => value)));
      } catch {
        // The reading stands in its field all the same.
      }
      show();
    });
  show();
  return {
    read,
    clear: () => {
      for (const input of inputs) input.value = "";
      show();
    },
    show,
  };
}

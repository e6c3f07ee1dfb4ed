import type { OfShop } from "./ofShop.ts";

/** How a check came out: it goes, it goes with care, it does not go on this machine. */
export type Verdict = "pass" | "caution" | "fail";

/** One question about forming, answered with numbers. */
export interface Check {
  /** Fixed word for the question, e.g. "capacity". */
  readonly id: string;
  /** The question in words, e.g. "Thickness times slant height". */
  readonly title: string;
  /** What this part asks for, in `unit`; null where the question has no number. */
  readonly value: number | null;
  /** What the machine or the rule allows, in `unit`. */
  readonly limit: number | null;
  /** Is `limit` the most or the least that is allowed? */
  readonly sense: "at most" | "at least" | null;
  /** Which of the two the shop file gives in other units than the part's, as a die; not present where neither. */
  readonly ofShop?: OfShop<"value" | "limit">;
  /** "mm", "mm²", "%", "kg", "kN", "°", "-" … */
  readonly unit: string;
  /** Share of the limit still free: 0.2 is a fifth; negative is beyond it. */
  readonly margin: number | null;
  readonly verdict: Verdict;
  /** What to do about it: one sentence, always present. */
  readonly advice: string;
  /** A source id, "common practice, no source", or "derived here". */
  readonly basis: string;
  /** The rule behind the number, in words or a short formula. */
  readonly rule: string;
}

/** The worst verdict of a list; nothing asked is nothing wrong. */
export function worst(verdicts: readonly Verdict[]): Verdict {
  if (verdicts.includes("fail")) return "fail";
  return verdicts.includes("caution") ? "caution" : "pass";
}

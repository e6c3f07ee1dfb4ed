import { AT_LIMIT_REL } from "../geometry/tolerance.ts";
import type { Check, Verdict } from "./check.ts";
import type { OfShop } from "./ofShop.ts";

/** Bases that are no entry in the list of sources. */
export const COMMON_PRACTICE = "common practice, no source";
export const DERIVED = "derived here";
/** A size that the part file gives. */
export const AS_DRAWN = "as drawn";

/**
 * Above this share of what a machine takes it is near the limit: the rule of thumb of a cone is no longer enough, and the
 * spread of the constants of a brake's force alone may reach the rest. [-]
 */
export const NEAR_LIMIT = 0.8;

interface Words {
  readonly id: string;
  readonly title: string;
  readonly unit: string;
  readonly basis: string;
  readonly rule: string;
}

/** A question that numbers decide. */
export interface Question extends Words {
  readonly value: number;
  readonly limit: number;
  readonly sense: "at most" | "at least";
  /** What it means to be beyond the limit. */
  readonly beyond: "caution" | "fail";
  readonly ofShop?: OfShop<"value" | "limit">;
  /** Share of an "at most" limit above which care is needed though it goes. */
  readonly nearShare?: number;
  /** The sentence for each way it can come out. */
  readonly advice: (verdict: Verdict) => string;
}

/** Share of the limit still free; a value at its limit has exactly 0 left. */
function marginOf({ value, limit, sense }: Pick<Question, "value" | "limit" | "sense">): number {
  // Where nothing is allowed, no share of it can be told: all or nothing.
  if (limit <= 0) return sense === "at most" && value > limit ? -1 : 0;
  const free = sense === "at most" ? 1 - value / limit : value / limit - 1;
  return Math.abs(free) <= AT_LIMIT_REL ? 0 : free;
}

/** Answer a question by comparing its value with its limit. Beyond the limit it never passes; within it never fails. */
export function judge(question: Question): Check {
  const { id, title, value, limit, sense, unit, basis, rule, beyond, nearShare, advice } = question;
  if (!Number.isFinite(value) || !Number.isFinite(limit))
    throw new RangeError(`${id}: value ${value}, limit ${limit}`);
  const margin = marginOf(question);
  const near = nearShare !== undefined && value > nearShare * limit * (1 + AT_LIMIT_REL);
  const verdict: Verdict = margin < 0 ? beyond : near ? "caution" : "pass";
  const { ofShop } = question;
  const numbers = { value, limit, sense, ...(ofShop && { ofShop }), unit, margin };
  return { id, title, ...numbers, verdict, advice: advice(verdict), basis, rule };
}

/** A question without a limit to compare with: the verdict is given, and why stands in the advice. */
export interface Statement extends Words {
  readonly value?: number;
  readonly sense?: "at most" | "at least";
  readonly verdict: Verdict;
  readonly advice: string;
}

/** Answer a question that no number decides, or whose deciding number nobody has given. */
export function state({ value, sense, verdict, advice, ...words }: Statement): Check {
  const { id, title, unit, basis, rule } = words;
  if (value !== undefined && !Number.isFinite(value)) throw new RangeError(`${id}: value ${value}`);
  return {
    id,
    title,
    value: value ?? null,
    limit: null,
    sense: sense ?? null,
    unit,
    margin: null,
    verdict,
    advice,
    basis,
    rule,
  };
}

import type { BrakeBends } from "./brakeBends.ts";
import type { FormingCase } from "./case.ts";
import type { Check } from "./check.ts";
import type { PlateRoll, PressBrake, Shop } from "./machine.ts";
import type { Say } from "./say.ts";

/** What a rule is given: the part, and the words that numbers read in. */
export interface PartAsked {
  readonly item: FormingCase;
  readonly say: Say;
}

export interface ShopAsked extends PartAsked {
  readonly shop: Shop | undefined;
}

export interface RollAsked extends PartAsked {
  readonly roll: PlateRoll;
  /** Are its words for the work sheet, which has in its boxes what is set, and is for the next blank? */
  readonly onSheet?: boolean;
}

export interface BrakeAsked extends PartAsked {
  readonly brake: PressBrake;
  /** The die opening it is bent over. [mm] */
  readonly dieMm: number;
  /** Its hits over this die; null where the blanks are not known. */
  readonly bends?: BrakeBends | null;
}

/** One rule: it answers its question, or null where the question does not arise. */
export type Rule<Asked extends PartAsked> = (asked: Asked) => Check | null;

/** The answers of those rules whose question arises. */
export function ask<Asked extends PartAsked>(rules: readonly Rule<Asked>[], asked: Asked): Check[] {
  return rules.map((rule) => rule(asked)).filter((check) => check !== null);
}

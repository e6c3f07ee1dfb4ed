import type { PartAsked } from "../asked.ts";

/** A part, and the mass above which its blanks are lifted by machine. */
export interface LiftAsked extends PartAsked {
  /** Heavier blanks are lifted by machine. [kg] */
  readonly handLiftKg: number;
}

/** Where a blank is held while it is formed. */
const HELD = {
  roll: "support on both sides of the rolls",
  brake: "held up at the brake while it is bent",
} as const;

/** Of every blank. */
export const SHARP = "Cut plate is sharp and heavy: gloves, and the shop's own lifting rules.";

export const heaviestKg = ({ item }: LiftAsked): number =>
  Math.max(0, ...item.blanks.map(({ massKg }) => massKg));
export const isHeavy = (asked: LiftAsked): boolean => heaviestKg(asked) > asked.handLiftKg;

/** Above the shop's own rule a blank is lifted by machine; nothing of a lighter one. */
export const liftCautions = (asked: LiftAsked, at: keyof typeof HELD): string[] =>
  isHeavy(asked)
    ? [
        `A blank weighs ${asked.say.mass(heaviestKg(asked))}, more than is lifted by hand here (${asked.say.mass(asked.handLiftKg)}): crane or hoist, and ${HELD[at]}.`,
      ]
    : [];

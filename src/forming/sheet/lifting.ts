import type { PartAsked } from "../asked.ts";
import type { PlanStep } from "./step.ts";

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

/** Of every plate roll. */
export const GUARDS =
  "The rolls draw in hands, sleeves and gloves: gloves off before they turn, every stop button and emergency stop tried first, nobody near the nip.";
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

/** The mass of a piece that is too heavy for hands, where it is lifted again. */
export const craneOf = (asked: LiftAsked): string[] =>
  isHeavy(asked) ? [`Crane: ${asked.say.mass(heaviestKg(asked))}.`] : [];

/** What hangs where a step lifts it or takes it off: a piece, pieces that are then tacked together, or the tacked part. */
const HANGS: Readonly<Record<string, "piece" | "tacked" | "part">> = {
  unload: "piece",
  close: "piece",
  "last-edge": "piece",
  "by-template": "piece",
  bend: "piece",
  tack: "tacked",
  "re-round": "part",
  inspect: "part",
};

function hangs(asked: LiftAsked, id: string): string[] {
  const { item, say, handLiftKg } = asked;
  const what = HANGS[id];
  if (what === undefined) return [];
  const partKg = item.blanks.reduce((sum, { massKg }) => sum + massKg, 0);
  const [piece, part] = [heaviestKg(asked), partKg].map((kg) => say.mass(kg));
  const partOnly = partKg > handLiftKg && item.blanks.length > 1;
  if (what === "part") return partKg > handLiftKg ? [`Crane: ${part}.`] : [];
  if (what === "tacked" && partOnly)
    return [
      isHeavy(asked)
        ? `Crane: a piece weighs ${piece}, the tacked part ${part}.`
        : `Tacked together it weighs ${part}: crane.`,
    ];
  return what === "piece" ? craneOf(asked) : [];
}

/** Steps in which something heavier than the shop's rule hangs say so, with its mass. */
export const withLifting = <Step extends PlanStep>(asked: LiftAsked, steps: readonly Step[]): Step[] =>
  steps.map((step) => ({ ...step, cautions: [...step.cautions, ...hangs(asked, step.id)] }));

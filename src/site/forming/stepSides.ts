import type { FormingPlan } from "../../forming/plan.ts";

type Step = FormingPlan["steps"][number];

/** How large the steps are set. */
export interface StepType {
  readonly points: number;
  /** From line to line, over the size of the letters. [-] */
  readonly leading: number;
}

/** From the largest, read from further off, to the least that is still read at arm's length. */
const AT_ARMS_LENGTH: readonly StepType[] = [
  { points: 14, leading: 1.2 },
  { points: 13, leading: 1.18 },
  { points: 12.5, leading: 1.15 },
  { points: 12, leading: 1.13 },
  { points: 11.5, leading: 1.12 },
  { points: 11, leading: 1.12 },
  { points: 10.5, leading: 1.12 },
  { points: 10.5, leading: 1.05 },
  { points: 10, leading: 1.05 },
  { points: 10, leading: 1.02 },
];
/** Letters of 10.5 points, not pressed together, are no reason to cut the work elsewhere. */
const LARGE_ENOUGH = 6;
/** Where many zones have many trials to tell of. */
const CLOSER: readonly StepType[] = [
  { points: 9.5, leading: 1.05 },
  { points: 9, leading: 1.05 },
  { points: 8.5, leading: 1.05 },
];
/** Where nothing fits: it runs on over a third page. */
const LEAST: StepType = { points: 10, leading: 1.02 };

/** One side of the sheet of steps. */
export interface Side {
  readonly steps: readonly Step[];
  readonly type: StepType;
}

/** Do these steps fit a side of the sheet in letters of this size? */
export type Fits = (side: "front" | "back", steps: readonly Step[], type: StepType) => boolean;

const FRONT: ReadonlySet<string> = new Set(["set-up", "first pass"]);

/** The first of these that fits, each smaller than the one before it; its place, or -1. */
function firstThatFits(types: readonly StepType[], fits: (type: StepType) => boolean): number {
  let [from, to] = [0, types.length];
  while (from < to) {
    const middle = Math.floor((from + to) / 2);
    const type = types[middle];
    if (type && fits(type)) to = middle;
    else from = middle + 1;
  }
  return from < types.length ? from : -1;
}

/** The largest letters that fit, as small as they must be. */
export function largestOfAll(fits: (type: StepType) => boolean): StepType {
  const all = [...AT_ARMS_LENGTH, ...CLOSER];
  return all[firstThatFits(all, fits)] ?? LEAST;
}

/**
 * The steps on both sides of one sheet, each in the largest letters that it has room for: set-up and first pass in front,
 * all else behind. Where the front would be in small letters its last steps go behind too, as many as make the smaller
 * letters of both sides largest.
 */
export function sidesOf(steps: readonly Step[], fits: Fits): readonly [Side, Side] {
  const wanted = Math.max(1, steps.filter(({ phase }) => FRONT.has(phase)).length);
  const at = (count: number) => [steps.slice(0, count), steps.slice(count)] as const;
  let best: { count: number; types: readonly [number, number] } | undefined;
  for (let count = wanted; count > 0; count--) {
    const [front, back] = at(count);
    const types = [
      firstThatFits(AT_ARMS_LENGTH, (type) => fits("front", front, type)),
      firstThatFits(AT_ARMS_LENGTH, (type) => fits("back", back, type)),
    ] as const;
    // Further steps behind would only fill it more.
    if (types[1] < 0) break;
    if (types[0] < 0) continue;
    if (best && Math.max(...types) >= Math.max(...best.types)) break;
    best = { count, types };
    if (Math.max(...types) <= LARGE_ENOUGH) break;
  }
  const [front, back] = at(best?.count ?? wanted);
  const side = (name: "front" | "back", own: readonly Step[], found: number | undefined): Side => ({
    steps: own,
    type: AT_ARMS_LENGTH[found ?? -1] ?? largestOfAll((type) => fits(name, own, type)),
  });
  return [side("front", front, best?.types[0]), side("back", back, best?.types[1])];
}

const numbers = (steps: readonly Step[]): string => {
  const [first, last] = [steps[0]?.number, steps.at(-1)?.number];
  return first === last ? `step ${first}` : `steps ${first} to ${last}`;
};

type Sides = readonly [Pick<Side, "steps">, Pick<Side, "steps">];

/** At the foot of the front. */
export const turnOver = ([, back]: Sides): string =>
  `One sheet, both sides: ${numbers(back.steps)}, and what letters and words mean, are on the back.`;

/** At the head of the back. */
export const onTheBack = ([, back]: Sides): string => `Back of the sheet: ${numbers(back.steps)}`;

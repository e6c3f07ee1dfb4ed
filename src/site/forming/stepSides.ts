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
  { points: 10.5, leading: 1 },
  { points: 10, leading: 1.05 },
  { points: 10, leading: 1.02 },
  { points: 10, leading: 1 },
  { points: 10, leading: 0.97 },
];
/** Letters that are no reason to cut the work elsewhere, nor to have words explained on another sheet. [points] */
const LARGE_POINTS = 10.5;
const LARGE_ENOUGH = AT_ARMS_LENGTH.findLastIndex(({ points }) => points >= LARGE_POINTS);
/** Where many zones have many trials to tell of; their lines stand closer than all before them too, for a half is looked for. */
const CLOSER: readonly StepType[] = [
  { points: 9.5, leading: 1 },
  { points: 9, leading: 1.02 },
  { points: 8.5, leading: 1.05 },
];
const TYPES = [...AT_ARMS_LENGTH, ...CLOSER];
/** Where nothing fits: it runs on over a third page. */
const LEAST: StepType = { points: 10, leading: 1.02 };

/** One side of the sheet of steps. */
export interface Side {
  readonly steps: readonly Step[];
  readonly type: StepType;
}

export const isLarge = ({ points }: StepType): boolean => points >= LARGE_POINTS;

/** Do these steps fit a side of the sheet in letters of this size? */
export type Fits = (side: "front" | "back", steps: readonly Step[], type: StepType) => boolean;

const FRONT: ReadonlySet<string> = new Set(["set-up", "first pass"]);

/** The first of these that fits, each smaller than the one before it: its place, that behind the last where none does. */
function firstThatFits(types: readonly StepType[], fits: (type: StepType) => boolean): number {
  let [from, to] = [0, types.length];
  while (from < to) {
    const middle = Math.floor((from + to) / 2);
    const type = types[middle];
    if (type && fits(type)) to = middle;
    else from = middle + 1;
  }
  return from;
}

/** The largest letters that fit. */
export const largest = (fits: (type: StepType) => boolean): StepType =>
  TYPES[firstThatFits(TYPES, fits)] ?? LEAST;

/**
 * The steps on both sides of one sheet, each in the largest letters that it has room for: set-up and first pass in front,
 * all else behind. Where the front would be in small letters its last steps go behind too, as many as make the smaller
 * letters of both sides largest.
 */
export function sidesOf(steps: readonly Step[], fits: Fits): readonly [Side, Side] {
  const wanted = Math.max(1, steps.filter(({ phase }) => FRONT.has(phase)).length);
  const at = (count: number) => [steps.slice(0, count), steps.slice(count)] as const;
  const typesAt = (count: number): readonly [number, number] => {
    const [front, back] = at(count);
    return [
      firstThatFits(TYPES, (type) => fits("front", front, type)),
      firstThatFits(TYPES, (type) => fits("back", back, type)),
    ];
  };
  let best = { count: wanted, types: typesAt(wanted) };
  const smaller = (types: readonly [number, number]): number => Math.max(...types);
  for (let count = wanted - 1; count > 0 && smaller(best.types) > LARGE_ENOUGH; count--) {
    const types = typesAt(count);
    if (smaller(types) < smaller(best.types)) best = { count, types };
    // Further steps behind would only make those there smaller.
    if (types[1] >= types[0]) break;
  }
  const [front, back] = at(best.count);
  return [
    { steps: front, type: TYPES[best.types[0]] ?? LEAST },
    { steps: back, type: TYPES[best.types[1]] ?? LEAST },
  ];
}

const numbers = (steps: readonly Step[]): string => {
  const [first, last] = [steps[0]?.number, steps.at(-1)?.number];
  return first === last ? `step ${first}` : `steps ${first} to ${last}`;
};

type Sides = readonly [Pick<Side, "steps">, Pick<Side, "steps">];

/** At the foot of the front. */
export const turnOver = ([, back]: Sides): string =>
  `One sheet, both sides: ${numbers(back.steps)}, and the notes, are on the back.`;

/** At the foot of the back, where what words mean had to give way to the steps. */
export const WORDS_NEXT = "What words mean is said on another sheet.";

/** At the head of the back. */
export const onTheBack = ([, back]: Sides): string => `Back of the sheet: ${numbers(back.steps)}`;

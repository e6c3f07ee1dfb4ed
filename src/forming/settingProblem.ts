/** Something that stands in the way of a setting on this machine. */
export interface SettingProblem {
  readonly id: "refused" | "travel" | "origin" | "tilt" | "pinch";
  /**
   * What it stops: the part on this machine, for the plate itself cannot be bent so; this setting alone, which another way
   * of working goes round; or nothing that is known: it has to be found out.
   */
  readonly stops: "part" | "setting" | "nothing known";
  /** By how much; 0 where it is a matter of yes or no. [mm, degrees for a tilt] */
  readonly by: number;
  /** In a sentence. */
  readonly words: string;
}

const WEIGHT: Readonly<Record<SettingProblem["stops"], number>> = { "nothing known": 0, setting: 1, part: 2 };

/** Does the one stop more, or the same by more? */
const isWorse = (one: SettingProblem, other: SettingProblem): boolean =>
  WEIGHT[one.stops] - WEIGHT[other.stops] > 0 || (one.stops === other.stops && one.by > other.by);

/** The same trouble comes with every pass and zone, a little worse each time: each kind is told once, as it is at its worst. */
export function worstProblems(problems: readonly SettingProblem[]): SettingProblem[] {
  const told: SettingProblem[] = [];
  for (const one of problems) {
    // Reasons of a refusal differ from one another.
    const at = told.findIndex(({ id, words }) => id === one.id && (id !== "refused" || words === one.words));
    const known = told[at];
    if (!known) told.push(one);
    else if (isWorse(one, known)) told[at] = one;
  }
  return told;
}

/** The same in sentences. */
export const worstOf = (problems: readonly SettingProblem[]): string[] =>
  worstProblems(problems).map(({ words }) => words);

/** Where to set the roll at one moment; null where it has no such setting, or cannot be set so. */
export const settableStart = <Start>(
  pass: { readonly start: Start | null; readonly problems: readonly SettingProblem[] } | undefined,
): Start | null =>
  pass?.problems.some(({ stops }) => stops !== "nothing known") ? null : (pass?.start ?? null);

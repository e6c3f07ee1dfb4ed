/** Something that stands in the way of a setting on this machine. */
export interface SettingProblem {
  readonly id: "refused" | "travel" | "origin" | "tilt" | "pinch";
  /** By how much; 0 where it is a matter of yes or no. [mm, degrees for a tilt] */
  readonly by: number;
  /** In a sentence. */
  readonly words: string;
}

/** The same trouble comes with every pass and zone, a little worse each time: each kind is told once, as it is at its worst. */
export function worstOf(problems: readonly SettingProblem[]): string[] {
  const told: SettingProblem[] = [];
  for (const one of problems) {
    // Reasons of a refusal differ from one another.
    const at = told.findIndex(({ id, words }) => id === one.id && (id !== "refused" || words === one.words));
    const known = told[at];
    if (!known) told.push(one);
    else if (one.by > known.by) told[at] = one;
  }
  return told.map(({ words }) => words);
}

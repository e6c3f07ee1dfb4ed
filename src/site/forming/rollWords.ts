import type { FormingPlan } from "../../forming/plan.ts";

/** Words of plate rolling that a printed sheet explains at its foot, by their entries in the glossary, and how a step says them. */
const ROLL_WORDS: readonly { readonly entry: string; readonly said: RegExp }[] = [
  { entry: "aligning groove", said: /\bgroove\b/ },
  { entry: "yoke", said: /\byoke\b/ },
  { entry: "drop end", said: /\bdrop end\b/ },
  { entry: "fixed end", said: /\bfixed end\b/ },
  { entry: "element line", said: /\belement lines?\b/ },
  { entry: "square to the element line", said: /\bsquare to (?:the|an) element line\b/ },
  { entry: "model", said: /\bmodel\b/ },
  { entry: "raise", said: /\braises?\b/i },
  { entry: "trial correction", said: /\btrial correction\b/ },
];

/** The same for a press brake. */
const BRAKE_WORDS: typeof ROLL_WORDS = [
  { entry: "ram depth", said: /\bram depths?\b/ },
  { entry: "die opening", said: /\bdie opening\b/i },
  { entry: "hit", said: /\bhits?\b/ },
  { entry: "throat", said: /\bthroat\b/ },
  { entry: "free end", said: /\bfree end\b/ },
  { entry: "springback", said: /\bspringback\b/ },
  { entry: "template", said: /\btemplates?\b/i },
  { entry: "square to the element line", said: /\bsquare to (?:the|an) element line\b/ },
  { entry: "element line", said: /\belement lines?\b/ },
  { entry: "tack", said: /\btacks?\b/i },
];

export const BRAKE_WORD_ENTRIES: readonly string[] = BRAKE_WORDS.map(({ entry }) => entry);
export const ROLL_WORD_ENTRIES: readonly string[] = ROLL_WORDS.map(({ entry }) => entry);

/** A word and what it means in one sentence. */
export interface Explained {
  readonly word: string;
  readonly means: string;
}

/** Texts of the glossary by their entries. */
export type Glossary = ReadonlyMap<string, string>;

/** The first sentence says what it is; what follows in the glossary says more of it. */
const firstSentence = (text: string): string => /^.*?\.(?=\s|$)/s.exec(text)?.[0] ?? text;

/** What the words of plate rolling or of the brake mean that stand in these steps, or are to be looked at first. */
export function explainedIn(
  { route, steps, brake }: Pick<FormingPlan, "route" | "steps" | "brake">,
  glossary: Glossary,
): Explained[] {
  const said = steps.flatMap(({ text, cautions, toNote }) => [
    text,
    ...cautions,
    ...toNote.map(({ label }) => label),
  ]);
  said.push(...(brake?.remarks ?? []).map(({ text }) => text));
  return (route === "roll" ? ROLL_WORDS : BRAKE_WORDS).flatMap(({ entry, said: pattern }) => {
    const text = glossary.get(entry);
    return text !== undefined && said.some((one) => pattern.test(one))
      ? [{ word: entry, means: firstSentence(text) }]
      : [];
  });
}

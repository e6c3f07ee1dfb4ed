/** The order of the work is the order of the page. */
export const SECTIONS = [
  { id: "size", heading: "Size" },
  { id: "will-it-go", heading: "Will it go?" },
  { id: "blank", heading: "Blank" },
  { id: "set-up", heading: "Set-up" },
  { id: "first-pass", heading: "First pass" },
  { id: "second-pass", heading: "Second pass" },
  { id: "check-and-correct", heading: "Check and correct" },
  { id: "take-away", heading: "Take away" },
] as const;
export type SectionId = (typeof SECTIONS)[number]["id"];

/** Sections that a part has: on the brake every line is bent once, and there are no passes to turn to. */
export const sectionsFor = (route: "roll" | "brake"): readonly (typeof SECTIONS)[number][] =>
  route === "roll" ? SECTIONS : SECTIONS.filter(({ id }) => !PASSES.has(id));
const PASSES: ReadonlySet<SectionId> = new Set(["first-pass", "second-pass"]);

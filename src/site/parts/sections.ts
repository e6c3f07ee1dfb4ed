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

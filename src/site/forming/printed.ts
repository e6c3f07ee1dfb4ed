import type { FormingPlan } from "../../forming/plan.ts";
import type { Units } from "../../geometry/units.ts";
import { CAUTION, neverOn } from "../words/work.ts";
import { type Footnote, footnotes, marked } from "./footnotes.ts";
import { explainedIn, type Glossary } from "./rollWords.ts";
import { joined, unbroken } from "./joined.ts";
import { gridOf } from "./planned.ts";
import { byHandRows } from "./byHandWords.ts";
import { cardHigh, FIELDS, type PaperName, RAISED, type Taken, wordsHigh } from "./stepRoom.ts";
import { isLarge, type Side, sidesOf, type StepType, WORDS_NEXT } from "./stepSides.ts";
import { onBoth, type RoomMm, typesIn } from "./typesIn.ts";

/** Of the page's own styles for print: headings, the caution, what is to be looked at first, and small print. */
const TYPES = {
  caution: { points: 7.3, leading: 1.22 },
  look: { points: 9.5, leading: 1.2 },
  small: { points: 7.5, leading: 1.35 },
  notes: { points: 7.5, leading: 1.2 },
} as const;
/** Title line of a side; frame and padding of a box; between blocks; a line of small print at the foot; to spare, and in front besides. [mm] */
const HEAD = { titleMm: 10, boxMm: 4, gapMm: 1.5, footMm: 5, spareMm: 5, frontMm: 1 };

/** One side of the printed sheet of steps. */
export interface PrintedSide {
  readonly steps: Side["steps"];
  readonly types: Readonly<Record<PaperName, StepType>>;
  readonly room: RoomMm;
}

const PAPERS = ["a4", "letter"] as const;

const takenBy = (step: FormingPlan["steps"][number], units: Units, notes: readonly Footnote[]): Taken => ({
  words: [
    `${step.title}.${RAISED}`,
    marked(step, units, notes)
      .map(({ text, mark }) => `${unbroken(text)}${mark ? RAISED : ""}`)
      .join(""),
    ...step.cautions.map(joined),
  ].join(" "),
  boxes: step.toNote.length,
  grid: gridOf(step),
  tableRows: byHandRows(step, "mm").length,
});

/** What stands on the front before and below its steps. [mm] */
function frontRoom({ plan, title }: Printed, paper: PaperName): number {
  const { widthMm, heightMm } = FIELDS[paper];
  const caution = [CAUTION, "Caution. Read safety in plate work first.", ...neverOn(plan)].join(" ");
  const remarks = plan.brake?.remarks ?? [];
  const look =
    remarks.length === 0
      ? 0
      : HEAD.boxMm +
        2 * HEAD.gapMm +
        ["Look at this first.", ...remarks.map(({ text }) => text)].reduce(
          (sum, text) => sum + wordsHigh(text, TYPES.look, widthMm - 10),
          0,
        );
  const lot =
    plan.batch.length === 0 ? 0 : HEAD.gapMm + wordsHigh(plan.batch.join(" "), TYPES.small, widthMm);
  const wraps = title.length > 40 ? HEAD.titleMm / 2 : 0;
  return (
    heightMm -
    HEAD.titleMm -
    wraps -
    (HEAD.boxMm + wordsHigh(caution, TYPES.caution, widthMm - 6) + HEAD.gapMm) -
    look -
    lot -
    HEAD.footMm -
    HEAD.spareMm -
    HEAD.frontMm
  );
}

/** The same on the back: footnotes and what words mean stand below. [mm] */
function backRoom({ plan, units, known, glossary }: Printed, paper: PaperName, withWords: boolean): number {
  const { widthMm, heightMm } = FIELDS[paper];
  const notes = footnotes(plan, units).map(({ mark, basis }) => `${mark} ${known.get(basis) ?? basis}; `);
  const words = explainedIn(plan, glossary).map(({ word, means }) => `${word}: ${means} `);
  const small = (text: string) => (text === "" ? 0 : HEAD.gapMm + wordsHigh(text, TYPES.notes, widthMm));
  return (
    heightMm -
    HEAD.titleMm -
    small(`${"Basis ".repeat(12)}${notes.join("")}`) -
    small(withWords ? words.join("") : WORDS_NEXT) -
    HEAD.spareMm
  );
}

interface Printed {
  readonly plan: FormingPlan;
  readonly title: string;
  readonly units: Units;
  readonly known: ReadonlyMap<string, string>;
  readonly glossary: Glossary;
}

/** Both sides of the sheet of steps, and whether its words are explained on the back, or behind it on the next sheet. */
interface PrintedSteps {
  readonly sides: readonly [PrintedSide, PrintedSide];
  readonly wordsOnBack: boolean;
}

/** The steps as the page prints them; where there is a next sheet their words move there before letters grow small. */
export function printedSteps(printed: Printed): PrintedSteps {
  const sides = printedSides(printed, true);
  const small = sides.some(({ types }) => PAPERS.some((paper) => !isLarge(types[paper])));
  return small && printed.plan.settings
    ? { sides: printedSides(printed, false), wordsOnBack: false }
    : { sides, wordsOnBack: true };
}

/** Broken alike on either paper, so that the sheet has one front. */
function printedSides(printed: Printed, withWords: boolean): PrintedSteps["sides"] {
  const rooms = {
    front: onBoth((paper) => frontRoom(printed, paper)),
    back: onBoth((paper) => backRoom(printed, paper, withWords)),
  };
  const { plan, units } = printed;
  const notes = footnotes(plan, units);
  const taken = new Map(plan.steps.map((step) => [step, takenBy(step, units, notes)]));
  const takenOf = (steps: Side["steps"]) => steps.flatMap((step) => taken.get(step) ?? []);
  const [front, back] = sidesOf(plan.steps, (side, steps, type) =>
    PAPERS.every((paper) => cardHigh(takenOf(steps), type, FIELDS[paper].widthMm) <= rooms[side][paper]),
  );
  const side = ({ steps }: Side, room: RoomMm): PrintedSide => ({
    steps,
    types: typesIn(takenOf(steps), room),
    room,
  });
  return [side(front, rooms.front), side(back, rooms.back)];
}

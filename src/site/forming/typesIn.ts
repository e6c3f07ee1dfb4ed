import { cardHigh, FIELDS, type PaperName, type Taken } from "./stepRoom.ts";
import { largest, type StepType } from "./stepSides.ts";

/** What a side of the printed sheet has for its steps on each paper. [mm] */
export type RoomMm = Readonly<Record<PaperName, number>>;

export const onBoth = <T>(make: (paper: PaperName) => T): Readonly<Record<PaperName, T>> => ({
  a4: make("a4"),
  letter: make("letter"),
});

/** The largest letters of these steps that a room holds, on each paper. */
export const typesIn = (steps: readonly Taken[], room: RoomMm): Readonly<Record<PaperName, StepType>> =>
  onBoth((paper) => largest((type) => cardHigh(steps, type, FIELDS[paper].widthMm) <= room[paper]));

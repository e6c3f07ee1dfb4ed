import type { Verdict } from "../../forming/check.ts";
import type { Machine } from "../../forming/machine.ts";

/** What the regions of a chart are called. */
export const REGIONS: Readonly<Record<Verdict, string>> = {
  pass: "goes",
  caution: "near the limit",
  fail: "beyond",
};

/** What kind of machine it is, in a few words. */
export const kindOf = (machine: Machine): string =>
  machine.kind === "press brake"
    ? "Press brake"
    : ["Plate roll", ...(machine.arrangement ? [machine.arrangement.replace("-", " ")] : [])].join(", ");

/** What a chart does not say, and where that is asked. */
export const notCharted = (
  kind: Machine["kind"],
  where: "on each part’s own page" | "in the checks above",
) =>
  kind === "plate roll"
    ? `The chart asks about strength, thickness and width alone. Beyond its upright line the slant takes more than half the rolls, and the pinch has to be trimmed: set out of parallel, to grip the large end only (with “?” the shop file does not say whether it can). Small end, room beyond the stop, travel, tilt, mass and stock are asked ${where}.`
    : `The chart asks about force, bed and die alone, at the constant of 1.33; published constants run to 1.6, so that near the limit the real force may reach it. Spacing and throat are asked ${where}.`;

/** Stands on every machine's card. */
export const CARD_NEVER: Readonly<Record<Machine["kind"], readonly string[]>> = {
  "plate roll": [
    "Ratings are for plate of the strength named. Stronger plate, or plate that hardens as it bends, takes more of the roll than its thickness tells.",
    "Never make a large raise under standing plate, never roll backwards at setting, and never let an overlap enter the pinch.",
  ],
  "press brake": [
    "Plate is often stronger than its grade: near the limit try the shortest line first, and never load the bed at one end with its whole force.",
    "Keep hands behind the guard and out from between plate and ram: the plate swings up as it bends.",
  ],
};

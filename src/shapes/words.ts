import { type Given, type Loose } from "./loose.ts";
import { type Refusal } from "./refusal.ts";

export type Units = "mm" | "in";

const MM_PER_INCH = 25.4;

/** A length for a message, in the units of the part file and without trailing noughts: "12.5 mm", "0.492 in". */
export const shown = (mm: number, units: Units): string =>
  units === "in" ? `${Number((mm / MM_PER_INCH).toFixed(3))} in` : `${Number(mm.toFixed(2))} mm`;

/** The wall does not fit into the bend. */
export function wallTooThick(
  place: string,
  wall: { readonly thicknessMm: number; readonly mostMm: number; readonly units: Units },
): Refusal {
  const { thicknessMm, mostMm, units } = wall;
  return {
    path: ["thickness"],
    problem: `${shown(thicknessMm, units)} plate is thicker than ${place} allows`,
    remedy:
      mostMm > 0
        ? `use plate thinner than ${shown(mostMm, units)}, or make that end larger`
        : "check the sizes and how each end is measured",
  };
}

/** Measured is needed wherever an end has a size. */
const notMeasured: Refusal = {
  path: ["smallEnd"],
  problem: "measured is missing",
  remedy: "say whether the diameter is measured inside, outside or at the middle",
};

const swapEnds: Refusal = {
  path: ["largeEnd", "diameter"],
  problem: "the large end is smaller than the small end",
  remedy: "swap them",
};

interface RoundEnds {
  readonly largeEnd: { readonly diameter: number };
  readonly smallEnd: { readonly diameter: number };
}

/** What is wrong between two round ends, as far as the file is right. */
export function endProblems({ largeEnd, smallEnd }: Loose<RoundEnds>, given: Given): Refusal[] {
  const issues: Refusal[] = [];
  const [large, small] = [largeEnd?.diameter, smallEnd?.diameter];
  if (large !== undefined && small !== undefined && small > large) issues.push(swapEnds);
  if (small !== undefined && small > 0 && !given(["smallEnd", "measured"])) issues.push(notMeasured);
  return issues;
}

import type { FormingCase } from "./case.ts";
import type { PlateRoll } from "./machine.ts";
import { isPipe } from "./skin.ts";

/** Which seam edge goes into the rolls first, in words. The second pass begins with the other one. */
export interface SeamOrder {
  /** Null where the shop file does not say at which hand the drop end is. */
  readonly leads: 1 | 2 | null;
  readonly first: string;
  readonly second: string;
}

/**
 * The seam edge that leads in the first pass. With the inside up and the small end away from whoever looks at it, lines run
 * from seam edge 1 on the right to seam edge 2 on the left. On the rolls the inside is up, towards the top roll, and the
 * small end at the drop end: with that at the left hand of whoever stands where the plate goes in, seam edge 1 is ahead,
 * at the right hand seam edge 2.
 *
 * @see derived here
 */
export const leadingEdge = (dropEnd: "left" | "right"): 1 | 2 => (dropEnd === "left" ? 1 : 2);

const EDGES = { 1: "seam edge 1", 2: "seam edge 2" } as const;

/** The edges in their order, in words. A pipe goes in either way. */
export function seamOrder({
  item,
  roll,
}: {
  readonly item: FormingCase;
  readonly roll: PlateRoll | null;
}): SeamOrder {
  const leads = isPipe(item) ? 1 : roll?.dropEnd && leadingEdge(roll.dropEnd);
  if (leads !== undefined) return { leads, first: EDGES[leads], second: EDGES[leads === 1 ? 2 : 1] };
  return { leads: null, first: "the seam edge marked first", second: "the seam edge marked second" };
}

/** "1 to 4" in the order in which zones go through the rolls in a pass; nothing where nobody knows which edge leads. */
export function zoneOrder({ leads }: SeamOrder, zones: number, pass: "first" | "second"): string {
  if (leads === null) return "";
  return (leads === 1) === (pass === "first") ? `1 to ${zones}` : `${zones} to 1`;
}

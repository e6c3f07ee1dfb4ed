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
 * at the right hand seam edge 2. A pipe goes in either way.
 *
 * @see derived here
 */
export function seamOrder({
  item,
  roll,
}: {
  readonly item: FormingCase;
  readonly roll: PlateRoll | null;
}): SeamOrder {
  if (isPipe(item) || roll?.dropEnd === "left")
    return { leads: 1, first: "seam edge 1", second: "seam edge 2" };
  if (roll?.dropEnd === "right") return { leads: 2, first: "seam edge 2", second: "seam edge 1" };
  return { leads: null, first: "the seam edge marked first", second: "the seam edge marked second" };
}

/** "1 to 4" in the order in which zones go through the rolls in a pass; nothing where nobody knows which edge leads. */
export function zoneOrder({ leads }: SeamOrder, zones: number, pass: "first" | "second"): string {
  if (leads === null) return "";
  return (leads === 1) === (pass === "first") ? `1 to ${zones}` : `${zones} to 1`;
}

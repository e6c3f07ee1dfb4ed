import { isPipe } from "../skin.ts";
import { number } from "../say.ts";
import type { RollSheetAsked } from "./asked.ts";
import { endTowards } from "./rollEnds.ts";

/** How much of what a bearing is raised by each edge gets, the other bearing kept: the roll is straight. [-] */
interface Shares {
  /** Of the raise at the small edge's bearing. */
  readonly large: number;
  readonly small: number;
}

/** In the second pass, when the small edge stands on the stop at the fixed end; null where nobody knows. */
function sharesOf({ item, roll, settings }: RollSheetAsked): Shares | null {
  if (!roll?.bearings || settings?.stopMm == null) return null;
  const [drop, fixed] = roll.bearings;
  // Along the roll face from its fixed end.
  const [from, to] = [-fixed, roll.workingWidth + drop];
  const at = (mm: number) => (to - mm) / (to - from);
  return { small: at(settings.stopMm), large: at(settings.stopMm + item.slantMm.longest) };
}

/**
 * What is done where one end has come right before the other. A bearing raised alone lifts both edges, the farther one not
 * much less: the other bearing is lowered by so much that the end that is right keeps its place.
 *
 * @see derived here: the roll is straight
 */
export function oneEndOpen(asked: RollSheetAsked): string {
  const { item } = asked;
  if (isPipe(item)) return "";
  const done = item.pieces === 1 ? "closed" : "right";
  const [small, large] = [endTowards("small", "finished"), endTowards("large", "finished")];
  const shares = sharesOf(asked);
  if (!shares)
    return ` One end ${done} first: raise a little more at the open end's bearing, and lower the other a little (large end: ${large}; small end: ${small}).`;
  const [holdLarge, holdSmall] = [shares.large / (1 - shares.large), (1 - shares.small) / shares.small];
  return ` One end ${done} first, little by little: small end open: ${small} 1 part up, ${large} ${number(holdLarge, 1)} down; large end open: ${large} 1 up, ${small} ${number(holdSmall, 2)} down: the other end stays.`;
}

import type { Vec2 } from "../geometry/vector.ts";
import type { Drawing } from "./model.ts";
import { seenAt } from "./seenAt.ts";
import { toSegment } from "../geometry/segment.ts";

/** As near as the nearest: a finger cannot tell lines apart where they meet. In shares of its reach. [-] */
const ALIKE = 0.1;

/**
 * The element line that is meant by a touch: the nearest within reach, by itself or by its number. Touched again, the
 * next of those that meet there; after the last of them none.
 *
 * @param now the one that is chosen already
 * @returns undefined where nothing is within reach, null where nothing is to be chosen any more
 */
export function picked(
  { lines, labels }: Pick<Drawing, "lines" | "labels">,
  touch: { readonly at: Vec2; readonly reach: number; readonly near: number },
  now: number | undefined,
): number | null | undefined {
  const numbers = labels.flatMap((label) => {
    const from = seenAt(label, touch.near);
    return (label.elements ?? []).map((one) => ({ elements: [one], from, to: from }));
  });
  // What is not drawn is not touched.
  const within = [...lines.filter(({ shown }) => shown === "line"), ...numbers]
    .map((one) => ({ ...one, off: toSegment(touch.at, one.from, one.to) }))
    .filter(({ off }) => off <= touch.reach);
  const least = Math.min(...within.map(({ off }) => off));
  const meeting = within.filter(({ off }) => off <= least + ALIKE * touch.reach);
  const all = meeting.map(({ elements }) => elements);
  if (all.length === 0) return undefined;
  const at = now === undefined ? -1 : all.findLastIndex((elements) => elements.includes(now));
  return all[at + 1]?.[0] ?? null;
}

/** The element line after another in a drawing, or before it, round and round. */
export function stepped(
  { lines }: Pick<Drawing, "lines">,
  now: number | undefined,
  step: 1 | -1,
): number | undefined {
  const order = [...new Set(lines.map(({ elements }) => elements[0] as number))].sort((p, q) => p - q);
  // Of pieces that are alike one stands for all.
  const same = lines.find(({ elements }) => now !== undefined && elements.includes(now))?.elements[0];
  if (same === undefined) return step > 0 ? order[0] : order.at(-1);
  return order[(order.indexOf(same) + step + order.length) % order.length];
}

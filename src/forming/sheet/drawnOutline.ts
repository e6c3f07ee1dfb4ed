import type { PartAsked } from "../asked.ts";

/**
 * What pieces are stood on or round while they are tacked, drawn on the floor: the larger end, as the drawing measures it:
 * "Ø 1700 mm outside", "24 in × 18 in outside"; empty where that is not known.
 */
export function drawnOutline({ item: { finish }, say }: PartAsked): string {
  const [end] = (finish?.ends ?? []).toSorted(
    (p, q) => Math.max(0, ...q.acrossMm) - Math.max(0, ...p.acrossMm),
  );
  if (!end || end.acrossMm.length === 0) return "";
  const size = end.acrossMm.map((mm) => say.length(mm)).join(" × ");
  return `${end.acrossMm.length === 1 ? "Ø " : ""}${size} ${end.measured}`;
}

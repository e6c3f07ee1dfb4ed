/** What moves a page, or where the keyboard is on it. */
const MOVES = ["wheel", "touchstart", "keydown", "pointerdown"] as const;

/** Aborted by the next hand on the page, or by whoever need not know any more. */
export function nextHand(): AbortController {
  const hand = new AbortController();
  for (const move of MOVES)
    addEventListener(move, () => hand.abort(), { signal: hand.signal, passive: true, capture: true });
  return hand;
}

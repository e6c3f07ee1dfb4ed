/** Drawings that measure their room are drawn a frame later, and what stands below them moves another later. */
const FRAMES = 4;

/**
 * Marks what has been laid out in full once: from then on the browser remembers how high each of its sections is, and may
 * leave out those that nobody sees without anything moving when somebody comes near them, under the very click.
 */
export function laidOut(element: HTMLElement): () => void {
  let left = FRAMES;
  let frame = requestAnimationFrame(function next() {
    left -= 1;
    if (left > 0) frame = requestAnimationFrame(next);
    else element.dataset["laidOut"] = "";
  });
  return () => cancelAnimationFrame(frame);
}

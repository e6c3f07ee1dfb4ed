/** Drawings that measure their room are drawn a frame later, and what stands below them moves another later. */
const FRAMES = 4;

function markLater(section: HTMLElement): void {
  let left = FRAMES;
  const next = (): void => {
    left -= 1;
    if (left > 0) requestAnimationFrame(next);
    else section.dataset["laidOut"] = "";
  };
  requestAnimationFrame(next);
}

/**
 * Marks each section of an element that has been laid out in full once, those that come later too: from then on the browser
 * remembers how high it is, and may leave it out while nobody sees it without anything moving when somebody comes near,
 * under the very click.
 */
export function laidOut(element: HTMLElement): () => void {
  const mark = (nodes: Iterable<Node>): void => {
    for (const node of nodes) if (node instanceof HTMLElement) markLater(node);
  };
  mark(element.children);
  const watch = new MutationObserver((changes) => changes.forEach(({ addedNodes }) => mark(addedNodes)));
  watch.observe(element, { childList: true });
  return () => watch.disconnect();
}

/** A page that nobody sees is not drawn; what waits for it goes on after this. [ms] */
const UNSEEN_MS = 100;

/** Does something once the page has been drawn as it stands now: what the eye waits for comes first. */
export function afterDrawn(work: () => void): void {
  const frame = requestAnimationFrame(() => {
    clearTimeout(unseen);
    setTimeout(work);
  });
  const unseen = setTimeout(() => {
    cancelAnimationFrame(frame);
    work();
  }, UNSEEN_MS);
}

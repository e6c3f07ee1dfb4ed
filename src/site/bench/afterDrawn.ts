/** A page that nobody sees is not drawn; what waits for it goes on after this. [ms] */
const UNSEEN_MS = 100;

/** Asking for a frame is dear, so all that waits for the same one asks once. */
let waiting: (() => void)[] = [];

/** Does something once the page has been drawn as it stands now: what the eye waits for comes first. */
export function afterDrawn(work: () => void): void {
  waiting.push(work);
  if (waiting.length > 1) return;
  const goOn = () => {
    clearTimeout(unseen);
    cancelAnimationFrame(frame);
    const works = waiting;
    waiting = [];
    // Each on its own, so that a key that comes meanwhile is heard between them.
    for (const one of works) setTimeout(one);
  };
  const frame = requestAnimationFrame(goOn);
  const unseen = setTimeout(goOn, UNSEEN_MS);
}

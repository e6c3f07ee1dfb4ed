/** Steps that are all done or, where one of them fails, all taken back in the opposite order. */
export function allOrNothing<T>(work: (takeBack: (step: () => void) => void) => T): T {
  const steps: (() => void)[] = [];
  try {
    return work((step) => steps.push(step));
  } catch (error) {
    for (const step of steps.reverse()) {
      try {
        step();
      } catch {
        // The others are taken back all the same; what failed first is what is told.
      }
    }
    throw error;
  }
}

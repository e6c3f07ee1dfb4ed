import type { Placing } from "./costs.ts";

/** A way to place something; one of very many may be worked out only when it is looked at, and is passed over for nothing. */
export type Way = Placing | (() => Placing);
/** Ways to place something, the best liked first; those that are worked out one by one end where one is good enough. */
export type Ways = Iterable<Way>;

export const placed = (way: Way): Placing => (typeof way === "function" ? way() : way);

/** Ways that are worked out when they are asked for, and anew each time: mostly one of the first costs nothing. */
export const lazily = <T extends Way>(ways: () => Iterator<T>): Iterable<T> => ({ [Symbol.iterator]: ways });

/** What is worked out the first time that it is asked for. */
export function once<T>(work: () => T): () => T {
  let known: { readonly value: T } | undefined;
  return () => (known ??= { value: work() }).value;
}

/** The same ways, each changed as it is asked for. */
export const changed = (ways: Ways, change: (way: Placing) => Placing): Ways =>
  lazily(function* () {
    for (const way of ways) yield () => change(placed(way));
  });

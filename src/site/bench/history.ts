/** States one can go back to and forward again. */
export interface History<T> {
  readonly past: readonly T[];
  readonly now: T;
  readonly future: readonly T[];
  /** What the last change was about: changes of the same field that follow each other are undone together. */
  readonly about: string | undefined;
}

/** More steps back than anybody takes. */
const MOST = 200;

export const begin = <T>(now: T): History<T> => ({ past: [], now, future: [], about: undefined });

/** @param about the field that is being typed in; undefined where the change stands for itself */
export function change<T>(history: History<T>, now: T, about?: string): History<T> {
  const goesOn = about !== undefined && about === history.about;
  const past = goesOn ? history.past : [...history.past, history.now].slice(-MOST);
  return { past, now, future: [], about };
}

/** The next change begins a step of its own, as when a field is left; typing that came back to where it was is none. */
export function settle<T>({ past, now, future }: History<T>): History<T> {
  const before = past.at(-1);
  const isSame = before !== undefined && JSON.stringify(before) === JSON.stringify(now);
  return { past: isSame ? past.slice(0, -1) : past, now, future, about: undefined };
}

export function undo<T>({ past, now, future, about }: History<T>): History<T> {
  const before = past.at(-1);
  return before === undefined
    ? { past, now, future, about }
    : { past: past.slice(0, -1), now: before, future: [now, ...future], about: undefined };
}

/** As many steps back as are kept from one visit to the next. */
const KEPT = 20;

/** The last states, the present one at the end, in which a history is kept. */
export const kept = <T>({ past, now }: History<T>): readonly T[] => [...past, now].slice(-KEPT);

/** What was kept, after what the page itself begins with. */
export function goOn<T>(first: T, states: readonly T[]): History<T> {
  const now = states.at(-1);
  return now === undefined
    ? begin(first)
    : { past: [first, ...states.slice(0, -1)], now, future: [], about: undefined };
}

export function redo<T>({ past, now, future, about }: History<T>): History<T> {
  const [next, ...rest] = future;
  return next === undefined
    ? { past, now, future, about }
    : { past: [...past, now], now: next, future: rest, about: undefined };
}

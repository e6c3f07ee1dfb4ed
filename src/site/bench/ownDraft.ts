import type { Keeper } from "./keep.ts";

/** What all windows keep together, of which this one remembers what it wrote itself. */
export interface OwnDraft<T> extends Keeper<readonly T[]> {
  /** Was what `read` found written by another window since this one wrote? */
  readonly isOthers: () => boolean;
}

/**
 * A draft that several windows share. Where another one wrote it last, this one's own last state stands just before the
 * present one, so that one step back brings it.
 * @param shared what all windows keep: states, the present one at the end
 * @param own what this window alone keeps: the last state that it wrote
 */
export function ownDraft<T>(shared: Keeper<readonly T[]>, own: Keeper<readonly T[]>): OwnDraft<T> {
  let isOthers = false;
  return {
    read: () => {
      const states = shared.read();
      const [now, mine] = [states?.at(-1), own.read()?.at(-1)];
      if (!states || now === undefined || mine === undefined) return states;
      isOthers = JSON.stringify(now) !== JSON.stringify(mine);
      return isOthers ? [...states.slice(0, -1), mine, now] : states;
    },
    write: (states) => {
      own.write(states?.slice(-1));
      return shared.write(states);
    },
    isOthers: () => isOthers,
  };
}

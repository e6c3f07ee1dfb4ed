import { touch } from "./box.ts";
import type { Box } from "./model.ts";

/** Things with a box, found again by where they lie: a drawing asks thousands of times what is near, and little is. */
export interface Nearby<T> {
  readonly add: (item: T, box: Box) => void;
  /** Each thing whose box touches this one, once, in no order. The list holds until the next question is asked. */
  readonly at: (box: Box) => readonly T[];
}

/** Cells that a box may lie in; a larger one is asked every time. */
const MOST_CELLS = 64;
/** Squares to a side of the grid; beyond it begins anew, and what lies in one square by chance is told apart by its box. */
const SIDE = 64;

interface Entry<T> {
  readonly item: T;
  readonly box: Box;
  /** The last question that it was found for. */
  asked: number;
}

/**
 * A plain grid.
 *
 * @param cell side of its squares [same unit as the boxes]
 */
export function nearby<T>(cell: number): Nearby<T> {
  const cells = new Array<Entry<T>[] | undefined>(SIDE * SIDE).fill(undefined);
  const everywhere: Entry<T>[] = [];
  let question = 0;
  // One list for all questions: nearly every answer is empty or short, and there are thousands.
  const found: T[] = [];
  const at = (value: number): number => Math.floor(value / cell);
  const key = (x: number, y: number): number => (x & (SIDE - 1)) * SIDE + (y & (SIDE - 1));

  return {
    add(item, box) {
      const entry = { item, box, asked: 0 };
      const [x0, x1, y0, y1] = [at(box.left), at(box.right), at(box.bottom), at(box.top)];
      if (!((x1 - x0 + 1) * (y1 - y0 + 1) <= MOST_CELLS)) {
        everywhere.push(entry);
        return;
      }
      for (let x = x0; x <= x1; x++)
        for (let y = y0; y <= y1; y++) {
          const place = key(x, y);
          const known = cells[place];
          if (known) known.push(entry);
          else cells[place] = [entry];
        }
    },
    at(box) {
      question += 1;
      found.length = 0;
      for (const entry of everywhere) if (touch(entry.box, box)) found.push(entry.item);
      const x0 = at(box.left);
      const y0 = at(box.bottom);
      // Once round the grid is everywhere.
      const x1 = Math.min(at(box.right), x0 + SIDE - 1);
      const y1 = Math.min(at(box.top), y0 + SIDE - 1);
      for (let x = x0; x <= x1; x++)
        for (let y = y0; y <= y1; y++) {
          const entries = cells[key(x, y)];
          if (!entries) continue;
          for (const entry of entries) {
            if (entry.asked === question) continue;
            entry.asked = question;
            if (touch(entry.box, box)) found.push(entry.item);
          }
        }
      return found;
    },
  };
}

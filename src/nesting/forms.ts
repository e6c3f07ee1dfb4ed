import type { LaidPlate, LayItem, Placing } from "./model.ts";

/** Items that have the very same outline: laid as one, and named one after the other. */
export interface Form {
  readonly item: LayItem;
  readonly members: readonly LayItem[];
}

/** Items sorted into forms, in the order in which they come. */
export function formsOf(items: readonly LayItem[]): Form[] {
  const forms = new Map<string, LayItem[]>();
  for (const item of items) {
    if (item.count <= 0) continue;
    const key = JSON.stringify(item.outline);
    const form = forms.get(key);
    if (form) form.push(item);
    else forms.set(key, [item]);
  }
  return [...forms.values()].map((members, i) => ({
    members,
    item: {
      ...(members[0] as LayItem),
      // Until it is named, a placing tells the place of its form.
      part: String(i),
      count: members.reduce((sum, { count }) => sum + count, 0),
    },
  }));
}

/** Plates whose placings have the names of their own items; plates alike but for names are told apart by them. */
export function named(plates: readonly LaidPlate[], forms: readonly Form[]): LaidPlate[] {
  const left = forms.map(({ members }) => members.map((item) => ({ item, count: item.count })));
  const next = (placing: Placing): Placing => {
    const one = left[Number(placing.part)]?.find(({ count }) => count > 0);
    if (!one) throw new RangeError(`more placed than wanted of form ${placing.part}`);
    one.count -= 1;
    return { ...placing, part: one.item.part, piece: one.item.piece };
  };
  return plates.flatMap((plate) => {
    const copies: LaidPlate[] = [];
    for (let i = 0; i < plate.count; i++) {
      const placings = plate.placings.map(next);
      const last = copies.at(-1);
      const isSame = last?.placings.every(
        ({ part, piece }, k) => part === placings[k]?.part && piece === placings[k].piece,
      );
      if (last && isSame) copies[copies.length - 1] = { ...last, count: last.count + 1 };
      else copies.push({ ...plate, placings, count: 1 });
    }
    return copies;
  });
}

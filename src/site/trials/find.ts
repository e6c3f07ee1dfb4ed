/** A part of the form by its name. */
export const find = <T extends Element>(root: Element, name: string, kind: new () => T): T => {
  const found = root.querySelector(`[data-trial="${name}"]`);
  if (!(found instanceof kind)) throw new RangeError(`trial form: ${name}`);
  return found;
};

/** Steeper than any slide, wider than any gap: a slip of the keys. [mm] */
export const LARGEST_MM = 100_000;

/** A number as it is typed, decimal comma and any minus sign allowed; undefined where it is none that can be meant. */
export function numberIn(text: string, [least, most]: readonly [number, number]): number | undefined {
  const value = Number(
    text
      .trim()
      .replace(",", ".")
      .replace(/^[−–]\s*/, "-"),
  );
  return text.trim() !== "" && Number.isFinite(value) && value >= least && value <= most ? value : undefined;
}

/**
 * JSON for people and programs: indented, but points and other short rows of numbers on one line.
 *
 * @throws RangeError on NaN and infinities, which JSON would turn into null without a word
 */
export function printJson(value: unknown): string {
  const text = JSON.stringify(
    value,
    (key, inner: unknown) => {
      if (typeof inner === "number" && !Number.isFinite(inner)) throw new RangeError(`${key}: ${inner}`);
      return inner;
    },
    2,
  );
  // A line break inside a text is written \n, so these brackets and breaks are never part of one.
  return text.replace(ROW, (row) => row.replace(/\[\s+/, "[").replace(/\s+\]/, "]").replace(/\s+/g, " "));
}

const NUMBER = String.raw`-?\d[\d.eE+-]*`;
const ROW = new RegExp(String.raw`\[\n\s+${NUMBER}(?:,\n\s+${NUMBER})*\n\s+\]`, "g");

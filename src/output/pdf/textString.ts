/** The units of UTF-16 as bytes, high ones first, after the mark that says so. */
const bytesOf = (text: string): number[] =>
  Array.from({ length: text.length }, (_, i) => text.charCodeAt(i)).reduce<number[]>(
    (all, unit) => (all.push(unit >> 8, unit & 0xff), all),
    [0xfe, 0xff],
  );

/** A text string of PDF in hexadecimal digits, with its brackets: no sign of it can be taken for the format's own. */
export const hexText = (text: string): string =>
  `<${bytesOf(text)
    .map((byte) => byte.toString(16).padStart(2, "0"))
    .join("")}>`;

const CARRIAGE_RETURN = 0x0d;

/**
 * A text string for the document's own properties, escaped whole. jsPDF escapes brackets and strokes, but leaves a byte 0D
 * as it is, which readers take for the end of a line: it is half of č. What it is given here has nothing left to replace.
 */
export function escapedText(text: string): string {
  const escaped = bytesOf(text)
    .map((byte) => {
      const sign = String.fromCharCode(byte);
      if (byte === CARRIAGE_RETURN) return "\\r";
      return "()\\".includes(sign) ? `\\${sign}` : sign;
    })
    .join("");
  const done = { length: 0, replace: () => done, toString: () => escaped };
  return done as unknown as string;
}

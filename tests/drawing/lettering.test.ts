import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { CAP_PER_SIZE, readable, textWidth, wrapText } from "../../src/drawing/lettering.ts";

/** Advance widths out of the font file itself: tables cmap (format 4), hmtx, head and OS/2 of the OpenType specification. */
function fontWidths(path: string) {
  const file = readFileSync(path);
  const tables = new Map<string, number>();
  for (let i = 0; i < file.readUInt16BE(4); i++) {
    const at = 12 + 16 * i;
    tables.set(file.toString("latin1", at, at + 4), file.readUInt32BE(at + 8));
  }
  const [cmap, hmtx, hhea, head, os2] = ["cmap", "hmtx", "hhea", "head", "OS/2"].map((tag) =>
    tables.get(tag)!,
  ) as [number, number, number, number, number];
  const perEm = file.readUInt16BE(head + 18);
  const metrics = file.readUInt16BE(hhea + 34);
  const records = Array.from(
    { length: file.readUInt16BE(cmap + 2) },
    (_, i) => cmap + file.readUInt32BE(cmap + 8 + 8 * i),
  );
  const sub = records.find((at) => file.readUInt16BE(at) === 4)!;
  const segments = file.readUInt16BE(sub + 6) / 2;
  const glyphOf = (code: number): number => {
    for (let i = 0; i < segments; i++) {
      const [end, start] = [
        file.readUInt16BE(sub + 14 + 2 * i),
        file.readUInt16BE(sub + 16 + 2 * (segments + i)),
      ];
      if (code < start || code > end) continue;
      const [delta, rangeAt] = [
        file.readUInt16BE(sub + 16 + 2 * (2 * segments + i)),
        sub + 16 + 2 * (3 * segments + i),
      ];
      const range = file.readUInt16BE(rangeAt);
      if (range === 0) return (code + delta) & 0xffff;
      const glyph = file.readUInt16BE(rangeAt + range + 2 * (code - start));
      return glyph === 0 ? 0 : (glyph + delta) & 0xffff;
    }
    return 0;
  };
  const width = (letter: string): number => {
    const glyph = glyphOf(letter.codePointAt(0)!);
    expect(glyph, `no glyph for "${letter}"`).toBeGreaterThan(0);
    return file.readUInt16BE(hmtx + 4 * Math.min(glyph, metrics - 1)) / perEm;
  };
  return { width, cap: file.readInt16BE(os2 + 88) / perEm };
}

const LETTERS = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789 .,:;-–/()+%°Ø×±½¼¾²³\"'";

it("never takes a letter for narrower than it is in the binder's font, nor for much wider", () => {
  const font = fontWidths("public/fonts/binder-sans-400.ttf");
  expect(CAP_PER_SIZE).toBeCloseTo(font.cap, 3);
  for (const letter of LETTERS) {
    const [taken, real] = [textWidth(letter, CAP_PER_SIZE), font.width(letter)];
    expect(taken, letter).toBeGreaterThanOrEqual(real);
    expect(taken, letter).toBeLessThanOrEqual(real + 0.11);
  }
});

it.each([
  [0, 0],
  [45, 45],
  [90, 90],
  [91, -89],
  [180, 0],
  [-90, 90],
  [270, 90],
  [-45, -45],
  [359, -1],
])("lettering along %d° is read at %d°", (along, read) => {
  expect(readable(along)).toBeCloseTo(read, 9);
});

it("wraps between words, breaks a word that has no room, and loses nothing", () => {
  const text = "Pattern, inside face up. Gegenstromverteilerkastenübergangsstück";
  const lines = wrapText(text, 2.5, 60);
  for (const one of lines) expect(textWidth(one, 2.5)).toBeLessThanOrEqual(60);
  expect(lines.join("").replaceAll(" ", "")).toBe(text.replaceAll(" ", ""));
  expect(lines.length).toBeGreaterThan(2);
});

import { describe, expect, it } from "vitest";
import { dxfWords } from "../../src/output/dxfWords.ts";

describe("words in a DXF file", () => {
  it.each([
    ["Löß ½ Ø ±", "Loss 1/2 %%c %%p"],
    ["Stoß STOẞ", "Stoss STOSS"],
    ["Rør Øst ærlig Łódź œuvre þing", "Ror Ost aerlig Lodz oeuvre thing"],
    ["Ø500, ø 500, ⌀60 ∅", "%%c500, %%c 500, %%c60 %%c"],
    ["é è ñ Å 45° 3×4 a–b it’s", "e e n A 45%%d 3x4 a-b it's"],
    // One question mark for each sign, also for one of two halves.
    ["漢 я 🔧", "? ? ?"],
  ])("%s", (words, expected) => {
    expect(dxfWords(words)).toBe(expected);
  });
});

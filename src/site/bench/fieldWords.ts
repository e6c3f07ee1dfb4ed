import { fieldLabel } from "../words/fieldLabels.ts";

/** A field's name without what stands behind its comma; undefined where a word is no key that has a name. */
function nameOf(key: string): string | undefined {
  const label = fieldLabel([key]);
  return label === key ? undefined : `“${label.replace(/,.*$/, "")}”`;
}

/** What is said of a file in words of a form: its keys by the names of their fields. The same rules speak to both. */
const IN_WORDS: readonly (readonly [RegExp, (whole: string, key: string, value: string) => string])[] = [
  // An example under a key that the form does not have: the unit belongs in the field.
  [/ under the key [a-z]\w*/gi, () => ""],
  [/as in (?:yield|force|handLift): /g, () => "as in "],
  [/ A right cone takes exactly one of height, slant and halfAngle\./g, () => ""],
  [/leave out ([a-z]\w*)/gi, (whole, key) => (nameOf(key) ? `leave ${nameOf(key)} empty` : whole)],
  [/\bgive ([a-z]\w*)(?=, the )/g, (whole, key) => (nameOf(key) ? `give ${nameOf(key)}` : whole)],
  [/\b([a-z]\w*): true\b/gi, (whole, key) => (nameOf(key) ? `tick ${nameOf(key)}` : whole)],
  [
    /use ([a-z]\w*): ([a-z]+)/gi,
    (whole, key, value) => (nameOf(key) ? `choose “${value}” for ${nameOf(key)}` : whole),
  ],
  [/: \[to the right, away\]/g, () => ", so far to the right and so far away from you"],
  [/“measured”/g, () => nameOf("measured") ?? ""],
  [/\b[a-z]+[A-Z]\w*/g, (key) => nameOf(key) ?? key],
];

/** What is wrong, what helps or what a field means, as somebody at a form knows the fields. */
export const inFieldWords = (text: string): string =>
  IN_WORDS.reduce(
    (said, [pattern, put]) =>
      said.replace(pattern, (whole: string, key: unknown, value: unknown) =>
        put(whole, String(key), String(value)),
      ),
    text,
  );

import { radians } from "../geometry/angle.ts";
import type { Vec2 } from "../geometry/vector.ts";
import type { Label } from "./model.ts";

/** Advance widths of the binder's font, in thousandths of the letter size; figures all alike. */
const WIDTHS: readonly (readonly [number, string])[] = [
  [240, " '′"],
  [250, "ij"],
  [272, ",.l·"],
  [292, ":;!"],
  [335, "f()[]{}|"],
  [367, "tr²³"],
  [400, "/\\-I"],
  [420, '"″'],
  [470, "°z?*"],
  [500, "svyLcx"],
  [530, "Jkga"],
  [570, "eFo_hnuTµ"],
  [600, "0123456789Zbdpq+=<>^`~SEYPV$–±×"],
  [655, "XCKRABD"],
  [710, "U&GHNOQØ"],
  [770, "w—…"],
  [880, "mM½¼¾"],
  [930, "@W%#"],
];
const WIDTH = new Map(
  WIDTHS.flatMap(([w, letters]) => Array.from(letters).map((letter) => [letter, w] as const)),
);
const WIDEST = 930;

/** Height of the capitals over the letter size, in the binder's font. [-] */
export const CAP_PER_SIZE = 0.698;
/** How far the lowest letters reach below the line, over the height of the capitals. [-] */
const DESCENT = 0.3;
/** Room for a fallback font that runs wider. [-] */
const SPARE = 1.04;

/** The same figures and names are measured for one place after another. */
const measured = new Map<string, number>();
const MOST_MEASURED = 2000;

function thousandthsOf(text: string): number {
  const known = measured.get(text);
  if (known !== undefined) return known;
  let sum = 0;
  for (const letter of text) sum += WIDTH.get(letter) ?? WIDEST;
  if (measured.size >= MOST_MEASURED) measured.clear();
  measured.set(text, sum);
  return sum;
}

const lengthOf = (thousandths: number, capMm: number): number =>
  (SPARE * capMm * thousandths) / 1000 / CAP_PER_SIZE;

/** Length of a line of lettering. [same unit as capMm] */
export const textWidth = (text: string, capMm: number): number => lengthOf(thousandthsOf(text), capMm);

/** The four corners of the room a label takes, counter-clockwise from its lower left. */
export function labelCorners(label: Label): readonly [Vec2, Vec2, Vec2, Vec2] {
  const long = textWidth(label.text, label.capMm);
  const start = label.anchor === "start" ? 0 : label.anchor === "middle" ? -long / 2 : -long;
  const [low, high] = [-label.capMm * (0.5 + DESCENT), label.capMm * 0.6];
  const turn = radians(label.rotationDeg);
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const corner = (x: number, y: number): Vec2 => [label.at[0] + c * x - s * y, label.at[1] + s * x + c * y];
  return [corner(start, low), corner(start + long, low), corner(start + long, high), corner(start, high)];
}

/** Lettering along a direction is turned so that it reads from below or from the right: −90 < … ≤ 90. [degrees] */
export function readable(angleDeg: number): number {
  const turned = ((angleDeg % 180) + 180) % 180; // 0 … 180
  return turned > 90 ? turned - 180 : turned;
}

/** Break a sentence into lines no longer than a width. */
export function wrapText(text: string, capMm: number, widthMm: number): string[] {
  const lines: string[] = [];
  // Words are measured, not all the beginnings of a line: the widths of letters add up.
  let long = Infinity;
  for (const word of text.split(" ")) {
    const longer = long + thousandthsOf(" ") + thousandthsOf(word);
    const fits = lengthOf(longer, capMm) <= widthMm;
    if (fits) lines.push(`${lines.pop() ?? ""} ${word}`);
    else lines.push(word);
    long = fits ? longer : thousandthsOf(word);
  }
  return lines.flatMap((one) => breakWord(one, capMm, widthMm));
}

/** A word longer than the line is broken wherever the line ends. */
function breakWord(word: string, capMm: number, widthMm: number): string[] {
  if (textWidth(word, capMm) <= widthMm) return [word];
  const parts: string[] = [""];
  for (const letter of word) {
    const last = parts.at(-1) ?? "";
    if (last !== "" && textWidth(last + letter, capMm) > widthMm) parts.push(letter);
    else parts[parts.length - 1] = last + letter;
  }
  return parts;
}

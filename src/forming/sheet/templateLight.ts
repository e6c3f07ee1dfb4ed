import { MM_PER_INCH } from "../../geometry/units.ts";
import { DERIVED } from "../judge.ts";
import { isPipe } from "../skin.ts";
import { depthOfRadius } from "../straightedge.ts";
import { passPoints } from "../passPoints.ts";
import type { RollSheetAsked } from "./asked.ts";
import { zonesOf } from "../zones.ts";
import { type Figure, mm } from "./step.ts";
import { sharesOf, templateRadius } from "./touch.ts";

/** What lengths of a template are told for, longest first. [mm] */
const LENGTHS = {
  mm: [300, 200, 100, 50],
  in: [12, 8, 4, 2].map((inches) => inches * MM_PER_INCH),
} as const;

/**
 * There is one template for a window: how much light it may show in a blank as open and as tight as that allows. One that
 * is curved more than the blank rocks on its middle, and shows light at both ends; one that is curved less, at its middle.
 * Over the same length that is the difference of the depths of both curves.
 *
 * @returns nothing where no length of it lies within the small end
 * @see derived here
 */
export function templateLight({ item, say }: RollSheetAsked): {
  readonly text: string;
  readonly figures: readonly Figure[];
} {
  const [zone] = zonesOf(item);
  const aim = passPoints(item).find(({ id }) => id === "aim");
  const none = { text: "", figures: [] };
  if (!item.cone || !zone || !aim) return none;
  const window = sharesOf(item);
  const radii = isPipe(item) ? [zone.largeRadiusMm] : [zone.largeRadiusMm, zone.smallRadiusMm];
  const tightestMm = Math.min(...radii.map((radius) => templateRadius(item, radius, window.to)));
  const chordMm = LENGTHS[say.units].find((length) => length <= tightestMm);
  if (chordMm === undefined) return none;
  const ends = radii.map((radius, i) => {
    const depth = (share: number) =>
      depthOfRadius({ chordMm, insideMm: templateRadius(item, radius, share) });
    const name = isPipe(item) ? "ends" : i === 0 ? "large end" : "small end";
    return {
      name,
      openMm: depth(aim.share) - depth(window.from),
      tightMm: depth(window.to) - depth(aim.share),
    };
  });
  // Light is judged by eye: to a tenth.
  const seen = (one: number) => (say.units === "mm" ? Math.round(one * 10) / 10 : one);
  const told = (one: number) => say.length(seen(one));
  const each = ends.map(({ openMm, tightMm, name }, i) =>
    i === 0
      ? `${told(openMm)} at its ends (open) or ${told(tightMm)} amid (tight)`
      : `${name} ${told(openMm)} and ${told(tightMm)}`,
  );
  return {
    text: `light over ${say.length(chordMm)} of it of up to ${each.join("; ")}`,
    figures: ends.flatMap(({ name, openMm, tightMm }) => [
      mm(`light at the ends of ${say.length(chordMm)} of template, at most, ${name}`, seen(openMm), DERIVED),
      mm(
        `light at the middle of ${say.length(chordMm)} of template, at most, ${name}`,
        seen(tightMm),
        DERIVED,
      ),
    ]),
  };
}

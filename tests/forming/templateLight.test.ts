import { expect, it } from "vitest";
import { sayIn } from "../../src/forming/say.ts";
import { templateLight } from "../../src/forming/sheet/templateLight.ts";
import { templateFigures, sharesOf } from "../../src/forming/sheet/touch.ts";
import { passPoints } from "../../src/forming/passPoints.ts";
import { coneCase, reducer } from "./cases.ts";

/** How far an arc of this radius rises over its chord, from a right-angled triangle. [mm] */
const rise = (radiusMm: number, chordMm: number) => radiusMm - Math.sqrt(radiusMm ** 2 - (chordMm / 2) ** 2);

it.each([reducer, { ...reducer, smallRadiusMm: 430 }, { ...reducer, heightMm: 250 }])(
  "is what the templates of both ends of the window rise more and less than that of its middle",
  (cone) => {
    const item = coneCase(cone);
    const { text, figures } = templateLight({
      item,
      handLiftKg: 25,
      say: sayIn("mm"),
      roll: null,
      settings: null,
      noSettings: null,
    });
    const chordMm = Number(/light over (\d+) mm/.exec(text)![1]);
    const { from, to } = sharesOf(item);
    const share = passPoints(item).find(({ id }) => id === "aim")!.share;
    const [open, half, tight] = [from, share, to].map((of) =>
      templateFigures(item, of).map(({ value }) => rise(value, chordMm)),
    );
    const wanted = half!.flatMap((mm, end) => [mm - open![end]!, tight![end]! - mm]);
    expect(figures).toHaveLength(4);
    figures.forEach(({ value }, i) => expect(Math.abs(value - wanted[i]!)).toBeLessThanOrEqual(0.0501));
  },
);

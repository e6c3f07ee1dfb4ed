import { TURN } from "../../geometry/angle.ts";
import { acrossSpansMm, type RimEnd, rimEnd } from "../../geometry/spannedRim.ts";
import type { FormingCase } from "../case.ts";
import { endRolled, takenAtSeamMm } from "../closure.ts";
import { firstPass } from "../firstPass.ts";
import { isGapTold } from "../gapTold.ts";
import { DERIVED } from "../judge.ts";
import { seamOrder } from "../seamOrder.ts";
import type { Say } from "../say.ts";
import { isPipe } from "../skin.ts";
import type { RollSheetAsked } from "./asked.ts";
import { type Figure, mm, stepNamed, taped } from "./step.ts";
import { sharesOf, templateRadius } from "./touch.ts";

interface Told {
  readonly text: string;
  readonly figures: readonly Figure[];
}

/** A strip that kept a gentler bend than it is to have. [mm] */
interface Strip {
  readonly arcMm: number;
  readonly gentleMm: number;
  readonly tightMm: number;
}

/** Where an arc as long as the strip ends: along the direction that it leaves in, and off it. [mm] */
function stripEnd({ arcMm }: Strip, radiusMm: number): readonly [number, number] {
  if (!Number.isFinite(radiusMm)) return [arcMm, 0];
  const turn = arcMm / radiusMm;
  return [radiusMm * Math.sin(turn), radiusMm * (1 - Math.cos(turn))];
}

/**
 * Where a strip that kept a gentler bend ends beside where the finished one would have brought its end: two arcs of one
 * length that leave one place in one direction.
 *
 * @see derived here
 * @example stripPlace({ arcMm: 100, gentleMm: Infinity, tightMm: 500 }).outsideMm // → 9.900222
 */
export function stripPlace(strip: Strip): RimEnd {
  const [gentle, tight] = [stripEnd(strip, strip.gentleMm), stripEnd(strip, strip.tightMm)];
  const [along, off] = [gentle[0] - tight[0], gentle[1] - tight[1]];
  const turn = strip.arcMm / strip.tightMm;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return { outsideMm: along * sin - off * cos, pastMm: along * cos + off * sin };
}

type Cone = NonNullable<FormingCase["cone"]>;

interface AtRim {
  readonly radiusMm: number;
  readonly stripMm: number;
}

/** A closed cone's blank, of which a strip at one edge has kept the first pass's bend. */
function stripRim({ pieces }: FormingCase, { halfAngleRad }: Cone, { radiusMm, stripMm }: AtRim) {
  const window = firstPass(halfAngleRad);
  return {
    reachMm: radiusMm / Math.sin(halfAngleRad),
    spans: [
      { arcMm: (TURN * radiusMm) / pieces - stripMm, levelMm: radiusMm },
      { arcMm: stripMm, levelMm: (2 * radiusMm) / (window.from + window.to) },
    ],
  };
}

interface AtEnd<Value> {
  readonly end: "ends" | "large end" | "small end";
  readonly value: Value;
}

const toldEnds = <Value>(ends: readonly AtEnd<Value>[], say: (value: Value) => string): string =>
  ends.map(({ end, value }) => `${say(value)}${end === "ends" ? "" : ` at the ${end}`}`).join(", ");

/** Where the edge that led in the second pass stands to the other one of a part in one piece; nothing where no lead is known. */
export function stripOff(asked: RollSheetAsked): AtEnd<RimEnd>[] {
  const { item } = asked;
  const { cone } = item;
  if (item.pieces > 1) return [];
  const weldMm = takenAtSeamMm(item);
  return ofEnds(asked, (strip, radiusMm) => {
    const end = cone ? rimEnd(stripRim(item, cone, { radiusMm, stripMm: strip.arcMm })) : stripPlace(strip);
    return { ...end, pastMm: end.pastMm - weldMm };
  });
}

/** The same in words: "39 mm outside and 17 mm short of the other at the large end, …". They are to be warned by, not sizes to be met. */
function stripWords(ends: readonly AtEnd<RimEnd>[], say: Say): string {
  const near = (mm: number) => say.length(nearly(Math.abs(mm), say));
  const isShort = ends.every(({ value }) => value.pastMm <= 0);
  return ends
    .map(({ end, value: { outsideMm, pastMm } }, i) => {
      const at = end === "ends" ? "" : ` at the ${end}`;
      const along = pastMm <= 0 ? "short of" : "past";
      return i === 0 || !isShort
        ? `${near(outsideMm)} outside and ${near(pastMm)} ${along} the other${at}`
        : `${near(outsideMm)} and ${near(pastMm)}${at}`;
    })
    .join(", ");
}

const nearly = (mm: number, { units }: Say): number => (units === "mm" ? Math.round(mm) : mm);

/**
 * The edge that leads in the second pass keeps what the first one bent it to, as far as the bending roll stands from the
 * pinch: a closed part is brought round as a whole, a piece goes through once more.
 */
export function ledLast(asked: RollSheetAsked): Told {
  const { item, settings, say } = asked;
  const { second } = seamOrder(asked);
  if (!settings)
    return {
      text:
        item.pieces === 1
          ? ""
          : ` What led at ${second} keeps the first pass's bend: no template there; ${stepNamed("last-edge")} bends it.`,
      figures: [],
    };
  const strip = ` The ${say.tape(settings.flat.acrossMm)} at ${second} keep the first pass's bend`;
  if (item.pieces > 1) return ofPiece(asked, `${strip}: no template there; `);
  const ends = stripOff(asked);
  return {
    text: `${strip}: no template there${item.cone ? " nor on the chalk's way" : ""}; its edge is some ${stripWords(ends, say)}${item.cone ? " or more" : ""}. Then raise no more; ${stepNamed("tack")} draws it in, ${stepNamed("re-round")} rounds it.`,
    figures: ends.flatMap(({ end, value: { outsideMm, pastMm } }) => [
      mm(`last edge stands outside, about, ${end}`, nearly(outsideMm, say), DERIVED),
      mm(`last edge falls short, about, ${end}`, nearly(-pastMm, say), DERIVED),
    ]),
  };
}

/** What a tape shows of a piece of a right cone until its last edge is bent. */
function ofPiece(asked: RollSheetAsked, uneven: string): Told {
  const { item, settings, say } = asked;
  const { cone, pieces } = item;
  const bends = `${stepNamed("last-edge")} bends them`;
  const stripMm = settings?.flat.acrossMm ?? 0;
  if (!cone || !isGapTold(item, stripMm) || stripMm > item.rimsMm.small / pieces)
    return { text: `${uneven}${bends}.`, figures: [] };
  const ends = ofEnds(asked, (_, radiusMm) => {
    const across = (of: number) => acrossSpansMm(stripRim(item, cone, { radiusMm, stripMm: of }), 0);
    return (
      endRolled(item, cone, { radiusMm, closed: 1, leadMm: 0 }).insideGapMm + across(stripMm) - across(0)
    );
  });
  return {
    text: `${uneven}until ${bends} the seam edges stand apart by about ${toldEnds(ends, (one) => say.tape(nearly(one, say)))}, or more.`,
    figures: ends.map(({ end, value }) =>
      taped(`seam edges apart before the last edge is bent, ${end}`, value, DERIVED),
    ),
  };
}

/** A value at both ends; the first pass is taken to have ended half way through its window. */
function ofEnds<Value>(
  { item, settings, roll }: RollSheetAsked,
  value: (strip: Strip, levelRadiusMm: number) => Value,
): AtEnd<Value>[] {
  // What leads in the second pass was rolled last in the first.
  const zone = seamOrder({ item, roll }).leads === 2 ? settings?.zones[0] : settings?.zones.at(-1);
  if (!zone) return [];
  const { from, to } = sharesOf(item);
  const at = (end: AtEnd<Value>["end"], radiusMm: number, levelMm = radiusMm): AtEnd<Value> => ({
    end,
    value: value(
      {
        arcMm: settings?.flat.acrossMm ?? 0,
        gentleMm: templateRadius(item, radiusMm, (from + to) / 2),
        tightMm: templateRadius(item, radiusMm, 1),
      },
      levelMm,
    ),
  });
  const { cone } = item;
  return isPipe(item)
    ? [at("ends", zone.largeRadiusMm)]
    : [
        at("large end", zone.largeRadiusMm, cone?.largeRadiusMm),
        at("small end", zone.smallRadiusMm, cone?.smallRadiusMm),
      ];
}

import { endRolled } from "../closure.ts";
import { isGapTold } from "../gapTold.ts";
import { DERIVED } from "../judge.ts";
import { passPoints } from "../passPoints.ts";
import { isPipe } from "../skin.ts";
import { zonesOf } from "../zones.ts";
import { alikeZones, zoneName } from "../zoneWords.ts";
import type { RollSheetAsked } from "./asked.ts";
import { type Figure, taped } from "./step.ts";
import { leadMmOf, templateRadius } from "./touch.ts";

interface Expected {
  readonly text: string;
  readonly figures: readonly Figure[];
}

/** What the first trial is to come out as, if plate and roll follow the model: more open than the window, so that no machine passes it. */
export function expectedFirst(asked: RollSheetAsked): Expected {
  const { item, say } = asked;
  const trial = passPoints(item).find(({ id }) => id === "trial");
  if (!trial) return { text: "", figures: [] };
  // Whole millimetres are near enough for a word in them; an inch has its own marks.
  const near = (mm: number) => say.tape(say.units === "mm" ? Math.round(mm) : mm);
  const { cone } = item;
  const leadMm = leadMmOf(asked);
  if (!cone || trial.closed === null || !isGapTold(item, leadMm)) return byRadius(asked, trial.share, near);
  const { insideGapMm } = endRolled(item, cone, {
    radiusMm: cone.largeRadiusMm,
    closed: trial.closed,
    leadMm,
  });
  const gap = near(insideGapMm);
  return {
    text: `: expect a gap near ${gap}${isPipe(item) ? "" : " at the large end"}${leadMm > 0 ? ", less chalk" : ""}`,
    figures: [],
  };
}

/** The same where the skin is curved unevenly: what templates or a straightedge find at the large end of every zone. */
function byRadius({ item }: RollSheetAsked, share: number, near: (mm: number) => string): Expected {
  const zones = zonesOf(item);
  const groups = alikeZones(zones);
  if (groups.length === 0) return { text: "", figures: [] };
  const radius = (largeMm: number) => templateRadius(item, largeMm, share);
  const end = isPipe(item) ? "" : " at the large end";
  const list = groups
    .map(({ zone, name }) => `${near(radius(zone.largeRadiusMm))}${groups.length > 1 ? ` in ${name}` : ""}`)
    .join(", ");
  return {
    text: `: expect an inside radius near ${list}${end}`,
    figures: zones.map((zone) =>
      taped(
        `${zoneName(zone, zones.length)}expected at the first trial, large end, inside radius`,
        radius(zone.largeRadiusMm),
        DERIVED,
      ),
    ),
  };
}

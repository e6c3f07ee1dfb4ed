import type { BrakeAsked } from "./asked.ts";
import type { BrakeBends } from "./brakeBends.ts";
import { brakeEnds } from "./brakeEnds.ts";
import type { FormingCase } from "./case.ts";
import type { Check } from "./check.ts";
import { DERIVED, judge } from "./judge.ts";

/** A cone bent in fewer lines than this looks many-sided: the least that a round is divided in by hand. [-] */
const LEAST_LINES = 12;
/** Bent in fewer than this it is no round at all. Derived here. [-] */
const FEWEST_LINES = 6;
const BASIS = "metalforming-step-bending";

/** Least spacing of the lines that are laid out, at their wide end. [mm] */
function closestMm({ bendLines }: FormingCase): number | null {
  const spacings = (bendLines ?? []).map((line) => line.wideSpacingMm).filter((spacing) => spacing !== null);
  return spacings.length > 0 ? Math.min(...spacings) : null;
}

/** The brake's own lines: nowhere nearer than the die allows, and as many as the permitted facet asks, if there is room. */
function facets({
  item,
  dieMm,
  bends,
  say,
}: Pick<BrakeAsked, "item" | "dieMm" | "say"> & { bends: BrakeBends }): Check {
  const bent = bends.zones.filter(({ hits }) => hits > 0);
  const off = Math.max(0, ...bent.map(({ facetMm }) => facetMm));
  const apart = say.length(Math.min(...bent.map(({ spacingMm }) => spacingMm.wide)));
  return judge({
    id: "bend-spacing",
    title: "Flats between the bends off the true curve",
    value: off,
    limit: bends.permittedFacetMm,
    sense: "at most",
    unit: "mm",
    beyond: "caution",
    basis: DERIVED,
    rule: "R (1 − cos φ/2) where the bends lie farthest apart, φ what one bend turns; bends no nearer there than half the die opening",
    advice: (verdict) =>
      verdict === "pass"
        ? `${bends.hits.length} bends, ${apart} apart at the ${brakeEnds(item).from}, over the ${say.shops(dieMm)} die: its sides hardly show.`
        : `Bends no nearer than ${apart} over the ${say.shops(dieMm)} die leave flats up to ${say.length(off)} off the curve: use a narrower die, or permit more.`,
  });
}

/**
 * Lines nearer than half the die opening fall into the die's mouth beside the bend before. Where lines are laid out,
 * their least spacing at the wide end is asked; where not, how many there is room for round the large end.
 * Fewer lines mend it, so it is a refusal only where a round would be left with fewer than 6. [mm, or a number of lines]
 */
export function bendSpacing({ item, dieMm, bends, say }: BrakeAsked): Check | null {
  const half = dieMm / 2;
  const end = brakeEnds(item).from;
  if (item.bendLines && bends && bends.hits.length > 0) return facets({ item, dieMm, bends, say });
  const closest = closestMm(item);
  if (closest !== null)
    return judge({
      id: "bend-spacing",
      title: `Spacing of the bend lines at the ${end}`,
      value: closest,
      limit: half,
      sense: "at least",
      unit: "mm",
      beyond: "caution",
      basis: BASIS,
      rule: "spacing of bend lines where they lie farthest apart ≥ half the die opening",
      advice: (verdict) =>
        verdict === "pass"
          ? `Lines ${say.length(closest)} apart clear the ${say.shops(dieMm)} die; end each line where it comes nearer than ${say.length(half)} to the next.`
          : `Lines ${say.length(closest)} apart are too near for the ${say.shops(dieMm)} die: bend fewer, at least ${say.length(half)} apart at the ${end}.`,
    });
  if (item.bendLines) return null;

  const fits = (girth: number) => Math.floor(girth / half);
  const most = fits(item.rimsMm.large);
  const full = fits(item.rimsMm.small);
  return judge({
    id: "bend-lines",
    title: "Bend lines that there is room for",
    value: most,
    limit: LEAST_LINES,
    sense: "at least",
    unit: "-",
    beyond: most < FEWEST_LINES ? "fail" : "caution",
    basis: BASIS,
    rule: "girth of the large end / half the die opening ≥ 12 lines, never below 6",
    advice: (verdict) =>
      verdict === "pass"
        ? `Not nearer than ${say.length(half)} over the ${say.shops(dieMm)} die: up to ${most} lines at the large end, ${full > 0 ? `of which ${full} run down to the small end` : "none of which runs to the small end"}.`
        : `The ${say.shops(dieMm)} die leaves room for ${most} lines round the large end: the part will show its sides; use a narrower die in thinner plate, or roll it.`,
  });
}

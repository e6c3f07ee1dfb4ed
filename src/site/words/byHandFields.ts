/** What a step has for work without a screen. */
export const BY_HAND_FIELDS: Readonly<Record<string, { readonly unit?: string; readonly means: string }>> = {
  "forming.plans[].steps[].byHand": {
    means:
      "Correcting the setting without a screen: for ranges of the gap that may come out, by how much more to raise. Not present at other steps, and where there are no settings.",
  },
  "forming.plans[].steps[].byHand[].fromMm": {
    unit: "mm",
    means: "Widest gap of the range at the large end; null: any wider, and a blank that sprang back flat.",
  },
  "forming.plans[].steps[].byHand[].toMm": {
    unit: "mm",
    means: "Narrowest gap of the range; null: any narrower.",
  },
  "forming.plans[].steps[].byHand[].moreMm": {
    unit: "mm",
    means:
      "Raise both ends by so much from where they were set; 0 to leave it, below 0 for the next blank, where this one is closed too far.",
  },
  "forming.plans[].steps[].byHandZones": {
    means:
      "The same where the skin is curved unevenly: one table for every setting of the plan, by the inside radius at the large end, in the middle of the zone. Not present at other steps.",
  },
  "forming.plans[].steps[].byHandZones[].zones": { means: "The zones that are set so, from 1." },
  "forming.plans[].steps[].byHandZones[].chordMm": {
    unit: "mm",
    means: "Length of the straightedge that depths are told for; null where none is short enough.",
  },
  "forming.plans[].steps[].byHandZones[].highMm": {
    unit: "mm",
    means: "Raise at the large edge that is not passed by this table: the plan’s own high.",
  },
  "forming.plans[].steps[].byHandZones[].ranges": { means: "Its ranges, most open first." },
  "forming.plans[].steps[].byHandZones[].ranges[].openMm": {
    unit: "mm",
    means: "Most open inside radius of the range; null: any more open, and a blank that sprang back flat.",
  },
  "forming.plans[].steps[].byHandZones[].ranges[].tightMm": {
    unit: "mm",
    means: "Tightest inside radius of the range; null: any tighter.",
  },
  "forming.plans[].steps[].byHandZones[].ranges[].openDepthMm": {
    unit: "mm",
    means: "The same as openMm, as the depth under the straightedge; null where there is none.",
  },
  "forming.plans[].steps[].byHandZones[].ranges[].tightDepthMm": {
    unit: "mm",
    means: "The same as tightMm, as the depth under the straightedge; null where there is none.",
  },
  "forming.plans[].steps[].byHandZones[].ranges[].moreMm": {
    unit: "mm",
    means: "Raise both ends by so much; 0 to leave it, below 0 for the next blank.",
  },
  "forming.plans[].steps[].model": {
    means:
      "What the model asks for what the first pass may leave, to carry its correction over to the second without a screen: one table for every setting of the plan. Not present at other steps.",
  },
  "forming.plans[].steps[].model[].zones": {
    means: "The zones that are set so, from 1; empty where a gap tells all round.",
  },
  "forming.plans[].steps[].model[].chordMm": {
    unit: "mm",
    means: "Length of the straightedge that depths are told for; null where there are none.",
  },
  "forming.plans[].steps[].model[].at": {
    means: "Open end, middle and tight end of the first pass’s window, and its cap.",
  },
  "forming.plans[].steps[].model[].at[].gapMm": {
    unit: "mm",
    means: "Gap at the large end; null where the skin is curved unevenly.",
  },
  "forming.plans[].steps[].model[].at[].insideMm": {
    unit: "mm",
    means: "Inside radius at the large end; null where a gap tells.",
  },
  "forming.plans[].steps[].model[].at[].depthMm": {
    unit: "mm",
    means: "Its depth under the straightedge; null where there is none.",
  },
  "forming.plans[].steps[].model[].at[].largeMm": {
    unit: "mm",
    means: "What the model asks for that at the large edge, at the tilt of the first trial.",
  },
  "forming.plans[].steps[].model[].plannedMm": {
    unit: "mm",
    means: "Planned at the large edge for the second pass.",
  },
  "forming.plans[].steps[].model[].mostMm": {
    unit: "mm",
    means: "No more than this comes on top of it: so far goes the plan’s own high.",
  },
};

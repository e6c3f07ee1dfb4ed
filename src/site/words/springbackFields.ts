/** What the report says of springback. */
export const SPRINGBACK_FIELDS: Readonly<Record<string, { readonly unit?: string; readonly means: string }>> =
  {
    "forming.springback": {
      means:
        "What springback asks of the part: the radius to bend to under load. Null where the skin is folded, not bent round.",
    },
    "forming.springback.yieldMPa": { unit: "MPa", means: "Yield strength reckoned with." },
    "forming.springback.yieldFrom": { means: "“certificate” or “grade”: where that strength comes from." },
    "forming.springback.strongYieldMPa": {
      unit: "MPa",
      means: "Upper end of the band: 1.4 times the grade’s; null where a certificate gives the yield.",
    },
    "forming.springback.flatFromMm": {
      unit: "mm",
      means: "Bent no tighter than this under load, the plate springs back flat.",
    },
    "forming.springback.strongFlatFromMm": {
      unit: "mm",
      means: "The same for plate at the upper end of the band, or null.",
    },
    "forming.springback.places": { means: "The places that stand for the whole skin." },
    "forming.springback.places[].place": { means: "Which place, such as “small end”." },
    "forming.springback.places[].freeMm": {
      unit: "mm",
      means: "Middle radius square to the element that it is to have.",
    },
    "forming.springback.places[].loadedMm": { unit: "mm", means: "What it has to be bent to under load." },
    "forming.springback.places[].ratio": { unit: "share", means: "Loaded over free radius." },
    "forming.springback.places[].strongLoadedMm": {
      unit: "mm",
      means: "What plate at the upper end of the band has to be bent to, or null.",
    },
    "forming.springback.places[].strongFreeMm": {
      unit: "mm",
      means: "What such plate springs back to from loadedMm; null where it springs back flat.",
    },
    "forming.springback.curve": { means: "Free against loaded radius about the part’s own, for plotting." },
    "forming.springback.curve[].loadedMm": { unit: "mm", means: "Radius under load." },
    "forming.springback.curve[].freeMm": {
      unit: "mm",
      means: "Radius when free; null where the plate springs back flat.",
    },
    "forming.springback.curve[].strongFreeMm": {
      unit: "mm",
      means: "The same at the upper end of the band.",
    },
    "forming.springback.basis": { means: "A source of the list." },
    "forming.springback.rule": { means: "The formula in words." },
  };

/** What files are for, in the order in which they are offered. */
export const FILE_USES = {
  cutting: "For the cutting table",
  drawing: "For a plotter or a drawing program",
  marking: "For the marking bench",
  programs: "For other programs",
} as const;

export type FileUse = keyof typeof FILE_USES;

export const FILE_USE_IDS = Object.keys(FILE_USES) as FileUse[];

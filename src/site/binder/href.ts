/** Where a part's page and its report stand. */
export const partHref = (name: string): string => `/parts/${encodeURIComponent(name)}/`;
export const workHref = (name: string): string => `${partHref(name)}forming/`;
/** Its work sheet on another machine than the first choice. */
export const otherWorkHref = (name: string, machine: string): string => `${workHref(name)}${machine}/`;
export const reportHref = (name: string): string => `/parts/${encodeURIComponent(name)}.json`;
export const fileHref = (part: string, file: string): string =>
  `${partHref(part)}${encodeURIComponent(file)}`;
export const shapeHref = (shape: string): string => `/shapes/${shape}/`;
export const plateFileHref = (file: string): string => `/job/plates/${encodeURIComponent(file)}`;
export const archiveHref = (file: string): string => `/job/${encodeURIComponent(file)}`;
/** Where the files of the whole job are offered. */
export const JOB_FILES_HREF = "/job/#files";

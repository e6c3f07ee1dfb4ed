import { type Cell, csvText, MARK_OF_UTF8 } from "../output/csvText.ts";
import { FILE_USES } from "../output/fileUse.ts";
import type { JobParts } from "./job.ts";
import type { JobAbout, JobFile } from "./jobFiles.ts";
import { notHere } from "./notHere.ts";
import type { PlateGroup } from "./plates.ts";
import { totalUse } from "./plateUse.ts";

/** Spaces that keep words together on a page are plain ones in a file. */
const plain = (text: string): string => text.replaceAll("\u00a0", " ");

/** The list's own name, and that of the word on what to know first. */
export const LIST = "list.csv";
export const READ_ME = "read-me.txt";

const HEAD: readonly Cell[] = [
  ...["file", "use", "contents", "part", "title", "piece", "to cut", "will it go"],
  ...["what to mind", "plate", "lies on plates", "plate holds", "plate size", "units"],
];
/** Heads of lists that were written before. */
const EARLIER = [
  "file,use,what,part,title,piece,to cut,plate,units",
  "file,use,what,part,title,piece,to cut,will it go,plate,lies on plates,plate holds,plate size,units",
  "file,use,contents,part,title,piece,to cut,will it go,plate,lies on plates,plate holds,plate size,units",
];
/** Files that a job's folder holds, and nothing else that a list might name. */
const LISTED = /^(?:parts|plates)\/(?:[\w~-][\w.~-]*\/)?[\w~-][\w.~-]*\.(?:dxf|svg|csv|json)$/;

/** The files that a list of an earlier run names; undefined where it is no such list. */
export function listedIn(list: string): string[] | undefined {
  const [head = "", ...rows] = list.replace(MARK_OF_UTF8, "").split("\r\n");
  if (![HEAD.join(","), ...EARLIER].includes(head)) return undefined;
  return rows.map((row) => row.split(",", 1)[0] ?? "").filter((name) => LISTED.test(name));
}

/**
 * Every file of a job, one a row: what it is for, which part and piece, how many are cut, whether it goes and what asks for care, of which plate,
 * where its blanks lie or what the plate holds, in which units.
 */
export function fileList(files: readonly JobFile[]): string {
  const rows = files.map((file): Cell[] => {
    const { path, use, what, part, piece, count, plate, units } = file;
    return [
      path,
      FILE_USES[use],
      what,
      part?.name ?? "",
      part?.title ?? "",
      piece ?? "",
      count ?? "",
      file.goes,
      file.mind,
      plate,
      file.liesOn,
      file.holds,
      file.size,
      units,
    ].map((cell) => (typeof cell === "string" ? plain(cell) : cell));
  });
  return csvText([HEAD, ...rows]);
}

/** What whoever opens the folder has to know first, in lines as a plain editor shows them. */
export function readMe({ title, reference }: JobAbout, job: JobParts, groups: readonly PlateGroup[]): string {
  const { parts, shop } = job;
  const { plates } = totalUse(groups);
  const left = groups.reduce((sum, { laid }) => sum + laid.left.reduce((n, { count }) => n + count, 0), 0);
  const blanks = (count: number) => (count === 1 ? "1 blank" : `${count} blanks`);
  const lines = [
    `${title}: files for the cutting table`,
    ...(reference === undefined ? [] : [`Reference ${reference}`]),
    ...(notHere(job)?.names.flatMap((name, i) => [
      ...(i === 0
        ? [
            "",
            `DOES NOT GO HERE${shop ? ", on no machine of the shop" : ""}; do not cut before that is settled:`,
          ]
        : []),
      `         ${name}`,
    ]) ?? []),
    "",
    "list.csv tells what each file is for, which part, how many are cut, whether it goes, what to mind, which plates it lies on,",
    "and in which units.",
    `parts    each pattern of ${parts.length === 1 ? "1 part" : `${parts.length} parts`}: DXF and SVG to cut by, CSV to mark out by, JSON with all that was worked out`,
    plates === 0
      ? `plates   none: ${shop ? "no plate of the rack takes a blank" : "there is no shop file with plates"}`
      : `plates   ${plates === 1 ? "1 whole plate" : `${plates} whole plates`} with all blanks on them, and plates.csv with the place of each blank`,
    ...(shop && left > 0 ? [`         ${blanks(left)} on no plate: the job page says which and why`] : []),
    "",
    "Cut by the files of the parts or by those of the plates, not by both: the plates hold the same blanks.",
    "DXF is release 12, in millimetres; in inches where the name ends in -inches. Layers: CUT the closed contour with true",
    "arcs, BEND and ELEMENT lines, NUMBER their numbers in the marking table, MARK what may be etched, NOTE units and title,",
    "PLATE the edge of a plate, never cut.",
    "Contours are those of the finished blank and keep to the exact pattern within 0.02 mm; the kerf is for the table's",
    "own program, as are the order of the cuts, where a cut begins and how the blanks are held.",
    "",
    "Check units and one length on the table before plate is cut. Cutting tables and hot, sharp and heavy plate hurt",
    "people: the machine's manual, local codes and licensed practice come first.",
  ];
  return lines.map((line) => `${plain(line)}\r\n`).join("");
}

import type { Disk } from "../../../input/disk.ts";
import { decode, TOO_LARGE } from "../../../input/text.ts";
import { unreadable } from "../../../input/reading.ts";
import type { Packed } from "./unzip.ts";

/** What systems put into an archive for themselves. */
const OWN = /(?:^|\/)(?:__MACOSX(?:\/|$)|\._|\.DS_Store$|Thumbs\.db$|desktop\.ini$)/i;
/** Folders about the job's own, as when a folder is packed by hand. */
const DEEPEST = 4;

/** An archive as a disk: its job lies at "." whether or not a folder was packed about it. */
export function zipDisk(packed: Packed): Disk {
  const files = new Map([...packed].filter(([name]) => !OWN.test(name)));
  const inner = new Map(
    [...files].map(([name, bytes]) => [name.slice(about([...files.keys()]).length), bytes]),
  );
  const names = (folder: string): string[] | undefined => {
    const front = folder === "." ? "" : `${plain(folder)}/`;
    const found = [...inner.keys()]
      .filter((name) => name.startsWith(front))
      .map((name) => name.slice(front.length).split("/")[0] ?? "");
    return found.length === 0 && front !== "" ? undefined : [...new Set(found)].sort();
  };
  return {
    names,
    has: (path) => inner.has(plain(path)),
    text: (path) => {
      const bytes = inner.get(plain(path));
      if (bytes) return decode(bytes);
      return inner.has(plain(path)) ? TOO_LARGE : unreadable("it is a folder", "name a file");
    },
  };
}

const plain = (path: string): string => path.replace(/^\.\//, "");

/** The folder that everything lies in, "my-job/"; none where the job lies at the top. */
function about(names: readonly string[]): string {
  let front = "";
  for (let deep = 0; deep < DEEPEST; deep++) {
    const steps = new Set(names.map((name) => name.slice(front.length).split("/")[0] ?? ""));
    const [only] = steps;
    const isFolder = names.every((name) => name.slice(front.length).includes("/"));
    if (steps.size !== 1 || only === undefined || !isFolder || only === "parts") return front;
    front += `${only}/`;
  }
  return front;
}

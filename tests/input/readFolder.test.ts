import { chmodSync, mkdirSync, mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { printProblems } from "../../src/input/problem.ts";
import { readFolder } from "../../src/input/readFolder.ts";
import { readJob } from "../../src/input/readJob.ts";
import { GOOD, spoilt, tables } from "./files.ts";

const SHOP = "name: Test shop\nunits: mm\nmachines: []\n";

/** A folder with these files. */
function folderOf(files: Readonly<Record<string, string | Uint8Array>>): string {
  const folder = mkdtempSync(join(tmpdir(), "folder-"));
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
  return folder;
}

/** What would be printed, without the folder in front. */
function linesOf(folder: string): string[] {
  return printProblems(readFolder(folder, tables).problems).map((line) =>
    line.replaceAll(`${folder}/`, "").replaceAll(folder, "."),
  );
}

describe("a good folder", () => {
  const parts = {
    "parts/p10.yaml": GOOD,
    "parts/p2.yml": GOOD,
    "parts/a.yaml": GOOD,
    "parts/README.md": "notes",
    "notes.txt": "",
  };

  it("gives its parts by name, numbers in their order", () => {
    const { parts: read, shop, job, problems } = readFolder(folderOf(parts), tables);
    expect(problems).toEqual([]);
    expect(read.map(({ part }) => part.name)).toEqual(["a", "p2", "p10"]);
    expect([shop, job]).toEqual([undefined, undefined]);
  });

  it("gives its parts in the order of the job, the others after them", () => {
    const job = "title: Bins\nreference: 1042\ndate: 2026-03-01\nparts: [p10, a]\n";
    const folder = folderOf({ ...parts, "shop.yaml": SHOP, "job.yml": job });
    const reading = readFolder(`${folder}/`, tables);
    expect(reading.problems).toEqual([]);
    expect(reading.parts.map(({ part }) => part.name)).toEqual(["p10", "a", "p2"]);
    expect(reading.parts[0]).toMatchObject({ path: `${folder}/parts/p10.yaml` });
    expect(reading.parts[0]?.locate(["height"])).toEqual({ line: 8, column: 9 });
    expect(reading.shop).toMatchObject({ name: "Test shop" });
    expect(reading.job).toEqual({
      title: "Bins",
      reference: "1042",
      date: "2026-03-01",
      parts: ["p10", "a"],
    });
  });

  it("is the project's own example", () => {
    const { parts: read, problems } = readFolder("demo-data", tables);
    expect(problems).toEqual([]);
    expect(read[0]?.path).toMatch(/^demo-data\/parts\/[a-z-]+\.yaml$/);
  });
});

it("tells everything that is wrong in any file, in one go and in order", () => {
  const folder = folderOf({
    "shop.yaml": "name: x\nunits: mm\n",
    "job.yaml": "title: Bins\nparts: [b, aa, a, nowhere, a]\n",
    "parts/b.yaml": spoilt("900", "-1", spoilt("700", "x")),
    "parts/a.yaml": GOOD,
    "parts/c d.yaml": GOOD,
    "parts/con.yaml": "",
    "parts/bad.yaml": Uint8Array.from([0x61, 0, 0x62]),
  });
  expect(linesOf(folder)).toEqual([
    "job.yaml:2:12: parts[2]: there is no part aa; give a, b or bad",
    "job.yaml:2:19: parts[4]: there is no part nowhere; give a, b or bad",
    "job.yaml:2:28: parts[5]: a is in the list already, in place 3; keep it once",
    "parts/b.yaml:6:23: largeEnd.diameter: -1 is not a size; give a number greater than 0",
    "parts/b.yaml:8:9: height: x is not a length; give a number, as in 12.5",
    "parts/bad.yaml:1:1: file: it is not a text file; check that this is the file you mean",
    "parts/c d.yaml:1:1: file: its name holds a space, which a web address or another system does not take as it is; rename it to c-d.yaml",
    "parts/con.yaml:1:1: file: con is a name that some systems keep for a device; rename it to part-con.yaml",
    'parts/con.yaml:1:1: file: it is empty; begin it with "shape: right-cone"',
    "shop.yaml:1:1: machines: is missing; give a list, each item on a line that begins with a hyphen, or in square brackets",
  ]);
  // A bad part is not laid out, and does not take the good ones with it.
  expect(readFolder(folder, tables).parts.map(({ part }) => part.name)).toEqual(["a"]);
});

it.each<[string, Record<string, string>, string[]]>([
  [
    "two parts of one name",
    { "parts/a.yaml": GOOD, "parts/a.yml": GOOD },
    [
      "parts/a.yml:1:1: file: its part has the same name as that of parts/a.yaml; rename one of the two files",
    ],
  ],
  [
    "two parts whose names differ in capitals",
    { "parts/A.yaml": GOOD, "parts/a.yaml": GOOD },
    [
      "parts/a.yaml:1:1: file: its part has the same name as that of parts/A.yaml; rename one of the two files",
    ],
  ],
  [
    "no parts",
    { "shop.yaml": SHOP },
    ["parts:1:1: file: there are no part files; put a .yaml file for each part here"],
  ],
  [
    "a folder of parts without a part",
    { "parts/notes.txt": "" },
    ["parts:1:1: file: there are no part files; put a .yaml file for each part here"],
  ],
  [
    "a file called parts",
    { parts: "" },
    ["parts:1:1: file: there are no part files; put a .yaml file for each part here"],
  ],
  [
    "a part at the top",
    { "parts/a.yaml": GOOD, "b.yaml": GOOD },
    ["b.yaml:1:1: file: this file is not read here; part files go into the folder parts"],
  ],
  [
    "a misspelt shop",
    { "parts/a.yaml": GOOD, "shops.yaml": SHOP },
    ["shops.yaml:1:1: file: this file is not read here; did you mean shop.yaml?"],
  ],
  [
    "a shop in capitals",
    { "parts/a.yaml": GOOD, "Shop.yaml": SHOP },
    ["Shop.yaml:1:1: file: this file is not read here; did you mean shop.yaml?"],
  ],
  [
    "two shops",
    { "parts/a.yaml": GOOD, "shop.yaml": SHOP, "shop.yml": SHOP },
    ["shop.yml:1:1: file: shop.yaml is there too; keep one of the two files"],
  ],
  [
    "a hidden part",
    { "parts/a.yaml": GOOD, "parts/.b.yaml": GOOD },
    [
      "parts/.b.yaml:1:1: file: its name begins with a point, which hides it on many systems; rename it to b.yaml",
    ],
  ],
  [
    "a folder named like a part",
    { "parts/a.yaml": GOOD, "parts/b.yaml/x": "" },
    ["parts/b.yaml:1:1: file: it is a folder; name a file"],
  ],
  [
    "parts in folders of their own",
    {
      "parts/a.yaml": GOOD,
      "parts/sub/b.yaml": GOOD,
      "parts/sub/deep/c.yml": GOOD,
      "parts/sub/notes.txt": "",
    },
    [
      "parts/sub/b.yaml:1:1: file: this file is not read here; put it into the folder parts itself",
      "parts/sub/deep/c.yml:1:1: file: this file is not read here; put it into the folder parts itself",
    ],
  ],
  [
    "a part with another ending behind its own",
    { "parts/a.yaml": GOOD, "parts/b.yaml.txt": GOOD },
    [
      "parts/b.yaml.txt:1:1: file: this file is not read; rename it to end in .yaml, or move it out of the folder parts",
    ],
  ],
])("refuses %s", (_, files, lines) => {
  expect(linesOf(folderOf(files))).toEqual(lines);
});

it("says that trials were made on a machine that the shop does not have", () => {
  const roll =
    "machines: [{ kind: plate roll, name: Big roll, workingWidth: 2000, rating: { thickness: 8 }, rolls: { topDiameter: 200 } }]";
  const trials = (machine: string) =>
    `units: mm\nmachine: ${machine}\ntrials:\n  - { setting: 3, flat: true }\n`;
  const folder = (machine: string) =>
    folderOf({
      "shop.yaml": `name: Ours\nunits: mm\n${roll}\n`,
      "parts/a.yaml": GOOD,
      "parts/a.trials.yaml": trials(machine),
    });
  expect(linesOf(folder("Big rol"))).toEqual([
    "parts/a.trials.yaml:2:10: machine: the shop has no plate roll called Big rol; did you mean Big roll?",
  ]);
  expect(readFolder(folder("Big roll"), tables)).toMatchObject({
    problems: [],
    parts: [{ trials: { trials: [{ setting: 3, flat: true }] } }],
  });
});

it("says that a folder is not there", () => {
  expect(linesOf("/nowhere/at/all")).toEqual([
    ".:1:1: file: there is no such folder, or it may not be read; check its name",
  ]);
});

// Whoever runs as the owner of everything may read everything.
it.skipIf(process.getuid?.() === 0)("says that a file may not be read", () => {
  const folder = folderOf({ "parts/a.yaml": GOOD });
  chmodSync(join(folder, "parts/a.yaml"), 0);
  expect(linesOf(folder)).toEqual([
    "parts/a.yaml:1:1: file: it may not be read; ask whoever owns it for the right to",
  ]);
});

describe("readJob", () => {
  const job = (text: string, names?: readonly string[]) =>
    printProblems(readJob(text, { path: "job.yaml", ...tables }, names).problems);
  const many = Array.from({ length: 20 }, (_, i) => `part-${i}`);

  it.each<[string, readonly string[] | undefined, string[]]>([
    ["title: Bins\nparts: [x, y]\n", undefined, []],
    ["title: Bins\nparts: [part-a]\n", ["part-a"], []],
    [
      "title: Bins\nparts: [part-a.yaml]\n",
      ["part-a"],
      ["job.yaml:2:9: parts[1]: there is no part part-a.yaml; did you mean part-a?"],
    ],
    [
      "title: Bins\nparts: [hopper]\n",
      many,
      ["job.yaml:2:9: parts[1]: there is no part hopper; give the name of a file in the folder parts"],
    ],
    [
      "title: Bins\nparts: [hopper]\n",
      [],
      ["job.yaml:2:9: parts[1]: there is no part hopper; put its file into the folder parts"],
    ],
    ["title: Bins\npart: [a]\n", ["a"], ["job.yaml:2:1: part: is not a key here; did you mean parts?"]],
    ["reference: 7\n", [], ["job.yaml:1:1: title: is missing; give a text of up to 120 characters"]],
    ["", [], ['job.yaml:1:1: file: it is empty; begin it with "title: Our job"']],
  ])("of %j with parts %j says %j", (text, names, lines) => {
    expect(job(text, names)).toEqual(lines);
  });
});

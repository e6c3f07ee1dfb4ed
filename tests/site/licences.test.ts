import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { licences, licencesOf, noticesOf } from "../../src/site/build/licences.ts";

const folder = mkdtempSync(join(tmpdir(), "licences-"));
afterAll(() => rmSync(folder, { recursive: true }));
const within = (path: string) => resolve("node_modules", path);
const chunk = (...ids: string[]) => ({
  type: "chunk",
  modules: Object.fromEntries(ids.map((id) => [id, { renderedLength: 10 }])),
});

/** A package that was made for this test. */
function packageOf(name: string, files: Readonly<Record<string, string>>): string {
  const path = join(folder, "node_modules", name);
  mkdirSync(path, { recursive: true });
  writeFileSync(join(path, "package.json"), JSON.stringify({ name, version: "1.2.3", license: "MIT" }));
  for (const [file, text] of Object.entries(files)) writeFileSync(join(path, file), text);
  return path;
}

describe("the notices of what the scripts are made from", () => {
  it("are those of every package that has code in them, once each, and of the font", () => {
    const text = licencesOf([
      chunk(within("svelte/src/index-client.js"), within("svelte/src/internal/client/index.js")),
      chunk(within("d3-zoom/src/zoom.js"), resolve("src/output/slug.ts"), "\0vite/preload-helper.js"),
    ]);
    expect(text.match(/^svelte \d/gm)).toHaveLength(1);
    expect(text).toMatch(/Copyright \(c\) 2016-\d+ \[Svelte Contributors\]/);
    expect(text).toMatch(/^d3-zoom \d+\.\d+\.\d+, ISC$/m);
    expect(text).toMatch(/Copyright 2010-\d+ Mike Bostock/);
    expect(text).toMatch(/^vite \d/m);
    expect(text).not.toContain("Bundled dependencies");
    expect(text).toContain("SIL Open Font License");
    expect(text).toContain("IBM Corp.");
  });

  it("leave out packages of which nothing is left in the scripts", () => {
    const gone = { type: "chunk", modules: { [within("zod/index.js")]: { renderedLength: 0 } } };
    expect(licencesOf([gone])).not.toMatch(/^zod /m);
  });

  it("hold what a module's own comments say of others whose work it took in", () => {
    const path = packageOf("taker", {
      "LICENSE.txt": "Copyright A. Taker",
      "all.js":
        "/** @license\n * Copyright B. Taken */\nlet a;\n/* a plain remark */\n/** @license\n * Copyright B. Taken */",
    });
    const text = noticesOf(path, [join(path, "all.js?v=1")]);
    expect(text).toContain("taker 1.2.3, MIT");
    expect(text).toContain("Copyright A. Taker");
    expect(text.match(/Copyright B\. Taken/g)).toHaveLength(1);
    expect(text).not.toContain("a plain remark");
    const pdf = within("jspdf/dist/jspdf.es.min.js");
    expect(noticesOf(within("jspdf"), [pdf])).toContain("James Hall");
  });

  it("stop the build where a package has none", () => {
    const path = packageOf("bare", { "index.js": "" });
    expect(() => licencesOf([chunk(join(path, "index.js"))])).toThrow(
      /bare 1\.2\.3 comes without a licence file/,
    );
  });

  it("go with the scripts of the pages, not with those that write them", () => {
    const written: string[] = [];
    const run = (name: string) =>
      licences().generateBundle.call(
        { environment: { name }, emitFile: ({ fileName, source }) => written.push(fileName, source) },
        undefined,
        { "a.js": chunk(within("fflate/esm/browser.js")) },
      );
    run("ssr");
    expect(written).toEqual([]);
    run("client");
    expect(written[0]).toBe("licences.txt");
    expect(written[1]).toMatch(/^fflate \d/m);
  });
});

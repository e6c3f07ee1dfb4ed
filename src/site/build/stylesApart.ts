import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { attributesOf } from "./linksOf.ts";

/** The stylesheet that holds what pages would say in style attributes. */
export const LOOKS = "looks.css";

/** A page whose style attributes are numbers into `looks`, a list that grows as new ones are met. */
function stylesApart(html: string, looks: string[]): string {
  let done = "";
  let from = 0;
  for (const { value, start, end } of attributesOf(html, new Set(["style"]))) {
    const known = looks.indexOf(value);
    const number = known < 0 ? looks.push(value) - 1 : known;
    done += `${html.slice(from, start)}data-look="${number}"`;
    from = end;
  }
  return done + html.slice(from);
}

const sheet = (looks: readonly string[]): string =>
  looks.map((look, i) => `[data-look="${i}"] { ${look} }\n`).join("");

/** Pages carry no styles of their own, so that a browser may be told to heed none but the site's stylesheets. */
export function stylesInSheet() {
  return {
    name: "styles-in-sheet",
    hooks: {
      "astro:build:done": ({ dir }: { dir: URL }) => {
        const root = fileURLToPath(dir);
        const looks: string[] = [];
        const pages = readdirSync(root, { recursive: true, encoding: "utf8" }).filter((file) =>
          file.endsWith(".html"),
        );
        for (const file of pages.sort()) {
          const path = join(root, file);
          writeFileSync(path, stylesApart(readFileSync(path, "utf8"), looks));
        }
        writeFileSync(join(root, LOOKS), sheet(looks));
      },
    },
  };
}

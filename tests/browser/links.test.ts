import { existsSync, globSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { weight, withLoaded } from "./scripts.ts";
import { DIST, pagesOf } from "./site.ts";

const read = (path: string) => readFileSync(join(DIST, path), "utf8");
const idsOf = (html: string) => new Set([...html.matchAll(/\sid="([^"]+)"/g)].map(([, id]) => id));
const ids = new Map(pagesOf(DIST).map((path) => [path, idsOf(read(path))]));
const targets = (html: string) =>
  [...html.matchAll(/\s(?:href|src)="([^"]*)"/g)].map(([, target = ""]) => target.replaceAll("&amp;", "&"));

/** Why a link leads nowhere; undefined where it leads somewhere in the folder. */
function broken(page: string, target: string): string | undefined {
  if (/^([a-z][a-z0-9+.-]*:|\/)/i.test(target)) return `${target} leaves the folder`;
  const [path = "", fragment] = target.split("#");
  const file = path === "" ? page : join(dirname(page), decodeURIComponent(path));
  if (file.startsWith("..")) return `${target} leaves the folder`;
  if (!existsSync(join(DIST, file))) return `${target}: there is no ${file}`;
  return fragment === undefined || ids.get(file)?.has(fragment)
    ? undefined
    : `${target}: nothing there has that id`;
}

/** A server shows this one at any depth. */
const NO_SUCH_PAGE = "404.html";

describe.each(pagesOf(DIST).filter((page) => page !== NO_SUCH_PAGE))("%s", (page) => {
  it("links only to what is there, by ways that work from any place", () => {
    const links = targets(read(page));
    expect(links.length).toBeGreaterThan(5);
    expect(links.map((link) => broken(page, link)).filter((why) => why !== undefined)).toEqual([]);
  });

  it("has no id twice", () => {
    const all = [...read(page).matchAll(/\sid="([^"]+)"/g)].map(([, id]) => id);
    expect(all.filter((id, i) => all.indexOf(id) < i)).toEqual([]);
  });

  it("asks for nothing from elsewhere, and runs the scripts of what stands on it and no others", () => {
    const html = read(page);
    const scripts = html.match(/<script[^>]*>/gi) ?? [];
    const roles = ["data-trial-form", "data-brake-form", "data-bench=", "data-pdf=", "data-version"];
    expect(scripts.length).toBe(roles.filter((role) => html.includes(role)).length);
    for (const script of scripts)
      expect(script).toMatch(/^<script type="module" src="[./]*_astro\/[^"/]+\.js">$/);
    expect(html).not.toMatch(/\son[a-z]+="|<iframe/i);
    if (scripts.length < 2) expect(html).not.toMatch(/<form/i);
    expect(html).not.toMatch(/(?:src|srcset|href)="(?:https?:)?\/\//i);
  });
});

it("has a page for addresses that are none which works from any depth", () => {
  const html = read(NO_SUCH_PAGE);
  const links = targets(html).filter((target) => !target.startsWith("data:"));
  expect(links.length).toBeGreaterThan(2);
  for (const link of links) {
    expect(link).toMatch(/^\//);
    expect(existsSync(join(DIST, link, "index.html")), link).toBe(true);
  }
  // Neither a stylesheet nor a picture that would be looked for beside an address that is none.
  expect(html).not.toMatch(/stylesheet|<img|<script|url\(/i);
});

it("has light scripts: a page without a bench next to nothing", () => {
  const of = (page: string) =>
    [...read(page).matchAll(/<script[^>]*src="([^"]+)"/g)].map(([, src = ""]) => join(dirname(page), src));
  expect(weight(of("glossary/index.html").flatMap((script) => [...withLoaded(script)]))).toBeLessThan(3_000);
});

it("has the PDF library in one script that no page loads by itself, without what it would take for web pages", () => {
  const scripts = globSync("_astro/*.js", { cwd: DIST });
  expect(scripts.filter((script) => /html2canvas|canvg|purify|index\.es/.test(script))).toEqual([]);
  const own = scripts.filter((script) => read(script).includes("jsPDF"));
  expect(own.length).toBe(1);
  for (const path of pagesOf(DIST)) expect(read(path)).not.toContain(own[0]);
  expect(weight(own)).toBeLessThan(160_000);
});

it.each(globSync("**/*.css", { cwd: DIST }))(
  "%s finds its fonts, and asks for nothing from elsewhere",
  (sheet) => {
    const css = read(sheet);
    expect(css).not.toMatch(/@import|https?:\/\//);
    for (const [, target = ""] of css.matchAll(/url\("?([^")]+)"?\)/g))
      expect(existsSync(join(DIST, dirname(sheet), target)), target).toBe(true);
  },
);

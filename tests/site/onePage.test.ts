import { expect, it } from "vitest";
import { asOnePage } from "../../src/site/build/onePage.ts";

const page = (body: string) => `<!doctype html><html><body><main>${body}</main></body></html>`;
const sheet = (id: string, of: string, body: string) => `<div id="${id}" data-page="${of}">${body}</div>`;
const one = (body: string) =>
  asOnePage(page(sheet("parts-a", "/parts/a/", body) + sheet("job", "/job/", `<p id="plates"></p>`)));

it.each([
  [`<h2 id="size">Size</h2>`, `<h2 id="parts-a-size">Size</h2>`],
  [
    `<b id="t"></b><svg aria-labelledby="t d"></svg>`,
    `<b id="parts-a-t"></b><svg aria-labelledby="parts-a-t d"></svg>`,
  ],
  [`<i id="x"></i><a href="#x">x</a>`, `<i id="parts-a-x"></i><a href="#parts-a-x">x</a>`],
  [`<a href="/job/">j</a>`, `<a href="#job">j</a>`],
  [`<a href="/job/#plates">j</a>`, `<a href="#job-plates">j</a>`],
  [`<a href="/job/#gone">j</a>`, `<a href="#job">j</a>`],
  [`<a href="/parts/a/a.dxf">f</a>`, `<a href="/parts/a/a.dxf">f</a>`],
  [`<div class="section screen-only"><p id="s">no</p></div>`, `<div class="section screen-only"></div>`],
  [`<nav class="contents"><a href="#s">s</a></nav>`, `<nav class="contents"></nav>`],
  [`<p>id="size" href="/job/"</p>`, `<p>id="size" href="/job/"</p>`],
])("%s becomes %s", (before, after) => {
  expect(one(before)).toContain(sheet("parts-a", "/parts/a/", after));
});

it("leaves what stands outside the sheets as it is", () => {
  const menu = `<nav id="menu"><a href="/job/">Job</a><p class="screen-only">x</p></nav>`;
  expect(asOnePage(page(menu + sheet("job", "/job/", `<p id="menu"></p>`)))).toBe(
    page(menu + sheet("job", "/job/", `<p id="job-menu"></p>`)),
  );
});

import { expect, it } from "vitest";
import { relativeLink, relativePage, relativeStyles } from "../../src/site/build/relativeLinks.ts";

it.each([
  { target: "/", depth: 0, link: "index.html" },
  { target: "/", depth: 2, link: "../../index.html" },
  { target: "/glossary/#half-angle", depth: 2, link: "../../glossary/index.html#half-angle" },
  { target: "/parts/a.b~c.json", depth: 1, link: "../parts/a.b~c.json" },
  { target: "/fonts/binder-sans-400.woff2", depth: 1, link: "../fonts/binder-sans-400.woff2" },
])("$target from $depth folders below is $link", ({ target, depth, link }) => {
  expect(relativeLink(target, depth)).toBe(link);
});

it("turns the links of a page over, and leaves text, fragments and other places alone", () => {
  const page = `<a href="/job/">/job/</a><a href="#blank">x</a><a href="//host/x">y</a><img src=/a.svg>`;
  expect(relativePage(page, 1)).toBe(
    `<a href="../job/index.html">/job/</a><a href="#blank">x</a><a href="//host/x">y</a><img src="../a.svg">`,
  );
});

it("keeps an address whose letters have to be escaped", () => {
  expect(relativePage(`<a href="/parts/a&amp;b.json?x=%22&amp;y">r</a>`, 1)).toBe(
    `<a href="../parts/a&amp;b.json?x=%22&amp;y">r</a>`,
  );
});

/** As a title or a note may have it, escaped as the pages do. */
const LOOKS_LIKE_A_LINK = [
  `see url(/a/b) href="/abc" src='/x'`,
  `&lt;a href="/abc"&gt;`,
  `' href="/abc`,
  `url("/a.woff2") src="/b"`,
];
it.each(LOOKS_LIKE_A_LINK)("leaves %s alone as text, in an attribute and in a drawing", (text) => {
  const quoted = text.replaceAll('"', "&quot;");
  const page =
    `<!doctype html><title>${text}</title><meta name="description" content="${quoted}"><p title='${text.replaceAll("'", "&#39;")}'>${text}</p>` +
    `<svg><title>${text}</title><text>${text}</text></svg><style>/* ${text} */</style><textarea>${text}</textarea>`;
  expect(relativePage(page, 2)).toBe(page);
  expect(relativePage(`${page}<a href="/job/">${text}</a>`, 2)).toBe(
    `${page}<a href="../../job/index.html">${text}</a>`,
  );
});

it("turns the addresses of a stylesheet over", () => {
  expect(relativeStyles(`a{src:url(/f.woff2)}b{src:url("/g.woff2")}c{src:url(x.svg)}`, 1)).toBe(
    `a{src:url(../f.woff2)}b{src:url("../g.woff2")}c{src:url(x.svg)}`,
  );
});

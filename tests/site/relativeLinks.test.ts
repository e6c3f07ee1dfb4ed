import { expect, it } from "vitest";
import { relativeLink, relativeLinks } from "../../src/site/build/relativeLinks.ts";

it.each([
  { target: "/", depth: 0, link: "index.html" },
  { target: "/", depth: 2, link: "../../index.html" },
  { target: "/glossary/#half-angle", depth: 2, link: "../../glossary/index.html#half-angle" },
  { target: "/parts/a.b~c.json", depth: 1, link: "../parts/a.b~c.json" },
  { target: "/fonts/binder-sans-400.woff2", depth: 1, link: "../fonts/binder-sans-400.woff2" },
])("$target from $depth folders below is $link", ({ target, depth, link }) => {
  expect(relativeLink(target, depth)).toBe(link);
});

it("turns links and addresses of a page over, and leaves text, fragments and other places alone", () => {
  const page = `<a href="/job/">/job/</a><a href="#blank">x</a><a href="//host/x">y</a><style>a{src:url(/f.woff2)}</style>`;
  expect(relativeLinks(page, 1)).toBe(
    `<a href="../job/index.html">/job/</a><a href="#blank">x</a><a href="//host/x">y</a><style>a{src:url(../f.woff2)}</style>`,
  );
});

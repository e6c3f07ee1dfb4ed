import { expect, it } from "vitest";
import { serverRoot } from "../../src/site/binder/serverRoot.ts";

it.each([
  [undefined, "/"],
  ["", "/"],
  ["binder", "/binder/"],
  ["/shop/binder/", "/shop/binder/"],
  ["//host/", "/host/"],
])("%s is %s", (given, root) => {
  expect(serverRoot(given)).toBe(root);
});

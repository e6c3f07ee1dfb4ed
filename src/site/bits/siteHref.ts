/** Where the site's root lies from the page at hand: "" while pages are written, since the build makes their links relative. */
let root = "";

/** Said once by a page's script: the way from that page to the site's root, as in "../../". */
export function setRoot(way: string): void {
  root = way;
}

/** An address of the site, given from its root ("/sources/"), that holds in any folder of any server. */
export function siteHref(path: string): string {
  return root === "" ? path : root + path.replace(/^\//, "");
}

import { setRoot } from "../bits/siteHref.ts";

/** Says where the binder's root is, from the page's own link there: what is kept here is kept for that binder. */
export function findRoot(): void {
  const home = document.querySelector<HTMLAnchorElement>(".menu .home");
  if (home) setRoot(new URL(".", home.href).href);
}

import { setRoot } from "../bits/siteHref.ts";

/** Puts the making of PDF files on a part's page; most of it is loaded when somebody asks for it. */
function open(place: HTMLElement, home: HTMLAnchorElement): void {
  const button = place.querySelector("button");
  if (!button) return;
  place.hidden = false;
  button.addEventListener("click", () => {
    button.disabled = true;
    setRoot(new URL(".", home.href).href);
    import("./startPdf.ts")
      .then(({ startPdf }) => startPdf(place))
      .catch((error: unknown) => {
        button.disabled = false;
        button.textContent = `It could not be loaded (${String(error)}). Try again`;
      });
  });
}

const home = document.querySelector<HTMLAnchorElement>(".menu .home");
if (home) for (const place of document.querySelectorAll<HTMLElement>("[data-pdf]")) open(place, home);

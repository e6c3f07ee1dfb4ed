/** Where that which stands in for live parts is found in what was published. */
const PLACES = {
  /** With room for the buttons that come with the live ones: fields that stand below must not move. */
  views: ".example > * > .views, .example > .bench-room",
  verdict: ".example-verdict > *",
};
/** Puts what was published into the place of a live part that is not there yet. */
export type StandIn = (part: keyof typeof PLACES) => (into: Element) => void;

/** Copies of what a page was published with: the page itself is kept as it is, to be printed. */
export const standInOf =
  (published: readonly Node[]): StandIn =>
  (part) =>
  (into) => {
    const found = published.flatMap((node) =>
      node instanceof Element ? [...node.querySelectorAll(PLACES[part])] : [],
    );
    into.append(...found.map((one) => one.cloneNode(true)));
  };

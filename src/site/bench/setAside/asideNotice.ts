/** A button in a notice. */
export interface NoticeButton {
  readonly label: string;
  readonly act: () => void;
}

/** Says above a place that something kept there was set aside, with what can be done with it; it stands there once. */
export function asideNotice(place: Element, words: string, buttons: readonly NoticeButton[]): HTMLElement {
  const notice = document.createElement("div");
  notice.className = "problem screen-only bench-row";
  notice.setAttribute("role", "alert");
  notice.dataset["setAside"] = "";
  const said = document.createElement("p");
  said.textContent = words;
  notice.append(
    said,
    ...buttons.map(({ label, act }) => {
      const button = document.createElement("button");
      button.type = "button";
      button.textContent = label;
      button.addEventListener("click", act);
      return button;
    }),
  );
  if (place.previousElementSibling?.matches("[data-set-aside]")) place.previousElementSibling.remove();
  place.before(notice);
  return notice;
}

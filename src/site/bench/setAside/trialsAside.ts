import { asideNotice } from "./asideNotice.ts";

/** Tells above a form that trials kept for it were set aside, of which something could not be read or cannot have been. */
export const tellTrialsAside = (form: Element, key: string, part: string): void =>
  asideNotice(form, key, {
    words:
      "Something in the trials that were kept here could not be read, or cannot have been with this part on this machine. The others are in the list; all of it, as it was, is set aside in this browser.",
    fileOf: (text) => ({ name: `${part}-trials-set-aside.txt`, text }),
  });

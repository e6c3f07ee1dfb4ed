/** Said of a tray of which something could not be read. */
export const UNREAD =
  "Something on the tray could not be read. The parts that could are on it; all of it, as it was, is set aside in this browser.";

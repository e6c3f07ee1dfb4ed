import { keeper, type Keeper } from "../keep.ts";
import { asides, dropAsides, setAside } from "../setAside/aside.ts";
import { asTray, isWholeTray, type TrayContent } from "./tray.ts";

/** A tray as a browser keeps it, of which what cannot be read is kept too. */
export interface KeptTray extends Keeper<TrayContent> {
  /** Texts of trays of which something could not be read. */
  readonly unread: () => readonly string[];
  readonly dropUnread: () => void;
}

/**
 * The tray under a name. One bad entry takes nothing but itself off the tray: before anything is written over it, the whole
 * text as it lies is set aside.
 */
export function keptTray(key: string): KeptTray {
  const kept = keeper(key, asTray);
  return {
    ...kept,
    read: () => {
      const content = kept.read();
      const isWhole = isWholeAt(key);
      // What could be read goes on as the tray.
      if (!isWhole && setAside(key) && content) kept.write(content);
      return content;
    },
    unread: () => asides(key),
    dropUnread: () => dropAsides(key),
  };
}

/** Is what lies there a whole tray, or nothing at all? */
function isWholeAt(key: string): boolean {
  try {
    const text = localStorage.getItem(key);
    return text === null || isWholeTray(JSON.parse(text));
  } catch (error) {
    // Storage that is forbidden holds nothing.
    return !(error instanceof SyntaxError);
  }
}

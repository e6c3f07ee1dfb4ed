import { isShapeId } from "../../../shapes/ids.ts";
import { siteHref } from "../../bits/siteHref.ts";
import { linkOf, LONGEST } from "../link.ts";
import type { NamedTyped } from "../asTyped.ts";
import { copyText, wholeAddress } from "./copyText.ts";
import type { Told } from "./told.ts";

/** Some mail and chat programs cut an address about here (from memory). [signs] */
const CAREFUL = 2000;

/**
 * The whole part as an address, copied where the browser lets a page copy.
 *
 * @param isWrong is something wrong in it, as it is typed?
 */
export async function copyLink(part: NamedTyped, isWrong: boolean): Promise<Told> {
  const link = linkOf(part);
  const shape = part.part["shape"];
  if (link.length > LONGEST || !isShapeId(shape))
    return {
      words: "This part is too long for a link. Save it as a file and send that.",
      isWrong: true,
    };
  const whole = wholeAddress(siteHref(`/shapes/${shape}/`) + link);
  const care =
    whole.length > CAREFUL
      ? ` It has ${whole.length} signs; some mail and chat programs cut a link after about ${CAREFUL}, so try it, or send the file.`
      : "";
  const about = `The whole part is in the address; nothing is sent to a server.${isWrong ? " Something is wrong in it as it is typed, and whoever opens the link gets it so." : ""}${care}`;
  return (await copyText(whole))
    ? { words: `The link is copied. ${about}` }
    : { words: `This browser does not let a page copy: copy the link from the field. ${about}`, link: whole };
}

/** An address of this site as somebody elsewhere has to write it. */
export const wholeAddress = (address: string): string => new URL(address, location.href).href;

/** Puts a text where it can be pasted from; false where the browser does not let a page do that. */
export async function copyText(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

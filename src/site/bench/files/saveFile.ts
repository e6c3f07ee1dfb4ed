/** Hands a file to whoever works here, as if it had been downloaded. */
export function saveFile(name: string, content: BlobPart, type: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([content], { type }));
  link.download = name;
  link.click();
  // Some browsers begin to read only after the click has been dealt with.
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}

/** Hands a text or bytes to the reader as a file. Browser only. */
export function saveFile(name: string, type: string, content: BlobPart): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([content], { type }));
  link.download = name;
  link.click();
  // The browser may still be reading it.
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
}

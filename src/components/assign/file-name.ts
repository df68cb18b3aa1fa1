/** `Blank of a bracket` as the name of a file, without what some systems refuse. */
export function fileName(title: string, ending: string): string {
  const plain = title
    .toLowerCase()
    .normalize("NFKD")
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "")
    .slice(0, 60);
  return `${plain || "assignment"}.${ending}`;
}

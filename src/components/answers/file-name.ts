/** `Blank of a bracket` as the name of a CSV file, without what some systems refuse. */
export function fileName(title: string, what: string): string {
  const plain = title
    .normalize("NFKD")
    .toLowerCase()
    .replace(/\p{M}/gu, "")
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "");
  return `${plain || "assignment"}-${what}.csv`;
}

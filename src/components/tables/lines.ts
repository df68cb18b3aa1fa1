type Lines = readonly (readonly string[])[];

/** Tab-separated text, which spreadsheets take from the clipboard cell by cell. */
export function tabText(lines: Lines): string {
  return lines.map((line) => line.map((field) => field.replace(/\s+/g, " ")).join("\t")).join("\n");
}

/**
 * Tables as text, for files and the clipboard; used by the build and by the script of a table alike.
 * Imports nothing, so that the script stays small.
 */
type Lines = readonly (readonly string[])[];

const quoted = (field: string) => (/[",\r\n]/.test(field) ? `"${field.replaceAll('"', '""')}"` : field);

/** Spreadsheets take a file without this mark for another encoding, and spoil every ² and ±. */
const byteOrderMark = "\uFEFF";

/** Comma-separated text after RFC 4180. */
export function csvText(lines: Lines): string {
  return byteOrderMark + lines.map((line) => `${line.map(quoted).join(",")}\r\n`).join("");
}

/** Tab-separated text, which spreadsheets take from the clipboard cell by cell. */
export function tabText(lines: Lines): string {
  return lines.map((line) => line.map((field) => field.replace(/\s+/g, " ")).join("\t")).join("\n");
}

const byteOrderMark = "\uFEFF";

/**
 * One cell, safe to open in a spreadsheet: a text that a spreadsheet would take for a formula gets an apostrophe before it
 * (OWASP ASVS 5.0, 1.2.10: `=`, `+`, `-`, `@`, tab and the zero character at the start), a plain number does not.
 * The wide forms of these signs and signs behind spaces count too, because some programs read them alike.
 */
function harmless(cell: string | number): string {
  if (typeof cell === "number" || /^-?\d+(\.\d+)?$/.test(cell)) return String(cell);
  return /^[\s\p{Cc}]*[=+\-@＝＋－＠−]|^\p{Cc}/u.test(cell) ? `'${cell}` : cell;
}

function csvCell(cell: string | number): string {
  const safe = harmless(cell);
  return /[",;\t\r\n]|^\s|\s$/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/**
 * Rows as comma-separated text after RFC 4180, in UTF-8 with a byte order mark so that spreadsheets read ° and ± right.
 * Cells that would be formulas are made harmless.
 */
export function safeCsv(rows: readonly (readonly (string | number)[])[]): string {
  return byteOrderMark + rows.map((row) => `${row.map(csvCell).join(",")}\r\n`).join("");
}

/** Rows as tab-separated text for the clipboard, harmless in the same way. */
export function safeTabs(rows: readonly (readonly (string | number)[])[]): string {
  return rows.map((row) => row.map((cell) => harmless(cell).replace(/\s+/g, " ")).join("\t")).join("\n");
}

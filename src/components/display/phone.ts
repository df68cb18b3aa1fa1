import { queryText, rowsText } from "../../lib/address.ts";
import type { Raw } from "../../lib/inputs.ts";
import type { Worksheet } from "../../lib/worksheet.ts";

/**
 * Address of a calculator in its page with all its values: also those at their defaults, since a page may begin with others.
 *
 * @param site - address of the handbook, with a slash at its end
 */
export function phoneAddress(site: string, { id, page, inputs }: Pick<Worksheet, "id" | "page" | "inputs">, raw: Raw): string {
  const parameters = Object.entries(inputs).flatMap(([key, input]): [string, string][] => {
    const value = raw[key] ?? input.default;
    if (value === undefined || value.length === 0) return [];
    return [
      [
        `${id}.${key}`,
        typeof value === "string" ? value : rowsText(value, input.kind === "list" ? Object.keys(input.columns) : []),
      ],
    ];
  });
  return `${site}${page.slice(1)}?${queryText(parameters)}#${id}`;
}

/** Whether an address means another machine on every machine that opens it. */
export function isOnlyHere(address: string): boolean {
  return /^(?:localhost|127(?:\.\d+){3}|\[::1\])$/.test(new URL(address).hostname);
}

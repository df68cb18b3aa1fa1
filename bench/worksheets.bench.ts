import { loadCatalogue } from "../src/catalogue/load.ts";
import { worksheets } from "../src/lib/registry.ts";
import { runWorksheet } from "../src/lib/worksheet.ts";

const catalogue = loadCatalogue();

export const everyCalculatorOnce = () => {
  for (const sheet of worksheets) runWorksheet(sheet, {}, catalogue);
};

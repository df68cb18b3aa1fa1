import { renderToString } from "preact-render-to-string";
import { expect, test } from "vitest";
import { loadCatalogue } from "../../src/catalogue/load.ts";
import { Calculator } from "../../src/components/calculator/Calculator.tsx";
import type { Raw } from "../../src/lib/inputs.ts";
import { worksheetById } from "../../src/lib/registry.ts";

const catalogue = loadCatalogue();
const pages = { "rivet-joint": "/joining/", "seam-allowance": "/joining/" };

function page(id: string, start: Raw): string {
  const sheet = worksheetById(id);
  if (!sheet) throw new Error(`no worksheet ${id}`);
  return renderToString(
    <Calculator sheet={sheet} catalogue={catalogue} titles={{}} instance={id} start={start} base="/shop/" pages={pages} />,
  );
}

test("a metal that cannot be welded leads on to rivets and seams with its thicknesses", () => {
  const html = page("spot-setting", { material: "al-3003-h14", thickness: "1.2mm", otherThickness: "0.8mm" });
  expect(html).toContain("Material must be carbon steel or stainless steel");
  const links = [...html.matchAll(/<a class="button first" href="([^"]+)"/g)].map(([, href = ""]) =>
    href.replaceAll("&amp;", "&"),
  );
  expect(links).toEqual([
    "/shop/joining/?rivet-joint.material=al-3003-h14&rivet-joint.thicknessA=1.2mm&rivet-joint.thicknessB=0.8mm#rivet-joint",
    "/shop/joining/?seam-allowance.kind=lap&seam-allowance.thickness=1.2mm#seam-allowance",
  ]);
});

test("sheets too unlike are refused with a message at the field and no way on", () => {
  const html = page("spot-setting", { thickness: "0.5mm", otherThickness: "2mm" });
  expect(html).toContain("must be from 0.40 mm to 1.50 mm");
  expect(html).not.toMatch(/class="button first"/);
});

test("reasons are sentences in a list, not one line with commas", () => {
  const html = page("weld-pair", { materialB: "al-3003-h14" });
  expect(html).toMatch(/<ul class="sentences"><li>Where aluminium melts/);
  expect(html).toContain("rivets, a folded seam where the metal folds flat");
});

import { expect, test } from "vitest";
import { rehypeBase } from "../../src/site/rehype-base.ts";

test.each([
  ["/shop/", "/bending/#a", "/shop/bending/#a"],
  ["/", "/bending/", "/bending/"],
  ["/shop/", "#a", "#a"],
  ["/shop/", "//host/a", "//host/a"],
  ["/shop/", "https://host/a", "https://host/a"],
])("below %s a link to %s leads to %s", (base, href, expected) => {
  const link = { type: "element" as const, tagName: "a", properties: { href }, children: [] };
  rehypeBase(base)()({ type: "root", children: [link] });
  expect(link.properties.href).toBe(expected);
});

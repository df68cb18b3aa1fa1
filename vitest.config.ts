import { defineConfig } from "vitest/config";
import { catalogueModule } from "./src/catalogue/vite-plugin.ts";

/** Everything that needs no built site; the tests of the pages have their own configuration in tests/site/. */
export default defineConfig({
  plugins: [catalogueModule()],
  test: {
    include: ["tests/**/*.test.{ts,tsx}"],
    exclude: ["tests/site/**"],
  },
});

import { defineConfig } from "vitest/config";

/** Everything that needs no built site; the tests of the pages have their own configuration in tests/site/. */
export default defineConfig({
  test: {
    include: ["tests/**/*.test.{ts,tsx}"],
    exclude: ["tests/site/**"],
  },
});

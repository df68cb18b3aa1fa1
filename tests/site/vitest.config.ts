import { defineConfig } from "vitest/config";

/** Tests of the built pages in a browser: `npm run test:site`. */
export default defineConfig({
  root: new URL("../..", import.meta.url).pathname,
  test: {
    include: ["tests/site/**/*.test.ts"],
    globalSetup: ["tests/site/global-setup.ts"],
    testTimeout: 120_000,
    hookTimeout: 60_000,
    expect: { poll: { timeout: 30_000 } },
    // A browser on a busy machine now and then misses its moment, most of all a worker's change; a fault that is there fails twice.
    retry: 1,
    maxWorkers: 2,
  },
});

import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    testTimeout: 60_000,
    // Hooks open databases, start servers and programs; on a busy machine that takes as long as a test.
    hookTimeout: 60_000,
  },
});

import { fileURLToPath } from 'node:url';
import preact from '@preact/preset-vite';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  plugins: [preact()],
  test: {
    include: ['tests/**/*.test.{ts,tsx}'],
    exclude: ['tests/browser/**', 'node_modules/**'],
    setupFiles: ['tests/words-checked.ts', 'src/page/begin-ours.ts'],
    environment: 'node', // a test that needs a document says `// @vitest-environment happy-dom`
    testTimeout: 20_000,
  },
});

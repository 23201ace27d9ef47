/// <reference types="vitest/config" />
import react from '@vitejs/plugin-react'
import { defineConfig } from 'vite'

// Relative base: a built planner must also run from a folder on a thumb drive or a farm's intranet.
export default defineConfig({
  base: './',
  plugins: [react()],
  build: {
    target: 'es2022',
    sourcemap: true,
    // The manifest says what loads before the first paint; .ci/firstPaint.mjs weighs that, so chunks need no limit.
    manifest: true,
    chunkSizeWarningLimit: 1000,
  },
  test: {
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    environment: 'node',
    benchmark: { include: ['tests/bench/**/*.bench.ts'] },
  },
})

/// <reference types="vitest/config" />
import { fileURLToPath } from 'node:url'
import react from '@vitejs/plugin-react'
import { defineConfig, type Rolldown } from 'vite'

// Fifty small files press worse than four large ones (by 16 KB of 285), and each is a request. What every visitor needs is
// gathered: packages and program of the page, packages and program of the plan. All else is split as it is asked for.
const isPackage = /[\\/]node_modules[\\/]/
/** Not main.tsx, which waits for the kept bay: nothing that others import may wait with it. */
const isPage = /[\\/]src[\\/](?!main\.tsx)/
const plan = fileURLToPath(new URL('src/canvas/FloorPlan.tsx', import.meta.url)).replaceAll('\\', '/')

/** A module with all that it imports, and that those import, but for what comes later. */
const withImports = (first: string, context: Rolldown.ChunkingContext): ReadonlySet<string> => {
  const all = new Set<string>([first])
  for (const id of all) for (const imported of context.getModuleInfo(id)?.importedIds ?? []) all.add(imported)
  return all
}

/** Names a file for what the plan imports. The plan itself stays its own, so that the manifest has it. */
const withPlan = (name: string): Rolldown.CodeSplittingNameFunction => {
  let all: ReadonlySet<string> | undefined
  return (id, context) => {
    all ??= withImports(plan, context)
    return id !== plan && all.has(id) ? name : null
  }
}

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
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: [
            { name: 'packages', test: isPackage, tags: ['$initial'], priority: 4 },
            { name: 'page', test: isPage, tags: ['$initial'], priority: 3 },
            { name: withPlan('plan-packages'), test: isPackage, priority: 2 },
            { name: withPlan('plan'), priority: 1 },
          ],
        },
      },
    },
  },
  test: {
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    environment: 'node',
    benchmark: { include: ['tests/bench/**/*.bench.ts'] },
  },
})

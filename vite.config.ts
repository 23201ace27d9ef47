/// <reference types="vitest/config" />
import { fileURLToPath } from 'node:url'
import react from '@vitejs/plugin-react'
import { defineConfig, type Rolldown } from 'vite'
import { offline } from './.ci/offline.ts'

// Fifty small files press worse than four large ones (by 16 KB of 285), and each is a request. What every visitor needs is
// gathered: packages and program of the page, packages and program of the plan. All else is split as it is asked for.
const isPackage = /[\\/]node_modules[\\/]/
/** Imported from one file that knows them all: gathered with the plan, the icons of every view would come before it is drawn. */
const isIcon = /[\\/]lucide-react[\\/]/
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
    return id !== plan && all.has(id) && !isIcon.test(id) ? name : null
  }
}

const loadsAnew = 'tests/coreWithoutPage.test.ts'

// Relative base: a built planner must also run from a folder on a thumb drive or a farm's intranet.
export default defineConfig({
  base: './',
  plugins: [react(), offline()],
  // A worker may bring code only when it needs it, which needs modules.
  worker: { format: 'es' },
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
    environment: 'node',
    restoreMocks: true,
    // A slow or busy machine proves nothing wrong: a test ends when it is done, and only what hangs is stopped.
    testTimeout: 120_000,
    hookTimeout: 120_000,
    // Pure functions share what a worker has loaded, which takes a third of the time. What mocks the page away must load all
    // anew to prove anything.
    projects: [
      {
        extends: true,
        test: {
          name: 'together',
          include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
          exclude: [loadsAnew],
          isolate: false,
          benchmark: { include: ['tests/bench/**/*.bench.ts'] },
        },
      },
      { extends: true, test: { name: 'anew', include: [loadsAnew], benchmark: { include: [] } } },
    ],
  },
})

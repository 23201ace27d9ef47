import { expect, test, vi } from 'vitest'

/** Hoisted, since mocks are set before anything else of this file runs. */
const refuse = vi.hoisted(() => (name: string) => () => {
  throw new Error(`the core loaded ${name}`)
})

vi.mock('react', refuse('react'))
vi.mock('react-dom', refuse('react-dom'))
vi.mock('react-konva', refuse('react-konva'))
vi.mock('konva', refuse('konva'))
vi.mock('zustand', refuse('zustand'))

const core = import.meta.glob(
  '../src/{units,geometry,solvers,model,catalogue,parts,layout,checks,evaluate,drawing,sheets,report}/**/*.ts',
)

test('the mocks refuse', async () => {
  await expect(import('react')).rejects.toMatchObject({
    cause: { message: 'the core loaded react' },
  })
})

test('every file of the core loads in Node without React, Konva or a page', async () => {
  expect('document' in globalThis).toBe(false)
  expect(Object.keys(core).length).toBeGreaterThan(25)
  for (const [path, load] of Object.entries(core)) {
    await load().catch((cause: unknown) => {
      throw new Error(`${path} does not load`, { cause })
    })
  }
})

import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { expect } from 'vitest'

const root = join(import.meta.dirname, '../..')

/**
 * Compares a text with the kept file of that path, counted from the project's top. `UPDATE_GOLDEN=1` writes the file
 * anew, so that a change of what the program gives out always shows in the commit.
 */
export const expectGolden = (path: string, text: string): void => {
  const file = join(root, path)
  if (process.env['UPDATE_GOLDEN'] === '1') {
    mkdirSync(dirname(file), { recursive: true })
    writeFileSync(file, text)
  }
  const kept = existsSync(file) ? readFileSync(file, 'utf8') : ''
  expect(text === kept, `${path} is stale; run with UPDATE_GOLDEN=1 and look at the change`).toBe(true)
}

import { existsSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { evaluate } from '../src/evaluate/evaluate'
import { readLayout } from '../src/layout/file'

const top = new URL('../', import.meta.url)
const read = (file: string): string => readFileSync(new URL(file, top), 'utf8')
const all = (text: string, pattern: RegExp): string[] => [...text.matchAll(pattern)].map((match) => match[1]!)

describe.each(['README.md', 'DEVELOPERS.md'])('%s', (page) => {
  const text = read(page)

  test('names only files that are there', () => {
    const links = all(text, /\]\((?!https?:|#)([^)]+)\)/g)
    const paths = all(text, /`((?:src|tests|e2e|public|\.ci)\/[^`\s<>*{]*)`/g)
    const missing = [...links, ...paths].filter((path) => !existsSync(new URL(path, top)))
    expect(links.length + paths.length).toBeGreaterThan(3)
    expect(missing).toEqual([])
  })

  test('names only commands that there are', () => {
    const { scripts } = JSON.parse(read('package.json')) as { scripts: Record<string, string> }
    const commands = all(text, /npm (?:run )?(start|test|(?<=run )[a-z0-9]+)/g)
    expect(commands.length).toBeGreaterThan(1)
    for (const command of commands) expect(scripts).toHaveProperty(command)
  })
})

test('the bay in README.md opens as it stands', () => {
  const [example = ''] = all(read('README.md'), /```json\n([\s\S]*?)```/g)
  const opened = readLayout(example)
  if (!opened.ok) throw new Error(JSON.stringify(opened))
  expect(opened.layout.parts.map(({ id }) => id)).toEqual(['rack-row-1', 'sump-1'])
  // Two racks of eight bars with four towers on each, as the defaults have it.
  expect(evaluate(opened.layout).towers).toBe(64)
})

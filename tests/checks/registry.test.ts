import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { rules, ruleOf } from '../../src/checks'
import type { Words } from '../../src/checks/context'
import { quantityWords } from '../../src/checks/measuredWords'
import { mendWords, sentence } from '../../src/checks/words'
import { evaluate } from '../../src/evaluate/evaluate'
import { applyMend } from '../../src/layout/mend'
import type { Layout } from '../../src/layout/schema'
import { stateWords, type Finding } from '../../src/model/finding'
import { writerFor } from '../../src/units/writer'
import { arbitraryBay } from '../support/arbitraryBay'
import { firstTry } from '../support/firstTry'
import { nameIn } from '../support/judged'
import { scenarios } from '../support/scenarios'

const folder = join(import.meta.dirname, '../../src/checks')
const ids = rules.map(({ id }) => id)

/** Rules' files are named after them; all other files of the folder are plain words. */
const ruleFiles = readdirSync(folder).filter((file) => /^[a-z]+(-[a-z]+)+\.ts$/.test(file))

describe.each(rules.map((rule) => ({ id: rule.id, rule })))('$id', ({ id, rule }) => {
  test('is named by thing, what and limit, and so is its file', () => {
    expect(id).toMatch(/^[a-z]+(-[a-z]+)+$/)
    expect(ruleFiles).toContain(`${id}.ts`)
    expect(readFileSync(join(folder, `${id}.ts`), 'utf8')).toContain(`const RULE = '${id}'`)
    expect(ruleOf(id)).toBe(rule)
  })

  test('says its title, its limit, where that comes from, and how it is mended', () => {
    expect(rule.title).toMatch(/^[A-Z][^.]+$/)
    expect(rule.limit.length).toBeGreaterThan(10)
    expect(rule.source).toMatch(/common practice|Geometry|CFR|ADA|Code|NEC|Stock lengths/i)
    expect(rule.mending).toMatch(/^[A-Z].+\.$/)
  })
})

test('no two rules share an id or a title, and every rule of the folder is in the registry', () => {
  expect(new Set(ids).size).toBe(ids.length)
  expect(new Set(rules.map(({ title }) => title)).size).toBe(ids.length)
  expect(ruleFiles.map((file) => file.replace(/\.ts$/, '')).sort()).toEqual([...ids].sort())
})

test('a rule that is not there is named with those that are', () => {
  expect(() => ruleOf('aisle-colour-max')).toThrow(/no rule aisle-colour-max.*aisle-width-min/)
})

/** The number in the sentence is the number in the arithmetic: never 36" in the one and 3' 0" in the other. */
const expectOneReading = (finding: Finding, words: Words): void => {
  const said = ruleOf(finding.rule).say(finding, words)
  for (const quantity of [finding.measured, finding.limit]) {
    const { isInFeet, ...onTape } = quantity
    const other = quantityWords(isInFeet ? onTape : { ...onTape, isInFeet: true }, words)
    const shown = quantityWords(quantity, words)
    if (other !== shown) expect(said).not.toContain(` ${other}`)
  }
}

const expectHonest = (layout: Layout, finding: Finding): void => {
  const { at, span, measured, limit, terms, state, subject, key, rule, parts, mend } = finding
  const places = [at, ...(span ?? [])].flatMap(({ x, y }) => [x, y])
  const numbers = [measured.value, limit.value, ...terms.map(({ quantity }) => quantity.value)]
  expect(
    [...places, ...numbers].filter((value) => !Number.isFinite(value)),
    key,
  ).toEqual([])
  expect(stateWords[subject] as readonly string[]).toContain(state)
  // Good is no finding.
  expect(state).not.toBe(stateWords[subject][0])
  expect(key.split(' ')[0]).toBe(rule)
  for (const part of parts) expect(layout.parts.map(({ id }) => id)).toContain(part)
  for (const units of ['feet-inches', 'metric'] as const) {
    const words = { ...writerFor(units), name: (id: string) => nameIn(layout, id) }
    expect(sentence(finding, words)).toMatch(/^[^\s].*\.$/)
    expect(sentence(finding, words)).not.toMatch(/NaN|undefined|Infinity|null|—|\bSet [a-z]+[A-Z]/)
    expectOneReading(finding, words)
    if (mend) expect(mendWords(mend, finding, words)).toMatch(/^(Move|Lay|Dig|Give|Start|Set|Let) .*[^\s]$/)
  }
}

const expectHonestBay = (layout: Layout): void => {
  const { findings } = evaluate(layout)
  const keys = findings.map(({ key }) => key)
  expect(keys.filter((key, index) => keys.indexOf(key) !== index)).toEqual([])
  for (const finding of findings) expectHonest(layout, finding)
}

describe('every finding has a place, numbers, a key of its own and words', () => {
  test.each([...Object.entries(scenarios), ['first try', firstTry] as const])('in %s', (_, build) => {
    expectHonestBay(build())
  })

  test('in any bay', () => {
    fc.assert(fc.property(arbitraryBay, expectHonestBay), { seed: 20_251_202, numRuns: 150 })
  }, 60_000)
})

test('one press on a mend takes its finding away', () => {
  fc.assert(
    fc.property(arbitraryBay, (layout) => {
      for (const { key, mend } of evaluate(layout).findings) {
        if (!mend) continue
        const after = evaluate(applyMend(layout, mend)).findings
        expect(after.map((finding) => finding.key)).not.toContain(key)
      }
    }),
    { seed: 20_251_203, numRuns: 60 },
  )
}, 120_000)

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { feet, inches, LONGEST_MM, onTick } from '../../src/units/length'
import type { Units } from '../../src/units/length'
import { parseLength } from '../../src/units/parseLength'
import { asTyped } from '../../src/units/precision'
import { writeLength, writeOnTape } from '../../src/units/writeLength'

const seed = 4015

/** 5 ft 6-1/2 in. */
const tall = 1689.1

describe('feet and inches', () => {
  test.each([
    [`5' 6 1/2"`, tall],
    [`5' 6-1/2"`, tall],
    [`5'6-1/2`, tall],
    [`5'-6-1/2"`, tall],
    ['5 ft 6 1/2 in', tall],
    ['5ft6.5in', tall],
    ['5 feet 6-1/2 inches', tall],
    ['5 FT. 6 1/2 IN.', tall],
    ['66 1/2', tall],
    ['66-1/2', tall],
    ['66 1 / 2', tall],
    ['66.5"', tall],
    ['66½', tall],
    ['5′ 6½″', tall],
    ['5’ 6 1⁄2”', tall],
    [`5' 6 1/2''`, tall],
    ['5-6-1/2', tall],
    ['5-6 1/2"', tall],
    ['5-6', 1676.4],
    [`5'`, 1524],
    [`5.5'`, 1676.4],
    ['5 1/2 ft', 1676.4],
    ['1/2', 12.7],
    ['¾', 19.05],
    ['9/8', 28.575],
    ['.5', 12.7],
    ['  12  ', 304.8],
    ['12\u00a01/2', 317.5],
    [`5'\u00a06-1/2"`, tall],
    ['0', 0],
  ])('%s', (text, mm) => {
    expect(parseLength(text, 'feet-inches')).toEqual({ ok: true, mm })
  })

  test('a sketch hyphen: one is feet and inches, before a fraction it is inches', () => {
    expect(parseLength('5-6', 'feet-inches')).toEqual({ ok: true, mm: onTick(feet(5) + inches(6)) })
    expect(parseLength('5-6/8', 'feet-inches')).toEqual({ ok: true, mm: onTick(inches(5.75)) })
  })

  test.each([
    ['-3', -76.2],
    ['−3 1/2', -88.9],
    [`- 5' 6-1/2"`, -tall],
    ['+3', 76.2],
    ['-0', 0],
  ])('a level %s', (text, mm) => {
    expect(parseLength(text, 'feet-inches')).toEqual({ ok: true, mm })
  })
})

describe('metric', () => {
  test.each([
    ['1690', 1690],
    ['1690.5', 1690.5],
    ['1690 mm', 1690],
    ['169 cm', 1690],
    ['1.69 m', 1690],
    ['1.69m', 1690],
    ['1.69 metres', 1690],
    ['1.69 Meters', 1690],
    ['169 centimeters', 1690],
    ['−12.3', -12.3],
    [`5' 6-1/2"`, tall],
    ['66 1/2 in', tall],
  ])('%s', (text, mm) => {
    expect(parseLength(text, 'metric')).toEqual({ ok: true, mm })
  })

  test('metric is read by a feet-and-inches builder as well', () => {
    expect(parseLength('1.69 m', 'feet-inches')).toEqual({ ok: true, mm: 1690 })
  })

  test('a fraction without an inch mark is no metric length', () => {
    expect(parseLength('66 1/2', 'metric').ok).toBe(false)
    expect(parseLength('5-6', 'metric').ok).toBe(false)
  })
})

describe('refused, with a sentence', () => {
  const refusal = (text: string): string => {
    const parsed = parseLength(text, 'feet-inches')
    return parsed.ok ? `read as ${parsed.mm} mm` : parsed.sentence
  }

  test.each([
    'abc',
    '1e999',
    '1/2/3',
    '5 6',
    '--5',
    '5-',
    '"',
    "'",
    '.',
    '-',
    '5"6',
    '6m"',
    '5 kg',
    'NaN',
    '١',
  ])('%s is not a length', (text) => {
    expect(refusal(text)).toBe(`“${text}” is not a length. Write it like 5' 6-1/2", 66-1/2 or 1.69 m.`)
  })

  test('nothing', () => {
    expect(refusal('   ')).toMatch(/^Nothing is typed\./)
  })

  test('a fraction of nothing', () => {
    expect(refusal('1/0')).toBe('“1/0” has 0 under its fraction.')
    expect(refusal(`5' 6 1/0"`)).toBe(`“5' 6 1/0"” has 0 under its fraction.`)
  })

  test('a fraction that is no part', () => {
    expect(refusal('66 9/8')).toBe('“66 9/8” has a fraction that is 1 or more beside a whole number.')
  })

  test('12 in or more beside feet, because it may as well be a slip for 1-4 as mean 6 ft 2 in', () => {
    expect(refusal(`5' 14"`)).toBe(
      `“5' 14"” has 12 in or more beside its feet; write 6' 2" if that is meant.`,
    )
    expect(refusal('5-12')).toMatch(/12 in or more/)
  })

  test('a part of a foot beside inches', () => {
    expect(refusal(`5.5' 6"`)).toMatch(/part of a foot/)
  })

  test('a comma, which means thousands to one reader and decimals to the next', () => {
    expect(refusal('1,690')).toMatch(/has a comma/)
  })

  test('too many characters, without repeating them', () => {
    expect(refusal('9'.repeat(41))).toMatch(/^That is too long/)
  })

  test('longer than any bay', () => {
    expect(refusal('2001 m')).toMatch(/more than 2000 m/)
    expect(parseLength('2000 m', 'metric')).toEqual({ ok: true, mm: LONGEST_MM })
  })

  test('the examples suit the units', () => {
    const parsed = parseLength('abc', 'metric')
    expect(parsed).toMatchObject({ ok: false, sentence: expect.stringContaining('1690, 169 cm') })
  })
})

describe('round trip', () => {
  const sixtyFourths = fc.integer({ min: -5_000_000, max: 5_000_000 })
  const tenths = fc.integer({ min: -20_000_000, max: 20_000_000 })

  test('any 1/64 in, in feet or along the tape, comes back exactly', () => {
    fc.assert(
      fc.property(sixtyFourths, (parts) => {
        const mm = onTick(inches(parts / 64))
        for (const write of [writeLength, writeOnTape])
          expect(parseLength(write(mm, 'feet-inches', asTyped), 'feet-inches')).toEqual({ ok: true, mm })
      }),
      { seed, numRuns: 1000 },
    )
  })

  test('any 0.1 mm comes back exactly', () => {
    fc.assert(
      fc.property(tenths, (tenth) => {
        const mm = onTick(tenth / 10)
        expect(parseLength(writeLength(mm, 'metric', asTyped), 'metric')).toEqual({ ok: true, mm })
      }),
      { seed, numRuns: 1000 },
    )
  })

  test('what one reader writes the other reads the same', () => {
    fc.assert(
      fc.property(sixtyFourths, (parts) => {
        const written = writeLength(inches(parts / 64), 'feet-inches', asTyped)
        expect(parseLength(written, 'metric')).toEqual(parseLength(written, 'feet-inches'))
      }),
      { seed },
    )
  })
})

test('any text gives a length on the tick or a sentence, never a throw', () => {
  const typed = fc.string({
    unit: fc.constantFrom(...`0123456789 .,-/'"′″½ftincmm+eE%:\u00a0`.split('')),
    maxLength: 14,
  })
  const units = fc.constantFrom<Units[]>('feet-inches', 'metric')
  fc.assert(
    fc.property(fc.oneof(typed, fc.string()), units, (text, reader) => {
      const parsed = parseLength(text, reader)
      const { mm, sentence } = { mm: 0, sentence: 'Read.', ...parsed }
      expect(sentence.endsWith('.')).toBe(true)
      expect(onTick(mm)).toBe(mm)
      expect(Math.abs(mm)).toBeLessThanOrEqual(LONGEST_MM)
    }),
    { seed, numRuns: 5000 },
  )
})

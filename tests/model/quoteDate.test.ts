import { describe, expect, test } from 'vitest'
import { dayNumber, isStale } from '../../src/model/quoteDate'

describe('a day', () => {
  // Against the engine's own calendar: day 719163 is 1970-01-01 (Reingold and Dershowitz, Calendrical Calculations, from memory).
  test('is counted as the calendar of the engine counts it, over 400 years', () => {
    for (let day = -80_000; day < 66_000; day += 97) {
      const iso = new Date(day * 86_400_000).toISOString().slice(0, 10)
      expect(dayNumber(iso), iso).toBe(719_163 + day)
    }
  })

  test.each([
    '',
    '2026-2-3',
    '2026-02-29',
    '2025-13-01',
    '2025-00-10',
    '2025-06-31',
    '2025-06-00',
    '1900-02-29',
    '0000-01-01',
    '03.04.2026',
  ])('is not %s', (text) => expect(dayNumber(text)).toBeUndefined())

  test('29 February is one in 2000 and 2024', () => {
    expect(dayNumber('2000-02-29')).toBeDefined()
    expect(dayNumber('2024-02-29')).toBeDefined()
  })
})

describe('a price', () => {
  // From 1 January to 2 March of 2026 are 30 + 28 + 2 = 60 days.
  test('is old after 60 days, not on the sixtieth', () => {
    expect(isStale({ date: '2026-01-01' }, '2026-03-02')).toBe(false)
    expect(isStale({ date: '2026-01-01' }, '2026-03-03')).toBe(true)
  })

  test('of a day to come is not old, nor one that nobody dated', () => {
    expect(isStale({ date: '2026-12-01' }, '2026-03-03')).toBe(false)
    expect(isStale({ date: '' }, '2026-03-03')).toBe(false)
  })
})

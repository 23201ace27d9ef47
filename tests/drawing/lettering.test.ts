import { expect, test } from 'vitest'
import fc from 'fast-check'
import { clipped, textWidth, wrapped } from '../../src/drawing/lettering'

test('widths are those of Helvetica', () => {
  // Source: Adobe Core 14 AFM, Helvetica.afm, WX in thousandths (from memory).
  for (const [letter, width] of [
    ['A', 667],
    ['i', 222],
    ['m', 833],
    ['0', 556],
    [' ', 278],
    ['"', 355],
  ] as const)
    expect(textWidth(letter, 1000)).toBeCloseTo(width)
})

test('tabular figures: every digit is as wide as the next', () => {
  expect(new Set('0123456789'.split('').map((digit) => textWidth(digit, 10))).size).toBe(1)
})

test('wrapping keeps every word in order and breaks no line that fits (seed 7)', () => {
  const word = fc.stringMatching(/^[a-z]{1,12}$/)
  fc.assert(
    fc.property(fc.array(word, { maxLength: 40 }), fc.integer({ min: 5, max: 60 }), (words, width) => {
      const lines = wrapped(words.join(' '), 2, width)
      expect(lines.join(' ')).toBe(words.join(' '))
      for (const line of lines) if (line.includes(' ')) expect(textWidth(line, 2)).toBeLessThanOrEqual(width)
      lines.slice(1).forEach((line, i) => {
        const first = line.split(' ')[0]!
        expect(textWidth(`${lines[i]} ${first}`, 2)).toBeGreaterThan(width)
      })
    }),
    { seed: 7 },
  )
})

test('clipped words end in an ellipsis and fit; words that fit stay whole', () => {
  expect(clipped('Kestrel Bend', 3, 100)).toBe('Kestrel Bend')
  const short = clipped('Kestrel Bend Farm, House 2', 3, 25)
  expect(short.endsWith('…')).toBe(true)
  expect(textWidth(short, 3)).toBeLessThanOrEqual(25)
})

test('no line breaks between a number and its unit', () => {
  const words = 'N1 differs by 34.2 % from tower to tower, where 10.0 % is even.'
  for (let width = 10; width < 80; width += 1) {
    const lines = wrapped(words, 2, width)
    expect(lines.join(' ')).toBe(words)
    for (const line of lines) expect(line).not.toMatch(/^%/)
  }
})

test('no line breaks between the size of a fitting and its inches, or between how many and of what', () => {
  for (let width = 6; width < 60; width += 1)
    for (const line of wrapped(
      'Reducing coupling, 1-1/2 in poly pipe to 3/4 in, 12 x RS-p, 5 kg',
      2,
      width,
    )) {
      expect(line).not.toMatch(/\d$|^in\b|^x |^kg/)
      expect(line).not.toMatch(/ x$/)
    }
})

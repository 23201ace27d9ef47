import fc from 'fast-check'
import { expect, test } from 'vitest'
import { lengthsIn } from '../../src/units/lengthsIn'
import { asTyped } from '../../src/units/precision'
import { writerFor } from '../../src/units/writer'

const lengthsOf = (sentence: string) =>
  lengthsIn(sentence)
    .filter(({ isLength }) => isLength)
    .map(({ text }) => text)

test.each([
  [`A is 17-1/2" leaf to leaf; a work aisle wants 36".`, ['17-1/2"', '36"']],
  [`D ends 1/2" short, 29' 9-1/4" from its high end.`, ['1/2"', `29' 9-1/4"`]],
  ['The pit lies at -1234.5 mm, N1 at 600 mm.', ['-1234.5 mm', '600 mm']],
  ['D falls 1/16 in/ft; it wants 10.4 mm/m.', ['1/16 in/ft', '10.4 mm/m']],
  ['119 x 12 ft + 80 x 3.05 m', ['12 ft', '3.05 m']],
  ['N1 gets 4.0 gph at 68 °F, 31.6 % off.', ['4.0 gph', '68 °F', '31.6 %']],
  [
    'It runs at 3.2 ft/s or 0.98 m/s: 121 L/min, 120 gal, 350 W.',
    ['3.2 ft/s', '0.98 m/s', '121 L/min', '120 gal', '350 W'],
  ],
  ['Move N1, N2 and N3 14" north', ['14"']],
  ['Racks chained is 21; it can be 1 to 20.', []],
  ['', []],
])('%s', (sentence, lengths) => {
  expect(lengthsOf(sentence)).toEqual(lengths)
})

test('whatever a writer writes is one piece, and nothing of a sentence is lost', () => {
  const writers = [writerFor('feet-inches'), writerFor('metric'), writerFor('metric', asTyped)]
  fc.assert(
    fc.property(fc.double({ min: -50_000, max: 50_000, noNaN: true }), (mm) => {
      for (const { exact: _exact, ...writer } of writers)
        for (const write of Object.values(writer)) {
          const written = write(mm)
          const sentence = `It is ${written} there.`
          expect(lengthsOf(sentence)).toEqual([written])
          expect(
            lengthsIn(sentence)
              .map(({ text }) => text)
              .join(''),
          ).toBe(sentence)
        }
    }),
    { seed: 4016, numRuns: 500 },
  )
})

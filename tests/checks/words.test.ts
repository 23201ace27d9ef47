import { expect, test } from 'vitest'
import { flowOf, flowTotalOf, shareOf, temperatureOf, velocityOf } from '../../src/checks/found'
import { quantityWords } from '../../src/checks/measuredWords'
import { sentence } from '../../src/checks/words'
import type { Units } from '../../src/units/length'
import { writerFor } from '../../src/units/writer'
import { bay, type Sketch } from '../support/bay'
import { findingsOf, nameIn } from '../support/judged'

/** What is said of the aisle between two rows that run north, so many inches centre to centre. */
const said = (apart: number, units: Units): string | undefined => {
  const sketch: Sketch = bay('40 x 60 ft')
    .row('A', [120, 200], { racks: 1 })
    .row('B', [120 + apart, 200], { racks: 1 })
  const layout = sketch.layout()
  const [finding] = findingsOf('aisle-width-min', layout)
  return finding && sentence(finding, { ...writerFor(units), name: (id) => nameIn(layout, id) })
}

test('quantities of water are written in the units of the reader', () => {
  const written = (units: Units) =>
    [flowOf(15.2), flowTotalOf(7268), velocityOf(0.98), temperatureOf(20), shareOf(0.316)].map((quantity) =>
      quantityWords(quantity, writerFor(units)),
    )
  // By hand: 15.2 / 3.7854 = 4.02; 7268 / 60 / 3.7854 = 32.0; 0.98 / 0.3048 = 3.22.
  expect(written('feet-inches')).toEqual(['4.0 gph', '32.0 gpm', '3.2 ft/s', '68 °F', '31.6 %'])
  expect(written('metric')).toEqual(['15.2 L/h', '121 L/min', '0.98 m/s', '20 °C', '31.6 %'])
})

// Rows are 66 in from leaf to leaf across, so that 102 in apart leaves 36 in: see the tables of the rule.
test('a reader has the whole millimetre, or the sixteenth of an inch', () => {
  expect(said(102, 'metric')).toBeUndefined()
  expect(said(101, 'metric')).toBe(
    'A to B is 889 mm leaf to leaf, a cart aisle; a work aisle wants 914 mm. Move A 25 mm west.',
  )
  expect(said(101, 'feet-inches')).toBe(
    'A to B is 35" leaf to leaf, a cart aisle; a work aisle wants 36". Move A 1" west.',
  )
})

test('where that would make what is measured read as its limit, both are said exactly', () => {
  // 36 in is 914.4 mm; a hundredth of an inch less is 914.1 mm, and nearest to 35-63/64 in.
  expect(said(101.99, 'metric')).toBe(
    'A to B is 914.1 mm leaf to leaf, a cart aisle; a work aisle wants 914.4 mm. Move A 0.3 mm west.',
  )
  expect(said(101.99, 'feet-inches')).toBe(
    'A to B is 35-63/64" leaf to leaf, a cart aisle; a work aisle wants 36". Move A 1/64" west.',
  )
})

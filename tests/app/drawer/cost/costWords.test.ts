import { describe, expect, test } from 'vitest'
import { costRows, nextRowWords } from '../../../../src/app/drawer/cost/costWords'
import { labourSum } from '../../../../src/app/drawer/cost/labourWords'
import { setNorm } from '../../../../src/app/drawer/cost/normEdit'
import { emptyBay } from '../../../../src/layout/empty'
import { feet } from '../../../../src/units/length'

const layout = emptyBay(feet(30), feet(70), 'House 2')

test('7,496 by tower, site, floor and zone: worked example of the trade notes', () => {
  const totals = { neededCents: 749_600, boughtCents: 749_600, taxCents: 0, unpriced: 0, placeholders: 0 }
  // 30 x 70 ft = 2,100 ft2: 3.57 each; 195.1 m2: 38.42 each.
  const by = { towers: 480, sites: 4320, areaMm2: feet(30) * feet(70), zones: 6 }
  expect(costRows(totals, by, '$', 'feet-inches')).toEqual([
    ['The bay', '1', '$7,496.00', '$7,496.00'],
    ['Tower', '480', '$15.62', '$15.62'],
    ['Plant site', '4,320', '$1.74', '$1.74'],
    ['Square foot of house', '2,100', '$3.57', '$3.57'],
    ['Zone', '6', '$1,249.33', '$1,249.33'],
  ])
  expect(costRows(totals, by, '$', 'metric')[3]).toEqual(['Square metre of house', '195', '$38.42', '$38.42'])
  expect(costRows(totals, { ...by, zones: 0 }, '$', 'metric')[4]).toEqual(['Zone', '0', '—', '—'])
})

test('the next row in a sentence', () => {
  const row = {
    like: 'rack-row-1',
    boards: 39,
    cents: 95_076,
    neededCents: 95_949,
    hours: 25.4,
    unpriced: 2,
    isPlaceholder: true,
    towers: 96,
    sites: 864,
    isFed: true,
    isDrained: true,
  }
  expect(nextRowWords(row, 'N1', '$')).toBe(
    'One more row like N1, of 96 towers and 864 plant sites, adds $950.76 and 2 things without a price to what is bought, and $959.49 to what is needed. It takes 39 boards and 25 h. Some of the prices are placeholders.',
  )
})

describe('hours', () => {
  test('of the tasks, with supervision and the crew’s factor, for the crew', () => {
    // 100 h; 15 h on top; half as long again is 57.5 h more: 172.5 h, by 4 people of 8 h are 5.39 days.
    const found = { lines: [], taskHours: 100, hours: 172.5, crewDays: 172.5 / 32 }
    expect(labourSum(found, { ...layout.counter, crewFactor: 1.5 }, 480)).toEqual([
      ['All tasks', '100.0 h'],
      ['Supervision and clean-up, 15 %', '15.0 h'],
      ['Crew factor 1.5', '57.5 h'],
      ['All hours', '172.5 h'],
      ['A tower', '0.36 h'],
      ['4 people, 8 h a day', '5.4 days'],
    ])
  })

  test('the crew’s own minutes are kept, and dropped again', () => {
    const own = setNorm(layout, 'tower-hang', 3)
    if (!own.ok) throw new RangeError(own.sentence)
    expect(own.layout.counter.norms).toEqual([{ task: 'tower-hang', minutes: 3 }])
    for (const minutes of [undefined, 1]) {
      const back = setNorm(own.layout, 'tower-hang', minutes)
      expect(back.ok && back.layout.counter.norms).toEqual([])
    }
  })

  test('a task of more minutes than a file holds is refused', () => {
    expect(setNorm(layout, 'tower-hang', 1e9).ok).toBe(false)
  })
})

import { expect, test } from 'vitest'
import { arrange, type Asked } from '../../../../../src/app/drawer/rack/bench/arrange'

/** A rack 3000 mm long and 1500 across and 2000 high, 20 mm of words at the left and 30 at the right, 10 under it: by hand. */
const rack: Asked = {
  along: { besideMm: 20, lengthMm: 3000 },
  across: { besideMm: 30, lengthMm: 1500 },
  scaleFor: (heightMm) => (heightMm - 10) / 2000,
  leastScale: 0,
  isRow: false,
  canStack: true,
}

test.each([
  // Beside each other: (140 - 50) / 4500 = 0.020, as high as (50 - 10) / 2000 = 0.020 allows. Stacked: (25 - 10) / 2000 = 0.0075.
  ['a short drawer', { widthMm: 140, heightMm: 50 }, undefined, 0.02, 'both', false],
  // Stacked: (110 - 10) / 2000 = 0.05, but across (140 - 30) / 1500 = 0.073 and along (140 - 20) / 3000 = 0.04. Beside: 0.020.
  ['a raised drawer', { widthMm: 140, heightMm: 220 }, undefined, 0.04, 'both', true],
  // Both: (86 - 50) / 4500 = 0.008; along alone: (86 - 20) / 3000 = 0.022, more than 0.008 / 0.7.
  ['a narrow one', { widthMm: 86, heightMm: 60 }, undefined, 0.022, 'along', false],
  // Stacked: (30 - 10) / 2000 = 0.01, and (86 - 20) / 3000 = 0.022 would be wide enough.
  ['a narrow one, both asked for', { widthMm: 86, heightMm: 60 }, 'both', 0.01, 'both', true],
  // (86 - 30) / 1500 = 0.0373, but no higher than (60 - 10) / 2000 = 0.025.
  ['a narrow one, across asked for', { widthMm: 86, heightMm: 60 }, 'across', 0.025, 'across', false],
] as const)('%s', (_name, room, views, scale, seen, isStacked) => {
  const arranged = arrange(rack, room, views)
  expect(arranged.scale).toBeCloseTo(scale, 6)
  expect(arranged).toMatchObject({ views: seen, isStacked })
})

// A short drawer has room for both at 0.020; drawn no smaller than 0.021 they would not fit beside each other.
test('both are not drawn unasked where neither may be so small', () => {
  const room = { widthMm: 140, heightMm: 50 }
  expect(arrange({ ...rack, leastScale: 0.021 }, room, undefined).views).toBe('along')
  expect(arrange({ ...rack, leastScale: 0.021 }, room, 'both').views).toBe('both')
})

// Ten racks: (140 - 50) / 31500 = 0.0029 would show them all, a fifth as high as there is room; so it scrolls at 0.6 * 0.020.
test('a row that is too long for its room scrolls along and stays as high as six tenths of its room', () => {
  const row = { ...rack, along: { besideMm: 20, lengthMm: 30_000 }, isRow: true }
  expect(arrange(row, { widthMm: 140, heightMm: 50 }, 'both').scale).toBeCloseTo(0.012, 6)
})

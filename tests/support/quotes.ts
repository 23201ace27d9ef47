import type { Layout } from '../../src/layout/schema'

/** A yard's quote for a length of 2x4 lumber, whole cents; undefined where it was asked and did not say. */
export const lumberQuote = (key: string, cents: number | undefined): Layout['counter']['quotes'][number] => ({
  key,
  name: '2x4 lumber',
  spec: '',
  group: 'lumber',
  unit: 'board',
  pack: 1,
  ...(cents === undefined ? {} : { cents }),
  breaks: [],
  supplier: 'Yard',
  aisle: '',
  leadDays: 0,
  waste: { kind: 'cut' },
  isWholePack: true,
  isTaxed: true,
  isReturnable: true,
  date: '2026-11-20',
  note: '',
})

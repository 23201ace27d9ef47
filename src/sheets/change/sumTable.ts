import type { SumChange } from '../../evaluate/compare/sums'
import { thousands } from '../../units/thousands'
import { counted, said, type Table } from '../../model/table'
import { signed, type Told } from './told'

const TITLES: Readonly<Record<SumChange['key'], string>> = {
  towers: 'Towers',
  sites: 'Plant sites',
  neededCents: 'Material that is built in',
  boughtCents: 'Material in whole packs, with spares, before tax',
  unpriced: 'Things without a price',
  hours: 'Hours of work',
}

const sumSaid = (key: SumChange['key'], value: number, { money }: Told): string => {
  if (key === 'neededCents' || key === 'boughtCents') return money(value)
  return key === 'hours' ? thousands(value.toFixed(1)) : thousands(value)
}

/** What the whole bay comes to, where that differs: towers, money, hours. */
export const sumTable = (told: Told): Table => ({
  id: 'sums',
  title: 'Towers, money and hours',
  columns: [
    { key: 'what', title: 'What', unit: 'text', isMain: true },
    { key: 'before', title: 'Was', unit: 'count' },
    { key: 'after', title: 'Is', unit: 'count' },
    { key: 'more', title: 'More or less', unit: 'count' },
  ],
  rows: told.difference.sums.map(({ key, before, after }) => ({
    key,
    cells: [
      said(TITLES[key]),
      counted(before, sumSaid(key, before, told)),
      counted(after, sumSaid(key, after, told)),
      counted(after - before, signed(after - before, sumSaid(key, Math.abs(after - before), told))),
    ],
  })),
})

import type { SumChange } from '../../evaluate/compare/sums'
import { thousands } from '../../units/thousands'
import { counted, said, type Row, type Table } from '../../model/table'
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
  rows: told.difference.sums.flatMap(({ key, before, after }): readonly Row[] => {
    const [was, is] = [sumSaid(key, before, told), sumSaid(key, after, told)]
    // What reads alike is no change to who reads it.
    if (was === is) return []
    const more = after - before
    return [
      {
        key,
        cells: [
          said(TITLES[key]),
          counted(before, was),
          counted(after, is),
          counted(more, signed(more, sumSaid(key, Math.abs(more), told))),
        ],
      },
    ]
  }),
})

import type { CutList } from '../model/cutList'
import { atDrill } from '../units/precision'
import { thousands } from '../units/thousands'
import { placesOf, type Hazard, type Reading, type Walk } from './hazard'
import { sheetWords } from './sheetWords'

/** Coils are cut with a knife or a tube cutter; what is in this list goes under a blade. */
const isSawn = ({ stock }: CutList): boolean => /^(?:lumber|conduit|gutter|drain)/.test(stock)

const piecesOf = ({ lines }: CutList): number => lines.reduce((sum, { count }) => sum + count, 0)

const sawHazard = ({ plan }: Walk): Hazard[] => {
  const lists = plan.cuts.filter((list) => isSawn(list) && piecesOf(list) > 0)
  if (lists.length === 0) return []
  return [
    {
      key: 'saw',
      title: 'Saw',
      words: 'Eyes and ears covered, no gloves near a blade, short pieces clamped. File cut edges of metal.',
      places: placesOf(
        lists.map((list) => ({ name: list.title, says: `${thousands(piecesOf(list))} pieces` })),
      ),
      sheets: ['saw-list', 'gutters', 'safety'],
      stand: 'saw',
      source: 'Common practice, no source',
      spots: [],
    },
  ]
}

const HOLES: Readonly<Record<string, string>> = {
  'rail-hole': 'Rail holes',
  'sleeve-hole': 'Sleeve holes',
  'drain-hole': 'Drain holes',
}

const bitsOf = ({ plan, units }: Walk): readonly string[] => {
  const write = sheetWords(plan, units, atDrill)
  const bits = new Set(plan.bay.built.flatMap(({ rack }) => rack?.drilledFor.map(({ bitMm }) => bitMm) ?? []))
  return [...bits].sort((a, b) => a - b).map((mm) => `${write.onTape(mm)} bit`)
}

const drillHazard = (walk: Walk): Hazard[] => {
  const holes = walk.plan.counts.filter(({ item, count }) => item in HOLES && count > 0)
  if (holes.length === 0) return []
  const bits = bitsOf(walk)
  const readings: Reading[] = holes.map(({ item, title, count }) => ({
    name: HOLES[item] ?? title,
    says: thousands(count),
  }))
  return [
    {
      key: 'drill',
      title: 'Drill',
      words:
        'A big bit grabs as it breaks through: clamp the piece, back it with scrap, no gloves, eyes covered.',
      places: bits.length === 0 ? placesOf(readings) : [...placesOf(readings), bits.join(', ')],
      sheets: ['drill-stick', 'safety'],
      stand: 'saw',
      source: 'Common practice, no source',
      spots: [],
    },
  ]
}

/** What can hurt whoever saws and drills. */
export const sawHazardsOf = (walk: Walk): readonly Hazard[] => [...sawHazard(walk), ...drillHazard(walk)]

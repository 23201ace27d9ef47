import type { Built } from '../model/built'
import type { RackFacts } from '../model/rackFacts'
import { inches, MM_PER_INCH } from '../units/length'
import { thousands } from '../units/thousands'
import { writeDecimal } from '../units/writeDecimal'
import { namesTogether, type Hazard, type Walk } from './hazard'
import { atRows } from './hazardRows'
import { massWords } from './massWords'
import { wetTowerOf } from './wetTower'

/** A row with what it says of itself, and how much the lowest of its floor lies under its datum. */
interface Row {
  readonly built: Built
  readonly rack: RackFacts
  readonly shimMm: number
}

/** Above this a grown person works from a step. Common practice, no source. */
const REACH_MM = inches(66)

/** Between these heights a bar end meets faces and heads of those who walk by. Common practice, no source. */
const FACE_MM = { from: inches(48), to: inches(78) }

const rowsOf = ({ plan: { bay } }: Walk): readonly Row[] =>
  bay.built.flatMap((built) => {
    if (!built.rack) return []
    const feet = bay.levels.feet.get(built.part) ?? []
    const shimMm = feet.reduce((most, foot) => Math.max(most, foot.shimMm), 0)
    return [{ built, rack: built.rack, shimMm }]
  })

/** `one and a half times`, `2 times`. */
const timesWords = (times: number): string =>
  times === 1.5 ? 'one and a half times' : `${writeDecimal(times, 0, 2)} times`

/** What a grower hangs from a house carries its weather too, and only its maker knows what is left of it. */
const houseWords = ({ write }: Walk, rows: readonly Row[]): string => {
  const hung = rows
    .filter(({ rack }) => rack.carriedBy === 'house')
    .map(({ built }) => write.name(built.part))
  return hung.length === 0
    ? 'Nothing hangs from the house.'
    : `From the house hang only ${namesTogether(hung)}, as its maker allows in writing, load test included.`
}

const loads = (walk: Walk, rows: readonly Row[]): Hazard[] => {
  const { units, write, plan } = walk
  const { settings } = plan.layout
  const heaviestOf = (rack: RackFacts): number => rack.lines * wetTowerOf(rack, settings)
  const [first, ...others] = rows.map(({ rack }) => rack)
  const bar = first && others.reduce((a, b) => (heaviestOf(b) > heaviestOf(a) ? b : a), first)
  const hang = bar
    ? `: ${massWords(settings.proofTimes * heaviestOf(bar), units)} on a bar of ${bar.lines}`
    : ''
  return atRows(
    walk,
    rows.filter(({ rack }) => rack.towers > 0),
    ({ rack }) => {
      const towerKg = wetTowerOf(rack, settings)
      return `${thousands(rack.towers)} towers, ${massWords(rack.towers * towerKg, units)} at ${write.mass(towerKg)} each`
    },
    {
      key: 'overhead-loads',
      title: 'Loads overhead',
      words: `Hang ${timesWords(settings.proofTimes)} its towers on the first rack for 24 hours before people go under it${hang}. ${houseWords(walk, rows)}`,
      sheets: ['assembly', 'safety'],
      source: 'Common practice, no source',
    },
  )
}

const bars = ({ built }: Row): number => built.sticks.filter(({ mark }) => mark === 'HB').length

/** A height over the floor for whoever fetches a step: up to the whole inch or 25 mm, since floors are no closer. */
export const heightWords = (mm: number, { units, write }: Walk): string => {
  const step = units === 'metric' ? 25 : MM_PER_INCH
  return write.onTape(Math.ceil(mm / step) * step)
}

/** Leaning 4 up for 1 out: 29 CFR 1926.1053(b)(5)(i). The rest is common practice, no source. */
const ladders = (walk: Walk, rows: readonly Row[]): Hazard[] => {
  const { onTape } = walk.write
  return atRows(
    walk,
    rows.filter(({ rack, shimMm }) => rack.barTopMm + shimMm > REACH_MM),
    ({ rack, shimMm }) =>
      `bars ${heightWords(rack.barTopMm + shimMm, walk)}, laterals ${heightWords(rack.lateralMm + shimMm, walk)}`,
    {
      key: 'ladders',
      title: 'Ladders and steps',
      words: `Above ${onTape(REACH_MM)} work from a step platform on firm floor, never from a rack, a runner or a pit lid. A leaning ladder stands 4 up for 1 out.`,
      sheets: ['assembly', 'pipes', 'tubes', 'start-up', 'round', 'safety'],
      source: '29 CFR 1926.1053(b)(5)',
    },
  )
}

const barEnds = (walk: Walk, rows: readonly Row[]): Hazard[] =>
  atRows(
    walk,
    rows.filter((row) => {
      const heightMm = row.rack.barTopMm + row.shimMm
      return bars(row) > 0 && heightMm >= FACE_MM.from && heightMm <= FACE_MM.to
    }),
    (row) => `ends up to ${heightWords(row.rack.barTopMm + row.shimMm, walk)}`,
    {
      key: 'bar-ends',
      title: 'Bar ends at face height',
      words: 'Cap each end as its bar goes in.',
      sheets: ['assembly', 'safety'],
      source: 'Common practice, no source',
    },
  )

/** What can hurt whoever puts racks up and works under them. */
export const rackHazardsOf = (walk: Walk): readonly Hazard[] => {
  const rows = rowsOf(walk)
  return [loads, ladders, barEnds].flatMap((hazard) => hazard(walk, rows))
}

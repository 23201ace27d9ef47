import { boxOf, middle } from '../geometry/box'
import type { Built } from '../model/built'
import type { RackFacts } from '../model/rackFacts'
import { inches, MM_PER_INCH } from '../units/length'
import { pounds } from '../units/mass'
import { thousands } from '../units/thousands'
import { placesOf, type Hazard, type Walk } from './hazard'
import { massWords } from './massWords'

/** A row with what it says of itself, and how much the lowest of its floor lies under its datum. */
interface Row {
  readonly built: Built
  readonly rack: RackFacts
  readonly shimMm: number
}

/** Assumed of a tower that is planted and flooded until one is weighed. Common practice, no source. */
export const WET_TOWER_KG = pounds(25)
/** The first rack is tried with so much more than it will carry. Common practice, no source. */
export const PROOF = 1.5

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

type Said = Pick<Hazard, 'key' | 'title' | 'words' | 'sheets' | 'source'>

const spotOf = ({ built }: Row, { write }: Walk) => ({
  name: write.name(built.part),
  at: middle(boxOf(built.bodies.flatMap(({ outline }) => outline))),
})

const atRows = (walk: Walk, rows: readonly Row[], says: (row: Row) => string, said: Said): Hazard[] =>
  rows.length === 0
    ? []
    : [
        {
          ...said,
          places: placesOf(rows.map((row) => ({ name: walk.write.name(row.built.part), says: says(row) }))),
          stand: 'racks',
          spots: rows.map((row) => spotOf(row, walk)),
        },
      ]

const loads = (walk: Walk, rows: readonly Row[]): Hazard[] => {
  const { units } = walk
  const bar = Math.max(0, ...rows.map(({ rack }) => rack.lines))
  return atRows(
    walk,
    rows.filter(({ rack }) => rack.towers > 0),
    ({ rack }) =>
      `${thousands(rack.towers)} towers, ${massWords(rack.towers * WET_TOWER_KG, units)} at ${massWords(WET_TOWER_KG, units)} each`,
    {
      key: 'overhead-loads',
      title: 'Loads overhead',
      words: `Hang one and a half times its towers on the first rack for 24 hours before people go under it: ${massWords(PROOF * bar * WET_TOWER_KG, units)} on a bar of ${bar}. Nothing hangs from the house.`,
      sheets: ['assembly', 'safety'],
      source: 'Common practice, no source',
    },
  )
}

const bars = ({ built }: Row): number => built.sticks.filter(({ mark }) => mark === 'HB').length

const conduitRows = (rows: readonly Row[]): readonly Row[] =>
  rows.filter(({ built }) => built.sticks.some(({ stock }) => stock.startsWith('conduit')))

/** Steel Tube Institute, May 2016: conduit is neither tested nor listed for other uses, and its standards set no least strength. */
const conduit = (walk: Walk, rows: readonly Row[]): Hazard[] =>
  atRows(walk, conduitRows(rows), (row) => `${thousands(bars(row))} bars and their rails`, {
    key: 'conduit',
    title: 'Conduit as a beam',
    words: 'It is not rated for this; the load test of the first rack says that it bears. Never climb on it.',
    sheets: ['assembly', 'safety'],
    source: 'Steel Tube Institute, May 2016, on conduit',
  })

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
      words: 'Cap each end as soon as the bar is in.',
      sheets: ['assembly', 'safety'],
      source: 'Common practice, no source',
    },
  )

/** What can hurt whoever puts racks up and works under them. */
export const rackHazardsOf = (walk: Walk): readonly Hazard[] => {
  const rows = rowsOf(walk)
  return [loads, conduit, ladders, barEnds].flatMap((hazard) => hazard(walk, rows))
}

import { polyOf } from '../../catalogue/pipe'
import { boxOf, grown, type Box } from '../../geometry/box'
import type { Point } from '../../geometry/point'
import type { Evaluation } from '../../evaluate/evaluation'
import type { Built } from '../../model/built'
import type { PartId } from '../../model/ids'
import { rememberEach } from '../../model/remember'
import type { MainWater, RowWater } from '../../model/water'
import { toM3PerS } from '../../units/flow'
import { MM_PER_M } from '../../units/length'

/** Stretches of pipe with the velocity in each, for a painter: flat. */
export interface Legs {
  readonly part: PartId
  readonly as: 'main' | 'row'
  /** x0, y0, x1, y1 of each, mm of floor. */
  readonly lines: Float64Array
  /** m/s, never less than 0. */
  readonly velocityMS: Float64Array
  readonly box: Box
}

const legsOf = (part: PartId, as: Legs['as'], lines: Float64Array, velocityMS: Float64Array): Legs => {
  const ends: Point[] = []
  for (let i = 0; i + 1 < lines.length; i += 2) ends.push({ x: lines[i] ?? 0, y: lines[i + 1] ?? 0 })
  return { part, as, lines, velocityMS, box: grown(boxOf(ends), 1) }
}

const mainLegs = rememberEach<MainWater, null, Legs>(({ part, points, legs }) => {
  const lines = new Float64Array(legs.length * 4)
  legs.forEach((_, index) => {
    const [from, to] = points.slice(index, index + 2)
    if (from && to) lines.set([from.at.x, from.at.y, to.at.x, to.at.y], index * 4)
  })
  return legsOf(
    part,
    'main',
    lines,
    Float64Array.from(legs, ({ velocityMS }) => Math.abs(velocityMS)),
  )
})

/** Mean velocity in a round bore, m/s: flow over area. */
export const velocityIn = (flowLph: number, boreMm: number): number =>
  toM3PerS(Math.abs(flowLph)) / (Math.PI * (boreMm / MM_PER_M / 2) ** 2)

/** Riser pipe, header and laterals of a row; undefined where it has none. */
const rowLegs = rememberEach<RowWater, Built, Legs | undefined>(({ part, pipeLph }, { feed }) => {
  if (!feed || feed.pipes.length === 0) return undefined
  const lines = new Float64Array(feed.pipes.length * 4)
  const velocityMS = new Float64Array(feed.pipes.length)
  feed.pipes.forEach(({ from, to, stock }, index) => {
    const [a, b] = [feed.joints[from], feed.joints[to]]
    if (a && b) lines.set([a.x, a.y, b.x, b.y], index * 4)
    velocityMS[index] = velocityIn(pipeLph[index] ?? 0, polyOf(stock).idMm)
  })
  return legsOf(part, 'row', lines, velocityMS)
})

/** All pipe that the solved network runs through: the rows' own, and the mains over them. */
export const solvedLegs = ({ bay }: Evaluation): readonly Legs[] => [
  ...bay.built.flatMap((built) => {
    const row = bay.water.rows.get(built.part)
    return (row && rowLegs(row, built)) ?? []
  }),
  ...[...bay.water.mains.values()].map((main) => mainLegs(main, null)),
]

/** The fastest that water runs anywhere in mains and rows, m/s; 0 where none does. */
export const fastestMS = ({ bay }: Evaluation): number =>
  Math.max(0, ...[...bay.water.mains.values(), ...bay.water.rows.values()].map((one) => one.fastestMS))

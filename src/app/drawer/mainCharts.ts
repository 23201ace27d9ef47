import type { PartId } from '../../model/ids'
import type { MainWater } from '../../model/water'
import { feet, type Units } from '../../units/length'
import { feetPerSecond } from '../../units/velocity'
import { type Writer, writerFor } from '../../units/writer'
import type { ChartData, ChartPoint } from './chart/chartData'
import { alongFloor, type Measure, pipeVelocity, pumpHead, sightTube } from './chart/measures'

/** Water in pipes runs no faster, or it hammers where a valve shuts. Common practice, no source. */
const FASTEST_MS = feetPerSecond(5)

/** A taller column of water is read in feet or metres, for no sight tube is so long. */
const TALLEST_TUBE_MM = feet(4)

const headMeasure = (headsMm: readonly number[], units: Units): Measure =>
  headsMm.some((head) => head > TALLEST_TUBE_MM) ? pumpHead(units) : sightTube(units)

type NameOf = (part: PartId) => string

const tapsOf = ({ points }: MainWater, name: NameOf) =>
  points.flatMap(({ alongMm, meets }) => (meets === undefined ? [] : [{ x: alongMm, name: name(meets) }]))

/** `N2, 22' 4" along`, or the place alone where nothing joins. */
const placeWords = (alongMm: number, meets: PartId | undefined, name: NameOf, { length }: Writer): string =>
  meets === undefined ? `${length(alongMm)} along` : `${name(meets)}, ${length(alongMm)} along`

/** Head along a main over the highest tube ends, with what joins it named. */
export const mainHeadChart = (main: MainWater, endsMm: number, name: NameOf, units: Units): ChartData => {
  const writer = writerFor(units)
  const points = main.points
    .map(({ alongMm, headMm, meets }) => ({ x: alongMm, y: headMm - endsMm, meets }))
    .filter(({ y }) => Number.isFinite(y))
  const heads = points.map(({ y }) => y)
  const measure = headMeasure(heads, units)
  return {
    title: `Head along ${name(main.part)}`,
    says: `From ${measure.write(Math.max(...heads))} down to ${measure.write(Math.min(...heads))} over the highest tube ends.`,
    x: { name: 'Along the main', measure: alongFloor(units), holds: [0] },
    y: { name: 'Over the highest tube ends', measure, holds: [0] },
    lines: [
      {
        name: 'Head',
        dash: 'continuous',
        ink: 'water',
        points,
        marks: { shape: 'ring', points: points.filter(({ meets }) => meets !== undefined) },
      },
    ],
    posts: tapsOf(main, name),
    stops: points.map(({ x, y, meets }) => ({
      x,
      words: `${placeWords(x, meets, name, writer)}: ${measure.write(y)} over the highest tube ends`,
    })),
    table: {
      columns: ['Joins', 'Along', 'Head'],
      rows: points.map(({ x, y, meets }) => [
        meets === undefined ? 'bend or end' : name(meets),
        writer.length(x),
        measure.write(y),
      ]),
    },
  }
}

interface Leg {
  readonly from: number
  readonly to: number
  readonly flowLph: number
  readonly velocityMS: number
}

/** Legs of some length; two things that join at one place have none between them. */
const legsOf = ({ points, legs }: MainWater): readonly Leg[] =>
  legs
    .map(({ flowLph, velocityMS }, i) => ({
      from: points[i]?.alongMm ?? 0,
      to: points[i + 1]?.alongMm ?? 0,
      flowLph: Math.abs(flowLph),
      velocityMS,
    }))
    .filter(({ from, to }) => to > from)

/** How fast water runs in each leg of a main. */
export const mainVelocityChart = (main: MainWater, name: NameOf, units: Units): ChartData => {
  const { length, velocity, flowTotal } = writerFor(units)
  const legs = legsOf(main)
  return {
    title: `Velocity in ${name(main.part)}`,
    says: `Up to ${velocity(main.fastestMS)}; over ${velocity(FASTEST_MS)} it hammers where a valve shuts.`,
    x: { name: 'Along the main', measure: alongFloor(units), holds: [0] },
    y: { name: 'Velocity', measure: pipeVelocity(units), holds: [0] },
    lines: [
      {
        name: 'Velocity',
        dash: 'continuous',
        ink: 'water',
        points: legs.flatMap(({ from, to, velocityMS: y }): ChartPoint[] => [
          { x: from, y },
          { x: to, y },
        ]),
      },
    ],
    levels: [{ name: `no more than ${velocity(FASTEST_MS)}`, y: FASTEST_MS, dash: 'dashed', side: 'below' }],
    stops: legs.map(({ from, to, velocityMS, flowLph }) => ({
      x: (from + to) / 2,
      words: `${length(from)} to ${length(to)} along: ${velocity(velocityMS)}, ${flowTotal(flowLph)}`,
    })),
    table: {
      columns: ['From', 'To', 'Flow', 'Velocity'],
      rows: legs.map(({ from, to, velocityMS, flowLph }) => [
        length(from),
        length(to),
        flowTotal(flowLph),
        velocity(velocityMS),
      ]),
    },
  }
}

import type { RailLine, RailSpan } from '../../../../model/strength'
import { niceTicks, type Ticks } from '../../chart/niceTicks'
import type { PlotSize } from '../../chart/plot'
import { type NamedSpan, namedSpans } from './railWords'

/** Heights of what is drawn, px from the top. */
export const levels = {
  used: 16,
  arrows: 28,
  rail: 58,
  feet: 104,
  reactions: 120,
  moment: 172,
  foot: 226,
} as const

const LEFT_PX = 14
const RIGHT_PX = 14

/** No sag is drawn deeper, no moment taller, px. */
const DEEPEST_PX = 26
const TALLEST_PX = 34

/** Magnifications that a person can reckon with. */
const TIMES = [1, 2, 5, 10, 20, 50, 100, 200, 500]

export interface RailPicture {
  readonly xOf: (u: number) => number
  readonly pxPerMm: number
  /** How many times the sag is drawn. */
  readonly times: number
  /** The rail as it lies, in runs: broken where it would not spring back. */
  readonly sag: readonly string[]
  /** Under the axis where the rail sags: on the side that is stretched. */
  readonly moment: string
  readonly mostMoment: { readonly x: number; readonly y: number; readonly nmm: number } | undefined
  readonly leastMoment: { readonly x: number; readonly y: number; readonly nmm: number } | undefined
  readonly spans: readonly (NamedSpan & { readonly x: number; readonly widthPx: number })[]
}

const endsOf = ({ sticks, spans }: RailLine): readonly [number, number] => [
  Math.min(...sticks.map(({ fromU }) => fromU), ...spans.map(({ fromU }) => fromU)),
  Math.max(...sticks.map(({ toU }) => toU), ...spans.map(({ toU }) => toU)),
]

interface At {
  readonly u: number
  readonly sagMm: number
  readonly nmm: number
}

const curvePoints = ({ curve }: RailLine): readonly At[] =>
  curve.u.map((u, i) => ({ u, sagMm: curve.sagMm[i] ?? 0, nmm: curve.momentNmm[i] ?? 0 }))

const isWithin = (u: number, bent: readonly RailSpan[]): boolean =>
  bent.some(({ fromU, toU }) => u > fromU && u < toU)

/** Runs of what is not bent. */
const runsOf = (points: readonly At[], bent: readonly RailSpan[]): readonly (readonly At[])[] => {
  const runs: At[][] = [[]]
  for (const point of points) {
    if (isWithin(point.u, bent)) runs.push([])
    else runs.at(-1)?.push(point)
  }
  return runs.filter((run) => (run.at(-1)?.u ?? 0) > (run[0]?.u ?? 0))
}

const pathOf = (points: readonly (readonly [number, number])[]): string =>
  points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`).join('')

/** Ticks along the row, in the reader's own unit. */
export const alongTicks = (line: RailLine, toReader: (mm: number) => number, widthPx: number): Ticks =>
  niceTicks(...(endsOf(line).map(toReader) as [number, number]), Math.max(2, widthPx / 90)) // two ends stay two

/** What is bent, and the overhangs beside it, which go with it. */
const withOverhangs = ({ spans }: RailLine, bent: readonly RailSpan[]): readonly RailSpan[] => [
  ...bent,
  ...spans.filter(
    ({ isOverhang, fromU, toU }) =>
      isOverhang && bent.some((span) => span.toU === fromU || span.fromU === toU),
  ),
]

/** A rail drawn along the row at the width there is: its sag so many times, and its moment, with everything hung. */
export const railPicture = (line: RailLine, bent: readonly RailSpan[], { width }: PlotSize): RailPicture => {
  const [fromU, toU] = endsOf(line)
  const pxPerMm = Math.max(1, width - LEFT_PX - RIGHT_PX) / Math.max(1, toU - fromU)
  const xOf = (u: number): number => LEFT_PX + (u - fromU) * pxPerMm
  const points = curvePoints(line)
  const runs = runsOf(points, withOverhangs(line, bent))
  const deepest = Math.max(1e-9, ...runs.flat().map(({ sagMm }) => Math.abs(sagMm)))
  const times = TIMES.findLast((each) => deepest * pxPerMm * each <= DEEPEST_PX) ?? 1
  const tallest = Math.max(1e-9, ...points.map(({ nmm }) => Math.abs(nmm)))
  const momentY = (nmm: number): number => levels.moment + (nmm / tallest) * TALLEST_PX
  const marked = (pick: (a: At, b: At) => boolean): RailPicture['mostMoment'] => {
    const [first, ...rest] = points
    const top = first && rest.reduce((held, next) => (pick(next, held) ? next : held), first)
    return top && { x: xOf(top.u), y: momentY(top.nmm), nmm: top.nmm }
  }
  const ends = [...points.slice(0, 1), ...points.slice(-1)]
  return {
    xOf,
    pxPerMm,
    times,
    sag: runs.map((run) =>
      pathOf(run.map(({ u, sagMm }) => [xOf(u), levels.rail + sagMm * pxPerMm * times])),
    ),
    moment: pathOf([
      ...ends.slice(0, 1).map(({ u }) => [xOf(u), levels.moment] as const),
      ...points.map(({ u, nmm }) => [xOf(u), momentY(nmm)] as const),
      ...ends.slice(1).map(({ u }) => [xOf(u), levels.moment] as const),
    ]),
    mostMoment: marked((a, b) => a.nmm > b.nmm),
    leastMoment: marked((a, b) => a.nmm < b.nmm),
    spans: namedSpans(line).map((named) => ({
      ...named,
      x: xOf((named.span.fromU + named.span.toU) / 2),
      widthPx: (named.span.toU - named.span.fromU) * pxPerMm,
    })),
  }
}

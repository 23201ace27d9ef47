import type { Bay } from '../../checks/context'
import { drainPipeOf } from '../../catalogue/pipe'
import type { Point } from '../../geometry/point'
import { INLET_OVER_OVERFLOW_MM } from '../../model/pitFacts'
import { inches } from '../../units/length'
import { dropOver } from '../../units/slope'
import { layLine, meanOf, sumOf, type LaidLine, type PipeAtFall } from './collectorLine'
import { dugL, type LowEnd, type PitLine } from './pitLines'

/** What takes the place of one line of pits. */
export interface Laid {
  readonly lines: readonly LaidLine[]
  readonly pitDepthMm: number
  /** Trenches and pit, and all pipe, that of the drains and their branches with it. */
  readonly digL: number
  readonly pipeMm: number
}

/** Places along the axis, in the direction of the water. */
interface Way {
  readonly axis: 'x' | 'y'
  /** 1 where the water runs toward greater x or y. */
  readonly sign: 1 | -1
}

const onward = ({ axis, sign }: Way, p: Point): number => p[axis] * sign

const placeOf = ({ axis, sign }: Way, onwardMm: number, acrossMm: number): Point =>
  axis === 'x' ? { x: onwardMm * sign, y: acrossMm } : { x: acrossMm, y: onwardMm * sign }

const acrossOf = ({ axis }: Way, p: Point): number => (axis === 'x' ? p.y : p.x)

/** Where the water comes to the wall of the last pit, in the direction of the water. */
const lastWall = (way: Way, { pits }: PitLine): number => {
  const walls = pits.map(({ box: { x0, y0, x1, y1 } }) => {
    const a = onward(way, { x: x0, y: y0 })
    const b = onward(way, { x: x1, y: y1 })
    return Math.min(a, b)
  })
  return Math.max(...walls)
}

/** The one pit at the low end of its lines: as much floor as the pits that it stands for, as much depth as the deepest. */
const pitFor = ({ pits }: PitLine, lines: readonly LaidLine[], bay: Bay) => {
  const lowest = lines.reduce((low, line) => (line.lowInvertMm < low.lowInvertMm ? line : low))
  const bottomMm =
    lowest.lowInvertMm -
    INLET_OVER_OVERFLOW_MM -
    Math.max(...pits.map(({ underOverflowMm }) => underOverflowMm))
  const depthMm = Math.max(bay.site.groundAt(lowest.low.x, lowest.low.y) - bottomMm, 0)
  return { depthMm, digL: dugL(depthMm * sumOf(pits.map(({ floorMm2 }) => floorMm2))) }
}

/** Both ways round are laid, and the one whose pit is shallower is kept. */
const shallower = (lay: (sign: 1 | -1) => Laid): Laid => {
  const [there, back] = [lay(1), lay(-1)]
  return there.pitDepthMm <= back.pitDepthMm ? there : back
}

/** How far an end's branch runs to the collector, and how high the collector may stand where it comes in. */
const branchOf = ({ run, facts }: LowEnd, way: Way, acrossMm: number, boreMm: number) => {
  const lengthMm = Math.abs(acrossOf(way, run.low.at) - acrossMm)
  const invertMm = run.low.invertMm - dropOver(lengthMm, Math.max(run.slopeMmPerM, 0))
  // Crowns level: the bay's own rule for a branch.
  const mostInvertMm = invertMm - Math.max(0, boreMm - (run.odMm - 2 * run.wallMm))
  return { lengthMm, mostInvertMm, digL: dugL(lengthMm * Math.max(run.low.digMm, 0) * facts.trenchMm) }
}

/** One collector through the middles of a line of pits, past the low ends of their drains, to one pit. */
export const collected = (line: PitLine, size: PipeAtFall, bay: Bay): Laid =>
  shallower((sign) => {
    const way: Way = { axis: line.axis, sign }
    const ends = line.pits.flatMap((pit) => pit.ends)
    const acrossMm = meanOf(line.pits.map(({ middle }) => acrossOf(way, middle)))
    const places = ends.map(({ run }) => onward(way, run.low.at))
    const startMm = Math.min(...places)
    const endMm = Math.max(lastWall(way, line), startMm)
    const boreMm = drainPipeOf(size.pipe).idMm
    const branches = ends.map((end) => branchOf(end, way, acrossMm, boreMm))
    const lowered = branches.map(({ mostInvertMm }, index) => ({
      alongMm: Math.min(places[index] ?? endMm, endMm) - startMm,
      mostInvertMm,
    }))
    const collector = layLine({
      high: placeOf(way, startMm, acrossMm),
      low: placeOf(way, endMm, acrossMm),
      ends,
      lowered,
      size,
      bay,
    })
    const pit = pitFor(line, [collector], bay)
    return {
      lines: [collector],
      pitDepthMm: pit.depthMm,
      digL:
        collector.digL +
        pit.digL +
        sumOf(ends.map(({ trenchL }) => trenchL)) +
        sumOf(branches.map(({ digL }) => digL)),
      pipeMm:
        collector.lengthMm +
        sumOf(ends.map(({ run }) => run.lengthMm)) +
        sumOf(branches.map(({ lengthMm }) => lengthMm)),
    }
  })

/** Drains closer than this to one line can be made one, mm: a pipe is laid to its string by less than its own width. */
const ONE_LINE_MM = inches(2)

/** The way that all drains run along an axis; undefined where one runs across it or against the others. */
const wayOf = (ends: readonly LowEnd[], axis: 'x' | 'y'): Way | undefined => {
  const onwardMm = ends[0] ? ends[0].run.low.at[axis] - ends[0].run.high.at[axis] : 0
  const way: Way = { axis, sign: onwardMm < 0 ? -1 : 1 }
  const runsSo = ({ run: { high, low } }: LowEnd): boolean =>
    Math.abs(acrossOf(way, high.at) - acrossOf(way, low.at)) <= ONE_LINE_MM &&
    onward(way, low.at) > onward(way, high.at)
  return ends.every(runsSo) ? way : undefined
}

/** Drains along an axis in the lines in which they lie. */
const inLines = (ends: readonly LowEnd[], way: Way): readonly (readonly LowEnd[])[] => {
  const lines: LowEnd[][] = []
  let lastMm = -Infinity
  for (const end of ends.toSorted((a, b) => acrossOf(way, a.run.low.at) - acrossOf(way, b.run.low.at))) {
    const at = acrossOf(way, end.run.low.at)
    const line = lines.at(-1)
    if (line && at - lastMm <= ONE_LINE_MM) line.push(end)
    else lines.push([end])
    lastMm = at
  }
  return lines
}

/** The drains of a line of pits made one line where they lie in one and run one way, to one pit at the end; undefined elsewhere. */
export const carriedOn = (line: PitLine, size: PipeAtFall, bay: Bay): Laid | undefined => {
  const all = line.pits.flatMap((pit) => pit.ends)
  const way = wayOf(all, line.axis)
  if (!way) return undefined
  const lines = inLines(all, way).map((ends) => {
    const acrossMm = meanOf(ends.map(({ run }) => acrossOf(way, run.low.at)))
    const startMm = Math.min(...ends.map(({ run }) => onward(way, run.high.at)))
    const endMm = Math.max(lastWall(way, line), startMm)
    const [high, low] = [placeOf(way, startMm, acrossMm), placeOf(way, endMm, acrossMm)]
    return layLine({ high, low, ends, lowered: [], size, bay })
  })
  const pit = pitFor(line, lines, bay)
  return {
    lines,
    pitDepthMm: pit.depthMm,
    digL: pit.digL + sumOf(lines.map(({ digL }) => digL)),
    pipeMm: sumOf(lines.map(({ lengthMm }) => lengthMm)),
  }
}

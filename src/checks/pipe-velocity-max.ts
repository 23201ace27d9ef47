import { polyOf } from '../catalogue/pipe'
import { boxOf, middle } from '../geometry/box'
import type { Point } from '../geometry/point'
import type { FeedPipe } from '../model/feedFacts'
import type { Finding, Mend } from '../model/finding'
import type { PartId } from '../model/ids'
import type { MainWater, PumpWater } from '../model/water'
import { velocityMS } from '../solvers/water/friction'
import { toM3PerS } from '../units/flow'
import { toHeadM } from '../units/head'
import { feetPerSecond } from '../units/velocity'
import type { Bay, BayRule } from './context'
import { flowTotalOf, found, lengthOf, term, velocityOf } from './found'
import { biggerLaterals, biggerPipes } from './pipeSizes'
import { type WateredRow, wateredRows } from './rowHeads'
import { isOverSupplied, systemOf } from './waterSystems'
import { isUnbalanced } from './zoneMeans'

const RULE = 'pipe-velocity-max'

const MOST_MS = feetPerSecond(5)

/** A bigger pipe lets more through: it must promise less than the limit at the flow of now. */
const PROMISED_MS = feetPerSecond(4.5)

/** Where less than this share of what runs is wanted, a bigger pipe is no mend. */
const LEAST_WANTED = 0.8

/** Velocities nearer than this are one: far below what anybody could measure. */
const CLOSE_MS = 1e-6

/** Pipe in which water runs too fast. */
interface Fast {
  readonly part: PartId
  readonly at: Point
  readonly what: 'main' | 'discharge' | FeedPipe['role']
  readonly stock: string
  readonly flowLph: number
  readonly velocityMS: number
  readonly field: string
  /** Flow wanted of it over what it carries. */
  readonly wantedTimes: number
}

const speedIn = (stock: string, flowLph: number): number =>
  velocityMS(toM3PerS(Math.abs(flowLph)), toHeadM(polyOf(stock).idMm))

const isFast = (speedMS: number): boolean => speedMS > MOST_MS + CLOSE_MS

/** A bigger pipe, where it is the pipe and not too much water that makes the speed: else it would only let more through. */
const mendFor = ({ part, what, stock, flowLph, field, wantedTimes }: Fast): Mend | undefined => {
  if (wantedTimes < LEAST_WANTED) return undefined
  const sizes = what === 'lateral' ? biggerLaterals(stock) : biggerPipes(stock)
  const size = sizes.find(({ key }) => speedIn(key, flowLph * Math.max(1, wantedTimes)) <= PROMISED_MS)
  return size && { kind: 'set', part, field, value: size.key }
}

const findingOf = (fast: Fast): Finding => {
  const { part, at, what, stock, flowLph } = fast
  const mend = mendFor(fast)
  return found({
    rule: RULE,
    subject: 'flow',
    state: 'Drifting',
    parts: [part],
    detail: what,
    at,
    measured: velocityOf(fast.velocityMS),
    limit: velocityOf(MOST_MS),
    facts: { what, stock: polyOf(stock).title },
    terms: [
      term('Flow', flowTotalOf(Math.abs(flowLph))),
      term(`Bore of ${polyOf(stock).title}`, lengthOf(polyOf(stock).idMm)),
    ],
    ...(mend && { mend }),
  })
}

/** Flow wanted over flow got, of some towers' mean; 1 where nothing flows. */
const timesWanted = (meanLph: number, { settings }: Bay): number =>
  meanLph > 0 ? settings.targetLph / meanLph : 1

const systemTimes = (part: PartId, bay: Bay): number => timesWanted(systemOf(bay, part)?.meanLph ?? 0, bay)

/** The first leg, from the main's first point, in which water runs as fast as in any. */
const fastMain = ({ part, points, legs, fastestMS }: MainWater, bay: Bay): Fast[] => {
  const stock = bay.builtOf.get(part)?.tubes.find(({ role }) => role === 'main')?.stock
  if (stock === undefined || !isFast(fastestMS)) return []
  const index = legs.findIndex((leg) => leg.velocityMS >= fastestMS - CLOSE_MS)
  const [from, to] = [points[index]?.at, points[index + 1]?.at]
  const flowLph = legs[index]?.flowLph ?? 0
  if (!from || !to) return []
  const at = middle(boxOf([from, to]))
  return [
    {
      part,
      at,
      what: 'main',
      stock,
      flowLph,
      velocityMS: fastestMS,
      field: 'pipe',
      wantedTimes: systemTimes(part, bay),
    },
  ]
}

const fastDischarge = ({ part, flowLph }: PumpWater, bay: Bay): Fast[] => {
  const pump = bay.builtOf.get(part)?.pump
  const speedMS = pump ? speedIn(pump.stock, flowLph) : 0
  if (!pump || !isFast(speedMS)) return []
  const at = { x: pump.at.x, y: pump.at.y }
  return [
    {
      part,
      at,
      what: 'discharge',
      stock: pump.stock,
      flowLph,
      velocityMS: speedMS,
      field: 'discharge',
      wantedTimes: systemTimes(part, bay),
    },
  ]
}

/** Of a row's pipes of one sort the one where water runs fastest; the first in its list of like ones. */
const fastestOf = (
  { row, feed }: WateredRow,
  wantedTimes: number,
  isWanted: (pipe: FeedPipe) => boolean,
  field: string,
): Fast[] => {
  let fastest: Fast | undefined
  feed.pipes.forEach((pipe, index) => {
    if (!isWanted(pipe)) return
    const flowLph = row.pipeLph[index] ?? 0
    const speedMS = speedIn(pipe.stock, flowLph)
    if (!isFast(speedMS) || speedMS <= (fastest?.velocityMS ?? 0) + CLOSE_MS) return
    const at = feed.joints[pipe.from]
    if (!at) return
    const { role: what, stock } = pipe
    fastest = {
      part: row.part,
      at: { x: at.x, y: at.y },
      what,
      stock,
      flowLph,
      velocityMS: speedMS,
      field,
      wantedTimes,
    }
  })
  return fastest ? [fastest] : []
}

const fastInRow = (watered: WateredRow, bay: Bay): Fast[] => {
  if (!isFast(watered.row.fastestMS)) return []
  const times = timesWanted(watered.row.figures.meanLph, bay)
  return [
    ...fastestOf(watered, times, ({ role }) => role === 'lateral', 'lateral'),
    ...fastestOf(watered, times, ({ role }) => role !== 'lateral', 'header'),
  ]
}

/** Told of once, of the pump or of all zones, where too much flow is the cause and what is wanted would run slower. */
const isToldElsewhere = ({ part, velocityMS: speedMS, wantedTimes }: Fast, bay: Bay): boolean => {
  const system = systemOf(bay, part)
  if (!system || isFast(speedMS * wantedTimes)) return false
  return isOverSupplied(system, bay) || isUnbalanced(system, bay)
}

const fastPipes = (bay: Bay): Fast[] =>
  [
    ...[...bay.water.mains.values()].flatMap((main) => fastMain(main, bay)),
    ...[...bay.water.pumps.values()].flatMap((pump) => fastDischarge(pump, bay)),
    ...wateredRows(bay).flatMap((watered) => fastInRow(watered, bay)),
  ].filter((fast) => !isToldElsewhere(fast, bay))

const WHAT: Readonly<Record<Exclude<Fast['what'], 'main'>, string>> = {
  discharge: 'the discharge pipe',
  'riser-pipe': 'the riser pipe',
  header: 'the header',
  'sub-header': 'the sub-headers',
  lateral: 'the laterals',
}

const isOfPart = (what: string): what is keyof typeof WHAT => what in WHAT

/** `Main`, or `the laterals of N1`. */
const whereWords = (what: string, name: string): string =>
  isOfPart(what) ? `${WHAT[what]} of ${name}` : name

/** No pipe carries more than it should at the flow of the bay. */
export const pipeVelocityMax: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Velocity in pipes',
  limit: 'No more than 5 ft/s in any pipe: over it friction runs away and a valve that shuts fast hammers',
  source:
    'Friction loss table for PVC class 160 pipe, footnote: sizes chosen to keep velocity at 5 ft/s; for poly pipe the same is common practice',
  mending: 'Take the next size of pipe, or feed the rows over two mains.',
  check: (bay) => fastPipes(bay).map(findingOf),
  say: ({ parts, measured, limit, facts }, { velocity, name }) =>
    `Water runs at ${velocity(measured.value)} in ${whereWords(String(facts['what']), name(parts[0] ?? ''))}, ${facts['stock']}; no more than ${velocity(limit.value)} is wanted.`,
}

import type { Bay } from '../../checks/context'
import { drainPipeOf } from '../../catalogue/pipe'
import type { PartId } from '../../model/ids'
import type { DrainState } from '../../model/returns'
import { carriedOn, collected, type Laid } from './collectorLaid'
import type { PipeAtFall } from './collectorLine'
import { type PitLine, pitLines, type PitNow, pitsNow } from './pitLines'

/** How the drains' water comes to its pits. */
export type CollectorWay =
  /** As drawn. */
  | 'as-drawn'
  /** One line past the drains' low ends, which they come into by short branches, to one pit at its end. */
  | 'collected'
  /** Drains that lie in one line made one drain, to one pit at its end. */
  | 'carried-on'

/** One way of bringing all drains of a bay home. Levels and lengths mm, flows L/h, earth L. */
export interface CollectorChoice {
  readonly way: CollectorWay
  /** The axis that the collectors run along; undefined as drawn. */
  readonly axis: 'x' | 'y' | undefined
  /** Of the collectors; undefined as drawn. */
  readonly pipe: string | undefined
  readonly slopeMmPerM: number | undefined
  readonly collectors: number
  readonly pits: number
  /** Of the line that carries most, at its low end, and how full that is of its bore; 1 where it backs up. */
  readonly flowLph: number
  readonly share: number
  readonly state: DrainState
  /** Of the line that falls most. */
  readonly fallMm: number
  readonly deepestTrenchMm: number
  readonly deepestPitMm: number
  /** Trenches and pits together. */
  readonly digL: number
  readonly pipeMm: number
}

/** Smallest first. */
const PIPES = ['drain-4in', 'drain-6in', 'drain-8in'] as const

/** A collector falls as the code asks of its size, or as the bay asks of new lines where that is more. */
const sizesOf = (leastDrop: number): readonly PipeAtFall[] =>
  PIPES.flatMap((pipe) => {
    const least = drainPipeOf(pipe).leastFallMmPerM
    const falls = leastDrop > least ? [least, leastDrop] : [least]
    return falls.map((slopeMmPerM) => ({ pipe, slopeMmPerM }))
  })

const sum = <T>(all: readonly T[], of: (one: T) => number): number =>
  all.reduce((total, one) => total + of(one), 0)

const most = <T>(all: readonly T[], of: (one: T) => number): number =>
  all.reduce((high, one) => Math.max(high, of(one)), 0)

const STATES: readonly DrainState[] = ['Falls', 'Flat', 'Backs up']

const worst = (states: readonly DrainState[]): DrainState =>
  STATES[most(states, (state) => STATES.indexOf(state))] ?? 'Falls'

/** The bay as it is drawn: each drain to its own pit. */
const asDrawn = (bay: Bay, pits: readonly PitNow[]): CollectorChoice => {
  const ends = pits.flatMap((pit) => pit.ends)
  const returns = ends.flatMap(({ run }) => bay.returns.drains.get(run.part) ?? [])
  return {
    way: 'as-drawn',
    axis: undefined,
    pipe: undefined,
    slopeMmPerM: undefined,
    collectors: 0,
    pits: pits.length,
    flowLph: most(returns, ({ flowLph }) => flowLph),
    share: most(returns, ({ fullest }) => fullest.share),
    state: worst(returns.map(({ state }) => state)),
    fallMm: most(ends, ({ run }) => run.high.invertMm - run.low.invertMm),
    deepestTrenchMm: most(ends, ({ run }) => Math.max(run.high.digMm, run.low.digMm)),
    deepestPitMm: most(pits, ({ depthMm }) => depthMm),
    digL: sum(ends, ({ trenchL }) => trenchL) + sum(pits, ({ digL }) => digL),
    pipeMm: sum(ends, ({ run }) => run.lengthMm),
  }
}

const choiceOf = (
  way: CollectorWay,
  axis: 'x' | 'y',
  { pipe, slopeMmPerM }: PipeAtFall,
  laid: readonly Laid[],
  alone: readonly PitNow[],
): CollectorChoice => {
  const lines = laid.flatMap((one) => one.lines)
  const aloneEnds = alone.flatMap(({ ends }) => ends)
  return {
    way,
    axis,
    pipe,
    slopeMmPerM,
    collectors: lines.length,
    pits: laid.length + alone.length,
    flowLph: most(lines, ({ flowLph }) => flowLph),
    share: most(lines, ({ share }) => share),
    state: worst(lines.map(({ state }) => state)),
    fallMm: most(lines, ({ fallMm }) => fallMm),
    deepestTrenchMm: most(lines, ({ deepestMm }) => deepestMm),
    deepestPitMm: Math.max(
      most(laid, ({ pitDepthMm }) => pitDepthMm),
      most(alone, ({ depthMm }) => depthMm),
    ),
    digL:
      sum(laid, ({ digL }) => digL) +
      sum(alone, ({ digL }) => digL) +
      sum(aloneEnds, ({ trenchL }) => trenchL),
    pipeMm: sum(laid, ({ pipeMm }) => pipeMm) + sum(aloneEnds, ({ run }) => run.lengthMm),
  }
}

/** Up to the smallest size that does, with both falls of that size: what is larger only costs more. */
const upToEnough = (choices: readonly CollectorChoice[]): readonly CollectorChoice[] => {
  const enough = choices.find(({ state }) => state === 'Falls')
  if (!enough) return choices
  const last = choices.findLastIndex(({ pipe }) => pipe === enough.pipe)
  return choices.slice(0, last + 1)
}

type Lay = (line: PitLine, size: PipeAtFall, bay: Bay) => Laid | undefined

const layAll = (
  bay: Bay,
  way: CollectorWay,
  axis: 'x' | 'y',
  all: readonly PitLine[],
  lay: Lay,
): readonly CollectorChoice[] => {
  const lines = all.filter(({ pits }) => pits.length > 1)
  if (lines.length === 0) return []
  const alone = all.filter(({ pits }) => pits.length === 1).flatMap(({ pits }) => pits)
  return upToEnough(
    sizesOf(bay.settings.leastDrop).flatMap((size) => {
      const laid = lines.flatMap((line) => lay(line, size, bay) ?? [])
      return laid.length === lines.length ? [choiceOf(way, axis, size, laid, alone)] : []
    }),
  )
}

/** Drains of the bay that come to no pit, so that no choice counts them. */
export const drainsLeftOut = ({ levels, joins }: Bay): readonly PartId[] =>
  [...levels.drains.keys()].filter(
    (part) =>
      !joins.some(
        ({ kind, from, to }) =>
          from === part && to !== undefined && (kind === 'drain-to-pit' || kind === 'drain-to-drain'),
      ),
  )

/**
 * The pits of a bay as drawn, against collectors that take their drains together: for each axis that two pits or more stand
 * along in one line, one collector past the low ends of their drains to one pit, and the drains themselves carried on as one
 * line; in each size of pipe up to the smallest that runs no more than half full. The one pit has as much floor as those
 * that it stands for, and as much depth under its overflow as the deepest of them. Empty where no drain comes to a pit.
 */
export const collectorChoices = (bay: Bay): readonly CollectorChoice[] => {
  const pits = pitsNow(bay)
  if (pits.length === 0) return []
  const axes = ['x', 'y'] as const
  return [
    asDrawn(bay, pits),
    ...axes.flatMap((axis) => {
      const lines = pitLines(pits, axis)
      return [
        ...layAll(bay, 'collected', axis, lines, collected),
        ...layAll(bay, 'carried-on', axis, lines, carriedOn),
      ]
    }),
  ]
}

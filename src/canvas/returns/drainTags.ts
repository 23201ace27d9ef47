import type { Evaluation } from '../../evaluate/evaluation'
import { between, distance, type Point } from '../../geometry/point'
import type { DrainRun, Peg } from '../../model/levels'
import type { PartId } from '../../model/ids'
import type { DrainReach, DrainReturn, DrainState } from '../../model/returns'
import type { Writer } from '../../units/writer'

/** Words that want to stand beside a drain. All places mm of floor. */
export interface DrainTag {
  readonly part: PartId
  readonly words: string
  /** What is said where the words find no room. */
  readonly short: string
  /** Its shape stands before the words; undefined where the water falls as it should. */
  readonly state?: Exclude<DrainState, 'Falls'>
  /** The stretch that the words are about; a peg has no length. */
  readonly from: Point
  readonly to: Point
  /** The whole drain, one of its reaches, or a peg. */
  readonly as: 'drain' | 'reach' | 'peg'
  /** Lower comes first where there is no room for all. */
  readonly rank: number
  /** How long the stretch must be on the screen for its words, as a share of their own length: words longer than what they name hide it. */
  readonly ofItsLength: number
}

/** A reach that is no longer than a bucket is wide has nothing to say beside its neighbour. */
const LEAST_REACH_MM = 300

const reachWords = ({ state, flowLph }: DrainReach, { slopeMmPerM }: DrainRun, writer: Writer): string => {
  const flow = flowLph > 0 ? `, ${writer.flowTotal(flowLph)}` : ''
  return `${state === 'Falls' ? '' : `${state} `}${writer.fall(slopeMmPerM)}${flow}`
}

const reachTag = (reach: DrainReach, run: DrainRun, writer: Writer): DrainTag => ({
  part: run.part,
  words: reachWords(reach, run, writer),
  short: reach.state === 'Falls' ? writer.flowTotal(reach.flowLph) : reach.state,
  ...(reach.state !== 'Falls' && { state: reach.state }),
  from: reach.from,
  to: reach.to,
  as: 'reach',
  rank: reach.state === 'Falls' ? 5 : reach.state === 'Flat' ? 1 : 0,
  ofItsLength: reach.state === 'Falls' ? 1 : 0,
})

/** Of the whole line: its fall, and what it brings where the water of the bay is known. */
const drainTag = (run: DrainRun, flowLph: number, writer: Writer): DrainTag => ({
  part: run.part,
  words: `${writer.fall(run.slopeMmPerM)}${flowLph > 0 ? `, ${writer.flowTotal(flowLph)} at its end` : ''}`,
  short: writer.fall(run.slopeMmPerM),
  from: run.high.at,
  to: run.low.at,
  as: 'drain',
  rank: 2,
  ofItsLength: 1,
})

const isAlike = (a: DrainReach, b: DrainReach): boolean => a.state === b.state && a.flowLph === b.flowLph

/** Reaches that run straight on and say the same are one: a cleanout between them changes nothing. */
export const joinedReaches = (reaches: readonly DrainReach[]): readonly DrainReach[] => {
  const joined: DrainReach[] = []
  for (const reach of reaches) {
    const last = joined.at(-1)
    const isStraight =
      last !== undefined &&
      distance(last.from, last.to) + distance(reach.from, reach.to) - distance(last.from, reach.to) < 1
    if (last && isStraight && isAlike(last, reach))
      joined[joined.length - 1] = { ...last, to: reach.to, toMm: reach.toMm }
    else joined.push(reach)
  }
  return joined
}

/** A bad state is said once where neighbours share it: of the longest of them. */
const longest = (reaches: readonly DrainReach[]): DrainReach | undefined =>
  reaches.reduce<DrainReach | undefined>(
    (most, reach) => (most && most.toMm - most.fromMm >= reach.toMm - reach.fromMm ? most : reach),
    undefined,
  )

const reachTags = (home: DrainReturn, run: DrainRun, writer: Writer): DrainTag[] => {
  const reaches = joinedReaches(home.reaches).filter(({ fromMm, toMm }) => toMm - fromMm > LEAST_REACH_MM)
  const worst = longest(reaches.filter(({ state }) => state === home.state && state !== 'Falls'))
  return reaches.map((reach) => {
    const tag = reachTag(reach, run, writer)
    if (!tag.state || reach === worst) return tag
    // Its shape says the state again; in few words there is the flow.
    const short = reach.flowLph > 0 ? writer.flowTotal(reach.flowLph) : tag.short
    return { ...tag, short, rank: 4, ofItsLength: 1 }
  })
}

/** Ends and what the crew asks for first come before the pegs between. */
const pegRank = ({ why }: Peg): number => {
  if (why.includes('start') || why.includes('end')) return 3
  return why.includes('outlet') || why.includes('branch') || why.includes('bend') ? 3.5 : 6
}

const pegTag = (peg: Peg, part: PartId): DrainTag => ({
  part,
  words: String(peg.number),
  short: String(peg.number),
  from: peg.at,
  to: peg.at,
  as: 'peg',
  rank: pegRank(peg),
  ofItsLength: 0,
})

/** All that could be said beside the drains of a bay, most needed first: what does not fall, then falls and flows, then pegs. */
export const drainTags = ({ bay }: Evaluation, writer: Writer): readonly DrainTag[] =>
  [...bay.levels.drains.values()]
    .flatMap((run) => {
      const home = bay.returns.drains.get(run.part)
      return [
        drainTag(run, home?.flowLph ?? 0, writer),
        ...(home ? reachTags(home, run, writer) : []),
        ...run.pegs.map((peg) => pegTag(peg, run.part)),
      ]
    })
    .toSorted((a, b) => a.rank - b.rank)

/** Where on its stretch words may stand, from the middle outward. */
export const anchorsOf = ({ from, to, as }: DrainTag): readonly Point[] =>
  as === 'peg' ? [from] : [0.5, 0.3, 0.7].map((share) => between(from, to, share))

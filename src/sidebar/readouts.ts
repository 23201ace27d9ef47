import type { CartReach } from '../checks/context'
import { type Heading, turnHeading } from '../geometry/motion'
import type { DrainRun, DrainStation, Join, Levels, Peg } from '../model/levels'
import type { RackFacts } from '../model/rackFacts'
import { wayHome } from '../model/wayHome'
import type { Units } from '../units/length'
import { atDrill } from '../units/precision'
import { type Writer, writerFor } from '../units/writer'
import { compassName } from './placeWords'

/** One thing that the program worked out, beside the fields that were typed. */
export interface Readout {
  readonly name: string
  readonly value: string
  /** Why it is so, where the crew would ask. */
  readonly why?: string
}

const cartText = (widestMm: number, { onTape }: Writer): string =>
  widestMm > 0 ? onTape(widestMm) : 'no cart'

/** The widest cart at the faces of a row, by the compass. Its ends are measured only where a wheelchair must turn there. */
const cartReadouts = (
  carts: CartReach,
  leftFacing: Heading,
  isEndMeasured: boolean,
  writer: Writer,
): Readout[] => {
  const sides = [
    { widestMm: carts.leftMm, turns: 0 },
    { widestMm: carts.rightMm, turns: 2 },
  ]
  const ends = [
    { widestMm: carts.startMm, turns: 1 },
    { widestMm: carts.endMm, turns: 3 },
  ]
  return [...sides, ...(isEndMeasured ? ends : [])].map(({ widestMm, turns }) => ({
    name: `Widest cart, ${compassName(turnHeading(leftFacing, turns))} side`,
    value: cartText(widestMm, writer),
  }))
}

const BIG_HOLE_WHY =
  'Its bottom is lower by the wall of the bigger conduit, so that the rail in it lies level.'

/** Conduit lies on the hole's bottom, so the crew needs it as well as the centre. Where all holes are alike there is no big one. */
const holeReadouts = (rack: RackFacts, { onTape }: Writer): Readout[] => [
  { name: 'Plain hole, foot to centre', value: onTape(rack.plainHoleMm) },
  { name: 'Plain hole, foot to bottom', value: onTape(rack.plainHoleBottomMm) },
  ...(rack.drilledFor.length > 1
    ? [
        { name: 'Big hole, foot to centre', value: onTape(rack.sleeveHoleMm) },
        { name: 'Big hole, foot to bottom', value: onTape(rack.sleeveHoleBottomMm), why: BIG_HOLE_WHY },
      ]
    : []),
]

const runReadouts = (rack: RackFacts, { length, onTape }: Writer): Readout[] => [
  ...(rack.carriedBy === 'floor' ? [{ name: 'Riser', value: onTape(rack.riserMm) }] : []),
  { name: 'Gutter run', value: length(rack.runMm) },
  { name: 'Longest run of this fall', value: length(rack.longestRunMm) },
]

/** What a row of racks comes to. */
export const rackReadouts = (
  rack: RackFacts,
  carts: CartReach | undefined,
  isEndMeasured: boolean,
  units: Units,
): readonly Readout[] => [
  { name: 'Towers', value: `${rack.towers}, with ${rack.sites} plant sites` },
  ...(carts ? cartReadouts(carts, rack.leftFace.facing, isEndMeasured, writerFor(units)) : []),
  ...(rack.carriedBy === 'floor' ? holeReadouts(rack, writerFor(units, atDrill)) : []),
  ...runReadouts(rack, writerFor(units)),
]

/** Where a station lies, from the end that the pit is at. */
const fromPitMm = (run: DrainRun, { alongMm }: DrainStation): number => Math.abs(run.low.alongMm - alongMm)

/** How a drain line lies. */
export const drainReadouts = (run: DrainRun, writer: Writer): readonly Readout[] => [
  { name: 'Length', value: writer.length(run.lengthMm) },
  { name: 'Invert, high end', value: writer.level(run.high.invertMm) },
  { name: 'Invert, low end', value: writer.level(run.low.invertMm) },
  {
    name: 'Least cover',
    value: `${writer.onTape(run.tightest.coverMm)}, ${writer.length(fromPitMm(run, run.tightest))} from the low end`,
  },
]

/** One peg of a drain, as the crew reads it. */
export interface PegWords {
  readonly number: number
  readonly fromPit: string
  readonly hole: string
  readonly invert: string
  readonly ground: string
  readonly cut: string
}

const holeWords = ({ outlets, holeMm, why }: Peg, { onTape }: Writer): string => {
  const isJoined = why.includes('branch') ? ['branch'] : []
  const drops = outlets > 0 ? [holeMm > 0 ? onTape(holeMm) : 'tee'] : []
  const many = outlets > 1 ? [`${outlets} x ${drops.join('')}`] : drops
  return [...isJoined, ...many].join(', ')
}

/** Pegs of a drain from its low end up. Nobody subtracts beside the trench: the cut is from the peg's own top. */
export const drainPegs = ({ pegs }: DrainRun, writer: Writer): readonly PegWords[] =>
  pegs.map((peg) => ({
    number: peg.number,
    fromPit: writer.length(peg.fromLowMm),
    hole: holeWords(peg, writer),
    invert: writer.level(peg.invertMm),
    ground: writer.level(peg.groundMm),
    cut: writer.onTape(peg.cutMm),
  }))

/** Whether water that leaves a drain comes to a pit by another line. */
const isByAnother = (joins: readonly Join[], drain: string, pit: string): boolean => {
  const { stretches, pit: end } = wayHome(joins, drain, 0)
  return end === pit && stretches.length > 1
}

/** The inverts at which drains come into a pit, and the lines that come to it by others. */
export const pitReadouts = (
  pit: string,
  joins: readonly Join[],
  { drains }: Levels,
  nameOf: (part: string) => string,
  { level }: Writer,
): readonly Readout[] => [
  ...joins
    .filter((join) => join.kind === 'drain-to-pit' && join.to === pit)
    .flatMap((join) => {
      const run = drains.get(join.from)
      return run ? [{ name: `${nameOf(join.from)} comes in at`, value: level(run.low.invertMm) }] : []
    }),
  ...joins
    .filter(({ kind, from }) => kind === 'drain-to-drain' && isByAnother(joins, from, pit))
    .map(({ from, to = '' }) => ({ name: `${nameOf(from)} comes in by`, value: nameOf(to) })),
]

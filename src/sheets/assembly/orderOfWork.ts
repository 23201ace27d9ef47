import { atDrill } from '../../units/precision'
import { inches, type Units } from '../../units/length'
import { type Writer, writerFor } from '../../units/writer'
import { massWords } from '../massWords'
import type { StepsPiece } from '../piece'
import { frameSizes, framesOf, type FrameSizes, type Frame } from './frames'
import { massOf } from './masses'
import type { Member } from './members'
import type { RackBuilt } from './rowBuilt'

type Step = StepsPiece['steps'][number]

/** Words of caution that stand beside a step, by the hazard's key; undefined where the plan does not have it. */
export type Mind = (hazard: string) => string | undefined

interface Work {
  readonly rack: RackBuilt
  readonly frames: readonly Frame[]
  readonly sizes: FrameSizes
  readonly write: Writer
  readonly units: Units
  readonly mind: Mind
}

const stepOf = (key: string, text: string, caution?: string): Step =>
  caution === undefined ? { key, text } : { key, text, caution }

const many = (count: number, one: string, more = `${one}s`): string => `${count} ${count === 1 ? one : more}`

const marked = ({ members }: RackBuilt, ...marks: readonly string[]): readonly Member[] =>
  members.filter(({ stick }) => marks.includes(stick.mark))

const hasShortRunners = ({ frames }: Work): boolean => (frames[0]?.feet.length ?? 0) > 1

const layFrames = (work: Work): Step => {
  const { frames, sizes, write } = work
  const sleeved = frames.filter(({ isSleeved }) => isSleeved).length
  const kinds =
    sleeved === 0 || sleeved === frames.length
      ? many(frames.length, 'frame')
      : `${frames.length} frames, ${frames.length - sleeved} of RS-p and ${sleeved} of RS-s`
  return stepOf(
    'lay',
    `Lay two risers on the flat, feet to one straight edge, ${write.onTape(sizes.spacingMm)} from middle to middle, wide faces up. This rack takes ${kinds}.`,
  )
}

const tieFrames = (work: Work): Step => {
  const { sizes, write } = work
  const foot = hasShortRunners(work)
    ? `BR across the feet from ${write.onTape(sizes.baseFromMm)} to ${write.onTape(sizes.baseToMm)}, one on each face`
    : `BX across the feet from ${write.onTape(sizes.baseFromMm)} to ${write.onTape(sizes.baseToMm)}`
  return stepOf(
    'tie',
    `Screw ${foot}, and TT with its top edge ${write.onTape(sizes.tieTopMm)} from the feet. All heights from the foot, never from the top. Pre-drill near ends; no two screws in one line of the grain.`,
  )
}

const squareFrames = ({ sizes, write, frames, units }: Work): Step => {
  const frame = frames[0]
  const kg = frame ? massOf([...frame.risers, ...frame.feet, ...(frame.tie ? [frame.tie] : [])]) : 0
  return stepOf(
    'square',
    `Square it before the last screws: from the outer corner of each foot to the far upper corner of TT both diagonals read ${write.onTape(sizes.diagonalMm)}. A frame weighs about ${massWords(kg, units)} dry: two people stand it up.`,
  )
}

const pairPlaces = ({ frames, write }: Work): string => frames.map(({ u }) => write.onTape(u)).join(', ')

const standFrames = (work: Work): Step => {
  const { frames, rack } = work
  const uphill = frames.filter(({ tieIsDownhill }) => !tieIsDownhill).length
  const faces = uphill === 0 ? 'ties downhill' : 'ties downhill, but those of the last frame uphill'
  const shared = rack.isLowEnd
    ? ''
    : ' Its low end rests in the first frame of the next rack: stand that one too.'
  return stepOf(
    'stand',
    `Stand the frames with painted feet down, ${faces}, their middles ${pairPlaces(work)} from the rack’s high line.${shared}${rack.runners.length > 0 ? ' They stand between the runners of the base: screw each runner to each riser.' : ''}`,
  )
}

const levelFrames = ({ rack, frames, write, units }: Work): Step => {
  const drill = writerFor(units, atDrill)
  const { facts } = rack
  const plain = frames.some(({ isSleeved }) => !isSleeved)
  const sleeved = frames.some(({ isSleeved }) => isSleeved)
  const bottoms = [
    ...(plain ? [`rail holes ${drill.onTape(facts.plainHoleBottomMm)}`] : []),
    ...(sleeved
      ? [`${facts.railJoint ? 'sleeve or big' : 'big'} holes ${drill.onTape(facts.sleeveHoleBottomMm)}`]
      : []),
  ].join(', ')
  return stepOf(
    'level',
    `Shim every foot up to the highest one with the stacks of the gutter card, never down. Plumb each frame. Check on the bottoms of the holes (from the foot: ${bottoms}): within ${write.onTape(LEVEL_ROW_MM)} over the row and ${write.onTape(LEVEL_NEXT_MM)} from one frame to the next.`,
  )
}

/** How far rail tops may be off level over a row, and from one riser to the next. Common practice, no source. */
const LEVEL_ROW_MM = inches(1 / 8)
const LEVEL_NEXT_MM = inches(1 / 16)

const chainWords = ({ rack, write }: Work): string => {
  const { railJoint } = rack.facts
  if (!railJoint || (rack.isHighEnd && rack.isLowEnd)) return ''
  const into = write.onTape(railJoint.insertionMm)
  const sleeves = marked(rack, 'SV').length > 0 || !marked(rack, 'RL-b').length
  const how = sleeves
    ? `Slide SV home in the shared risers; each rail goes ${into} into it from its side`
    : `The small rail goes ${into} into the big one, which runs through the shared risers`
  return ` ${how}. Two self-drilling screws a joint, from underneath, before any gutter hangs.`
}

const slideRails = (work: Work): Step => {
  const { rack, write, mind } = work
  const [rail] = marked(rack, 'RL', 'RL-b')
  const [first] = work.frames
  const past = rail && first && rack.isHighEnd ? write.onTape(first.u - rail.from.u) : undefined
  const start =
    past === undefined
      ? ''
      : ` The rail stands ${past} past the middle of the first riser: stop it there, and cap it.`
  return stepOf(
    'chain',
    `Deburr all conduit inside and out. Slide the rails through before any brace is on.${start}${chainWords(work)}`,
    mind('conduit'),
  )
}

/** The way from one node of a brace to the other; its square ends lap half a board past each. */
const nodesOf = ({ stick, from, to }: Member): { u: number; v: number; z: number } => {
  const share = (stick.lengthMm - stick.heightMm) / stick.lengthMm
  return { u: (to.u - from.u) * share, v: (to.v - from.v) * share, z: (to.z - from.z) * share }
}

const brace = (work: Work): Step[] => {
  const { rack, write } = work
  const [side] = marked(rack, 'SB')
  const [cross] = marked(rack, 'XB')
  if (!side && !cross) return []
  const at = (mm: number) => write.onTape(Math.abs(mm))
  const sides = side
    ? `SB, ${marked(rack, 'SB').length} of them: from the runner ${at(nodesOf(side).u)} in from the riser to ${at(nodesOf(side).z)} higher on the riser. `
    : ''
  const crosses = cross
    ? `XB, ${marked(rack, 'XB').length}: across the back of the frame, from ${at(nodesOf(cross).v)} in from the right riser (looking downhill) to ${at(nodesOf(cross).z)} higher on it.`
    : ''
  return [
    stepOf(
      'brace',
      `Braces now that the rails are through and the frames are plumb. ${sides}${crosses}`.trim(),
    ),
  ]
}

const hangBars = (work: Work): Step => {
  const { rack, frames, write, mind } = work
  const bars = marked(rack, 'HB').toSorted((a, b) => a.from.u - b.from.u)
  const [bar] = bars
  const from = frames[0]?.u ?? 0
  const past = bar ? (bar.stick.lengthMm - (work.sizes.spacingMm ?? 0)) / 2 : 0
  const caution = [mind('ladders'), mind('bar-ends')].filter((words) => words !== undefined).join(' ')
  return stepOf(
    'bars',
    `HB, ${bars.length}: the first ${write.onTape((bar?.from.u ?? 0) - from)} from the middle of the first riser, then every ${write.onTape(rack.facts.pitchMm)}, ${write.onTape(past)} past each rail. A stop on either side of both rails, a cap on both ends.`,
    caution === '' ? undefined : caution,
  )
}

/** What the crew does with the members of one rack, in order, with this rack's own numbers. */
export const orderOfWork = (rack: RackBuilt, write: Writer, units: Units, mind: Mind): readonly Step[] => {
  const frames = framesOf(rack)
  const sizes = frames[0] && frameSizes(frames[0])
  if (!sizes) return []
  const work: Work = { rack, frames, sizes, write, units, mind }
  return [
    layFrames(work),
    tieFrames(work),
    squareFrames(work),
    standFrames(work),
    levelFrames(work),
    slideRails(work),
    ...brace(work),
    hangBars(work),
  ]
}

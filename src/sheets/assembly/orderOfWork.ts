import { atDrill } from '../../units/precision'
import { inches, type Units } from '../../units/length'
import { type Writer, writerFor } from '../../units/writer'
import { massWords } from '../massWords'
import { frameSizes, framesOf, type FrameSizes, type Frame } from './frames'
import { massOf } from './masses'
import { houseSteps } from './houseSteps'
import type { Member } from './members'
import { hangBars, marked, type Mind, slideRails, type Step, stepOf, type WorkOnRack } from './railSteps'
import { type RackBuilt, sharesNext } from './rowBuilt'

interface Work extends WorkOnRack {
  readonly frames: readonly Frame[]
  readonly sizes: FrameSizes
  readonly units: Units
}

const many = (count: number, one: string, more = `${one}s`): string => `${count} ${count === 1 ? one : more}`

const hasShortRunners = ({ frames }: Work): boolean => (frames[0]?.feet.length ?? 0) > 1

/** J5: holes off the middle of their risers make right and left ones. */
const aside = ({ rack, units }: Work): string => {
  const [rail] = marked(rack, 'RL').filter(({ from }) => from.v > 0)
  const [riser] = marked(rack, 'RS-p', 'RS-d').filter(({ from }) => from.v > 0)
  const outMm = rail && riser ? rail.from.v - riser.from.v : 0
  return Math.abs(outMm) < inches(1 / 32)
    ? ''
    : ` Turn each so that its own hole stands ${writerFor(units, atDrill).onTape(Math.abs(outMm))} ${outMm > 0 ? 'outside' : 'inside'} of its middle.`
}

const layFrames = (work: Work): Step => {
  const { frames, sizes, write } = work
  const others = frames.filter(({ isSleeved, isDouble }) => isSleeved || isDouble)
  const mark = others[0]?.isDouble ? 'RS-d' : 'RS-s'
  const kinds =
    others.length === 0 || others.length === frames.length
      ? many(frames.length, 'frame')
      : `${frames.length} frames, ${frames.length - others.length} of RS-p and ${others.length} of ${mark}`
  return stepOf(
    'lay',
    `Lay two risers on the flat, feet to one straight edge, ${write.onTape(sizes.spacingMm)} from middle to middle, wide faces up. This rack takes ${kinds}.${aside(work)}`,
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
  const shared = sharesNext(rack)
    ? ' Its low end rests in the first frame of the next rack: stand that one too.'
    : ''
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

/** Before anything hangs on it: an empty rack tips sooner than a full one. */
const hold = ({ rack, frames }: Work): Step[] => {
  const held = frames.filter(
    ({ u }, index) => index === 0 || (index === frames.length - 1 && u > 0 && !sharesNext(rack)),
  )
  const where = `${held.length === 1 ? 'the first frame' : 'the first and the last frame'} of this rack`
  switch (rack.facts.hold) {
    case 'free':
      return []
    case 'anchored':
      return [
        stepOf(
          'hold',
          `Drive a ground anchor beside each foot of ${where} and draw its strap tight over the base, before anything hangs.`,
        ),
      ]
    case 'tied':
      return [
        stepOf(
          'hold',
          `Tie TT of ${where} to a wall post or to the next row, stiff both ways, before anything hangs.`,
        ),
      ]
  }
}

/** What the crew does with the members of one rack, in order, with this rack's own numbers. */
export const orderOfWork = (rack: RackBuilt, write: Writer, units: Units, mind: Mind): readonly Step[] => {
  const frames = framesOf(rack)
  const [first] = frames
  const sizes = first && frameSizes(first)
  if (!sizes) return rack.facts.carriedBy === 'house' ? houseSteps(rack, write, mind) : []
  const from = { u: first.u, words: 'the middle of the first riser' }
  const work: Work = { rack, frames, sizes, write, units, mind, from }
  return [
    layFrames(work),
    tieFrames(work),
    squareFrames(work),
    standFrames(work),
    levelFrames(work),
    slideRails(work),
    ...brace(work),
    ...hold(work),
    hangBars(work),
  ]
}

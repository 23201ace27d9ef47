import { clipped } from '../drawing/lettering'
import type { Evaluation } from '../evaluate/evaluation'
import { levelStack, type Level, type Stack } from '../evaluate/levelStack'
import { shortGaps, type ShortGap } from '../evaluate/shortGaps'
import { usePlannerState } from '../store/react'
import { inTrench } from '../units/precision'
import { writerFor } from '../units/writer'
import { hitIndexOf } from './hit'
import { movedIn } from './moved'
import { poleScale, type PoleScale } from './poleScale'
import { multiples, rulerStep } from './rulerSteps'
import { spread } from './spread'
import { StateShape } from './StateShape'

/** Places across the pole, px. */
const WIDTH = 128
const STAFF = { left: 8, right: 22 }
const LABEL_LEFT = 38
const HEAD = 46
const FOOT = 16
const LABEL_PX = 28
const SHORT_PX = 30

const HIT_PX = 6

/** What is under the pointer, or else what is chosen, or else the first row. While something is dragged, that. */
const useStack = (): Stack & { readonly evaluation: Evaluation } => {
  const [evaluation, layout, preview, selection, pointer, pxPerMm] = usePlannerState((state) => [
    state.evaluation,
    state.layout,
    state.preview,
    state.selection,
    state.pointer,
    state.view.pxPerMm,
  ])
  const { bay } = evaluation
  // During a drag the index would have to be made anew each frame, for what is known anyway.
  const [carried] = movedIn(layout, preview)
  const hit = pointer && !preview ? hitIndexOf(bay.built, null).at(pointer, HIT_PX / pxPerMm) : undefined
  const first = bay.built.find(({ rack }) => rack)?.part
  const part = carried ?? hit ?? selection[0] ?? (pointer ? undefined : first)
  const at = pointer ?? bay.house.benchmark.at
  return { ...levelStack(evaluation, part, { at }), evaluation }
}

interface PoleProps {
  readonly scale: PoleScale
}

const staffTick = (y: number, isMajor: boolean) =>
  `M${STAFF.right} ${y}H${isMajor ? STAFF.left : STAFF.right - 6}`

function Staff({ scale, units }: PoleProps & { readonly units: 'feet-inches' | 'metric' }) {
  const { majorMm, minorMm } = rulerStep(scale.pxPerMm, units)
  const ticks = multiples(scale.lowMm, scale.highMm, minorMm)
  const isMajor = (mm: number) => Math.round(mm / minorMm) % Math.round(majorMm / minorMm) === 0
  const top = scale.pxOf(scale.highMm)
  return (
    <>
      <rect
        className="pole-staff"
        x={STAFF.left}
        y={top - 8}
        width={STAFF.right - STAFF.left}
        height={Math.max(0, scale.pxOf(scale.lowMm) - top + 16)}
      />
      <path className="pole-tick" d={ticks.map((mm) => staffTick(scale.pxOf(mm), isMajor(mm))).join('')} />
    </>
  )
}

/** The water that stands in the pit while the pump runs. */
function Water({ scale, levels }: PoleProps & { readonly levels: readonly Level[] }) {
  const running = levels.find(({ name }) => name === 'Running')
  const bottom = levels.find(({ name }) => name === 'Bottom')
  if (!running || !bottom) return null
  const top = scale.pxOf(running.levelMm)
  return (
    <rect
      className="pole-water"
      x={STAFF.left}
      y={top}
      width={STAFF.right - STAFF.left}
      height={Math.max(0, scale.pxOf(bottom.levelMm) - top)}
    />
  )
}

interface LabelsProps extends PoleProps {
  readonly levels: readonly Level[]
  readonly bottom: number
  readonly write: (levelMm: number) => string
}

/** Each level with its name and value; a bent leader leads to it where the labels had to make room. */
function Labels({ scale, levels, bottom, write }: LabelsProps) {
  const falling = levels.toSorted((a, b) => b.levelMm - a.levelMm)
  const wanted = falling.map(({ levelMm }) => scale.pxOf(levelMm))
  const places = spread(wanted, LABEL_PX, HEAD + LABEL_PX / 2, bottom - LABEL_PX / 2)
  return falling.map(({ name, levelMm }, index) => {
    const y = wanted[index] ?? 0
    const at = places[index] ?? y
    return (
      <g key={name}>
        <path className="pole-mark" d={`M${STAFF.left} ${y}H${STAFF.right}`} />
        <path className="pole-leader" d={`M${STAFF.right} ${y}h3L${LABEL_LEFT - 5} ${at}h3`} />
        <text x={LABEL_LEFT} y={at - 2}>
          {name}
        </text>
        <text className="pole-from" x={LABEL_LEFT} y={at + 11}>
          {write(levelMm)}
        </text>
      </g>
    )
  })
}

/** A gap that is too small: a red bracket on the staff, with the state's shape; its word stands in the head. */
function Short({ scale, gap: { from, to, finding } }: PoleProps & { readonly gap: ShortGap }) {
  const [a, b] = [scale.pxOf(from.levelMm), scale.pxOf(to.levelMm)]
  return (
    <g>
      <path className="pole-short" d={`M${STAFF.right} ${a}H${STAFF.left - 3}V${b}H${STAFF.right}`} />
      <StateShape state={finding.state} x={STAFF.right + 7} y={(a + b) / 2} />
    </g>
  )
}

/** Two lines at the foot of the pole, which is too narrow for one. */
function ShortWords({ gap: { from, to, finding }, y }: { readonly gap: ShortGap; readonly y: number }) {
  return (
    <text className="pole-short-words" y={y}>
      <tspan x={STAFF.left}>{`${finding.state}: ${from.name}`}</tspan>
      <tspan x={STAFF.left} dy={14}>{`to ${to.name}`}</tspan>
    </text>
  )
}

const spoken = ({ whose, levels }: Stack, write: (mm: number) => string): string =>
  `Story pole. Levels of ${whose}: ${levels.map(({ name, levelMm }) => `${name} ${write(levelMm)}`).join(', ')}`

/** The story pole: every level under the pointer on one rule, to scale, from bar top to the bottom of the pit. */
export function StoryPole() {
  const { evaluation, ...stack } = useStack()
  const [units, height] = usePlannerState((state) => [state.units, state.size.height])
  const write = writerFor(units, inTrench).length
  const gaps = shortGaps(evaluation, stack)
  const foot = FOOT + gaps.length * SHORT_PX
  // With the drawer open there may be less room than labels: the pole then scrolls, and none is cut off.
  const tall = Math.max(height, HEAD + stack.levels.length * LABEL_PX + foot)
  const bottom = tall - foot
  const scale = poleScale(stack.levels, HEAD + 18, bottom - 14)
  return (
    <div
      className="story-pole"
      {...(tall > height && { role: 'region', 'aria-label': 'Story pole', tabIndex: 0 })}
    >
      <svg width={WIDTH} height={tall} role="img" aria-label={spoken(stack, write)}>
        <text className="pole-whose" x={STAFF.left} y={18}>
          {clipped(stack.whose, 13, WIDTH - STAFF.left - 4)}
        </text>
        <text className="pole-from" x={STAFF.left} y={34}>
          from the bay’s zero
        </text>
        <Staff scale={scale} units={units} />
        <Water scale={scale} levels={stack.levels} />
        <Labels scale={scale} levels={stack.levels} bottom={bottom} write={write} />
        {gaps.map((gap) => (
          <Short key={gap.finding.key} scale={scale} gap={gap} />
        ))}
        {gaps.map((gap, index) => (
          <ShortWords key={gap.finding.key} gap={gap} y={bottom + 12 + index * SHORT_PX} />
        ))}
      </svg>
    </div>
  )
}

import { clipped } from '../../drawing/lettering'
import type { Level } from '../../evaluate/levelStack'
import type { ShortGap } from '../../evaluate/shortGaps'
import type { Units } from '../../units/length'
import { type LevelReading, unitsOfLevels } from '../../units/writeLevel'
import { multiples, rulerStep } from '../rulerSteps'
import { StateShape } from '../StateShape'
import { LABEL_LEFT, STAFF, WIDTH, type Placed } from './places'
import type { PoleScale } from './poleScale'

interface PoleProps {
  readonly scale: PoleScale
}

const staffTick = (y: number, isMajor: boolean) =>
  `M${STAFF.right} ${y}H${isMajor ? STAFF.left : STAFF.right - 6}`

interface StaffProps extends PoleProps {
  readonly units: Units
  readonly reading: LevelReading
}

/** The pole itself, with its long marks where levels read round numbers. */
export function Staff({ scale, units, reading }: StaffProps) {
  const { zeroMm } = reading
  const { majorMm, minorMm } = rulerStep(scale.pxPerMm, unitsOfLevels(units, reading))
  const ticks = multiples(scale.lowMm + zeroMm, scale.highMm + zeroMm, minorMm)
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
      <path
        className="pole-tick"
        d={ticks.map((mm) => staffTick(scale.pxOf(mm - zeroMm), isMajor(mm))).join('')}
      />
    </>
  )
}

/** The water that stands in the pit while the pump runs. */
export function Water({ scale, levels }: PoleProps & { readonly levels: readonly Level[] }) {
  const running = levels.find(({ kind }) => kind === 'runningMm')
  const bottom = levels.find(({ kind }) => kind === 'bottomMm')
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

/** A level's mark on the staff, and a bent leader to its label where that had to make room. */
function Leader({ at: { markY, y } }: { readonly at: Placed }) {
  return (
    <>
      <path className="pole-mark" d={`M${STAFF.left} ${markY}H${STAFF.right}`} />
      <path className="pole-leader" d={`M${STAFF.right} ${markY}h3L${LABEL_LEFT - 5} ${y}h3`} />
    </>
  )
}

/** Each level that follows from others, with its name and value. A level that can be changed is a grip, not drawn here. */
export function Labels({
  all,
  write,
}: {
  readonly all: readonly Placed[]
  write: (levelMm: number) => string
}) {
  return all.map((at) => (
    <g key={`${at.level.part} ${at.level.name}`}>
      <Leader at={at} />
      {!at.isFree && (
        <>
          <text x={LABEL_LEFT} y={at.y - 2}>
            {clipped(at.level.name, 12, WIDTH - LABEL_LEFT - 2)}
          </text>
          <text className="pole-from" x={LABEL_LEFT} y={at.y + 11}>
            {write(at.level.levelMm)}
          </text>
        </>
      )}
    </g>
  ))
}

/** A gap that is too small: a red bracket on the staff, with the state's shape; its word stands at the foot. */
export function Short({ scale, gap: { from, to, finding } }: PoleProps & { readonly gap: ShortGap }) {
  const [a, b] = [scale.pxOf(from.levelMm), scale.pxOf(to.levelMm)]
  return (
    <g>
      <path className="pole-short" d={`M${STAFF.right} ${a}H${STAFF.left - 3}V${b}H${STAFF.right}`} />
      <StateShape state={finding.state} x={STAFF.right + 7} y={(a + b) / 2} />
    </g>
  )
}

/** Two lines at the foot of the pole, which is too narrow for one. */
export function ShortWords({
  gap: { from, to, finding },
  y,
}: {
  readonly gap: ShortGap
  readonly y: number
}) {
  return (
    <text className="pole-short-words" y={y}>
      <tspan x={STAFF.left}>{`${finding.state}: ${from.name}`}</tspan>
      <tspan x={STAFF.left} dy={14}>{`to ${to.name}`}</tspan>
    </text>
  )
}

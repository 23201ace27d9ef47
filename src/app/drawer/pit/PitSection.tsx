import { useRef, useState } from 'react'
import { gripOn } from '../../../canvas/pole/gripOn'
import { levelGesture } from '../../../canvas/pole/levelGesture'
import { LevelGrip } from '../../../canvas/pole/LevelGrip'
import { LABEL_LEFT, placed, type Placed } from '../../../canvas/pole/places'
import type { PoleScale } from '../../../canvas/pole/poleScale'
import { useTargetPx } from '../../../canvas/pole/useTargetPx'
import { type Level, levelStack } from '../../../evaluate/levelStack'
import { levelReading } from '../../../layout/levelReading'
import type { PartId } from '../../../model/ids'
import type { PitFacts } from '../../../model/pitFacts'
import type { PitReturn } from '../../../model/returns'
import { usePlanner, usePlannerState } from '../../../store/react'
import { inTrench } from '../../../units/precision'
import { type Writer, writerFor } from '../../../units/writer'
import type { PlotSize } from '../chart/plot'
import { useSize } from '../chart/useSize'
import { type PitBand, pitBands, type PitPicture, pitPicture } from './pitPicture'

interface DrawnProps {
  readonly pit: PitFacts
  readonly picture: PitPicture
  readonly size: PlotSize
  readonly floorMm: number
}

const outlineOf = ({ rimMm, bottomMm }: PitFacts, { yOf, wallsAt }: PitPicture, toMm = rimMm): string => {
  const [topLeft, topRight] = wallsAt(toMm)
  const [left, right] = wallsAt(bottomMm)
  return `M${topLeft} ${yOf(toMm)}L${left} ${yOf(bottomMm)}H${right}L${topRight} ${yOf(toMm)}`
}

/** Earth is drawn so far under the bottom, px. */
const UNDER_PX = 16

/** Earth and floor, the pit with the water that stands in it while it runs, and the pipe of its overflow. */
function Pit({ pit, picture, size, floorMm }: DrawnProps) {
  const { yOf, wallsAt, pxPerMm } = picture
  const floor = Math.min(Math.max(yOf(floorMm), 0), size.height)
  const [left, right] = wallsAt(floorMm)
  const [waterLeft, waterRight] = wallsAt(pit.runningMm)
  const [, overflowWall] = wallsAt(pit.overflowMm)
  const borePx = Math.max(3, pit.overflowBoreMm * pxPerMm)
  const waterY = yOf(pit.runningMm)
  return (
    <>
      <rect
        className="pit-earth"
        x={left - 14}
        y={floor}
        width={right - left + 28}
        height={Math.max(0, yOf(pit.bottomMm) + UNDER_PX - floor)}
      />
      <path className="pit-inside" d={`${outlineOf(pit, picture)}Z`} />
      <path className="pit-water" d={`${outlineOf(pit, picture, pit.runningMm)}Z`} />
      <path className="pit-surface" d={`M${waterLeft} ${waterY}H${waterRight}`} />
      <path className="pit-sign" d={`M${waterLeft + 12} ${waterY - 9}h11l-5.5 9Z`} />
      <rect
        className="pit-overflow"
        x={overflowWall}
        y={yOf(pit.overflowMm) - borePx}
        width={12}
        height={borePx}
      />
      <path className="pit-floor" d={`M${left - 14} ${floor}H${left}M${right} ${floor}H${right + 14}`} />
      <path className="pit-wall" d={outlineOf(pit, picture)} />
    </>
  )
}

interface BandsProps {
  readonly bands: readonly PitBand[]
  readonly picture: PitPicture
  readonly writer: Writer
}

/** What each stretch of the depth is for, and what it holds, left of the pit. */
function Bands({ bands, picture: { yOf, wallsAt }, writer }: BandsProps) {
  return bands.map(({ name, fromMm, toMm, litres, at }) => {
    const wall = Math.min(wallsAt(fromMm)[0], wallsAt(toMm)[0])
    const [top, bottom] = [yOf(fromMm), yOf(toMm)]
    const x = wall - 20
    return (
      <g key={name}>
        <path
          className="pit-bracket"
          d={`M${x + 5} ${top}H${x}V${bottom}H${x + 5}M${x} ${(top + bottom) / 2}L${x - 12} ${at}`}
        />
        <text className="pit-words" x={x - 16} y={at - 2} textAnchor="end">
          {name}
        </text>
        <text className="pit-number" x={x - 16} y={at + 12} textAnchor="end">
          {writer.volume(litres)}
        </text>
      </g>
    )
  })
}

interface LeadersProps {
  readonly all: readonly Placed[]
  readonly picture: PitPicture
  readonly right: number
}

/** From each level, drawn across the water, to its label. */
function Leaders({ all, picture: { wallsAt }, right }: LeadersProps) {
  return all.map(({ level, markY, y }) => {
    const [left, wall] = wallsAt(level.levelMm)
    return (
      <g key={level.kind}>
        <path className="pit-level" d={`M${left} ${markY}H${wall}`} />
        <path className="pit-leader" d={`M${wall} ${markY}H${right + 14}L${right + LABEL_LEFT - 6} ${y}`} />
      </g>
    )
  })
}

interface PitSectionProps {
  readonly part: PartId
  readonly pit: PitFacts
  readonly spent: PitReturn
  readonly floorMm: number
}

const isPitLevel = ({ kind }: Level): boolean => kind.endsWith('Mm')

/** The levels of a pit in one evaluation, by the names of the story pole. */
const useLevels = (part: PartId): readonly Level[] => {
  const evaluation = usePlannerState((state) => state.evaluation)
  return levelStack(evaluation, part, { at: evaluation.bay.house.benchmark.at }).levels.filter(isPitLevel)
}

/** A pit in section, to scale, with every level to be taken up and down. */
export function PitSection({ part, pit, spent, floorMm }: PitSectionProps) {
  const planner = usePlanner()
  const [units, layout] = usePlannerState((state) => [state.units, state.evaluation.layout])
  const room = useRef<HTMLDivElement>(null)
  const size = useSize(room)
  const targetPx = useTargetPx()
  const levels = useLevels(part)
  const [held, setHeld] = useState<PitPicture>()
  const picture = held ?? pitPicture(pit, size)
  const reading = levelReading(layout.settings, layout.house.benchmark)
  const writer = writerFor(units, inTrench, reading)
  const scale: PoleScale = {
    pxOf: picture.yOf,
    pxPerMm: picture.pxPerMm,
    lowMm: pit.bottomMm,
    highMm: pit.rimMm,
  }
  const all = placed(
    levels.map((level) => [level, true] as const),
    scale,
    [2, size.height - 2],
    targetPx,
  )
  const right = Math.max(picture.wallsAt(pit.rimMm)[1], picture.wallsAt(pit.bottomMm)[1])
  const takeAt = (level: Level) => () => {
    const { settled, units: read } = planner.store.getState()
    setHeld(picture)
    const was = levelStack(settled, part, { at: settled.bay.house.benchmark.at }).levels.find(
      ({ kind }) => kind === level.kind,
    )
    return was && levelGesture(planner, settled, was, writerFor(read, inTrench, reading))
  }
  return (
    <div ref={room} className="pit-section" style={{ minHeight: levels.length * targetPx + 4 }}>
      <svg width={size.width} height={size.height} role="img" aria-label="The pit in section, to scale">
        <Pit pit={pit} picture={picture} size={size} floorMm={floorMm} />
        <Bands bands={pitBands(pit, spent, picture, size.height)} picture={picture} writer={writer} />
        <Leaders all={all} picture={picture} right={right} />
      </svg>
      <div className="story-pole pit-grips" style={{ left: right }}>
        {all.map((at) => (
          <LevelGrip
            key={at.level.kind}
            at={at}
            on={gripOn(units, reading, scale, { take: takeAt(at.level), letGo: () => setHeld(undefined) })}
          />
        ))}
      </div>
    </div>
  )
}

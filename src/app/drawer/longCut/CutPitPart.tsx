import type { CutPit } from '../../../evaluate/longCut/section'
import type { StopMoment } from '../../../model/stopRun'
import type { Writer } from '../../../units/writer'
import { pitLevelLine, pitShape } from './cutPaths'
import type { CutScale } from './cutScale'
import { LEVEL_NAMES, type LevelWords, levelWords } from './pitWords'

interface PitProps {
  readonly pit: CutPit
  readonly scale: CutScale
  readonly moment: StopMoment | undefined
  readonly writer: Writer
}

/** From the far wall to the words, px. */
export const LEADER_PX = 22

/** The sign of a water surface: a triangle that stands on it, and two short lines under it. */
function Surface({ x, y }: { readonly x: number; readonly y: number }) {
  return (
    <g className="cut-surface" transform={`translate(${x} ${y})`}>
      <path className="cut-surface-sign" d="M-5-8H5L0 0Z" />
      <path d="M-6 3H6M-3.5 6H3.5" />
    </g>
  )
}

/** A pump that stands in the pit, with the pipe that goes up out of it. */
function Pump({ pit, scale }: Pick<PitProps, 'pit' | 'scale'>) {
  const { xOf, yOf } = scale
  const { facts, bottomFromMm, bottomToMm } = pit
  const x = xOf(bottomFromMm + (bottomToMm - bottomFromMm) * 0.7)
  const foot = yOf(facts.bottomMm)
  const intake = Math.min(foot - 3, yOf(facts.intakeMm))
  const top = Math.min(intake - 10, foot - 16)
  return (
    <g className="cut-pump">
      <path d={`M${x} ${top}V${yOf(facts.rimMm) - 10}`} />
      <rect x={x - 6} y={top} width={12} height={Math.max(8, foot - 2 - top)} />
      <path className="cut-intake" d={`M${x - 10} ${intake}H${x - 6}`} />
    </g>
  )
}

function Overflow({ pit: { facts, toMm }, scale: { xOf, yOf } }: Pick<PitProps, 'pit' | 'scale'>) {
  const top = yOf(facts.overflowMm + facts.overflowBoreMm)
  return (
    <rect
      className="cut-overflow"
      x={xOf(toMm)}
      y={top}
      width={LEADER_PX * 0.55}
      height={Math.max(3, yOf(facts.overflowMm) - top)}
    />
  )
}

interface LevelProps extends Omit<PitProps, 'moment'> {
  readonly words: LevelWords
}

function Level({ pit, scale, writer, words: { level, levelMm, y, at } }: LevelProps) {
  const wall = scale.xOf(pit.toMm)
  const left = scale.right + LEADER_PX
  return (
    <g>
      <path className="cut-level" d={pitLevelLine(pit, levelMm, scale)} />
      <path className="cut-leader" d={`M${wall} ${y}H${left - 16}L${left - 4} ${at}H${left - 2}`} />
      <text x={left} y={at + 4}>
        {LEVEL_NAMES[level]} <tspan className="cut-number">{writer.level(levelMm)}</tspan>
      </text>
    </g>
  )
}

/** The pit with its water, its pump and overflow, and all its levels by name. */
export function CutPitPart({ pit, scale, moment, writer }: PitProps) {
  const { facts, part } = pit
  const waterMm = Math.max(facts.bottomMm, moment?.pitMm.get(part) ?? facts.runningMm)
  const { xOf, yOf } = scale
  const third = xOf(pit.fromMm + (pit.toMm - pit.fromMm) * 0.28)
  return (
    <g>
      <path className="cut-water" d={`${pitShape(pit, waterMm, scale)}Z`} />
      {pit.pumps > 0 && <Pump pit={pit} scale={scale} />}
      <Overflow pit={pit} scale={scale} />
      {levelWords(pit, scale).map((words) => (
        <Level key={words.level} pit={pit} scale={scale} writer={writer} words={words} />
      ))}
      <path className="cut-water-line" d={pitLevelLine(pit, waterMm, scale)} />
      <Surface x={third} y={yOf(waterMm)} />
      <path className="cut-pit" d={pitShape(pit, facts.rimMm, scale)} />
    </g>
  )
}

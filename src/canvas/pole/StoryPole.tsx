import { useMemo, useState } from 'react'
import type { Evaluation } from '../../evaluate/evaluation'
import { levelEditOf } from '../../evaluate/levelEdit'
import { levelStack, type Level, type Stack } from '../../evaluate/levelStack'
import { shortGaps } from '../../evaluate/shortGaps'
import { levelReading } from '../../layout/levelReading'
import { usePlanner, usePlannerState } from '../../store/react'
import { inTrench } from '../../units/precision'
import type { LevelReading } from '../../units/writeLevel'
import { writerFor } from '../../units/writer'
import { gripOn } from './gripOn'
import { levelGesture } from './levelGesture'
import { LevelGrip } from './LevelGrip'
import { labelPx, placed, WIDTH } from './places'
import { PoleHead } from './PoleHead'
import { poleScale, type PoleScale } from './poleScale'
import { Labels, Short, ShortWords, Staff, Water } from './Staff'
import { useShown, type Shown } from './useShown'
import { useTargetPx } from './useTargetPx'

const FOOT = 16
const SHORT_PX = 30
/** Name, and where levels are read from; between them a row of its own for the lines of a row. */
const HEAD_PX = 42

/** What the pole stays at while one of its levels is in hand, whatever is under the pointer. */
interface Held {
  readonly shown: Shown
  readonly scale: PoleScale
}

const spoken = ({ whose, levels }: Stack, write: (mm: number) => string): string =>
  `Story pole. Levels of ${whose}: ${levels.map(({ name, levelMm }) => `${name} ${write(levelMm)}`).join(', ')}`

const isSame = (a: Level, b: Level): boolean => a.part === b.part && a.kind === b.kind && a.name === b.name

const fromWords = (
  { bay: { house } }: Evaluation,
  { zeroMm }: LevelReading,
  write: (mm: number) => string,
) => (zeroMm === 0 ? 'from the bay’s zero' : `mark at ${write(house.benchmark.levelMm)}`)

/** Levels with whether each is free to be changed. */
const useFree = (evaluation: Evaluation, { levels }: Stack): readonly (readonly [Level, boolean])[] =>
  useMemo(
    () => levels.map((level) => [level, levelEditOf(evaluation, level) !== undefined] as const),
    [evaluation, levels],
  )

/** The story pole: every level under the pointer on one rule, to scale, from bar top to the bottom of the pit. */
export function StoryPole() {
  const planner = usePlanner()
  const [evaluation, units, height] = usePlannerState((state) => [
    state.evaluation,
    state.units,
    state.size.height,
  ])
  const { pickLine, ...now } = useShown()
  const [held, setHeld] = useState<Held>()
  const shown = held?.shown ?? now
  const stack = levelStack(evaluation, shown.part, shown)
  const free = useFree(evaluation, stack)
  const targetPx = useTargetPx()
  const reading = levelReading(evaluation.layout.settings, evaluation.bay.house.benchmark)
  const { level: write } = writerFor(units, inTrench, reading)
  const gaps = shortGaps(evaluation, stack)
  const head = HEAD_PX + (stack.lines > 1 ? targetPx : 0)
  const foot = FOOT + gaps.length * SHORT_PX
  const wanted = free.reduce((sum, [, isFree]) => sum + labelPx(isFree, targetPx), 0)
  // With the drawer open there may be less room than labels: the pole then scrolls, and none is cut off.
  const tall = Math.max(height, head + wanted + foot)
  const bottom = tall - foot
  const scale = held?.scale ?? poleScale(stack.levels, head + 18, bottom - 14)
  const all = placed(free, scale, [head, bottom], targetPx)
  const takeAt = (level: Level) => () => {
    const { settled, units: read } = planner.store.getState()
    const was = levelStack(settled, shown.part, shown).levels.find((one) => isSame(one, level))
    setHeld({ shown: { ...shown, isPointed: false }, scale })
    return was && levelGesture(planner, settled, was, writerFor(read, inTrench, reading))
  }
  return (
    <div
      className="story-pole"
      {...(tall > height && { role: 'region', 'aria-label': 'Story pole', tabIndex: 0 })}
    >
      <div className="pole-body" style={{ height: tall }}>
        <PoleHead
          stack={stack}
          from={fromWords(evaluation, reading, write)}
          onLine={shown.isPointed ? undefined : pickLine}
        />
        <svg width={WIDTH} height={tall} role="img" aria-label={spoken(stack, write)}>
          <Staff scale={scale} units={units} reading={reading} />
          <Water scale={scale} levels={stack.levels} />
          <Labels all={all} write={write} />
          {gaps.map((gap) => (
            <Short key={gap.finding.key} scale={scale} gap={gap} />
          ))}
          {gaps.map((gap, index) => (
            <ShortWords key={gap.finding.key} gap={gap} y={bottom + 12 + index * SHORT_PX} />
          ))}
        </svg>
        {all
          .filter(({ isFree }) => isFree)
          .map((at) => (
            <LevelGrip
              key={`${at.level.part} ${at.level.name}`}
              at={at}
              on={gripOn(units, reading, scale, {
                take: takeAt(at.level),
                letGo: () => setHeld(undefined),
              })}
            />
          ))}
      </div>
    </div>
  )
}

import type { LevelReading } from '../../units/writeLevel'
import { unitsOfLevels } from '../../units/writeLevel'
import { inches, type Units } from '../../units/length'
import type { Writer } from '../../units/writer'
import type { Mark } from '../../model/drawing'
import { lettered, LETTERS, ruled } from '../ink'
import type { SectionView } from './sectionView'

/** Steps of the level rule that a crew reads, mm, finest first. */
const STEPS_MM: Readonly<Record<Units, readonly number[]>> = {
  'feet-inches': [1, 2, 3, 6, 12, 24, 60].map(inches),
  metric: [20, 50, 100, 200, 500, 1000, 2000],
}

/** Words of the rule stand no closer, mm of paper. */
const APART_MM = 7
const TICK_MM = 1.6

/** Paper that the rule takes beside the section, mm. */
export const RULE_MM = 24

const ticksOf = (view: SectionView, units: Units, reading: LevelReading): readonly number[] => {
  const perMm = (view.yOf(view.highMm) - view.yOf(view.lowMm)) / (view.highMm - view.lowMm)
  const steps = STEPS_MM[unitsOfLevels(units, reading)]
  const step = steps.find((mm) => mm * perMm >= APART_MM) ?? steps.at(-1) ?? 1
  const first = Math.ceil((view.lowMm + reading.zeroMm) / step - 1e-9)
  const count = Math.floor((view.highMm + reading.zeroMm) / step + 1e-9) - first + 1
  return Array.from({ length: Math.max(0, count) }, (_, i) => (first + i) * step - reading.zeroMm)
}

/** A rule of levels at the high end, and the datum line at the foot, which levels over it are scaled from. */
export const ruleMarks = (view: SectionView, units: Units, reading: LevelReading, write: Writer): Mark[] => {
  const { x0, y0, x1, y1 } = view.box
  const x = x0 - 4
  const ticks = ticksOf(view, units, reading)
  const datum = ticks[0]
  return [
    ruled({ x, y: y0 }, { x, y: y1 }, 'outline'),
    ...ticks.flatMap((mm) => {
      const y = view.yOf(mm)
      return [
        ruled({ x: x - TICK_MM, y }, { x: x + TICK_MM, y }, 'outline'),
        lettered(write.level(mm), { x: x - 2.4, y }, LETTERS.body, { anchor: 'end' }),
      ]
    }),
    ...(datum === undefined
      ? []
      : [ruled({ x, y: view.yOf(datum) }, { x: x1, y: view.yOf(datum) }, 'centre')]),
  ]
}

import type { Evaluation } from '../../../evaluate/evaluation'
import type { CutDrain, LongCut } from '../../../evaluate/longCut/section'
import { levelPit, raisePit } from '../../../layout/pitLevels'
import type { Layout } from '../../../layout/schema'
import { setField } from '../../../layout/setField'
import { PIT_RUNGS } from '../../../model/pitFacts'
import { inches, MM_PER_M, onTick, type Units } from '../../../units/length'
import { LEVEL_NAMES } from './pitWords'

/** Something on the section that can be taken up and down. */
export interface Grip {
  readonly id: string
  readonly kind: 'pit' | 'level' | 'start' | 'fall'
  /** What it does, as it stands in a list. */
  readonly label: string
  /** What the history says was done. */
  readonly does: string
  readonly sMm: number
  readonly levelMm: number
  /** The layout with this grip at a level, mm; the same layout where that can't be. */
  readonly edit: (layout: Layout, levelMm: number) => Layout
  /** The falling stretch whose low end this is: typed as a fall, mm per m. */
  readonly drain?: CutDrain
  readonly editTyped?: (layout: Layout, fallMmPerM: number) => Layout
}

const orSame = (layout: Layout, part: string, field: string, value: number): Layout => {
  const edited = setField(layout, part, field, value)
  return edited.ok ? edited.layout : layout
}

type Named = (part: string) => string

const pitGrips = ({ pit }: LongCut, name: Named): Grip[] => {
  if (!pit) return []
  const { part, facts, fromMm, toMm } = pit
  const whole: Grip = {
    id: `pit-${part}`,
    kind: 'pit',
    label: `${name(part)} up or down, all but its rim`,
    does: `Levels of ${name(part)}`,
    sMm: (fromMm + toMm) / 2,
    levelMm: facts.overflowMm,
    edit: (layout, levelMm) => raisePit(layout, part, levelMm - facts.overflowMm),
  }
  return [
    whole,
    ...PIT_RUNGS.map(({ level }): Grip => ({
      id: `level-${part}-${level}`,
      kind: 'level',
      label: `${LEVEL_NAMES[level]} of ${name(part)}`,
      does: `${LEVEL_NAMES[level]} of ${name(part)}`,
      sMm: toMm,
      levelMm: facts[level],
      edit: (layout, levelMm) => levelPit(layout, part, level, levelMm),
    })),
  ]
}

const drainGrips = (drain: CutDrain, evaluation: Evaluation, name: Named): Grip[] => {
  const { part, fromMm, toMm, highInvertMm, lowInvertMm } = drain
  const startMm = evaluation.bay.levels.drains.get(part)?.high.invertMm ?? highInvertMm
  const start: Grip = {
    id: `start-${part}`,
    kind: 'start',
    label: `Start level of ${name(part)}`,
    does: `Start level of ${name(part)}`,
    sMm: fromMm,
    levelMm: highInvertMm,
    edit: (layout, levelMm) =>
      orSame(layout, part, 'startInvertMm', onTick(startMm + levelMm - highInvertMm)),
  }
  const lengthMm = toMm - fromMm
  if (lengthMm <= 0) return [start]
  return [
    start,
    {
      id: `fall-${part}`,
      kind: 'fall',
      label: `Fall of ${name(part)}`,
      does: `Fall of ${name(part)}`,
      sMm: toMm,
      levelMm: lowInvertMm,
      drain,
      editTyped: (layout, fallMmPerM) => orSame(layout, part, 'slope', fallMmPerM),
      edit: (layout, levelMm) =>
        orSame(layout, part, 'slope', ((highInvertMm - levelMm) * MM_PER_M) / lengthMm),
    },
  ]
}

/** Everything on a section that can be taken up or down. */
export const gripsOf = (cut: LongCut, evaluation: Evaluation, name: Named): readonly Grip[] => [
  ...pitGrips(cut, name),
  ...cut.drains.flatMap((drain) => drainGrips(drain, evaluation, name)),
]

/** The handle of a fall stands so far before the low end, clear of the wall; px. */
export const FALL_GRIP_PX = -15

/** One press of an arrow key, and with Shift; mm. */
export const STEPS: Readonly<Record<Units, { readonly fine: number; readonly coarse: number }>> = {
  'feet-inches': { fine: inches(1 / 8), coarse: inches(1) },
  metric: { fine: 2, coarse: 20 },
}

/** A dragged level comes to rest on whole steps, so that the crew can measure it. */
export const onStep = (levelMm: number, units: Units): number => {
  const { fine } = STEPS[units]
  return onTick(Math.round(levelMm / fine) * fine)
}

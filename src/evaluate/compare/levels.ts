import type { Built } from '../../model/built'
import type { DrainRun } from '../../model/levels'
import { PIT_RUNGS, type PitFacts } from '../../model/pitFacts'
import { datumAt } from '../../model/levels'
import { gutterEnds } from '../../model/gutterEnds'
import type { Judged } from '../evaluation'
import { type Figure, figureChanges, type FigureChange, type FigureUnit } from './figures'

type Told = readonly [id: string, what: string, unit: FigureUnit, value: number]

const figuresOf = (part: string, told: readonly Told[]): readonly Figure[] =>
  told.map(([id, what, unit, value]) => ({ key: `${part}/${id}`, part, what, unit, value }))

const rackFigures = ({ bay: { levels } }: Judged, built: Built): readonly Figure[] => {
  const { rack, part } = built
  if (!rack) return []
  const { high, low } = gutterEnds(built, rack)
  return figuresOf(part, [
    ['lipHigh', 'Gutter lip, high end', 'level', datumAt(levels, part, high) + rack.lipHighMm],
    ['lipLow', 'Gutter lip, low end', 'level', datumAt(levels, part, low) + rack.lipLowMm],
    ['invertLow', 'Gutter invert, low end', 'level', datumAt(levels, part, low) + rack.invertLowMm],
    ['bottomPlain', 'Hole bottom over the foot, plain', 'length', rack.plainHoleBottomMm],
    ['bottomSleeve', 'Hole bottom over the foot, sleeve', 'length', rack.sleeveHoleBottomMm],
    ['tip', 'Tower tip over the foot', 'length', rack.tipMm],
  ])
}

/** Lone troughs too: all that has an outlet and no rack of its own. */
const outletFigures = (built: Built): readonly Figure[] => {
  if (built.rack) return []
  const [outlet] = built.mouths.filter(({ role }) => role === 'trough-outlet')
  return outlet ? figuresOf(built.part, [['outlet', 'Invert at the outlet', 'level', outlet.at.z]]) : []
}

const pitFigures = (part: string, pit: PitFacts): readonly Figure[] =>
  figuresOf(
    part,
    PIT_RUNGS.map(({ level, title }) => [
      level,
      title[0]?.toUpperCase() + title.slice(1),
      'level',
      pit[level],
    ]),
  )

/** Pegs are known by their place along the line: a number may belong to another peg tomorrow. */
const drainFigures = ({ part, high, low, slopeMmPerM, lengthMm, pegs }: DrainRun): readonly Figure[] => [
  ...figuresOf(part, [
    ['high', 'Invert at the high end', 'level', high.invertMm],
    ['low', 'Invert at the low end', 'level', low.invertMm],
    ['fall', 'Fall', 'fall', slopeMmPerM],
    ['length', 'Length', 'length', lengthMm],
  ]),
  ...pegs.flatMap(({ number, cutMm, fromLowMm }) =>
    figuresOf(part, [
      [`peg/${number}/at`, `Peg ${number}, from the low end`, 'length', fromLowMm],
      [`peg/${number}/cut`, `Peg ${number}, cut from its top`, 'length', cutMm],
    ]),
  ),
]

const levelFigures = (plan: Judged): readonly Figure[] =>
  plan.bay.built.flatMap((built) => {
    const run = plan.bay.levels.drains.get(built.part)
    return [
      ...rackFigures(plan, built),
      ...outletFigures(built),
      ...(run ? drainFigures(run) : []),
      ...(built.pit ? pitFigures(built.part, built.pit) : []),
    ]
  })

/** Levels, falls, hole heights and cuts at pegs that differ, part by part. */
export const levelChanges = (before: Judged, after: Judged): readonly FigureChange[] =>
  figureChanges(levelFigures(before), levelFigures(after))

import { levelStack, type Level } from '../../evaluate/levelStack'
import type { Built } from '../../model/built'
import type { DrainRun, Foot, Peg } from '../../model/levels'
import type { DrainReturn } from '../../model/returns'
import {
  countCell,
  countField,
  type Field,
  numberField,
  quiet,
  sectionOf,
  textField,
  type Section,
} from '../fields'
import type { Told } from '../told'

interface StackLevel extends Level {
  readonly under: string
  readonly line: number
}

/** A pit has the same levels wherever one asks in it. */
const middleOf = ({ mouths }: Built) => mouths[0]?.at ?? { x: 0, y: 0 }

/** Of every line of a rack, under its outlet; of a pit; of what else has an outlet, under that. */
const stackLevels = (built: Built, told: Told): readonly StackLevel[] => {
  const outlets = built.mouths.filter(({ role }) => role === 'trough-outlet')
  const places = built.pit ? [{ at: middleOf(built), line: 0 }] : outlets
  return places.flatMap(({ at, line }) =>
    levelStack(told.plan, built.part, { at, line: line > 0 ? line : undefined }).levels.map((level) => ({
      ...level,
      under: built.part,
      line,
    })),
  )
}

const levelFields = ({ words }: Told): readonly Field<StackLevel>[] => [
  quiet(textField('under', 'Under', ({ under }) => under)),
  textField('name', 'Of', ({ under }) => words.name(under)),
  { key: 'line', title: 'Line', unit: 'count', cell: ({ line }) => countCell(line) },
  textField('level', 'Level', ({ name }) => name),
  quiet(textField('kind', 'Kind', ({ kind }) => kind)),
  quiet(textField('part', 'Part', ({ part }) => part ?? '')),
  numberField('levelMm', 'Height', 'mm', words.level, ({ levelMm }) => levelMm),
]

/** All levels from the top of the bars to the bottom of the pit, line by line; mm from the benchmark's zero. */
export const levelsSection = (told: Told): Section =>
  sectionOf({
    id: 'levels',
    title: 'Levels',
    fields: levelFields(told),
    items: told.plan.bay.built.flatMap((built) => stackLevels(built, told)),
    keyOf: ({ under, line, kind, part }, index) => `${under}/${line}/${kind}/${part ?? ''}/${index}`,
    isForPrograms: true,
  })

interface Drain {
  readonly run: DrainRun
  readonly water: DrainReturn | undefined
}

const drainFields = ({ words }: Told): readonly Field<Drain>[] => [
  quiet(textField('part', 'Part', ({ run }) => run.part)),
  textField('name', 'Drain', ({ run }) => words.name(run.part)),
  textField('state', 'State', ({ water }) => water?.state ?? ''),
  numberField('lengthMm', 'Length', 'mm', words.length, ({ run }) => run.lengthMm),
  numberField('fallMmPerM', 'Fall', 'mm/m', words.fall, ({ run }) => run.slopeMmPerM),
  numberField('highInvertMm', 'Invert, high', 'mm', words.level, ({ run }) => run.high.invertMm),
  numberField('lowInvertMm', 'Invert, low', 'mm', words.level, ({ run }) => run.low.invertMm),
  quiet(numberField('leastCoverMm', 'Least cover', 'mm', words.onTape, ({ run }) => run.tightest.coverMm)),
  numberField('flowLph', 'Flow', 'L/h', words.flowTotal, ({ water }) => water?.flowLph),
  numberField('fullestShare', 'Fullest', 'share', words.share, ({ water }) => water?.fullest.share),
  quiet(
    numberField(
      'halfFullLph',
      'Carries half full',
      'L/h',
      words.flowTotal,
      ({ water }) => water?.halfFullLph,
    ),
  ),
]

/** Each drain with its fall, its two inverts and what runs in it. */
export const drainsSection = (told: Told): Section => {
  const { levels, returns } = told.plan.bay
  return sectionOf({
    id: 'drains',
    title: 'Drains',
    fields: drainFields(told),
    items: [...levels.drains.values()].map((run) => ({ run, water: returns.drains.get(run.part) })),
    keyOf: ({ run }) => run.part,
  })
}

interface DrainPeg {
  readonly drain: string
  readonly peg: Peg
}

const pegFields = ({ words }: Told): readonly Field<DrainPeg>[] => [
  quiet(textField('part', 'Part', ({ drain }) => drain)),
  textField('name', 'Drain', ({ drain }) => words.name(drain)),
  countField('peg', 'Peg', ({ peg }) => peg.number),
  numberField('fromLowMm', 'From the low end', 'mm', words.length, ({ peg }) => peg.fromLowMm),
  quiet(numberField('xMm', 'East', 'mm', words.length, ({ peg }) => peg.at.x)),
  quiet(numberField('yMm', 'North', 'mm', words.length, ({ peg }) => peg.at.y)),
  textField('why', 'Why', ({ peg }) => peg.why.join(', ')),
  quiet(numberField('groundMm', 'Floor', 'mm', words.level, ({ peg }) => peg.groundMm)),
  numberField('pegTopMm', 'Peg top', 'mm', words.level, ({ peg }) => peg.pegTopMm),
  numberField('invertMm', 'Invert', 'mm', words.level, ({ peg }) => peg.invertMm),
  numberField('cutMm', 'Cut from peg top', 'mm', words.onTape, ({ peg }) => peg.cutMm),
  quiet(countField('outlets', 'Outlets', ({ peg }) => peg.outlets)),
  quiet(numberField('holeMm', 'Hole', 'mm', words.onTape, ({ peg }) => peg.holeMm)),
]

/** The pegs of every drain from its low end up. */
export const pegsSection = (told: Told): Section =>
  sectionOf({
    id: 'pegs',
    title: 'Pegs',
    fields: pegFields(told),
    items: [...told.plan.bay.levels.drains.values()].flatMap(({ part, pegs }) =>
      pegs.map((peg) => ({ drain: part, peg })),
    ),
    keyOf: ({ drain, peg }) => `${drain}/${peg.number}`,
  })

const footFields = ({ words }: Told): readonly Field<Foot>[] => [
  textField('part', 'Part', ({ part }) => part),
  textField('name', 'Name', ({ part }) => words.name(part)),
  numberField('xMm', 'East', 'mm', words.length, ({ at }) => at.x),
  numberField('yMm', 'North', 'mm', words.length, ({ at }) => at.y),
  numberField('groundMm', 'Floor', 'mm', words.level, ({ groundMm }) => groundMm),
  numberField('shimMm', 'Shim', 'mm', words.onTape, ({ shimMm }) => shimMm),
]

/** Every foot of every rack, what the floor is there and what goes under it. */
export const feetSection = (told: Told): Section =>
  sectionOf({
    id: 'feet',
    title: 'Feet',
    fields: footFields(told),
    items: [...told.plan.bay.levels.feet.values()].flat(),
    keyOf: ({ part }, index) => `${part}/${index}`,
    isForPrograms: true,
  })

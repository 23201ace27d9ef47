import { levelPit, rangeOf } from '../layout/pitLevels'
import { nameOf } from '../layout/names'
import type { Layout, Part } from '../layout/schema'
import { setField } from '../layout/setField'
import type { RackFacts } from '../model/rackFacts'
import { PIT_RUNGS, type PitLevel } from '../model/pitFacts'
import { onTick } from '../units/length'
import { dropOver } from '../units/slope'
import type { Writer } from '../units/writer'
import type { Evaluation } from './evaluation'
import type { Level } from './levelStack'

/** What came of setting a level: the layout, and in words what stopped it short of where it was wanted; none where nothing did. */
export interface LevelSet {
  readonly layout: Layout
  readonly stopped: string
}

/** How one level is changed. `set` takes the level from the benchmark's zero, mm. */
export interface LevelEdit {
  /** What the history calls it: `Running of Pit`. */
  readonly label: string
  readonly set: (layout: Layout, toMm: number, writer: Writer) => LevelSet
}

type PartOf<K extends Part['kind']> = Extract<Part, { kind: K }>

/** A field of a part at a value; refused where the schema has other bounds. */
const withField = (
  layout: Layout,
  { id }: Part,
  field: string,
  valueMm: number,
  stopped: string,
): LevelSet => {
  const edited = setField(layout, id, field, onTick(valueMm))
  return edited.ok ? { layout: edited.layout, stopped } : { layout, stopped: edited.sentence }
}

const titleOf = (level: PitLevel): string => PIT_RUNGS.find((rung) => rung.level === level)?.title ?? ''

/** `It stops 1" under the overflow.` */
const stopWords = (levelMm: number, atMm: number, title: string, { onTape }: Writer): string => {
  const gapMm = Math.abs(levelMm - atMm)
  const apart = gapMm < 1 ? 'at' : `${onTape(gapMm)} ${levelMm < atMm ? 'under' : 'over'}`
  return `It stops ${apart} the ${title}.`
}

const pitEdit =
  (part: PartOf<'sump'>, level: PitLevel, { bay }: Evaluation): LevelEdit['set'] =>
  (layout, toMm, writer) => {
    const { lowestMm, highestMm, above, below } = rangeOf(part, level)
    const stop = toMm > highestMm ? above : toMm < lowestMm ? below : undefined
    const stopMm = stop === undefined ? undefined : bay.builtOf.get(part.id)?.pit?.[stop]
    const atMm = Math.min(Math.max(toMm, lowestMm), highestMm)
    return {
      layout: levelPit(layout, part.id, level, toMm),
      stopped:
        stop === undefined || stopMm === undefined ? '' : stopWords(atMm, stopMm, titleOf(stop), writer),
    }
  }

/** The whole line goes up or down with the place that is set: its fall stays. */
const drainEdit =
  (part: PartOf<'drain-line'>, alongMm: number): LevelEdit['set'] =>
  (layout, toMm) =>
    withField(layout, part, 'startInvertMm', toMm + dropOver(alongMm, part.slope), '')

const bearerEdit =
  (part: PartOf<'rack-row'>, datumMm: number): LevelEdit['set'] =>
  (layout, toMm) => {
    const stopped = toMm < datumMm ? 'It stops at the rack datum.' : ''
    return withField(layout, part, 'bearerTopMm', Math.max(0, toMm - datumMm), stopped)
  }

/** Where a level of a row's tips stops, mm over its rack datum, and why. */
interface Stop {
  readonly atMm: number
  readonly words: string
}

/** All tips of a bay hang at one level: the row that asks for the highest has its way. */
const otherRowStop = ({ bay, layout }: Evaluation, part: Part): Stop => {
  let stop: Stop = { atMm: -Infinity, words: '' }
  for (const other of layout.parts) {
    const needMm = bay.builtOf.get(other.id)?.rack?.tipNeededMm ?? -Infinity
    if (other.id !== part.id && needMm > stop.atMm)
      stop = { atMm: needMm, words: `All tips hang at one level, and ${nameOf(other)} asks for this one.` }
  }
  return stop
}

const lowestTip = (evaluation: Evaluation, part: Part, rack: RackFacts): Stop => {
  const other = otherRowStop(evaluation, part)
  return other.atMm > rack.invertHighMm
    ? other
    : { atMm: rack.invertHighMm, words: 'It stops at the invert of its trough.' }
}

/** Risers of a set length let the tips hang no higher than their holes. */
const highestTip = (part: PartOf<'rack-row'>, rack: RackFacts): Stop => {
  const spareMm = rack.riserMm - rack.riserNeededMm
  const riserStopMm = Math.max(rack.tipMm, rack.tipNeededMm) + spareMm
  return part.riserMm !== null && riserStopMm < rack.lipHighMm
    ? { atMm: riserStopMm, words: 'It stops where the risers are too short.' }
    : { atMm: rack.lipHighMm, words: 'It stops at the lip of its trough.' }
}

const tipEdit =
  (part: PartOf<'rack-row'>, rack: RackFacts, datumMm: number, evaluation: Evaluation): LevelEdit['set'] =>
  (layout, toMm) => {
    const low = lowestTip(evaluation, part, rack)
    const high = highestTip(part, rack)
    const wantedMm = toMm - datumMm
    const stop = wantedMm < low.atMm ? low : wantedMm > high.atMm ? high : undefined
    const belowLipMm = Math.max(0, rack.lipHighMm - (stop?.atMm ?? wantedMm))
    return withField(layout, part, 'tipBelowLipMm', belowLipMm, stop?.words ?? '')
  }

const troughEdit =
  (part: PartOf<'trough'>, { bay }: Evaluation): LevelEdit['set'] =>
  (layout, toMm) => {
    const overMm = toMm - bay.site.groundAt(part.at.x, part.at.y)
    return withField(
      layout,
      part,
      'highInvertMm',
      Math.max(0, overMm),
      overMm < 0 ? 'It stops at the floor.' : '',
    )
  }

const rowSet = (
  evaluation: Evaluation,
  part: PartOf<'rack-row'>,
  { kind, levelMm }: Level,
): LevelEdit['set'] | undefined => {
  const rack = evaluation.bay.builtOf.get(part.id)?.rack
  if (!rack) return undefined
  if (kind === 'bearer-top') return bearerEdit(part, levelMm - rack.bearerTopMm)
  return kind === 'tip' ? tipEdit(part, rack, levelMm - rack.tipMm, evaluation) : undefined
}

const isPitLevel = (kind: string): kind is PitLevel => PIT_RUNGS.some(({ level }) => level === kind)

const setOf = (evaluation: Evaluation, part: Part, level: Level): LevelEdit['set'] | undefined => {
  const { kind, alongMm } = level
  switch (part.kind) {
    case 'sump':
      return isPitLevel(kind) ? pitEdit(part, kind, evaluation) : undefined
    case 'drain-line':
      return kind === 'crown' || alongMm === undefined ? undefined : drainEdit(part, alongMm)
    case 'rack-row':
      return rowSet(evaluation, part, level)
    case 'trough':
      return kind === 'invert-high' ? troughEdit(part, evaluation) : undefined
    default:
      return undefined
  }
}

/** How a level of a stack is changed; undefined for one that follows from others, such as the floor or a lip. */
export const levelEditOf = (evaluation: Evaluation, level: Level): LevelEdit | undefined => {
  const part = evaluation.layout.parts.find(({ id }) => id === level.part)
  const set = part && setOf(evaluation, part, level)
  return part && set && { label: `${level.name} of ${nameOf(part)}`, set }
}

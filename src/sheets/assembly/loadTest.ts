import type { Words } from '../../checks/context'
import { strengthOf } from '../../evaluate/5-loads'
import type { Evaluation } from '../../evaluate/evaluation'
import { blank, type Cell, counted, said, type Table } from '../../model/table'
import { inches, type Units } from '../../units/length'
import { writeDecimal } from '../../units/writeDecimal'
import type { Writer } from '../../units/writer'
import { massWords } from '../massWords'
import { heading, type Piece, tableOf, words } from '../piece'
import { wetTowerOf } from '../wetTower'
import type { NamedKind } from './naming'
import { type ProofSag, proofSag } from './proofSag'

interface Tried {
  readonly plan: Pick<Evaluation, 'bay' | 'layout'>
  readonly write: Words
  readonly units: Units
}

/** Racks of a kind that are built alike may hang unlike towers: the heaviest count. */
const heaviestKg = ({ kind }: NamedKind, { settings }: Evaluation['layout']): number =>
  Math.max(...kind.all.map(({ facts }) => wetTowerOf(facts, settings)))

/** A string is read to this, and what a rail sags to no less is told, mm. */
const LEFT_MM = inches(1 / 16)

const sagCell = (sagMm: number | undefined, { onTape }: Writer): Cell => {
  if (sagMm === undefined) return blank('too long: mend it first')
  return counted(sagMm, sagMm < LEFT_MM ? `under ${onTape(LEFT_MM)}` : onTape(sagMm))
}

const sagOf = ({ kind }: NamedKind, { plan: { bay, layout } }: Tried): ProofSag | undefined => {
  const strength = strengthOf(bay).get(kind.first.part)
  return strength && proofSag(kind.first, strength, layout.settings.proofTimes)
}

const sagCells = (sag: ProofSag | undefined, write: Writer): readonly Cell[] =>
  sag ? [sagCell(sag.leftMm, write), sagCell(sag.rightMm, write)] : [blank(), blank()]

/** Whether a rail of it would not come through: then nothing is hung, on neither rail. */
const isTooLong = (sag: ProofSag | undefined): boolean =>
  sag !== undefined && (sag.leftMm === undefined || sag.rightMm === undefined)

const loadRow = (named: NamedKind, tried: Tried): Table['rows'][number] => {
  const { kind, letter } = named
  const { layout } = tried.plan
  const { lines } = kind.first.facts
  const bars = kind.first.members.filter(({ stick }) => stick.mark === 'HB').length
  const towerKg = heaviestKg(named, layout)
  const sag = sagOf(named, tried)
  const kg = (value: number) =>
    isTooLong(sag) ? blank('nothing') : counted(Math.round(value * 10) / 10, massWords(value, tried.units))
  const abarKg = layout.settings.proofTimes * lines * towerKg
  return {
    key: kind.key,
    cells: [
      said(letter),
      counted(lines),
      counted(bars),
      counted(Math.round(towerKg * 10) / 10, tried.write.mass(towerKg)),
      kg(abarKg),
      kg(abarKg * bars),
      ...sagCells(sag, tried.write),
    ],
  }
}

/** What one kind of rack is tried with: a bar's worth of towers, and the rack's; and what its rails should do then. */
const loadTable = (kinds: readonly NamedKind[], tried: Tried): Table => ({
  id: 'load-test',
  title: 'What to hang on the first rack of each kind, and how far its rails go down',
  columns: [
    { key: 'rack', title: 'Rack', unit: 'text', isMain: true },
    { key: 'towersABar', title: 'Towers a bar', unit: 'count' },
    { key: 'bars', title: 'Bars', unit: 'count' },
    { key: 'towerKg', title: 'Each tower', unit: 'kg' },
    { key: 'hangABarKg', title: 'Hang on each bar', unit: 'kg', isMain: true },
    { key: 'hangKg', title: 'Hang on the rack', unit: 'kg' },
    { key: 'leftSagMm', title: 'Left rail down', unit: 'mm' },
    { key: 'rightSagMm', title: 'Right rail down', unit: 'mm' },
  ],
  rows: kinds.map((named) => loadRow(named, tried)),
})

/** `Assumed: a tower weighs 25 lb`, or that rows were weighed. */
const weightWords = (kinds: readonly NamedKind[], { plan: { layout }, write }: Tried): string => {
  const isWeighed = kinds.some(({ kind }) => kind.all.some(({ facts }) => facts.towerKg !== undefined))
  const { wetTowerKg, proofTimes } = layout.settings
  const times = `The proof load is ${writeDecimal(proofTimes, 0, 2)} times the towers`
  const recipe = 'The recipe is common practice, no source: it is a trial, not a rating.'
  const assumed = `Assumed: a planted tower, flooded, weighs ${write.mass(wetTowerKg)}`
  return isWeighed
    ? `${times}. Towers of rows that were weighed are as weighed. ${assumed} elsewhere. ${recipe}`
    : `${times}. ${assumed}. Weigh one; if it is heavier, hang more in proportion. ${recipe}`
}

/** What the rails of racks rest in, as a recipe speaks of it. */
interface Carriers {
  readonly holder: string
  readonly more: string
  readonly gives: string
}

/** What is put closer, and what can give way, where some rows hang from the house. */
const carriers = (kinds: readonly NamedKind[]): Carriers => {
  const isHung = ({ kind }: NamedKind): boolean => kind.first.facts.carriedBy === 'house'
  if (!kinds.some(isHung)) return { holder: 'riser', more: 'risers', gives: 'a split riser' }
  return kinds.every(isHung)
    ? { holder: 'strap', more: 'straps', gives: 'a strap that slips' }
    : { holder: 'riser or strap', more: 'risers or straps', gives: 'a split riser, a strap that slips' }
}

/** The strength of conduit is nobody's promise: the recipe by which the crew finds out. Common practice, no source. */
export const loadTest = (
  kinds: readonly NamedKind[],
  plan: Tried['plan'],
  write: Words,
  units: Units,
  mind: string | undefined,
): readonly Piece[] => {
  const { holder, more, gives } = carriers(kinds)
  return [
    heading('Load test of the first rack of each kind'),
    ...(mind === undefined ? [] : [words(mind, 'caution')]),
    words(weightWords(kinds, { plan, write, units }), 'note'),
    tableOf(loadTable(kinds, { plan, write, units })),
    {
      as: 'steps',
      steps: [
        {
          key: 'string',
          text: `Tape the area off. Stretch a string along each rail from ${holder} to ${holder}, and write the gap at the middle of every bay on the rail.`,
        },
        {
          key: 'hang',
          text: 'Hang the loads bar by bar, low, from the middle of the rack outwards: sand bags or buckets of water on rope, a hand’s breadth over the floor. Feet clear of them. Nobody under the rack, nobody on it.',
        },
        {
          key: 'wait',
          text: 'Leave it 24 hours. Write the gaps again: the difference is what the rail has gone down. Twice what the table says or more: take it off, and find out why. Look at every hole, screw, sleeve and bar end.',
        },
        {
          key: 'release',
          text: `Take it all off and read once more: it should spring back to the first gaps. What stays bent by more than ${write.onTape(LEFT_MM)}, ${gives}, or a bar that has walked: stop, and put ${more} closer or hang less before the next rack is built.`,
        },
      ],
    },
    { as: 'blanks', labels: ['Most sag', 'Left after', 'Tried by', 'Day'] },
  ]
}

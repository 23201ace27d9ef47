import { counted, said, type Table } from '../../model/table'
import { inches, type Units } from '../../units/length'
import type { Writer } from '../../units/writer'
import { PROOF, WET_TOWER_KG } from '../hazardRacks'
import { massWords } from '../massWords'
import { heading, type Piece, tableOf, words } from '../piece'
import type { NamedKind } from './naming'

/** What one kind of rack is tried with: a bar's worth of towers, and the rack's. */
const loadTable = (kinds: readonly NamedKind[], units: Units): Table => ({
  id: 'load-test',
  title: 'What to hang on the first rack of each kind',
  columns: [
    { key: 'rack', title: 'Rack', unit: 'text', isMain: true },
    { key: 'towersABar', title: 'Towers a bar', unit: 'count' },
    { key: 'bars', title: 'Bars', unit: 'count' },
    { key: 'wetKg', title: 'Wet towers on it', unit: 'count' },
    { key: 'hangABarKg', title: 'Hang on each bar', unit: 'count', isMain: true },
    { key: 'hangKg', title: 'Hang on the rack', unit: 'count' },
  ],
  rows: kinds.map(({ kind, letter }) => {
    const { lines } = kind.first.facts
    const bars = kind.first.members.filter(({ stick }) => stick.mark === 'HB').length
    const wetKg = lines * bars * WET_TOWER_KG
    const kg = (value: number) => counted(Math.round(value * 10) / 10, massWords(value, units))
    return {
      key: kind.key,
      cells: [
        said(letter),
        counted(lines),
        counted(bars),
        kg(wetKg),
        kg(PROOF * lines * WET_TOWER_KG),
        kg(PROOF * wetKg),
      ],
    }
  }),
})

/** The least set that an eye and a tape find on a string. */
const LEFT_MM = inches(1 / 16)

/** The strength of conduit is nobody's promise: the recipe by which the crew finds out. Common practice, no source. */
export const loadTest = (
  kinds: readonly NamedKind[],
  write: Writer,
  units: Units,
  mind: string | undefined,
): readonly Piece[] => [
  heading('Load test of the first rack of each kind'),
  ...(mind === undefined ? [] : [words(mind, 'caution')]),
  words(
    `Assumed: a planted tower, flooded, weighs ${massWords(WET_TOWER_KG, units)}. Weigh one; if it is heavier, hang more in proportion. The recipe is common practice, no source: it is a trial, not a rating.`,
    'note',
  ),
  tableOf(loadTable(kinds, units)),
  {
    as: 'steps',
    steps: [
      {
        key: 'string',
        text: 'Tape the area off. Stretch a string along each rail from riser to riser, and write the gap at the middle of every bay on the rail.',
      },
      {
        key: 'hang',
        text: 'Hang the loads bar by bar, low, from the middle of the rack outwards: sand bags or buckets of water on rope, a hand’s breadth over the floor. Nobody under it, nobody on it.',
      },
      {
        key: 'wait',
        text: 'Leave it 24 hours. Write the gaps again: sag is the difference. Look at every hole, screw, sleeve and bar end.',
      },
      {
        key: 'release',
        text: `Take it all off and read once more. What stays bent by more than ${write.onTape(LEFT_MM)}, a split riser, or a bar that has walked: stop, and put risers closer or hang less before the next rack is built.`,
      },
    ],
  },
  { as: 'blanks', labels: ['Most sag', 'Left after', 'Tried by', 'Day'] },
]

import { fittingOf } from '../../catalogue/fittings'
import { counted, said, type Row, type Table } from '../../model/table'
import type { Assembled, Fixings } from './members'

/** Joints that each member makes with what it is screwed to: how many, and the words. */
interface Joint {
  readonly words: string
  readonly perMember: number
}

const joints: Readonly<Record<string, Joint>> = {
  'RS-p': { words: 'Runner to riser, through the runner’s outer face', perMember: 1 },
  'RS-s': { words: 'Runner to sleeve riser, through the runner’s outer face', perMember: 1 },
  'RS-d': { words: 'Runner to riser of two holes, through the runner’s outer face', perMember: 1 },
  BX: { words: 'Base cross-piece to riser', perMember: 2 },
  BR: { words: 'Short runner to riser', perMember: 2 },
  TT: { words: 'Top tie to riser', perMember: 2 },
  SP: { words: 'Splice plate to runner, each side of the joint', perMember: 2 },
  SB: { words: 'Side brace, each end', perMember: 2 },
  XB: { words: 'Cross brace, each end', perMember: 2 },
  GB: { words: 'Bearer down into what carries it, each side', perMember: 2 },
}

/** How often other fixings are put on a member, and where. */
const places: Readonly<Record<string, Joint>> = {
  'sleeve-screw': { words: 'Rail joint, from below, one in each rail', perMember: 2 },
  'end-cap': { words: 'Capped end', perMember: 1 },
  'bar-stop': { words: 'Bar stop, on either side of each rail', perMember: 4 },
  'rail-stop': { words: 'Rail stop, at the row’s first riser', perMember: 1 },
  'rail-clamp': { words: 'Lapped rails, one clamp on each side of the riser', perMember: 2 },
  'ground-anchor': { words: 'Anchor beside the foot, its strap over the base', perMember: 1 },
  'foot-plate': { words: 'Riser stands on its plate; its screws only locate it', perMember: 1 },
}

const rowOf = (mark: string, item: string, count: number, members: number): Row => {
  const { noun, title } = fittingOf(item)
  const isScrew = noun === 'screw'
  const joint = isScrew ? joints[mark] : places[noun]
  // Screws are shared out over all joints of the mark; other things are counted where they are.
  const at = isScrew ? members * (joint?.perMember ?? 1) : count
  return {
    key: `${mark}/${item}`,
    cells: [
      said(joint?.words ?? title),
      said(mark),
      said(title),
      counted(at),
      counted(at > 0 ? count / at : 0),
      counted(count),
    ],
  }
}

const ORDER = 'BX BR TT RS-p RS-s RS-d SB XB SP GB RL RL-b SV DW HB'.split(' ')

const isScrew = ([, item]: readonly [string, string, number]): boolean => item === 'screw'

const fixed = (fixings: Fixings): readonly (readonly [mark: string, item: string, count: number])[] =>
  [...fixings]
    .flatMap(([mark, items]) => [...items].map(([item, count]) => [mark, item, count] as const))
    .toSorted(
      (a, b) =>
        Number(isScrew(b)) - Number(isScrew(a)) ||
        ORDER.indexOf(a[0]) - ORDER.indexOf(b[0]) ||
        (a[1] < b[1] ? -1 : 1),
    )

const screwSum = (fixings: Fixings): number =>
  fixed(fixings).reduce((sum, each) => sum + (isScrew(each) ? each[2] : 0), 0)

/** Screws of every joint, then caps, stops and plates: as many as the take-off counts for it. */
export const jointTable = (id: string, title: string, { members, fixings }: Assembled): Table => {
  const membersOf = (mark: string): number => members.filter(({ stick }) => stick.mark === mark).length
  const screws = screwSum(fixings)
  const sum: Row = {
    key: 'screws',
    isSum: true,
    cells: [
      said('Wood screws in all'),
      said(''),
      said(fittingOf('screw').title),
      said(''),
      said(''),
      counted(screws),
    ],
  }
  return {
    id,
    title,
    columns: [
      { key: 'joint', title: 'Joint', unit: 'text' },
      { key: 'mark', title: 'Of', unit: 'text' },
      { key: 'fixing', title: 'Fixing', unit: 'text' },
      { key: 'joints', title: 'Joints', unit: 'count' },
      { key: 'each', title: 'Each', unit: 'count', isMain: true },
      { key: 'count', title: 'In all', unit: 'count' },
    ],
    rows: [
      ...fixed(fixings).map(([mark, item, count]) => rowOf(mark, item, count, membersOf(mark))),
      ...(screws > 0 ? [sum] : []),
    ],
  }
}

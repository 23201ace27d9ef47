import type { Evaluation } from '../../evaluate/evaluation'
import { sawBenchOf } from '../../evaluate/sawn/sawBench'
import type { RackFacts } from '../../model/rackFacts'
import { inches, type Units } from '../../units/length'
import type { Writer } from '../../units/writer'
import { holesWords, kindWords } from '../sawnWords'
import type { DrilledKind } from './drilledKinds'

/** How a kind is marked on the wood: `RS-p`, and `RS-p (2)` where rows differ. */
export const kindMark = ({ key }: Pick<DrilledKind, 'key'>): string => key.replace(/\/(\d+)$/, ' ($1)')

/** Heights nearer than this are one height at the drill. */
const ALIKE_MM = inches(1 / 64)

const apartWords = (mm: number, [higher, lower]: readonly [string, string], { onTape }: Writer): string =>
  Math.abs(mm) < ALIKE_MM ? 'level with it' : `${onTape(Math.abs(mm))} ${mm > 0 ? higher : lower}`

const differenceWords = (facts: RackFacts, write: Writer): string => {
  const centre = facts.sleeveHoleMm - facts.plainHoleMm
  const bottom = facts.sleeveHoleBottomMm - facts.plainHoleBottomMm
  if (Math.abs(centre) < ALIKE_MM && Math.abs(bottom) < ALIKE_MM)
    return 'Both kinds of hole are drilled with one bit at one height: the rails rise by the wall of the sleeve at each joint, and the towers do not mind.'
  const sides = ['higher', 'lower'] as const
  return `An RS-s hole has its centre ${apartWords(centre, sides, write)} than an RS-p hole and its bottom ${apartWords(bottom, sides, write)}: conduit lies on the bottom of its hole, and a rail lies in the bigger conduit a wall above that. So drilled, the rails come out level.`.replaceAll(
    'level with it than an RS-p hole',
    'level with that of an RS-p hole',
  )
}

/** Why risers of one row are drilled at two heights; nothing where all are alike. */
export const twoHeightsWords = ({ bay }: Pick<Evaluation, 'bay'>, write: Writer): readonly string[] => [
  ...new Set(
    bay.built.flatMap(({ rack }) =>
      rack && rack.drilledFor.length > 1 ? [differenceWords(rack, write)] : [],
    ),
  ),
]

/** Pieces that are cut, and perhaps drilled, whose holes now belong elsewhere. */
export const cutAlreadyWords = (plan: Pick<Evaluation, 'bay' | 'layout'>, units: Units): readonly string[] =>
  sawBenchOf(plan).cut.flatMap(({ right }) =>
    right
      .filter(({ drilled }) => drilled === 'moved' || drilled === 'unknown')
      .map((each) => {
        const { count, piece } = each
        const what = kindWords(piece.marks)
        return `${count} ${what}${count === 1 ? ' is' : 's are'} cut already. ${holesWords(each, units)}`
      }),
  )

import { frameSizes, framesOf } from './frames'
import type { Member } from './members'
import type { RackBuilt } from './rowBuilt'

/** A height over the foot of a riser, or over the floor where there is none, mm. */
export interface Height {
  readonly mm: number
  readonly words: string
  /** Read to the finer step of the drill. */
  readonly isDrilled?: true
}

const topsOver = (footMm: number, member: Member | undefined, words: string): Height[] =>
  member ? [{ mm: member.from.z + member.stick.heightMm / 2 - footMm, words }] : []

/** Over the floor, of what hangs from the house. */
const hungHeights = ({ facts, members }: RackBuilt): readonly Height[] => {
  const one = (...marks: readonly string[]) => members.find(({ stick }) => marks.includes(stick.mark))
  const heights: Height[] = [
    ...topsOver(0, one('GB'), 'bearer top'),
    ...topsOver(0, one('RL', 'RL-b'), 'rail top'),
    ...topsOver(0, one('HB'), 'bar top'),
    { mm: facts.lipHighMm, words: 'lip, high end of row' },
    { mm: facts.lipLowMm, words: 'lip, low end of row' },
  ]
  return heights.toSorted((a, b) => a.mm - b.mm)
}

/** What is read on a tape stood beside the first riser of a rack, from its foot up. */
export const heightsOf = (rack: RackBuilt): readonly Height[] => {
  const [frame] = framesOf(rack)
  const sizes = frame && frameSizes(frame)
  if (!sizes) return hungHeights(rack)
  const { facts, bearers, members, runners } = rack
  const footMm = frame.risers[0]?.from.z ?? 0
  const hole = frame.isSleeved ? facts.sleeveHoleBottomMm : facts.plainHoleBottomMm
  const [runner = frame.feet.find(({ stick }) => stick.mark === 'BR')] = runners
  const heights: Height[] = [
    ...topsOver(footMm, runner, 'runner top'),
    ...topsOver(footMm, bearers[0], 'bearer top'),
    { mm: sizes.tieTopMm, words: 'tie top' },
    { mm: hole, words: `${frame.isSleeved ? 'big' : 'rail'} hole, bottom`, isDrilled: true },
    ...topsOver(
      footMm,
      members.find(({ stick }) => stick.mark === 'HB'),
      'bar top',
    ),
    { mm: sizes.riserMm, words: 'riser top' },
    { mm: facts.lipHighMm - footMm, words: 'lip, high end of row' },
    { mm: facts.lipLowMm - footMm, words: 'lip, low end of row' },
  ]
  return heights.toSorted((a, b) => a.mm - b.mm)
}

import type { Box } from '../../../../geometry/box'
import type { StrengthState } from '../../../../model/strength'
import type { Member } from '../../../../sheets/assembly/members'
import { ringPlaces } from '../../../../sheets/assembly/rings'
import { coverOf, type Laid, pointedAt, type View } from '../../../../sheets/assembly/shapes'
import { PILL_MM } from './glass'
import { looked, type Pill } from './shape'

/** Room for the shape of a state before its word; as wide as its letters are. */
const SHAPE = '■'

/** What a pill says: the mark, and a word that must not be overlooked. */
const textOf = (mark: string, states: ReadonlyMap<string, StrengthState>): string => {
  const state = states.get(mark)
  return state === undefined || state === 'Within' ? mark : `${mark} ${SHAPE} ${state}`
}

interface PillsIn {
  readonly members: readonly Member[]
  readonly view: View
  readonly laid: Laid
  /** Which marks are named here. */
  readonly isNamed: (mark: string) => boolean
  readonly states: ReadonlyMap<string, StrengthState>
  readonly words: readonly Box[]
  readonly within: Box
  /** Where along the drawing they rather stand, mm of the rack. */
  readonly middle: number
}

/** What lies exactly behind another of its mark is hidden by it, and named with it: a long row has each of its frames so. */
const seenOnce = (members: readonly Member[], view: View): readonly Member[] => {
  const seen = new Map<string, Member>()
  for (const member of members) {
    const { from, to, stick } = member
    const places = [view.across(from), from.z, view.across(to), to.z].map((mm) => Math.round(mm))
    const key = [stick.mark, ...places].join(' ')
    const before = seen.get(key)
    if (!before || view.near(from) > view.near(before.from)) seen.set(key, member)
  }
  return [...seen.values()]
}

/** Marks beside their members, each once, off all members and words. */
export const pillsOf = (given: PillsIn): readonly Pill[] => {
  const { view, laid, states, words, within, middle, isNamed } = given
  const members = seenOnce(
    given.members.map((member) => looked(member, view)),
    view,
  )
  const pointed = pointedAt(members, view, laid, middle).filter(({ mark }) => isNamed(mark))
  const texts = new Map(pointed.map(({ mark }) => [textOf(mark, states), mark]))
  const covers = members.flatMap((member) => coverOf(member, view, laid))
  // Those with most to say first, while there is room.
  const asked = pointed
    .map(({ mark, points }) => ({ mark: textOf(mark, states), points }))
    .toSorted((a, b) => b.mark.length - a.mark.length)
  return ringPlaces(asked, covers, words, within, PILL_MM).map(({ mark: text, ring, point }) => ({
    mark: texts.get(text) ?? text,
    text,
    at: ring,
    point,
  }))
}

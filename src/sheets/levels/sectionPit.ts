import { groundAt } from '../../evaluate/longCut/groundAt'
import type { CutPit, LongCut } from '../../evaluate/longCut/section'
import type { Mark } from '../../model/drawing'
import { PIT_RUNGS, type PitRung } from '../../model/pitFacts'
import type { Writer } from '../../units/writer'
import { capital } from './capital'
import { lettered, LETTERS, ruled } from '../ink'
import type { SectionView } from './sectionView'

const STEP_MM = 3.5
const LEADER_MM = 7

/** The levels of a pit from the top down, those of one height together: name and level in words. */
export const pitLevelWords = (
  { facts }: CutPit,
  { level }: Writer,
): readonly { text: string; levelMm: number }[] => {
  const rungs = PIT_RUNGS.toSorted((a, b) => facts[b.level] - facts[a.level])
  return rungs.map(({ level: rung, title }: PitRung) => ({
    text: `${capital(title)} ${level(facts[rung])}`,
    levelMm: facts[rung],
  }))
}

/** Places from the top down, each at least a step over the next, none under the foot of the drawing. */
export const stackedUp = (wanted: readonly number[], lowest: number): readonly number[] => {
  const places: number[] = []
  let least = lowest
  for (const y of wanted.toReversed()) {
    const place = Math.max(y, least)
    places.unshift(place)
    least = place + STEP_MM
  }
  return places
}

const levelMarks = (pit: CutPit, view: SectionView, write: Writer): Mark[] => {
  const words = pitLevelWords(pit, write)
  const wanted = words.map(({ levelMm }) => view.yOf(Math.max(levelMm, view.lowMm)))
  const places = stackedUp(wanted, view.box.y0)
  const [near, far] = [view.xOf(pit.fromMm), view.xOf(pit.toMm)]
  const left = view.box.x1 + LEADER_MM
  return words.flatMap(({ text, levelMm }, i) => {
    const isCut = levelMm >= view.lowMm
    const [y, at] = [wanted[i] ?? 0, places[i] ?? 0]
    return [
      ...(isCut && levelMm < pit.facts.rimMm ? [ruled({ x: near, y }, { x: far, y }, 'water')] : []),
      ruled({ x: far, y }, { x: left - 1, y: at }, isCut ? 'dimension' : 'hidden'),
      lettered(text, { x: left, y: at }, LETTERS.body),
    ]
  })
}

/** A wall goes on under the drawing: a zigzag across it. */
const breakMark = (x: number, y: number): Mark[] => [
  ruled({ x: x - 2, y: y - 0.6 }, { x: x + 2, y: y + 0.6 }, 'outline'),
]

/** A pit as far as the section goes down, broken off there, with all its levels in words. */
export const pitMarks = (cut: LongCut, view: SectionView, write: Writer): Mark[] => {
  const { pit } = cut
  if (!pit) return []
  const isBroken = pit.facts.bottomMm < view.lowMm
  const bottom = view.yOf(Math.max(pit.facts.bottomMm, view.lowMm))
  const top = Math.max(pit.facts.rimMm, groundAt(cut, pit.fromMm))
  const [near, far] = [view.xOf(pit.fromMm), view.xOf(pit.toMm)]
  return [
    ruled({ x: near, y: bottom }, { x: near, y: view.yOf(top) }, 'wall'),
    ruled(
      { x: far, y: bottom },
      { x: far, y: view.yOf(Math.max(pit.facts.rimMm, groundAt(cut, pit.toMm))) },
      'wall',
    ),
    ...(isBroken
      ? [...breakMark(near, bottom), ...breakMark(far, bottom)]
      : [ruled({ x: near, y: bottom }, { x: far, y: bottom }, 'wall')]),
    ...levelMarks(pit, view, write),
  ]
}

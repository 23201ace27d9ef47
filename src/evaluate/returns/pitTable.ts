import { litresAt, PIT_RUNGS, type PitFacts } from '../../model/pitFacts'

/** A line on a pit's wall: how high it is, what stands under it, and what it is the level of. */
export interface PaintMark {
  /** From the benchmark's zero, and from the bottom, mm. */
  readonly levelMm: number
  readonly depthMm: number
  readonly litres: number
  /** `running level`; more than one where two levels are one; none for a step. */
  readonly titles: readonly string[]
}

/** Lines closer than this are one line. */
const ONE_LINE_MM = 0.5

const markAt = (pit: PitFacts, levelMm: number, titles: readonly string[]): PaintMark => ({
  levelMm,
  depthMm: levelMm - pit.bottomMm,
  litres: litresAt(pit, levelMm),
  titles,
})

/** The named levels from the rim down, those of one height in one line. */
export const namedMarks = (pit: PitFacts): readonly PaintMark[] => {
  const marks: PaintMark[] = []
  for (const { level, title } of PIT_RUNGS.toSorted((a, b) => pit[b.level] - pit[a.level])) {
    const last = marks.at(-1)
    if (last && last.levelMm - pit[level] < ONE_LINE_MM)
      marks[marks.length - 1] = { ...last, titles: [...last.titles, title] }
    else marks.push(markAt(pit, pit[level], [title]))
  }
  return marks
}

/**
 * What is painted on a pit's wall, from the rim down: a line at each step, mm, counted from the bottom, and one at each named
 * level, with the litres under it. @throws RangeError for a step that is none.
 */
export const paintMarks = (pit: PitFacts, stepMm: number): readonly PaintMark[] => {
  if (!(stepMm > 0)) throw new RangeError(`A pit's wall can't be marked every ${stepMm} mm`)
  const named = namedMarks(pit)
  const isNamed = (levelMm: number): boolean =>
    named.some((mark) => Math.abs(mark.levelMm - levelMm) < ONE_LINE_MM)
  const count = Math.floor(Math.max(0, pit.rimMm - pit.bottomMm) / stepMm)
  const steps = Array.from({ length: count }, (_, step) => pit.bottomMm + (step + 1) * stepMm)
  const plain = steps.filter((levelMm) => !isNamed(levelMm)).map((levelMm) => markAt(pit, levelMm, []))
  return [...named, ...plain].toSorted((a, b) => b.levelMm - a.levelMm)
}

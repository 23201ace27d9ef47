import { boxOf, joined, type Box } from '../geometry/box'
import type { Evaluation } from '../evaluate/evaluation'
import type { Built } from '../model/built'
import type { Mark } from '../model/drawing'
import type { PartId } from '../model/ids'
import { rememberEach } from '../model/remember'

/** A part as the canvas draws it: its shapes on the floor, and its words over everybody's shapes. */
export interface DrawnPart {
  readonly id: PartId
  readonly box: Box | undefined
  readonly shapes: readonly Mark[]
  readonly words: readonly Mark[]
}

const isWords = ({ as }: Mark): boolean => as === 'text'

const boxAround = ({ bodies }: Built): Box | undefined => {
  const boxes = bodies.map(({ outline }) => boxOf(outline))
  return boxes.length > 0 ? boxes.reduce(joined) : undefined
}

const drawnOf = rememberEach<readonly Mark[], Built, DrawnPart>((marks, built) => ({
  id: built.part,
  box: boxAround(built),
  shapes: marks.filter((mark) => !isWords(mark)),
  words: marks.filter(isWords),
}))

/** Racks come first, so that what is buried under them still shows as the hidden line it is. */
const rank = ({ rack }: Built): number => (rack ? 0 : 1)

/** Every part in the order of drawing; the same object for as long as neither its marks nor its place change. */
export const drawnParts = ({ bay, marksOf }: Evaluation): readonly DrawnPart[] =>
  bay.built
    .toSorted((a, b) => rank(a) - rank(b))
    .flatMap((built) => {
      const marks = marksOf.get(built.part)
      return marks ? [drawnOf(marks, built)] : []
    })

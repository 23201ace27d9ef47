import type { CanRecut, CutOfStock, Made, Right } from '../evaluate/sawn/whatsCut'
import type { HoleAt } from '../layout/bench'
import { hasMark, memberName } from '../model/memberNames'
import { inches, toTicks, type Units } from '../units/length'
import { type Writer, writerFor } from '../units/writer'

const SIXTEENTH = toTicks(inches(1 / 16))

const pieces = (count: number, what = 'piece'): string => `${count} ${what}${count === 1 ? '' : 's'}`

/** Marks of members, or the name of one kind of them: `riser`, where all are risers. */
export const marksWords = (marks: readonly string[]): string =>
  marks.map((mark) => (hasMark(mark) ? mark : memberName(mark))).join(', ')

/** What all members of these marks are together: `riser` for a riser with a plain hole and one with a sleeve's; else `piece`. */
export const kindWords = (marks: readonly string[]): string => {
  const kinds = new Set(marks.map((mark) => memberName(mark).split(',')[0] ?? mark))
  const [kind, ...others] = kinds
  return kind !== undefined && others.length === 0 && hasMark(marks[0] ?? '') ? kind : 'piece'
}

/** Heights by mark: `RS-p 68-7/8" or 69-3/8", RS-s 69-7/16"`. */
const holeList = (holes: readonly HoleAt[], { onTape }: Writer): string =>
  [...new Set(holes.map(({ mark }) => mark))]
    .map((mark) => {
      const heights = holes.filter((hole) => hole.mark === mark).map(({ centreMm }) => onTape(centreMm))
      return `${mark} ${[...new Set(heights)].join(' or ')}`
    })
    .join(', ')

/** What has to be known of the holes of pieces whose length is right. */
export const holesWords = (
  { piece, drilled, holes }: Pick<Right, 'piece' | 'drilled' | 'holes'>,
  units: Units,
): string => {
  const writer = writerFor(units)
  switch (drilled) {
    case 'no-holes':
      return ''
    case 'same':
      return 'Holes stand where they did.'
    case 'moved':
      return `If they are drilled, check them: the holes were to be at ${holeList(piece.holes ?? [], writer)} from the foot, and now belong at ${holeList(holes, writer)}.`
    case 'unknown':
      return `Where these were to be drilled is not known: check their holes against ${holeList(holes, writer)} from the foot.`
  }
}

/** Where to take off what is too long, so that drilled holes stand right. */
export const footWords = ({ piece, makes, offMm, offFootMm, drilled }: CanRecut, units: Units): string => {
  const { onTape } = writerFor(units)
  const [first, ...others] = makes
  if (first.holes.length === 0 || others.length > 0) return ''
  if (drilled === 'same') return 'Take it off the top: holes that are drilled then stay right.'
  if (offFootMm === undefined) return holesWords({ piece, drilled, holes: first.holes }, units)
  const restTicks = toTicks(offMm) - toTicks(offFootMm)
  const top = restTicks >= SIXTEENTH ? `, and ${onTape(offMm - offFootMm)} off the top` : ''
  return `Take ${onTape(offFootMm)} off the foot${top}: holes that are drilled then stand right.`
}

const madeWords = ({ line, lengthMm }: Made, { onTape }: Writer): string =>
  `${onTape(lengthMm)} (${marksWords(line.marks)})`

/** What cut pieces can be made into: `26 x 71-15/16" to 69-7/8" (RS-p, RS-s): 2-1/16" comes off each.` */
export const recutWords = ({ piece, count, makes, offMm, restMm }: CanRecut, units: Units): string => {
  const writer = writerFor(units)
  const from = `${count} x ${writer.onTape(piece.lengthMm)}`
  const into = makes.map((made) => madeWords(made, writer)).join(' and ')
  const rest = toTicks(restMm) >= SIXTEENTH ? `; ${writer.onTape(restMm)} is left of each` : ''
  return makes.length === 1
    ? `${from} to ${into}: ${writer.onTape(offMm)} comes off each.`
    : `${from}, each into ${into}${rest}.`
}

/** Pieces that no longer fit, in one sentence a kind: `14 cut risers are 2" too long for the bay as it is now: they can be re-cut.` */
export const misfitWords = ({ recut, scrap }: CutOfStock, units: Units): readonly string[] => {
  const { onTape } = writerFor(units)
  return [
    ...recut.map(({ piece, count, makes, offMm }) => {
      const what = pieces(count, `cut ${kindWords(piece.marks)}`)
      const isSame = makes.length === 1 && piece.marks.some((mark) => makes[0].line.marks.includes(mark))
      const is = count === 1 ? 'is' : 'are'
      return isSame
        ? `${what} ${is} ${onTape(offMm)} too long for the bay as it is now: ${count === 1 ? 'it' : 'they'} can be re-cut.`
        : `${what} of ${onTape(piece.lengthMm)} ${count === 1 ? 'fits' : 'fit'} nowhere in the bay as it is now, but can be cut into other pieces.`
    }),
    ...scrap.map(
      ({ piece, count }) =>
        `${pieces(count, `cut ${kindWords(piece.marks)}`)} of ${onTape(piece.lengthMm)} ${count === 1 ? 'fits' : 'fit'} nowhere in the bay as it is now.`,
    ),
  ]
}

/** Cut pieces whose length is right though their holes moved. */
export const movedHoles = ({ right }: CutOfStock): number =>
  right.reduce((sum, { drilled, count }) => sum + (drilled === 'moved' ? count : 0), 0)

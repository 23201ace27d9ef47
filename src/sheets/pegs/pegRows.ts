import type { Bay, Words } from '../../checks/context'
import type { DrainRun, Join, Peg, PegWhy } from '../../model/levels'
import type { PartId } from '../../model/ids'
import { feet } from '../../units/length'
import type { Writer } from '../../units/writer'

/** How the crew reads a trench: lengths and levels to 1/8 in, names of parts. */
export interface TrenchWords extends Pick<Writer, 'length' | 'level' | 'onTape'> {
  readonly name: Words['name']
}

/** One peg in words. */
export interface PegRow {
  readonly number: string
  readonly fromLow: string
  readonly why: string
  /** From the peg's top down to the bottom of the trench, the number that is measured beside it. */
  readonly cut: string
  readonly hole: string
  readonly invert: string
  readonly floor: string
  readonly pegTop: string
  readonly dig: string
}

/** Pegs stand at least so often along a drain. */
const STEP_MM = feet(10)

/** What a drain's own end is joined by. */
const ENDS: readonly Join['kind'][] = ['drain-to-pit', 'drain-to-drain']

/** Two places closer than this along a drain are one, mm: the rounding of sums. */
const SAME_PLACE_MM = 1

const listed = (items: readonly string[]): string =>
  items.length < 2 ? (items[0] ?? '') : `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`

const joinsAt = (joins: readonly Join[], kind: Join['kind'], drain: PartId, peg: Peg): readonly Join[] =>
  joins.filter(
    (join) => join.kind === kind && join.to === drain && Math.abs(join.alongMm - peg.alongMm) < SAME_PLACE_MM,
  )

/** `N1 line 3`, `N1 lines 3 and 4`; a lone trough by its name alone. */
const outletWords = (joins: readonly Join[], name: Words['name']): string => {
  const lines = new Map<PartId, number[]>()
  for (const { from, line } of joins) lines.set(from, [...(lines.get(from) ?? []), line])
  return listed(
    [...lines].map(([part, of]) => {
      const numbers = of.filter((line) => line > 0).toSorted((a, b) => a - b)
      if (numbers.length === 0) return name(part)
      return `${name(part)} ${numbers.length > 1 ? 'lines' : 'line'} ${listed(numbers.map(String))}`
    }),
  )
}

const plainWhy: Readonly<Record<Exclude<PegWhy, 'outlet' | 'branch' | 'step'>, string>> = {
  start: 'high end, cleanout',
  end: 'low end',
  bend: 'bend, cleanout',
}

const whyWords = (peg: Peg, drain: PartId, { joins }: Pick<Bay, 'joins'>, { name, length }: TrenchWords) => {
  const words = peg.why.map((why) => {
    if (why === 'outlet') {
      const from = outletWords(joinsAt(joins, 'outlet-to-drain', drain, peg), name)
      return from === '' ? 'outlet' : `outlet of ${from}`
    }
    if (why === 'branch') {
      const from = joinsAt(joins, 'drain-to-drain', drain, peg).map((join) => name(join.from))
      return from.length === 0 ? 'branch' : `branch of ${listed(from)}`
    }
    return why === 'step' ? `every ${length(STEP_MM)}` : plainWhy[why]
  })
  const [first = '', ...rest] = words
  return [first.charAt(0).toUpperCase() + first.slice(1), ...rest].join('; ')
}

const holeWords = ({ outlets, holeMm }: Peg, { onTape }: TrenchWords): string => {
  if (outlets === 0) return ''
  if (holeMm === 0) return outlets > 1 ? `${outlets} tees` : 'tee'
  return outlets > 1 ? `${outlets} x ${onTape(holeMm)}` : onTape(holeMm)
}

/** What the low end of a drain is, which the crew's tape hangs on: the wall of its pit, or the line that it joins. */
export const endWords = ({ part }: DrainRun, { joins }: Pick<Bay, 'joins'>): string => {
  const end = joins.find(({ kind, from, to }) => from === part && to !== undefined && ENDS.includes(kind))
  if (end === undefined) return 'the low end'
  return end.kind === 'drain-to-pit' ? 'the pit' : 'the line it joins'
}

/** The peg table of a drain from its low end up, as the trench crew reads it: nothing in it is left to be subtracted. */
export const pegRows = (
  { part, pegs }: DrainRun,
  bay: Pick<Bay, 'joins'>,
  words: TrenchWords,
): readonly PegRow[] =>
  pegs.map((peg) => ({
    number: String(peg.number),
    fromLow: words.length(peg.fromLowMm),
    why: whyWords(peg, part, bay, words),
    cut: words.onTape(peg.cutMm),
    hole: holeWords(peg, words),
    invert: words.level(peg.invertMm),
    floor: words.level(peg.groundMm),
    pegTop: words.level(peg.pegTopMm),
    dig: words.onTape(peg.digMm),
  }))

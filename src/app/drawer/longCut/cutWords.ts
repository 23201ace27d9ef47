import type { LongCut } from '../../../evaluate/longCut/section'
import type { Writer } from '../../../units/writer'
import type { ChartRows } from '../chart/chartData'
import { groundAt } from '../../../evaluate/longCut/groundAt'
import { LEVEL_NAMES } from './pitWords'
import type { PitLevel } from '../../../model/pitFacts'

export type Named = (part: string) => string

/** What is cut, for a heading: `N1, N drain, Pit`. */
const throughWords = ({ through }: LongCut, name: Named): string => through.map(name).join(', ')

/** The section in one sentence, for who does not see it. */
export const cutSentence = (cut: LongCut, times: number, name: Named, { level, length }: Writer): string => {
  const [first] = cut.drains
  const last = cut.drains.at(-1)
  const falls = first && last ? `, from ${level(first.highInvertMm)} to ${level(last.lowInvertMm)}` : ''
  const pit = cut.pit
    ? `; water in ${name(cut.pit.part)} at ${level(cut.pit.facts.runningMm)} while it runs`
    : ''
  return `Section along ${throughWords(cut, name)}, ${length(cut.wallMm)} to the wall of the pit${falls}${pit}. Levels are drawn ${times} times as large as lengths.`
}

interface Station {
  readonly sMm: number
  readonly what: string
  readonly levelMm: number
}

const stationsOf = (cut: LongCut, name: Named): Station[] => [
  ...(cut.row?.inverts ?? []).map(({ sMm, levelMm }, index) => ({
    sMm,
    levelMm,
    what: `Gutter invert of ${name(cut.row?.part ?? '')}, ${['high end', 'outlet', 'low end'][index] ?? ''}`,
  })),
  ...cut.drains.flatMap(({ part, fromMm, toMm, highInvertMm, lowInvertMm, pegs, branches }) => [
    { sMm: fromMm, levelMm: highInvertMm, what: `${name(part)} begins` },
    ...pegs.map((peg) => ({ sMm: peg.sMm, levelMm: peg.invertMm, what: `${name(part)}, peg ${peg.number}` })),
    ...branches.map((branch) => ({
      sMm: branch.sMm,
      levelMm: branch.invertMm,
      what: `${name(branch.part)} comes in`,
    })),
    { sMm: toMm, levelMm: lowInvertMm, what: `${name(part)} ends` },
  ]),
  ...cut.outlets.map(({ part, line, sMm, drainInvertMm }) => ({
    sMm,
    levelMm: drainInvertMm,
    what: `Under ${name(part)}, line ${line}`,
  })),
  ...cut.services.map(({ name: service, sMm, levelMm }) => ({ sMm, levelMm, what: service })),
]

const pitRows = ({ pit }: LongCut, { level }: Writer): (readonly [string, string, string, string])[] =>
  pit
    ? // The names hold every level of a pit, by the type of the record.
      (Object.keys(LEVEL_NAMES) as PitLevel[]).map((each) => [
        LEVEL_NAMES[each],
        '',
        level(pit.facts[each]),
        '',
      ])
    : []

/** The stations of the section from the high end down, then the levels of the pit. */
export const cutTable = (cut: LongCut, name: Named, writer: Writer): ChartRows => ({
  columns: ['Station', 'From the pit’s wall', 'Level', 'Floor there'],
  rows: [
    ...stationsOf(cut, name)
      .toSorted((a, b) => a.sMm - b.sMm)
      .map(({ sMm, what, levelMm }) => [
        what,
        writer.length(cut.wallMm - sMm),
        writer.level(levelMm),
        writer.level(groundAt(cut, sMm)),
      ]),
    ...pitRows(cut, writer),
  ],
})

import type { DrainFacts } from '../../model/drainFacts'
import type { DrainRun } from '../../model/levels'
import type { DrainReturn } from '../../model/returns'
import type { Words } from '../../checks/context'
import type { TrenchWords } from './pegRows'

/** One thing that the crew must know of a line, and what it comes from. */
export interface DrainFigure {
  readonly name: string
  readonly value: string
  readonly note: string
}

type Figured = TrenchWords & Pick<Words, 'fall' | 'flowTotal' | 'share'>

const bellsWords = ({ bellsMm, lengthMm }: DrainRun, { length }: TrenchWords): string =>
  bellsMm.length === 0
    ? 'none: one stick'
    : bellsMm
        .map((fromHighMm) => lengthMm - fromHighMm)
        .toSorted((a, b) => a - b)
        .map(length)
        .join(', ')

/** What the crew must know of the whole line: its fall, where it lies least deep and most, where its bells lie. */
export const drainFigures = (
  run: DrainRun,
  { trenchMm }: DrainFacts,
  running: DrainReturn | undefined,
  words: Figured,
): readonly DrainFigure[] => {
  const { length, onTape, fall } = words
  const digs = run.pegs.length > 0 ? run.pegs.map(({ digMm }) => digMm) : [run.high.digMm, run.low.digMm]
  const fromLowMm = run.lengthMm - run.tightest.alongMm
  return [
    {
      name: 'Length and fall',
      value: `${length(run.lengthMm)} at ${fall(run.slopeMmPerM)}`,
      note: `${onTape(run.high.invertMm - run.low.invertMm)} from end to end.`,
    },
    {
      name: 'Tightest cover',
      value: onTape(run.tightest.coverMm),
      note: `${length(fromLowMm)} from the low end; ${onTape(run.coverMm)} is asked for.`,
    },
    {
      name: 'Trench',
      value: `${onTape(Math.min(...digs))} to ${onTape(Math.max(...digs))} deep`,
      note: `${onTape(trenchMm)} wide, with ${onTape(run.bedMm)} of sand under the pipe.`,
    },
    {
      name: 'Bells',
      value: bellsWords(run, words),
      note: 'From the low end, bells uphill; no hole within a hand of one.',
    },
    ...(running
      ? [
          {
            name: 'Runs',
            value: words.flowTotal(running.flowLph),
            note: `${words.share(running.fullest.share)} of its bore at the fullest.`,
          },
        ]
      : []),
  ]
}

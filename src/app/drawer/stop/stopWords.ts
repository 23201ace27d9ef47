import type { Words } from '../../../checks/context'
import type { Siphon, TubeEnd } from '../../../evaluate/returns/siphon'
import type { PitFacts } from '../../../model/pitFacts'
import type { PitReturn } from '../../../model/returns'
import type { HomeKind, PitRestart, PitStop, RestartRun, StopRun } from '../../../model/stopRun'
import { toMinutes } from '../../../units/time'
import type { Writer } from '../../../units/writer'
import type { ChartRows } from '../chart/chartData'
import type { RowFigure } from '../rowFigures'

const KIND_NAMES: Readonly<Record<HomeKind, string>> = {
  drains: 'Drains',
  troughs: 'Troughs',
  laterals: 'Laterals and riser pipes',
  towers: 'Towers',
  mains: 'Mains, through the pump',
}

/** A time after the stop, s: `at once`, `45 s`, `19 min`. */
export const afterWords = (seconds: number, { minutes }: Writer): string =>
  seconds < 1 ? 'at once' : minutes(toMinutes(seconds))

/** What comes home from where, and when. */
export const sourceRows = ({ sources, totalL, mostHomeS, floorL }: StopRun, words: Words): ChartRows => ({
  columns: ['From', 'Comes home', 'Begins', '95 % home'],
  rows: [
    ...sources.map(({ kind, litres, beginsS, mostHomeS: mostS }) => [
      KIND_NAMES[kind],
      words.volume(litres),
      afterWords(beginsS, words),
      afterWords(mostS, words),
    ]),
    ['All', words.volume(totalL), 'at once', afterWords(mostHomeS, words)],
    ...(floorL > 0.5 ? [['Of it to the floor', words.volume(floorL), '', '']] : []),
  ],
})

/** Where a pit's water ends, in a sentence. */
export const endWords = (
  { endMm, overflowL, overRimL, overflowS, homeL }: PitStop,
  { overflowMm, drainBackMm }: PitFacts,
  words: Words,
  level: Writer['level'],
): string => {
  const ends = `${words.volume(homeL)} comes home, and the water ends at ${level(endMm)}`
  if (overflowL + overRimL > 0.05) {
    const when = overflowS === undefined ? '' : `, from ${afterWords(overflowS, words)} on`
    const rim = overRimL > 0.05 ? `, and ${words.volume(overRimL)} over the rim` : ''
    return `${ends}: ${words.volume(overflowL)} runs out through the overflow${when}${rim}. Run the pit lower, or dig it larger.`
  }
  const under = `${words.onTape(overflowMm - endMm)} under the overflow`
  return endMm > drainBackMm
    ? `${ends}, ${under} but ${words.onTape(endMm - drainBackMm)} over its drain-back level. Lower the running level by as much.`
    : `${ends}, ${under}. Nothing runs over.`
}

/** Why the stop brings less than what the pit is sized for. */
export const sizedWords = ({ transit, designL }: PitReturn, { homeL }: PitStop, { volume }: Words): string =>
  `The pit is sized for ${volume(transit.totalL)} and a quarter more, ${volume(designL)}, as the trade reckons it: gutters as deep over their whole length as at the outlet, drains a quarter full. ` +
  `Here ${volume(homeL)} stands where it really runs: it thins toward the high ends, and puddles behind outlets stay where they are.`

/** What starting again does to one pit. */
export const restartFigures = (
  pit: PitRestart,
  { lastDripS, lastRow }: RestartRun,
  facts: PitFacts,
  words: Words,
  level: Writer['level'],
): readonly RowFigure[] => [
  { name: 'Starts at', value: level(pit.startMm) },
  {
    name: 'Last tower drips after',
    value: afterWords(lastDripS, words),
    ...(lastRow !== undefined && { note: `In ${words.name(lastRow)}; the pipes are full then.` }),
  },
  { name: 'Level then', value: level(pit.filledMm) },
  { name: 'Level with all of it under way', value: level(pit.settledMm) },
  {
    name: 'Lowest',
    value: level(pit.lowestMm),
    note: pit.isAlarm
      ? `${words.onTape(facts.lowAlarmMm - pit.lowestMm)} under the low alarm: it sounds.`
      : `${words.onTape(pit.lowestMm - facts.lowAlarmMm)} over the low alarm.`,
  },
  {
    name: 'Pump goes off',
    value: pit.isPumpOff ? 'yes' : 'no',
    note: pit.isPumpOff
      ? 'The float stops it before all is under way: let make-up in, then start again.'
      : `Its float hangs at ${level(facts.pumpOffMm)}.`,
  },
  {
    name: 'Sucks air',
    value: pit.sucksAir ? 'yes' : 'no',
    note:
      pit.leastMm === undefined
        ? 'No pump gives water here.'
        : `A whirl draws air in from ${level(pit.leastMm)} down: ANSI/HI 9.8, which is written for larger intakes; the intake is taken to be as wide as the discharge pipe.`,
  },
]

const endName = ({ part, station, line }: TubeEnd, { name }: Words): string =>
  `${name(part)}, station ${station}, line ${line}`

/** Less than this between tube ends, mm, no crew would find. */
const ALIKE_MM = 1.5

/** What siphons with and without a check valve, and what ends it. */
export const siphonWords = (
  { lowest, highest, throughTubesL, backL }: Siphon,
  words: Words,
): readonly string[] => {
  const spreadMm = highest.levelMm - lowest.levelMm
  const ends =
    spreadMm < ALIKE_MM
      ? 'All tube ends stand level, so no tower is flooded more than another.'
      : `The lowest tube end, at ${endName(lowest, words)}, runs longest: it stands ${words.onTape(spreadMm)} lower than the highest, at ${endName(highest, words)}, where air comes in first.`
  return [
    `With a check valve ${words.volume(throughTubesL)} of the pipes drains through the tubes, and mains stay full. ${ends}`,
    `Without one all ${words.volume(backL)} of pipes and mains siphons back through the pump, until air comes in at the highest open tubes. A check valve at the pump ends it; so does a siphon break, a small vent at the highest point of the main, as soon as the water there falls under it.`,
  ]
}

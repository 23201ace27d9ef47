import type { Counter } from '../../../layout/counter'
import type { Labour, LabourLine } from '../../../model/shop'
import { thousands } from '../../../units/thousands'
import { feet, type Units } from '../../../units/length'
import { writerFor } from '../../../units/writer'

/** `4.6` of a run, `132` of what is counted whole. */
export const countWords = (count: number): string =>
  Number.isInteger(count) ? thousands(count) : count.toFixed(1)

/** A run of 10 ft is the same run in metric; earth goes by the yard in the norms, wherever they are read. */
export const unitWords = ({ unit }: LabourLine, units: Units): string =>
  unit === '10 ft' && units === 'metric' ? writerFor(units).length(feet(10)) : unit

export const hourWords = (hours: number): string => `${hours.toFixed(1)} h`

const per = (share: number): string => `${Number((share * 100).toFixed(1))} %`

/** How the hours of the tasks become those of the crew, line by line. */
export const labourSum = (
  { taskHours, hours, crewDays }: Labour,
  { supervision, crewFactor, crew, hoursADay }: Counter,
  towers: number,
): readonly (readonly [string, string])[] => [
  ['All tasks', hourWords(taskHours)],
  [`Supervision and clean-up, ${per(supervision)}`, hourWords(taskHours * supervision)],
  ...(crewFactor === 1
    ? []
    : [[`Crew factor ${crewFactor}`, hourWords(taskHours * (1 + supervision) * (crewFactor - 1))] as const]),
  ['All hours', hourWords(hours)],
  ...(towers > 0 ? [['A tower', `${(hours / towers).toFixed(2)} h`] as const] : []),
  [
    `${crew === 1 ? '1 person' : `${crew} people`}, ${hoursADay} h a day`,
    `${crewDays.toFixed(1)} ${crewDays.toFixed(1) === '1.0' ? 'day' : 'days'}`,
  ],
]

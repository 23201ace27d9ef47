import type { PitFigures, SystemWater } from '../../../evaluate/returns/pitFigures'
import type { PaintMark } from '../../../evaluate/returns/pitTable'
import type { PitReturn, Transit } from '../../../model/returns'
import { toFahrenheit } from '../../../units/temperature'
import { HOURS_PER_DAY, MINUTES_PER_HOUR } from '../../../units/time'
import { writeDecimal } from '../../../units/writeDecimal'
import type { Writer } from '../../../units/writer'
import type { ChartRows } from '../chart/chartData'
import type { RowFigure } from '../rowFigures'

/** Whether the pit has room for what comes home, in a sentence. */
export const roomSentence = ({ state, transit, designL, roomL }: PitReturn, { volume }: Writer): string => {
  const comes = `When the pump stops ${volume(transit.totalL)} comes home`
  if (state === 'Holds')
    return `${comes}; with a quarter more that is ${volume(designL)}, and there is room for ${volume(roomL)}.`
  if (state === 'Thin')
    return `${comes}, and there is room for it, but with a quarter more it would be ${volume(designL)} and the room is ${volume(roomL)}. Set the running level lower, or size the pit.`
  return `${comes}, and there is room for ${volume(Math.max(0, roomL))} under the overflow: the rest spills at the first power cut. Set the running level lower, or size the pit.`
}

/** One bar of what must find room over the running level against the room there is. */
export interface RoomBar {
  readonly name: string
  readonly litres: number
  /** Of the greatest of them. */
  readonly share: number
  readonly isRoom: boolean
}

export const roomBars = ({ transit, designL, surgeL, roomL }: PitReturn): readonly RoomBar[] => {
  const bars = [
    { name: 'Room over the running level', litres: Math.max(0, roomL), isRoom: true },
    { name: 'Comes home', litres: transit.totalL, isRoom: false },
    { name: 'With a quarter more', litres: designL, isRoom: false },
    { name: 'And make-up stuck open until someone comes', litres: designL + surgeL, isRoom: false },
  ]
  const most = Math.max(...bars.map(({ litres }) => litres), 1e-9)
  return bars.map((bar) => ({ ...bar, share: bar.litres / most }))
}

/** What comes home, by where it stands while the pump runs. */
export const transitRows = (transit: Transit, { volume, share }: Writer): ChartRows => {
  const shareOf = (litres: number) => (transit.totalL > 0 ? share(litres / transit.totalL) : '')
  const row = (name: string, litres: number) => [name, volume(litres), shareOf(litres)]
  return {
    columns: ['Stands in', 'Comes home', 'Share'],
    rows: [
      row('Towers', transit.towersL),
      row('Gutter troughs', transit.troughsL),
      row('Drains', transit.drainsL),
      row('Mains', transit.mainsL),
      row('Laterals and risers', transit.lateralsL),
      ['Together', volume(transit.totalL), ''],
    ],
  }
}

const timesWords = (perHour: number): string =>
  perHour > 0 ? `${writeDecimal(perHour, 1)} times an hour` : '—'

/** From here on a time is counted in days. */
const DAYS_FROM_MIN = 2 * HOURS_PER_DAY * MINUTES_PER_HOUR

const lastsWords = (min: number, { minutes }: Writer): string =>
  min < DAYS_FROM_MIN ? minutes(min) : `${Math.floor(min / MINUTES_PER_HOUR / HOURS_PER_DAY)} days`

/** A difference of temperatures, for both sorts of reader. */
const warmingWords = (c: number): string =>
  `${writeDecimal(c, 1)} °C (${writeDecimal(toFahrenheit(c) - toFahrenheit(0), 1)} °F) a day`

/** What a pit holds and how long it lasts, and how the bay's water goes round. */
export const pitFigureRows = (
  figures: PitFigures,
  system: SystemWater,
  writer: Writer,
): readonly RowFigure[] => {
  const { volume, minutes, earth, watts } = writer
  return [
    { name: 'Stands in it while it runs', value: volume(figures.runningL) },
    {
      name: 'Running to pump off, nothing coming home',
      value: figures.dryMin === undefined ? 'no pump runs' : minutes(figures.dryMin),
      note: 'Fast enough to notice, slow enough to react: 2 to 4 min is usual.',
    },
    {
      name: 'Make-up a day',
      value: volume(figures.usePerDayL),
      ...(figures.swingLastsMin !== undefined && {
        note: `If make-up fails, running to pump off lasts ${lastsWords(figures.swingLastsMin, writer)}.`,
      }),
    },
    {
      name: 'All the water goes round',
      value: timesWords(system.turnoverPerHour),
      note: `${volume(system.totalL)} in pits, pipes, troughs, towers and tanks of the bay.`,
    },
    {
      name: 'Pumps warm it',
      value: warmingWords(system.warmingC),
      note: `${watts(system.pumpW)} from the wall, if no heat is lost and a quarter of it lifts water.`,
    },
    ...(figures.digL > 0
      ? [{ name: 'To dig', value: earth(figures.digL), note: 'Its inside alone, without lining or bed.' }]
      : []),
  ]
}

const capitalised = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1)

/** What is painted on the wall, from the rim down. */
export const paintRows = (
  marks: readonly PaintMark[],
  { onTape, volume }: Pick<Writer, 'onTape' | 'volume'>,
): ChartRows => ({
  columns: ['Over the bottom', 'Stands under it', 'Level'],
  rows: marks.map(({ depthMm, litres, titles }) => [
    onTape(depthMm),
    volume(litres),
    capitalised(titles.join(', ')),
  ]),
})

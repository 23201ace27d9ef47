import type { Words } from '../../../checks/context'
import type { WhatIfKind, WhatIfRow } from '../../../evaluate/returns/whatIfRow'
import type { PitFacts } from '../../../model/pitFacts'
import type { Writer } from '../../../units/writer'

/** What goes wrong, in the words of whoever stands before it. */
export const WHAT_IF_TITLES: Readonly<Record<WhatIfKind, string>> = {
  'power-cut': 'Power is off for an hour',
  'return-blocked': 'The return is blocked',
  'drain-blocked': 'A drain is blocked at its worst hole',
  'make-up-stuck': 'The make-up valve sticks open',
  'zone-flushed': 'One zone is flushed to the floor',
  'no-make-up': 'No make-up comes in',
}

/** One line of the table: when it shows, when it ends, what happens, what to do. */
export interface WhatIfLine {
  readonly overflow: string
  readonly dry: string
  readonly happens: string
  readonly todo: string
}

const NEVER = 'never'

const days = (count: number): string =>
  count >= 10 ? `${Math.round(count)} days` : `${count.toFixed(1)} days`

type Of<K extends WhatIfKind> = Extract<WhatIfRow, { readonly kind: K }>

const powerCut = (
  { levelMm, spiltL, overflowMin }: Of<'power-cut'>,
  words: Words,
  level: Writer['level'],
) => ({
  overflow: overflowMin === undefined ? NEVER : words.minutes(overflowMin),
  dry: NEVER,
  happens:
    spiltL > 0.05
      ? `The water ends at ${level(levelMm)}, and ${words.volume(spiltL)} runs out.`
      : `The water ends at ${level(levelMm)}, and nothing runs out.`,
  todo:
    spiltL > 0.05
      ? 'Run the pit lower or dig it larger. Keep air to the fish first, then start the pump.'
      : 'Nothing at the pit. Keep air to the fish first; on a hot day film towers want water again within half an hour to two.',
})

const returnBlocked = (row: Of<'return-blocked'>, words: Words) => ({
  overflow: NEVER,
  dry: words.minutes(row.pumpOffMin),
  happens: `The low alarm sounds after ${words.minutes(row.alarmMin)}, the pump goes off after ${words.minutes(row.pumpOffMin)}. By then ${words.volume(row.outL)} is out: ${words.volume(Math.min(row.outL, row.drainsHoldL))} stands in the drains, the rest in troughs and on the floor.`,
  todo: 'Stop the pump, clear the pit’s inlets, and screen them so that leaves stop outside and two inlets cannot block at once.',
})

const drainBlocked = (row: Of<'drain-blocked'>, words: Words) => ({
  overflow: `${words.minutes(row.surchargeMin)}, to the floor`,
  dry: words.minutes(row.pumpOffMin),
  happens: `${words.name(row.drain)} shut ${words.length(row.fromLowMm)} from its low end, under its lowest hole, cuts ${words.flowTotal(row.cutLph)} off: it stands to the floor after ${words.minutes(row.surchargeMin)}.`,
  todo: 'Shut the zones over it, rod it from the cleanout at its high end, and look at that hole first when roots are cut.',
})

const makeUpStuck = (row: Of<'make-up-stuck'>, words: Words) => ({
  overflow: words.minutes(row.overflowMin),
  dry: NEVER,
  happens: Number.isFinite(row.overMm)
    ? `${words.flowTotal(row.flowLph)} comes in. It runs through the overflow after ${words.minutes(row.overflowMin)}, and the pipe takes it ${words.onTape(row.overMm)} over its invert.`
    : `${words.flowTotal(row.flowLph)} comes in, more than the overflow takes under the rim: it runs over the rim after ${words.minutes(row.rimMin)}.`,
  todo: Number.isFinite(row.overMm)
    ? 'Shut the tap by hand, and meter every top-up: water that runs to waste is else not noticed.'
    : 'Lay a larger overflow, or throttle the tap to what the overflow takes.',
})

const zoneFlushed = (row: Of<'zone-flushed'>, words: Words, level: Writer['level']) => ({
  overflow: NEVER,
  dry: words.minutes(row.pumpOffMin),
  happens: `${words.name(row.zone)} takes ${words.volume(row.litres)} in ${words.minutes(row.minutes)}, and the water stands at ${level(row.levelMm)} then. Led back to the pit it takes none.`,
  todo:
    row.pumpOffMin < row.minutes
      ? 'Lead the flush back to the pit through a screen, or flush in two goes with make-up between.'
      : 'Flush zones one after the other, and let make-up come in between.',
})

const noMakeUp = (row: Of<'no-make-up'>, words: Words) => ({
  overflow: NEVER,
  dry: days(row.pumpOffDays),
  happens: `${words.volume(row.perDayL)} a day is used. The low alarm sounds after ${days(row.alarmDays)}, the pump goes off after ${days(row.pumpOffDays)}.`,
  todo:
    row.valveDayL < row.perDayL
      ? `The make-up valve lets in ${words.volume(row.valveDayL)} a day, which is too little: fit a larger one.`
      : 'Read the meter weekly: much more than this is a leak, none at all a shut tap.',
})

/** A row of the table in words. */
export const whatIfLine = (row: WhatIfRow, words: Words, level: Writer['level']): WhatIfLine => {
  switch (row.kind) {
    case 'power-cut':
      return powerCut(row, words, level)
    case 'return-blocked':
      return returnBlocked(row, words)
    case 'drain-blocked':
      return drainBlocked(row, words)
    case 'make-up-stuck':
      return makeUpStuck(row, words)
    case 'zone-flushed':
      return zoneFlushed(row, words, level)
    case 'no-make-up':
      return noMakeUp(row, words)
  }
}

/** From where all of it starts, in a sentence. */
export const whatIfStart = ({ runningMm, overflowMm, pumpOffMm }: PitFacts, level: Writer['level']): string =>
  `From its running level, ${level(runningMm)}, with the overflow at ${level(overflowMm)} and the pump off at ${level(pumpOffMm)}. What still runs is taken to run on as it does.`

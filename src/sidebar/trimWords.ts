import { LEAST_TURNS } from '../parts/rack-row/schema'
import { readNumber, type Typed } from './fieldText'

/** Turns to a tenth, which is what a hand on the stem can set. */
export const turnsText = (turns: number): string => turns.toFixed(1)

/** Turns open as typed, of a valve that has `all` of them from shut to open; a sentence for what it has not. */
export const readTurns = (text: string, all: number): Typed => {
  const typed = readNumber(text.replace(/ *turns?$/, '').replace(',', '.'))
  if (!typed.ok) return typed
  const turns = Number(typed.value)
  if (turns < LEAST_TURNS)
    return {
      ok: false,
      sentence: `${turns} turns are next to shut. Open the trim valve ${LEAST_TURNS} or more, or shut the ball valve.`,
    }
  return turns > all
    ? { ok: false, sentence: `This trim valve has ${all} turns from shut to open, and not ${turns}.` }
    : typed
}

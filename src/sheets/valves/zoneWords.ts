import type { Words } from '../../checks/context'
import { trimSettings } from '../../evaluate/water/balance'
import type { HandSet, PumpVerdict, ValveCard, ZoneSetting } from '../../evaluate/water/valveCard'
import type { ZoneEffect } from '../../evaluate/water/zoneEffects'
import type { Part } from '../../layout/schema'
import type { PartId } from '../../model/ids'

const VERDICT: Readonly<Record<PumpVerdict, string>> = {
  fits: 'The pump fits',
  'too-small': 'The pump is too small',
  'too-large': 'The pump is larger than need be',
}

/** Whether the pump is strong enough for a balanced bay, and what its valves would burn of a pump that is too strong. */
export const verdictWords = (
  { verdict, factor, targetLph, leftMm }: ValveCard,
  { flow, share, sightTube }: Words,
) => {
  const gets = `balanced, with the neediest zone’s valve wide open, every tower gets ${flow(targetLph * factor)}, ${share(factor)} of what is wanted`
  return leftMm > 1
    ? `${VERDICT[verdict]}: ${gets} at most. Set as below they get what is wanted, and even the neediest zone’s valve burns ${sightTube(leftMm)}; one valve behind the pump, or a bypass, could take that from all of them.`
    : `${VERDICT[verdict]}: ${gets}.`
}

/** How far a trim valve stands open: `1.4 of 5`. */
export const turnsWords = ({ trimTurns, trimTurnsAll }: ZoneSetting): string =>
  trimTurns >= trimTurnsAll - 0.05 ? 'wide open' : `${trimTurns.toFixed(1)} of ${trimTurnsAll}`

/** What a zone gets of its flow when a hand sets every valve a little off: `95.3 % to 104.0 %`. */
export const handWords = (hand: HandSet | undefined, zone: PartId, { share }: Words): string => {
  const range = hand?.zones.get(zone)
  return range ? `${share(range.leastShare)} to ${share(range.mostShare)}` : '—'
}

/** Turns that are nearer than a hand can set. */
const SAME_TURNS = 0.01

/** Whether the trim valves stand as the card says; wide open is as many turns as there are. */
export const isSetSo = (card: ValveCard, parts: readonly Part[]): boolean =>
  trimSettings(card).every(({ part, trimTurns }) => {
    const row = parts.find(({ id }) => id === part)
    if (row?.kind !== 'rack-row') return false
    return Math.abs(Math.min(row.trimTurns ?? row.trimTurnsAll, row.trimTurnsAll) - trimTurns) < SAME_TURNS
  })

/** A change of flow with its sign: `+3.2 %`. */
export const changeWords = (change: number, { share }: Words): string =>
  `${change < 0 ? '−' : '+'}${share(Math.abs(change))}`

/** What shutting one zone does to the one that feels it most, and whether that is too much. */
export const effectWords = ({ part, most, isTooMuch }: ZoneEffect, words: Words): string => {
  if (!most) return `${words.name(part)} is the only zone that is open.`
  const moved = `Shutting ${words.name(part)} changes ${words.name(most.part)} most, by ${changeWords(most.change, words)}.`
  return isTooMuch
    ? `${moved} More than 10 % is too much: open a bypass at the pump, or feed the bay from a head box.`
    : `${moved} Within 10 % the rest need not be touched.`
}

import type { Layout, Part } from '../layout/schema'
import type { RackRow } from '../parts/rack-row/schema'
import { nameOf } from '../store/partNames'
import type { Choice } from './fieldList'

/** Stands in a list of choices for what the row holds as null. */
export const NEAREST = ''

/** Whether a part can give a row its water: a main, or, behind another row's valve, a row with a valve set of its own. */
const isGiver = (part: Part, { id, valveSet }: RackRow): boolean =>
  valveSet === 'own'
    ? part.kind === 'main'
    : part.kind === 'rack-row' && part.valveSet === 'own' && part.id !== id

/** What was chosen and gives no water, or is no more: the row then takes the nearest. */
const goneChoice = (chosen: string, parts: Layout['parts']): Choice => {
  const part = parts.find(({ id }) => id === chosen)
  const words = part ? `${nameOf(part)} can’t give it: nearest in reach` : 'Gone: nearest in reach'
  return { value: chosen, words }
}

/** What a row can take its water from: the nearest in reach, each giver by name, and one chosen that is no more. */
export const waterGiverChoices = (row: RackRow, parts: Layout['parts']): readonly Choice[] => {
  const givers = parts.filter((part) => isGiver(part, row))
  const chosen = row.waterFrom
  const isGone = chosen !== null && givers.every(({ id }) => id !== chosen)
  return [
    { value: NEAREST, words: 'Nearest in reach' },
    ...givers.map((part) => ({ value: part.id, words: nameOf(part) })),
    ...(isGone ? [goneChoice(chosen, parts)] : []),
  ]
}

/** What the row's water comes from now, by name, where the choice does not say it; undefined where it does. */
export const waterFromNote = (
  { waterFrom, valveSet }: Pick<RackRow, 'waterFrom' | 'valveSet'>,
  from: string | undefined,
): string | undefined => {
  if (from === undefined)
    return valveSet === 'own' ? 'No main is in reach.' : 'No row with a valve set of its own is in reach.'
  return waterFrom === null ? `That is ${from} now.` : undefined
}

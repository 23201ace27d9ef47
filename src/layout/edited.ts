import { fieldNumberWords } from '../model/fieldWords'
import { asTyped } from '../units/precision'
import { writerFor } from '../units/writer'
import type { NumberWriter } from './faultWords'
import { levelReading } from './levelReading'
import type { Layout } from './schema'

/** What comes of an edit that can be refused, such as a typed number. */
export type Edited =
  { readonly ok: true; readonly layout: Layout } | { readonly ok: false; readonly sentence: string }

export const done = (layout: Layout): Edited => ({ ok: true, layout })

/** Words without a full stop as a sentence of refusal. */
export const refusal = (words: string): Edited => ({
  ok: false,
  sentence: `${words.charAt(0).toUpperCase()}${words.slice(1)}.`,
})

/** Numbers in the units that the layout's builder reads. A number just out of bounds must not be written as the bound. */
export const asRead = ({ settings, house }: Layout): NumberWriter => {
  const writer = writerFor(settings.units, asTyped, levelReading(settings, house.benchmark))
  return (value, unit) => fieldNumberWords(value, unit, writer)
}

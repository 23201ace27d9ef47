import { useCallback, useState } from 'react'
import * as z from 'zod/mini'
import type { ShopLine } from '../../../model/shop'

/** How much of each thing is in the cart already, by its key. */
type Bought = Readonly<Record<string, number>>

const schema = z.record(z.string(), z.number())

const placeOf = (title: string): string => `bought: ${title}`

/** A device that keeps nothing, or keeps something else there, has nothing ticked. */
const read = (title: string): Bought => {
  try {
    const checked = schema.safeParse(JSON.parse(localStorage.getItem(placeOf(title)) ?? '{}'))
    return checked.success ? checked.data : {}
  } catch {
    return {}
  }
}

const keep = (title: string, bought: Bought): void => {
  try {
    localStorage.setItem(placeOf(title), JSON.stringify(bought))
  } catch {
    // The ticks then last as long as the page.
  }
}

interface Ticks {
  /** How much of a line is still to be bought; 0 for one that is ticked. */
  readonly leftOf: (line: ShopLine) => number
  readonly isAny: boolean
  readonly tick: (line: ShopLine, isBought: boolean) => void
  readonly clear: () => void
}

/**
 * What is bought is ticked by how much of it: when the bay then wants more, the line says how much more. The ticks stay on this
 * device, apart from the bay: they are of one shopper, and change no layout.
 */
export const useTicks = (title: string): Ticks => {
  const [of, setOf] = useState({ title, bought: read(title) })
  const bought = of.title === title ? of.bought : read(title)
  if (of.title !== title) setOf({ title, bought })
  const set = useCallback(
    (next: Bought) => {
      keep(title, next)
      setOf({ title, bought: next })
    },
    [title],
  )
  return {
    leftOf: (line) => Math.max(0, line.bought - (bought[line.key] ?? 0)),
    isAny: Object.keys(bought).length > 0,
    tick: (line, isBought) => {
      const { [line.key]: _, ...rest } = bought
      set(isBought ? { ...rest, [line.key]: line.bought } : rest)
    },
    clear: () => set({}),
  }
}

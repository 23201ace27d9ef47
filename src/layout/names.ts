import type { PartId } from '../model/ids'
import { kindOf, kinds } from '../parts/index'
import type { Layout, Part } from './schema'

/** What a part is called on screen and on paper: its own name, or that of its kind. */
export const nameOf = (part: Part): string => part.name || kindOf(part).title

/** The greatest number that the schema of an id can hold. */
const LAST_NUMBER = 999_999_999

/** Kinds whose parts are called shorter than the kind: a crew says "Row 4". All others take the title of their kind. */
const shortNames: Readonly<Partial<Record<string, string>>> = { 'rack-row': 'Row', 'drain-line': 'Drain' }

const stemOf = (kind: Part['kind']): string =>
  shortNames[kind] ?? kinds.find((k) => k.kind === kind)?.title ?? kind

/** The number after `stem` in each text that is the stem and a number, and nothing else. */
const numbersAfter = (stem: string, texts: readonly string[]): Set<number> =>
  new Set(
    texts.flatMap((text) => {
      const rest = text.startsWith(stem) ? text.slice(stem.length) : ''
      return /^[0-9]{1,9}$/.test(rest) ? [Number(rest)] : []
    }),
  )

/** One more than the greatest, so that a gap is never filled and nothing is ever renumbered; past the last, the first gap. */
const nextNumber = (taken: ReadonlySet<number>): number => {
  let next = 1
  for (const n of taken) next = Math.max(next, n + 1)
  if (next <= LAST_NUMBER) return next
  next = 1
  while (taken.has(next)) next += 1
  return next
}

/** An id that no part of the layout has. */
export const nextId = ({ parts }: Layout, kind: Part['kind']): PartId =>
  `${kind}-${nextNumber(
    numbersAfter(
      `${kind}-`,
      parts.map(({ id }) => id),
    ),
  )}`

/** A name that no part of the layout has: `Row 4`, or with a stem of its own `Post 2`. */
export const nextName = ({ parts }: Layout, kind: Part['kind'], stem: string = stemOf(kind)): string =>
  `${stem} ${nextNumber(
    numbersAfter(
      `${stem} `,
      parts.map(({ name }) => name),
    ),
  )}`

/** The next name of the same series: `N4` after `N1` to `N3`, `Heater 2` after `Heater`. */
export const nameAfter = (layout: Layout, { kind, name }: Part): string => {
  if (name === '') return nextName(layout, kind)
  const series = /^(.*?)[0-9]{1,9}$/.exec(name)?.[1]
  if (series === undefined)
    return `${name} ${Math.max(
      2,
      nextNumber(
        numbersAfter(
          `${name} `,
          layout.parts.map((p) => p.name),
        ),
      ),
    )}`
  return `${series}${nextNumber(
    numbersAfter(
      series,
      layout.parts.map((p) => p.name),
    ),
  )}`
}

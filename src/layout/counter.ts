import * as z from 'zod/mini'
import { count, number, share, tickMm } from '../model/fields'
import { priceGroups } from '../model/priceRow'
import { feet, inches } from '../units/length'

/** What the counter knows of this job: what things cost here, what the state takes, who builds it. Money is whole cents. */

const words = (longest: number) => z.string().check(z.maxLength(longest))

/** How long the texts of a row may be. */
export const longestText = { name: 120, spec: 120, unit: 30, supplier: 80, aisle: 40, note: 200 } as const

/** The most of a row's numbers. */
export const mostOf = {
  cents: 100_000_000,
  pack: 1_000_000,
  leadDays: 730,
  breaks: 20,
  spares: 10_000,
  /** Of a task, each. */
  minutes: 100_000,
} as const

const cents = z.int().check(z.gte(0), z.lte(mostOf.cents))
const packs = z.int().check(z.gte(1), z.lte(mostOf.pack))

const waste = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('cut') }),
  z.object({ kind: z.literal('none') }),
  z.object({ kind: z.literal('share'), share: z.number().check(z.gte(0), z.lte(1)) }),
  z.object({ kind: z.literal('spares'), count: z.int().check(z.gte(0), z.lte(mostOf.spares)) }),
])

/** A row of the price book, whole, as a quote for this job or from the supplier's book. */
const priceRow = z.object({
  key: z.string().check(z.minLength(1), z.maxLength(80)),
  name: words(longestText.name),
  spec: words(longestText.spec),
  group: z.enum(priceGroups),
  unit: words(longestText.unit),
  pack: packs,
  stockMm: z.optional(tickMm(inches(1), feet(5000))),
  /** Absent: nobody has asked yet. */
  cents: z.optional(cents),
  breaks: z._default(z.array(z.object({ from: packs, cents })).check(z.maxLength(mostOf.breaks)), []),
  supplier: words(longestText.supplier),
  aisle: words(longestText.aisle),
  leadDays: z.int().check(z.gte(0), z.lte(mostOf.leadDays)),
  waste,
  isWholePack: z.boolean(),
  isTaxed: z.boolean(),
  isReturnable: z.boolean(),
  /** ISO date, or empty for nobody's quote. */
  date: z.string().check(z.regex(/^(\d{4}-\d{2}-\d{2})?$/)),
  note: words(longestText.note),
})

const rows = z._default(z.array(priceRow).check(z.maxLength(2000)), [])

const group = 'Labour'

export const counterSchema = z.object({
  /** The supplier's book, over the one that comes with the program. */
  book: rows,
  /** This job's quotes, over both. */
  quotes: rows,
  /** Written before every sum of money. */
  currency: z._default(z.string().check(z.minLength(1), z.maxLength(5)), '$'),
  tax: share(0, { label: 'Sales tax', group: 'Money' }, 0, 0.5),
  crew: count(4, { label: 'People in the crew', group }, 1, 50),
  hoursADay: number(8, { label: 'Hours a day', group }, 1, 16),
  crewFactor: number(1, { label: 'Crew factor: first time 1.5, teaching 2', group }, 0.5, 4),
  supervision: share(0.15, { label: 'Supervision and clean-up', group }, 0, 1),
  /** Minutes of one person for one task, where they differ from the norms that come with the program. */
  norms: z._default(
    z
      .array(z.object({ task: words(60), minutes: z.number().check(z.gte(0), z.lte(mostOf.minutes)) }))
      .check(z.maxLength(100)),
    [],
  ),
})

export type Counter = z.infer<typeof counterSchema>

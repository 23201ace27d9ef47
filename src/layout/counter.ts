import * as z from 'zod/mini'
import { count, number, share, tickMm } from '../model/fields'
import { priceGroups } from '../model/priceRow'
import { feet, inches } from '../units/length'

/** What the counter knows of this job: what things cost here, what the state takes, who builds it. Money is whole cents. */

const words = (longest: number) => z.string().check(z.maxLength(longest))
const cents = z.int().check(z.gte(0), z.lte(100_000_000))
const packs = z.int().check(z.gte(1), z.lte(1_000_000))

const waste = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('cut') }),
  z.object({ kind: z.literal('none') }),
  z.object({ kind: z.literal('share'), share: z.number().check(z.gte(0), z.lte(1)) }),
  z.object({ kind: z.literal('spares'), count: z.int().check(z.gte(0), z.lte(10_000)) }),
])

/** A row of the price book, whole, as a quote for this job or from the supplier's book. */
const priceRow = z.object({
  key: z.string().check(z.minLength(1), z.maxLength(80)),
  name: words(120),
  spec: words(120),
  group: z.enum(priceGroups),
  unit: words(30),
  pack: packs,
  stockMm: z.optional(tickMm(inches(1), feet(5000))),
  /** Absent: nobody has asked yet. */
  cents: z.optional(cents),
  breaks: z._default(z.array(z.object({ from: packs, cents })).check(z.maxLength(20)), []),
  supplier: words(80),
  aisle: words(40),
  leadDays: z.int().check(z.gte(0), z.lte(730)),
  waste,
  isWholePack: z.boolean(),
  isTaxed: z.boolean(),
  isReturnable: z.boolean(),
  /** ISO date, or empty for nobody's quote. */
  date: z.string().check(z.regex(/^(\d{4}-\d{2}-\d{2})?$/)),
  note: words(200),
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
      .array(z.object({ task: words(60), minutes: z.number().check(z.gte(0), z.lte(100_000)) }))
      .check(z.maxLength(100)),
    [],
  ),
})

export type Counter = z.infer<typeof counterSchema>

import * as z from 'zod/mini'
import { fields, tickMm } from '../model/fields'
import { feet, inches } from '../units/length'

/**
 * What the saw bench knows that no drawing tells: how the stock at hand really measures, what lies about to be used up, and
 * what is cut already. Lengths mm.
 */

const stock = z.string().check(z.minLength(1), z.maxLength(60))
const mark = z.string().check(z.minLength(1), z.maxLength(20))
const many = z.int().check(z.gte(1), z.lte(100_000))
const boardMm = tickMm(inches(1), feet(1000))
const group = 'Measured stock'

/** Stock as it measures, where that differs from the catalogue; null is as the catalogue has it. */
const measuredStock = z.object({
  stock,
  /** How much longer than its name a board or stick really is; less than 0 is short. */
  overMm: z._default(tickMm(inches(-2), inches(6)), 0).register(fields, {
    label: 'Longer than its name says',
    group,
    unit: 'length',
  }),
  thickMm: z
    ._default(z.nullable(tickMm(inches(1 / 2), inches(6))), null)
    .register(fields, { label: 'Thickness', group, unit: 'length', whenNull: 'As in the catalogue' }),
  wideMm: z
    ._default(z.nullable(tickMm(inches(1), inches(12))), null)
    .register(fields, { label: 'Width', group, unit: 'length', whenNull: 'As in the catalogue' }),
  odMm: z
    ._default(z.nullable(tickMm(inches(1 / 4), inches(4))), null)
    .register(fields, { label: 'Outside diameter', group, unit: 'length', whenNull: 'As in the catalogue' }),
  wallMm: z
    ._default(z.nullable(tickMm(inches(1 / 64), inches(1 / 2))), null)
    .register(fields, { label: 'Wall', group, unit: 'length', whenNull: 'As in the catalogue' }),
})

/** Boards and offcuts on hand, which cost nothing. */
const leftover = z.object({
  stock,
  lengthMm: tickMm(inches(1), feet(1000)).register(fields, {
    label: 'Length',
    group: 'Leftovers',
    unit: 'length',
  }),
  count: z.int().check(z.gte(1), z.lte(100_000)).register(fields, {
    label: 'How many',
    group: 'Leftovers',
    unit: 'count',
  }),
})

/** Where a member's hole was to be drilled, from its foot to the hole's centre. */
const hole = z.object({ mark, centreMm: boardMm })

/** Pieces that are cut: they stay as they are, whatever the plan becomes. `holes` are the heights that held when they were ticked. */
const cutPiece = z.object({
  stock,
  lengthMm: boardMm,
  count: many,
  marks: z.array(mark).check(z.maxLength(40)),
  holes: z.optional(z.array(hole).check(z.maxLength(200))),
})

/**
 * Boards that were bought and are sawn: they are paid for, and gone from the rack. What came of each is kept, so that a tick can
 * be taken back.
 */
const sawnBoard = z.object({
  stock,
  stockMm: boardMm,
  count: many,
  pieces: z.optional(z.array(z.object({ lengthMm: boardMm, count: many })).check(z.maxLength(200))),
  /** What was left of each, if it is worth keeping. */
  offcutMm: z.optional(boardMm),
  /** The offcuts stand among the leftovers. */
  isOffcutKept: z.optional(z.boolean()),
})

const list = <T extends z.ZodMiniType>(item: T) => z._default(z.array(item).check(z.maxLength(1000)), [])

export const benchSchema = z.object({
  measured: list(measuredStock),
  leftovers: list(leftover),
  cut: list(cutPiece),
  sawn: list(sawnBoard),
})

export type Bench = z.infer<typeof benchSchema>
export type MeasuredStock = Bench['measured'][number]
export type Leftover = Bench['leftovers'][number]
export type CutPiece = Bench['cut'][number]
export type SawnBoard = Bench['sawn'][number]
/** The centre of a hole in a member, mm from its foot. */
export type HoleAt = NonNullable<CutPiece['holes']>[number]

import * as z from 'zod/mini'

/** What the crew holds: which sets were issued, the plan as it was then, and versions of the bay that are kept beside it. */

const isoDate = z.string().check(z.regex(/^\d{4}-\d{2}-\d{2}$/))
const words = (longest: number) => z.string().check(z.maxLength(longest))
const sheetId = z.string().check(z.minLength(1), z.maxLength(40))

/** The papers of one family, from the smallest. */
export const paperFamilies = ['inch', 'metric'] as const

export const paperNames = ['letter', 'tabloid', 'A4', 'A3', 'half-letter', 'A5', '4x6', 'A6'] as const

/** What the builder has chosen for one sheet, where it differs from the rest: who saws may read inches, who owns millimetres. */
const sheetChoice = z.object({
  sheet: sheetId,
  units: z.optional(z.enum(['feet-inches', 'metric'])),
  paper: z.optional(z.enum(paperNames)),
})

export const LAST_ISSUE = 9999

/** A numbered set that was handed out. */
const issue = z.object({
  number: z.int().check(z.gte(1), z.lte(LAST_ISSUE)),
  date: isoDate,
  /** Why, in the builder's words; may be empty. */
  note: words(300),
  sheets: z.array(sheetId).check(z.maxLength(60)),
})

export const MOST_VERSIONS = 12
export const LONGEST_VERSION_NAME = 80

const versionName = z.string().check(z.minLength(1), z.maxLength(LONGEST_VERSION_NAME))
const MOST_ISSUES = 500

/** Of a plan, which is the whole layout but for these papers. */
export const papersSchemaOf = <P extends z.ZodMiniType>(plan: P) =>
  z.object({
    /** null: inch papers where the bay is in feet and inches, else metric. */
    family: z._default(z.nullable(z.enum(paperFamilies)), null),
    choices: z._default(z.array(sheetChoice).check(z.maxLength(60)), []),
    /** Oldest first; numbers only rise. */
    issues: z._default(z.array(issue).check(z.maxLength(MOST_ISSUES)), []),
    /** The plan of the last issue, which changes are told against; null before the first. */
    issued: z._default(z.nullable(plan), null),
    /** The plan of the issue before the last, so that what goes out with a new set can tell what it changed; null before the second. */
    before: z._default(z.nullable(plan), null),
    /** Named copies of the bay, oldest first. */
    versions: z._default(
      z.array(z.object({ name: versionName, date: isoDate, plan })).check(z.maxLength(MOST_VERSIONS)),
      [],
    ),
  })

import * as z from 'zod/mini'
import { text, toggle } from '../model/fields'

/** The fields that every part has; a kind spreads them before its own. */
export const baseFields = {
  id: z.string().check(z.regex(/^[a-z-]+-[0-9]{1,9}$/)),
  name: text('', { label: 'Name', group: 'Part' }, 60),
  locked: toggle(false, { label: 'Locked in place', group: 'Part' }),
}

import type { Table } from '../model/table'

type Chosen =
  { readonly ok: true; readonly tables: readonly Table[] } | { readonly ok: false; readonly sentence: string }

/** The tables that are to be written: the one that is named, all into a folder, or the only one. `whose` has them. */
export const chosenTable = (
  tables: readonly Table[],
  named: string | undefined,
  whose: string,
  isForFolder: boolean,
): Chosen => {
  const names = tables.map(({ id }) => id).join(', ')
  if (tables.length === 0) return { ok: false, sentence: `There is no table on ${whose} of this plan.` }
  if (named !== undefined) {
    const found = tables.filter(({ id }) => id.toLowerCase() === named.toLowerCase())
    return found.length > 0
      ? { ok: true, tables: found }
      : { ok: false, sentence: `There is no table “${named}” on ${whose}; there are ${names}.` }
  }
  if (isForFolder || tables.length === 1) return { ok: true, tables }
  return {
    ok: false,
    sentence: `There are ${tables.length} tables on ${whose}: name one with --table (${names}), or a folder for all with --out.`,
  }
}

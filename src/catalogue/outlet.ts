import { inches } from '../units/length'
import { finder } from './lookup'

/** What lets the water out of a trough. */
export interface Outlet {
  readonly key: '1/2' | '3/4' | '1' | '2'
  readonly title: string
  readonly boreMm: number
  readonly source: string
}

const NAMED =
  'Bore by its name; what is bought differs by a few hundredths of an inch. Common practice, no source'

const outletRow = (key: Outlet['key'], bore: number): Outlet => ({
  key,
  title: `${key} in outlet`,
  boreMm: inches(bore),
  source: NAMED,
})

/** From the smallest up. */
export const outlets: readonly Outlet[] = [
  outletRow('1/2', 1 / 2),
  outletRow('3/4', 3 / 4),
  outletRow('1', 1),
  outletRow('2', 2),
]

/** The outlet of a key, such as `3/4`. */
export const outletOf: (key: string) => Outlet = finder('outlet', outlets, (outlet) => outlet.key)

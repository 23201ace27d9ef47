import type { Layout } from '../../src/layout/schema'
import { kindOf } from '../../src/parts/index'
import { flatSite } from './site'

/** Places of all towers that hang, as `x y` in whole mm: what is seen on the floor, however towers are counted. */
export const derivedTowers = (layout: Layout): Set<string> =>
  new Set(
    layout.parts
      .flatMap((part) => kindOf(part).derive(part, flatSite()).mouths)
      .filter(({ role }) => role === 'tower-head')
      .map(({ at }) => `${Math.round(at.x)} ${Math.round(at.y)}`),
  )

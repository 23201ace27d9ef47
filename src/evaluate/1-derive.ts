import { headroomOf } from '../geometry/headroom'
import { surfaceOf } from '../geometry/surface'
import type { House } from '../layout/house'
import type { Layout, Part } from '../layout/schema'
import type { Built } from '../model/built'
import type { Site } from '../model/site'
import { kindOf } from '../parts'
import { rememberEach } from '../model/remember'

/** The house as functions of a place on the floor. */
export interface Shell {
  /** Floor level from the benchmark's zero, mm. */
  readonly groundAt: (x: number, y: number) => number
  /** Clear height above the floor, mm. */
  readonly headroomAt: (x: number, y: number) => number
}

const shellOf = rememberEach<House, null, Shell>((house) => ({
  groundAt: surfaceOf(house.spotLevels.map(({ at, levelMm }) => ({ ...at, z: levelMm }))),
  headroomAt: headroomOf(house.outline, house.headroomMm, house.curvedWalls),
}))

/** The greatest tip height that any row asks for: rails and bars of the whole bay are level, and drilled alike. */
const commonTipMm = ({ parts, bench }: Layout): number => {
  let tipMm = 0
  for (const part of parts) tipMm = Math.max(tipMm, kindOf(part).tipNeededMm?.(part, bench.measured) ?? 0)
  return tipMm
}

const sites = new WeakMap<Shell, readonly Site[]>()

/** A drag goes to and fro between few sites at most. */
const SITES_KEPT = 4

const isSame = (a: Site, b: Site): boolean =>
  a.tipMm === b.tipMm &&
  a.leafReachMm === b.leafReachMm &&
  a.kerfMm === b.kerfMm &&
  a.lumberMm === b.lumberMm &&
  a.measured === b.measured

/** The site of a bay; the same object for as long as nothing in it has changed, so that parts stay derived. */
const siteOf = (shell: Shell, layout: Layout): Site => {
  const { settings, bench } = layout
  const site: Site = {
    groundAt: shell.groundAt,
    leafReachMm: settings.leafReachMm * settings.growth,
    tipMm: commonTipMm(layout),
    kerfMm: settings.kerfMm,
    lumberMm: settings.lumberMm,
    measured: bench.measured,
  }
  const kept = sites.get(shell) ?? []
  const known = kept.find((other) => isSame(other, site))
  if (!known) sites.set(shell, [site, ...kept].slice(0, SITES_KEPT))
  return known ?? site
}

const builtOf = rememberEach<Part, Site, Built>((part, site) => kindOf(part).derive(part, site))

export interface Derived {
  readonly shell: Shell
  readonly site: Site
  /** In the order of the layout's parts. */
  readonly built: readonly Built[]
}

/** Step 1: every part to its built things, remembered by the identity of part and site. */
export const derive = (layout: Layout): Derived => {
  const shell = shellOf(layout.house, null)
  const site = siteOf(shell, layout)
  return { shell, site, built: layout.parts.map((part) => builtOf(part, site)) }
}

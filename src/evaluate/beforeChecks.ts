import { aislesByRow } from '../checks/aisles'
import { aislesOf } from '../checks/aisleWays'
import type { Bay } from '../checks/context'
import type { Layout } from '../layout/schema'
import type { Built } from '../model/built'
import type { Evaluation } from './evaluation'
import { derive } from './1-derive'
import { join } from './2-join'
import { joinedPipes } from './3-joined-pipes'
import { levels } from './3-levels'
import { water } from './4-water'
import { returns } from './4-returns'
import { cutLists } from './6-cutting'
import { takeOff } from './7-take-off'
import { draw } from './9-drawing'

const sumOf = (built: readonly Built[], count: (rack: NonNullable<Built['rack']>) => number): number =>
  built.reduce((sum, { rack }) => sum + (rack ? count(rack) : 0), 0)

const bayOf = (layout: Layout): Bay => {
  const { house, settings } = layout
  const { shell, site, built } = derive(layout)
  const joins = join(built, settings)
  const aisles = aislesOf(built, house.outline, settings)
  const builtOf = new Map(built.map((b) => [b.part, b]))
  const known = levels(built, joins, site, settings.datum)
  const between = joinedPipes(built, joins, { builtOf, levels: known })
  const inputs = { built, builtOf, joins, levels: known, joinedPipes: between, settings }
  const solved = water(inputs)
  return {
    house,
    settings,
    site,
    built,
    builtOf,
    joins,
    levels: known,
    joinedPipes: between,
    water: solved,
    returns: returns({ ...inputs, water: solved }),
    headroomAt: shell.headroomAt,
    aisles,
    aislesAt: aislesByRow(aisles),
  }
}

/**
 * From a layout to all but what the rules find in it. Pure and total: every layout that the schema accepts gives an
 * evaluation. Step 5, loads, is asked for apart, by `strengthOf(bay)`.
 */
export const beforeChecks = (layout: Layout): Evaluation => {
  const bay = bayOf(layout)
  const all = [...bay.built, ...bay.joinedPipes]
  return Object.freeze({
    layout,
    bay,
    cuts: cutLists(all, layout),
    counts: takeOff(all, bay.joins, bay.levels),
    towers: sumOf(bay.built, (rack) => rack.towers),
    sites: sumOf(bay.built, (rack) => rack.sites),
    marksOf: draw(layout.parts, bay.built, bay.joinedPipes),
  })
}

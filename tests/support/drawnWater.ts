import { derive } from '../../src/evaluate/1-derive'
import { join } from '../../src/evaluate/2-join'
import { joinedPipes } from '../../src/evaluate/3-joined-pipes'
import { levels as levelsOf } from '../../src/evaluate/3-levels'
import type { RowBay } from '../../src/evaluate/water/feedVariant'
import type { WaterInputs } from '../../src/evaluate/water/plan'
import type { Layout } from '../../src/layout/schema'
import type { RackRow } from '../../src/parts/rack-row/schema'

/** What the water of a drawn bay is computed from, without the checks and cuts that it does not need. */
export const drawnWater = (layout: Layout): WaterInputs & RowBay => {
  const { settings } = layout
  const { site, built } = derive(layout)
  const joins = join(built, settings)
  const builtOf = new Map(built.map((each) => [each.part, each]))
  const levels = levelsOf(built, joins, site, settings.datum)
  return {
    settings,
    site,
    built,
    builtOf,
    joins,
    levels,
    joinedPipes: joinedPipes(built, joins, { builtOf, levels }),
  }
}

/** The first row of a layout, or the one with a name. */
export const rowOf = (layout: Layout, name?: string): RackRow => {
  const row = layout.parts.find(
    (part) => part.kind === 'rack-row' && (name === undefined || part.name === name),
  )
  if (row?.kind !== 'rack-row') throw new Error(`No row ${name ?? ''} in the layout`)
  return row
}

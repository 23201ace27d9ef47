import type { PartKind } from '../../model/partKind'
import { moveStanding } from '../footprint'
import { chainRows } from './chain'
import { deriveRackRow } from './derive'
import { drawRackRow } from './draw'
import { createRow, mirrorRow } from './edit'
import { dragRow, rowHandles } from './ends'
import { troughLevels } from './levels'
import { materialsOf } from './materials'
import { rackRowPresets } from './presets'
import { rackRowSchema, type RackRow } from './schema'
import { shavedBy } from './shavedBy'

export const rackRow: PartKind<RackRow> = {
  kind: 'rack-row',
  title: 'Rack row',
  schema: rackRowSchema,
  presets: rackRowPresets,
  create: createRow,
  move: moveStanding,
  mirror: mirrorRow,
  tipNeededMm: (part, measured) => troughLevels(part, materialsOf(part, measured)).tipNeededMm,
  shavedBy,
  derive: deriveRackRow,
  draw: drawRackRow,
  handles: rowHandles,
  drag: dragRow,
  chain: chainRows,
}

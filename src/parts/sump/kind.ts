import type { PartKind } from '../../model/partKind'
import { onFloor } from '../floor'
import { mirrorStanding, moveStanding } from '../footprint'
import { deriveSump } from './derive'
import { drawSump } from './draw'
import { sumpPresets } from './presets'
import { sumpSchema, type Sump } from './schema'
import { dragSump, sumpHandles } from './shape'

export const sump: PartKind<Sump> = {
  kind: 'sump',
  title: 'Pit',
  schema: sumpSchema,
  presets: sumpPresets,
  create: (id, name, at, preset) =>
    sumpSchema.parse({ ...preset.values, kind: 'sump', id, name, at: onFloor(at) }),
  move: moveStanding,
  mirror: mirrorStanding,
  derive: deriveSump,
  draw: drawSump,
  handles: sumpHandles,
  drag: dragSump,
}

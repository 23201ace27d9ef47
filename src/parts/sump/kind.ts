import type { PartKind, Preset } from '../../model/partKind'
import { inches } from '../../units/length'
import { onFloor } from '../floor'
import { cornerHandles, dragCorner, mirrorStanding, moveStanding } from '../footprint'
import { deriveSump } from './derive'
import { drawSump } from './draw'
import { PIT_SIDE, sumpSchema, type Sump } from './schema'

const presets: readonly Preset<Sump>[] = [
  { id: 'sump-long', title: 'Pit', hint: 'Sump in the ground, 36 x 114 in', values: {} },
  {
    id: 'sump-small',
    title: 'Small pit',
    hint: 'Sump for a rack or two, 24 x 36 in',
    values: { lengthMm: inches(36), widthMm: inches(24) },
  },
]

export const sump: PartKind<Sump> = {
  kind: 'sump',
  title: 'Pit',
  schema: sumpSchema,
  presets,
  create: (id, name, at, preset) =>
    sumpSchema.parse({ ...preset.values, kind: 'sump', id, name, at: onFloor(at) }),
  move: moveStanding,
  mirror: mirrorStanding,
  derive: deriveSump,
  draw: drawSump,
  handles: cornerHandles,
  drag: (part, handle, to) => dragCorner(part, handle, to, PIT_SIDE),
}

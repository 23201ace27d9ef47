import type { Mirror } from '../../geometry/motion'
import type { PartKind, Preset } from '../../model/partKind'
import { inches } from '../../units/length'
import { onFloor } from '../floor'
import { mirrorStanding, moveStanding } from '../footprint'
import { deriveOpening } from './derive'
import { drawOpening } from './draw'
import { dragOpening, openingHandles } from './handles'
import { intoWall } from './intoWall'
import { openingSchema, type Opening } from './schema'

const presets: readonly Preset<Opening>[] = [
  {
    id: 'door',
    title: 'Door',
    hint: '36 in, one leaf, swings in',
    values: { swing: 'in', access: 'people' },
  },
  {
    id: 'double-door',
    title: 'Double door',
    hint: '96 in, two leaves, swings out',
    values: { widthMm: inches(96), heightMm: inches(90), leaves: 'double' },
  },
  {
    id: 'gap',
    title: 'Gap or slider',
    hint: '48 in, nothing that swings',
    values: { widthMm: inches(48), leaves: 'none' },
  },
]

/** A mirror swaps left and right, whichever way the door faces. */
const mirrorOpening = (part: Opening, mirror: Mirror): Opening => ({
  ...mirrorStanding(part, mirror),
  hinge: part.hinge === 'left' ? 'right' : 'left',
})

export const opening: PartKind<Opening> = {
  kind: 'opening',
  title: 'Opening',
  schema: openingSchema,
  presets,
  create: (id, name, at, preset) =>
    openingSchema.parse({ ...preset.values, kind: 'opening', id, name, at: onFloor(at) }),
  move: moveStanding,
  mirror: mirrorOpening,
  fitIn: intoWall,
  derive: deriveOpening,
  draw: drawOpening,
  handles: openingHandles,
  drag: dragOpening,
}

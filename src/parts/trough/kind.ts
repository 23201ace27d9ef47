import { offset } from '../../geometry/motion'
import type { PartKind, Preset } from '../../model/partKind'
import { onFloor } from '../floor'
import { mirrorStanding, moveStanding } from '../footprint'
import { deriveTrough, runOf } from './derive'
import { drawTrough } from './draw'
import { dragTrough, troughHandles } from './handles'
import { troughSchema, type Trough } from './schema'

const presets: readonly Preset<Trough>[] = [
  { id: 'trough-5in', title: 'Trough', hint: '5 in gutter on blocks, falls to its outlet', values: {} },
  {
    id: 'trough-4in',
    title: 'Small trough',
    hint: '4 in gutter on blocks',
    values: { gutter: 'gutter-4in' },
  },
]

export const trough: PartKind<Trough> = {
  kind: 'trough',
  title: 'Trough',
  schema: troughSchema,
  presets,
  create: (id, name, at, preset) => {
    const part = troughSchema.parse({ ...preset.values, kind: 'trough', id, name, at: onFloor(at) })
    return { ...part, at: onFloor(offset(at, part.heading, -runOf(part) / 2, 0)) }
  },
  move: moveStanding,
  mirror: mirrorStanding,
  derive: deriveTrough,
  draw: drawTrough,
  handles: troughHandles,
  drag: dragTrough,
}

import type { PartKind, Preset } from '../../model/partKind'
import { onFloor } from '../floor'
import { cornerHandles, dragCorner, mirrorStanding, moveStanding } from '../footprint'
import { deriveHeadBox } from './derive'
import { drawHeadBox } from './draw'
import { BOX_SIDE, headBoxSchema, type HeadBox } from './schema'

const presets: readonly Preset<HeadBox>[] = [
  {
    id: 'head-box',
    title: 'Head box',
    hint: 'Small overflow tank on a stand: one head, whatever is open',
    values: {},
  },
]

export const headBox: PartKind<HeadBox> = {
  kind: 'head-box',
  title: 'Head box',
  schema: headBoxSchema,
  presets,
  create: (id, name, at, preset) =>
    headBoxSchema.parse({ ...preset.values, kind: 'head-box', id, name, at: onFloor(at) }),
  move: moveStanding,
  mirror: mirrorStanding,
  derive: deriveHeadBox,
  draw: drawHeadBox,
  handles: cornerHandles,
  drag: (part, handle, to) => dragCorner(part, handle, to, BOX_SIDE),
}

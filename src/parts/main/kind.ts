import type { PartKind, Preset } from '../../model/partKind'
import { addRunPoint, dragRun, mirrorRun, moveRun, newRun, removeRunPoint, runHandles } from '../points'
import { deriveMain } from './derive'
import { drawMain } from './draw'
import { mainSchema, type Main } from './schema'

const presets: readonly Preset<Main>[] = [
  { id: 'main-2in', title: 'Main', hint: '2 in pump line, from the pump to the rows', values: {} },
  {
    id: 'main-1-1/2in',
    title: 'Small main',
    hint: '1-1/2 in pump line for a few zones',
    values: { pipe: 'pe-1-1/2' },
  },
]

export const main: PartKind<Main> = {
  kind: 'main',
  title: 'Main',
  schema: mainSchema,
  presets,
  create: (id, name, at, preset) =>
    mainSchema.parse({ ...preset.values, kind: 'main', id, name, points: newRun(at) }),
  move: moveRun,
  mirror: mirrorRun,
  derive: deriveMain,
  draw: drawMain,
  handles: runHandles,
  drag: dragRun,
  addPoint: addRunPoint,
  removePoint: removeRunPoint,
}

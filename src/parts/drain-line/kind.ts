import type { PartKind, Preset } from '../../model/partKind'
import { inchesPerFoot } from '../../units/slope'
import { addRunPoint, dragRun, mirrorRun, moveRun, newRun, removeRunPoint, runHandles } from '../points'
import { deriveDrainLine } from './derive'
import { drawDrainLine } from './draw'
import { drainLineSchema, type DrainLine } from './schema'

/** The falls are the least of International Plumbing Code Table 704.1 for each size. */
const presets: readonly Preset<DrainLine>[] = [
  { id: 'drain-4in', title: 'Drain line', hint: '4 in pipe in a trench, falls to the pit', values: {} },
  {
    id: 'drain-2in',
    title: 'Small drain line',
    hint: '2 in pipe for a rack or two, falls twice as steep',
    values: { pipe: 'drain-2in', slope: inchesPerFoot(1 / 4) },
  },
  {
    id: 'drain-6in',
    title: 'Collector drain',
    hint: '6 in pipe that takes several drain lines',
    values: { pipe: 'drain-6in' },
  },
]

export const drainLine: PartKind<DrainLine> = {
  kind: 'drain-line',
  title: 'Drain line',
  schema: drainLineSchema,
  presets,
  create: (id, name, at, preset) =>
    drainLineSchema.parse({ ...preset.values, kind: 'drain-line', id, name, points: newRun(at) }),
  move: moveRun,
  mirror: mirrorRun,
  derive: deriveDrainLine,
  draw: drawDrainLine,
  handles: runHandles,
  drag: dragRun,
  addPoint: addRunPoint,
  removePoint: removeRunPoint,
}

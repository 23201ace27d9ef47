import type { Frame } from '../../../../evaluate/loads/frame'
import { sticksOf } from '../../../../evaluate/loads/frame'
import type { Height } from '../../../../sheets/assembly/heights'
import { heightsOf } from '../../../../sheets/assembly/heights'
import type { RackBuilt } from '../../../../sheets/assembly/rowBuilt'
import { risersOf, type Stretch } from './stretch'

/** The foot of a riser over the rack datum, mm; 0 where nothing stands on the floor. */
export const footOf = (frame: Frame): number => {
  const feet = risersOf(frame).map(({ from, to }) => Math.min(from.z, to.z))
  return feet.length > 0 ? Math.min(...feet) : 0
}

/** The invert of the gutters at a place along the row, over the rack datum, mm; undefined where no gutter lies. */
const invertAt = (frame: Frame, u: number): { invertMm: number; depthMm: number } | undefined => {
  const [first] = frame.sticks.get('GT') ?? []
  if (!first) return undefined
  const onLine = sticksOf(frame, 'GT').filter(({ from }) => Math.abs(from.v - first.from.v) < 1)
  const away = ({ from, to }: typeof first) =>
    Math.max(Math.min(from.u, to.u) - u, u - Math.max(from.u, to.u), 0)
  const { from, to, stick } = onLine.reduce((near, next) => (away(next) < away(near) ? next : near), first)
  const share = Math.min(1, Math.max(0, (u - from.u) / (to.u - from.u)))
  return { invertMm: from.z + (to.z - from.z) * share, depthMm: stick.heightMm }
}

/** The levels at the left end of what is drawn, from the foot of a riser, from the lowest up: of a rail its middle. */
export const levelsOf = (frame: Frame, { fromU }: Stretch): readonly Height[] => {
  const { rack } = frame
  const footMm = footOf(frame)
  const [rail] = sticksOf(frame, 'RL', 'RL-b')
  const gutter = invertAt(frame, fromU)
  const levels = [
    { mm: footMm, words: 'foot' },
    ...(gutter
      ? [
          { mm: gutter.invertMm, words: 'invert' },
          { mm: gutter.invertMm + gutter.depthMm, words: 'lip' },
        ]
      : []),
    { mm: rack.tipMm, words: 'tip' },
    ...(rail ? [{ mm: rail.from.z, words: 'rail' }] : []),
    { mm: rack.barTopMm, words: 'bar top' },
  ]
  return levels.map(({ mm, words }) => ({ mm: mm - footMm, words })).toSorted((a, b) => a.mm - b.mm)
}

/** What the carpenter reads beside the rack, from the foot up; the row's levels stand at the other side. */
export const tapeOf = (rack: RackBuilt): readonly Height[] =>
  heightsOf(rack)
    .filter(({ words }) => words !== 'bar top' && !words.startsWith('lip'))
    .map((height) => (height.isDrilled ? { ...height, words: 'hole bottom' } : height))

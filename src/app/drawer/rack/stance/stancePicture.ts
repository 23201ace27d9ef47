import type { Frame } from '../../../../evaluate/loads/frame'
import type { Stance, Tip } from '../../../../model/strength'
import type { PlotSize } from '../../chart/plot'

/** A thing of the row as it is seen from where it tips, mm; z up. */
export interface Seen {
  readonly key: string
  readonly from: readonly [number, number]
  readonly to: readonly [number, number]
  readonly thickMm: number
  readonly isSteel: boolean
}

export interface SeenTower {
  readonly at: number
  readonly topMm: number
  readonly tipMm: number
  readonly widthMm: number
  readonly isHung: boolean
}

/** A row as a person sees it who stands where it would tip away to the right. */
export interface StancePicture {
  readonly sticks: readonly Seen[]
  readonly towers: readonly SeenTower[]
  /** The edge that it tips over, and the middle of the weight. */
  readonly edgeMm: number
  readonly weightMm: number
  /** Where weight and push together meet the floor. */
  readonly footMm: number
  readonly lowMm: number
  readonly highMm: number
  readonly tallMm: number
}

const once = <T extends { readonly key: string }>(all: readonly T[]): readonly T[] => [
  ...new Map(all.map((each) => [each.key, each])).values(),
]

const isFrame = (stock: string): boolean => stock.startsWith('lumber-') || stock.startsWith('conduit-')

const keyOf = (...numbers: readonly number[]): string => numbers.map((mm) => Math.round(mm)).join(' ')

const seenSticks = ({ sticks }: Frame, axis: 'u' | 'v'): readonly Seen[] =>
  once(
    [...sticks.values()].flat().flatMap(({ from, to, stick }): Seen[] =>
      isFrame(stick.stock)
        ? [
            {
              key: keyOf(from[axis], from.z, to[axis], to.z),
              from: [from[axis], from.z],
              to: [to[axis], to.z],
              thickMm: Math.min(stick.widthMm, stick.heightMm),
              isSteel: stick.stock.startsWith('conduit-'),
            },
          ]
        : [],
    ),
  )

/** Of the two sides the one to the right hangs, for the row tips away to the right. */
const isHungIn = (tip: Tip, v: number): boolean =>
  tip.under === 'full' || tip.under === 'proof' || (tip.under === 'one-side' && v > 0)

const seenTowers = ({ towers, rack }: Frame, axis: 'u' | 'v', tip: Tip): readonly SeenTower[] =>
  once(
    // What hangs is drawn over what does not.
    towers
      .map((tower) => ({
        key: keyOf(tower[axis]),
        at: tower[axis],
        topMm: tower.z,
        tipMm: rack.tipMm,
        widthMm: rack.bodyMm,
        isHung: isHungIn(tip, tower.v),
      }))
      .toSorted((a, b) => Number(a.isHung) - Number(b.isHung)),
  )

/** The end of the row's risers and runners to the right. */
const edgeAlong = ({ sticks }: Frame): number =>
  Math.max(
    ...[...sticks]
      .filter(([mark]) => mark.startsWith('RS') || mark === 'BR')
      .flatMap(([, laid]) => laid.flatMap(({ from, to }) => [from.u, to.u])),
  )

/** A row in a state of load, from its built sticks, with what pushes it and what comes of that. */
export const stancePicture = (frame: Frame, stance: Stance, tip: Tip, pushN: number): StancePicture => {
  const axis = tip.way === 'across' ? 'v' : 'u'
  const sticks = seenSticks(frame, axis)
  const edgeMm = tip.way === 'across' ? stance.baseHalfMm : edgeAlong(frame)
  const weightMm = edgeMm - tip.armMm
  const footMm = weightMm + (pushN * stance.railMm) / Math.max(1, tip.weightN)
  const all = sticks.flatMap(({ from, to }) => [from[0], to[0]])
  return {
    sticks,
    towers: seenTowers(frame, axis, tip),
    edgeMm,
    weightMm,
    footMm,
    lowMm: Math.min(...all, tip.way === 'across' ? -edgeMm : 0),
    highMm: Math.max(...all, edgeMm),
    tallMm: Math.max(stance.riserMm, ...sticks.flatMap(({ from, to }) => [from[1], to[1]])),
  }
}

/** Room for the push on the left and the words on the right, px. */
const ROOM = { left: 96, right: 110, top: 18, bottom: 34 }

export interface OnPage {
  readonly xOf: (mm: number) => number
  readonly yOf: (zMm: number) => number
  readonly pxPerMm: number
}

/** To scale in the room there is, its feet on the floor. */
export const onPage = ({ lowMm, highMm, tallMm }: StancePicture, { width, height }: PlotSize): OnPage => {
  const pxPerMm = Math.min(
    Math.max(40, width - ROOM.left - ROOM.right) / Math.max(1, highMm - lowMm),
    Math.max(40, height - ROOM.top - ROOM.bottom) / Math.max(1, tallMm),
  )
  const leftPx = ROOM.left + Math.max(0, (width - ROOM.left - ROOM.right - (highMm - lowMm) * pxPerMm) / 2)
  return {
    pxPerMm,
    xOf: (mm) => leftPx + (mm - lowMm) * pxPerMm,
    yOf: (zMm) => height - ROOM.bottom - zMm * pxPerMm,
  }
}

import type { Body, BodyRole, Built } from '../../model/built'
import { inches } from '../../units/length'
import type { Point } from '../../geometry/point'
import { outlineAround } from '../footprint'
import { leafWidth, leavesOf } from './leaves'
import type { Opening } from './schema'

/** The threshold reaches this far to each side of the wall line: thin, so that it only marks the gap. */
const HALF_THRESHOLD_MM = inches(1)

const body = (part: Opening, role: BodyRole, outline: readonly Point[]): Body => ({
  part: part.id,
  role,
  outline,
  fromMm: 0,
  toMm: part.heightMm,
})

const gapOf = (part: Opening, backMm: number, frontMm: number): Point[] =>
  outlineAround(part, { backMm, frontMm, leftMm: part.widthMm / 2, rightMm: part.widthMm / 2 })

/** What a door that opens into the house asks of it: what its leaves pass over, and the floor they stand open on. */
const swingBodies = (part: Opening): Body[] =>
  part.swing === 'out' || part.leaves === 'none'
    ? []
    : [
        ...leavesOf(part).map(({ swept }) => body(part, 'door-swing', swept)),
        body(part, 'keep-clear', gapOf(part, 0, leafWidth(part))),
      ]

/** Bodies alone: the door is the house's. */
export const deriveOpening = (part: Opening): Built => ({
  part: part.id,
  zFrom: 'benchmark',
  sticks: [],
  tubes: [],
  fittings: [],
  bodies: [
    body(
      part,
      part.access === 'carts' ? 'door' : 'person-door',
      gapOf(part, HALF_THRESHOLD_MM, HALF_THRESHOLD_MM),
    ),
    ...swingBodies(part),
  ],
  mouths: [],
  supports: [],
})

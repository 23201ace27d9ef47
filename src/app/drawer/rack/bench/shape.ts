import type { Point } from '../../../../geometry/point'
import type { Mark } from '../../../../model/drawing'
import type { RowSpot } from '../../../../model/strength'
import type { Member } from '../../../../sheets/assembly/members'
import { type Laid, onSheet, type Seen, seenAs, type View } from '../../../../sheets/assembly/shapes'
import { runsAlong } from './stretch'

export type Stuff = 'timber' | 'steel' | 'trough'

/** A member as it is drawn, mm of glass, y up. */
export interface MemberShape {
  readonly key: string
  readonly mark: string
  readonly stuff: Stuff
  readonly seen:
    | { readonly as: 'disc'; readonly at: Point; readonly radius: number }
    | { readonly as: 'shape'; readonly corners: readonly Point[] }
}

/** A drawing of the bench as data, mm of glass with y up; what comes first lies behind. */
export interface Drawing {
  readonly widthMm: number
  readonly heightMm: number
  readonly behind: readonly Mark[]
  readonly members: readonly MemberShape[]
  readonly over: readonly Mark[]
  readonly pills: readonly Pill[]
  /** Where a place of the row is on it. */
  readonly placeOf: (spot: RowSpot) => Point
}

/** A member's mark in a ring with round ends, and where its leader points at. */
export interface Pill {
  readonly mark: string
  /** The mark, and behind it the word of a state that is not good. */
  readonly text: string
  readonly at: Point
  readonly point: Point
}

const stuffOf = ({ stick: { stock } }: Member): Stuff => {
  if (stock.startsWith('gutter')) return 'trough'
  return stock.startsWith('lumber') ? 'timber' : 'steel'
}

/** A gutter lies along its invert; all else along its middle. */
const middled = (member: Member): Member => {
  if (stuffOf(member) !== 'trough') return member
  const up = member.stick.heightMm / 2
  const raised = (at: Member['from']) => ({ ...at, z: at.z + up })
  return { ...member, from: raised(member.from), to: raised(member.to) }
}

/** Looked at along the row, what runs along it is seen on its end. */
const onEnd = (member: Member, { near }: View): Member => {
  const nearest = near(member.from) > near(member.to) ? member.from : member.to
  return { ...member, from: nearest, to: nearest }
}

/** A member as the views draw it, mm of the rack. */
export const looked = (member: Member, view: View): Member => {
  const lies = middled(member)
  return view.looks === 'along' && runsAlong(lies) ? onEnd(lies, view) : lies
}

const laidOut = (seen: Seen, laid: Laid): MemberShape['seen'] =>
  seen.as === 'disc'
    ? { as: 'disc', at: onSheet(laid, seen.at), radius: seen.radiusMm * laid.scale }
    : { as: 'shape', corners: seen.corners.map((corner) => onSheet(laid, corner)) }

const keyOf = ({ stick, from }: Member): string =>
  [stick.mark, ...[from.u, from.v, from.z].map((mm) => Math.round(mm))].join(' ')

/** Members from the furthest to the nearest, so that what stands in front hides what is behind. */
export const shapesOf = (members: readonly Member[], view: View, laid: Laid): readonly MemberShape[] => {
  const nearest = ({ from, to }: Member) => Math.max(view.near(from), view.near(to))
  return members
    .map((member) => looked(member, view))
    .toSorted((a, b) => nearest(a) - nearest(b))
    .map((member) => ({
      key: keyOf(member),
      mark: member.stick.mark,
      stuff: stuffOf(member),
      seen: laidOut(seenAs(member, view), laid),
    }))
}

import type { PartKind, Preset } from '../model/partKind'
import { drainLine } from './drain-line/kind'
import type { DrainLine } from './drain-line/schema'
import { headBox } from './head-box/kind'
import type { HeadBox } from './head-box/schema'
import { main } from './main/kind'
import type { Main } from './main/schema'
import { obstacle } from './obstacle/kind'
import type { Obstacle } from './obstacle/schema'
import { opening } from './opening/kind'
import type { Opening } from './opening/schema'
import { rackRow } from './rack-row/kind'
import type { RackRow } from './rack-row/schema'
import { sump } from './sump/kind'
import type { Sump } from './sump/schema'
import { trough } from './trough/kind'
import type { Trough } from './trough/schema'

/** A part of any kind; the same union as the layout's schema makes. */
export type AnyPart = RackRow | Trough | DrainLine | Sump | Main | HeadBox | Obstacle | Opening

/** Every kind of part, in the order of the shelf: what is built first, then what the house brings. */
export const kinds: readonly PartKind<AnyPart>[] = [
  rackRow,
  trough,
  drainLine,
  sump,
  main,
  headBox,
  obstacle,
  opening,
]

const byKind = new Map(kinds.map((kind) => [kind.kind, kind]))

/** The functions of a part's kind, for parts of its type. */
export const kindOf = <P extends AnyPart>(part: P): PartKind<P> => {
  const kind = byKind.get(part.kind)
  if (!kind) throw new RangeError(`No part kind is registered as "${part.kind}".`)
  // The registry holds a kind under its own name, so what is found under P's kind is P's.
  return kind as unknown as PartKind<P>
}

/** One thing that can be taken from the shelf. */
export interface ShelfItem {
  readonly kind: PartKind<AnyPart>
  readonly preset: Preset<AnyPart>
}

/** Every preset of every kind, in shelf order. */
export const shelf: readonly ShelfItem[] = kinds.flatMap((kind) =>
  kind.presets.map((preset) => ({ kind, preset })),
)

import type { Heading } from '../geometry/motion'
import type { Point } from '../geometry/point'
import type { PartId } from './ids'
import type { PitAsks } from './workingLevels'

/** State words, per subject; the first of each is good, the last must be mended. */
export const stateWords = {
  fit: ['Fits', 'Tight', 'Clash'],
  drain: ['Falls', 'Flat', 'Backs up'],
  flow: ['Even', 'Drifting', 'Starved'],
  pit: ['Holds', 'Thin', 'Spills'],
  strength: ['Within', 'Proof-load', 'Too long'],
  stance: ['Stands', 'Shaky', 'Tips'],
} as const

export type Subject = keyof typeof stateWords
export type StateWord = (typeof stateWords)[Subject][number]

export interface Quantity {
  readonly value: number
  readonly unit:
    | 'mm'
    | 'mm/m'
    | 'lph'
    | 'm/s'
    | 'C'
    | 'share'
    | 'L'
    | 'min'
    | 'count'
    | 'kg'
    | 'N'
    | 'MPa'
    | 'kPa'
    | 'Nmm'
    | 'ratio'
  /** A long thing, which is read in feet; other lengths are read along a tape. */
  readonly isInFeet?: true
  /** Above the file's zero, which is read as the crew reads levels. */
  readonly isLevel?: true
  /** What a lateral, a main or a pump carries, which is read a minute; the flow of one tower is read an hour. */
  readonly isTotal?: true
}

/** One line of the arithmetic behind a finding: a name and its value. */
export interface Term {
  readonly name: string
  readonly quantity: Quantity
}

/** A point of what is laid, and how high over the floor its middle is where it is not as high as usual, mm. */
export interface LaidPoint extends Point {
  readonly heightMm?: number
}

/** A repair as data; layout/mend.ts turns it into an edit. */
export type Mend =
  | { readonly kind: 'move'; readonly parts: readonly PartId[]; readonly dxMm: number; readonly dyMm: number }
  | {
      readonly kind: 'set'
      readonly part: PartId
      readonly field: string
      readonly value: number | string | boolean | null
    }
  /** Lay a drain line or a main along these points; those of a main may have a height over the floor. */
  | { readonly kind: 'lay'; readonly what: 'drain-line' | 'main'; readonly points: readonly LaidPoint[] }
  /** Split the feed of a row that is fed at an end, and leave its riser pipe there, where the main passes. */
  | { readonly kind: 'split'; readonly part: PartId; readonly feed: 'centre-split' | 'double-split' }
  /** Let all levels of a pit but its rim down by so much. */
  | { readonly kind: 'lower'; readonly part: PartId; readonly byMm: number }
  /** Set the levels of a pit from its inlet down, for what its water asks, and dig it deeper where it must be. */
  | { readonly kind: 'size-pit'; readonly part: PartId; readonly asks: PitAsks }
  /** Let each row's rails be level with its own highest foot, not with the bay's. */
  | { readonly kind: 'level-rows' }
  /** Dig a pit that a drain comes into at this invert; its long side runs along the heading. */
  | { readonly kind: 'dig'; readonly at: Point; readonly heading: Heading; readonly inletMm: number }

/** What a check found: data only. The words are made in checks/words.ts. */
export interface Finding {
  /** Same finding, same key, whatever the numbers: rule and the things, for accepting and for list identity. */
  readonly key: string
  readonly rule: string
  readonly subject: Subject
  readonly state: StateWord
  readonly parts: readonly PartId[]
  /** Where on the floor to jump to. */
  readonly at: Point
  /** The two ends of what was measured, for a dimension on the plan. */
  readonly span?: readonly [Point, Point]
  readonly measured: Quantity
  readonly limit: Quantity
  /** Names and numbers that the rule's words need. */
  readonly facts: Readonly<Record<string, string | number>>
  readonly terms: readonly Term[]
  readonly mend?: Mend
}

/** 0 is good, 1 is to be looked at, 2 must be mended. */
export const rankOf = ({ subject, state }: Pick<Finding, 'subject' | 'state'>): number =>
  (stateWords[subject] as readonly StateWord[]).indexOf(state) // widened to look up any state word

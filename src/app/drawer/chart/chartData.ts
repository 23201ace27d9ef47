import type { Measure } from './measures'

/** An axis: what it measures, and what of it must be in sight. Values are the program's own, in mm, litres an hour, m/s. */
export interface Axis {
  readonly name: string
  readonly measure: Measure
  /** What it must reach from and to, beside what is drawn. */
  readonly holds?: readonly number[]
}

export interface ChartPoint {
  readonly x: number
  readonly y: number
}

/** Lines are told apart by dash and by the shape of their marks, never by colour alone. */
export type Dash = 'continuous' | 'dashed' | 'dotted' | 'dash-dot'

export const markShapes = ['ring', 'square', 'triangle', 'diamond', 'cross'] as const

export type MarkShape = (typeof markShapes)[number]

export type Ink = 'water' | 'steel' | 'timber' | 'ink' | 'accent'

export interface ChartLine {
  readonly name: string
  readonly dash: Dash
  readonly ink: Ink
  /** Joined in this order. */
  readonly points: readonly ChartPoint[]
  /** Marked but not joined. */
  readonly marks?: { readonly shape: MarkShape; readonly points: readonly ChartPoint[] }
  /** How far it may lie off, from the lower points on and back along the upper ones. */
  readonly reach?: { readonly low: readonly ChartPoint[]; readonly high: readonly ChartPoint[] }
}

/** Between two heights, such as within 10 % of what is wanted. */
export interface ChartBand {
  readonly name: string
  readonly from: number
  readonly to: number
}

/** A level line across the chart. */
export interface ChartLevel {
  readonly name: string
  readonly y: number
  readonly dash: Dash
  /** Of the line, where its name stands. */
  readonly side: 'above' | 'below'
}

/** An upright through the chart, with what stands there. */
export interface ChartPost {
  readonly name: string
  readonly x: number
}

/** One point with words beside it. */
export interface ChartFlag {
  readonly words: string
  readonly x: number
  readonly y: number
  readonly ink: Ink
  readonly side: 'above' | 'below'
}

/** Where the read-out stops, and what it says there. */
export interface ChartStop {
  readonly x: number
  readonly words: string
}

export interface ChartRows {
  readonly columns: readonly string[]
  readonly rows: readonly (readonly string[])[]
}

/** Everything that a chart shows. */
export interface ChartData {
  readonly title: string
  /** What it says, in a sentence, for who can't see it. */
  readonly says: string
  readonly x: Axis
  readonly y: Axis
  readonly lines: readonly ChartLine[]
  readonly bands?: readonly ChartBand[]
  /** What the reach of the lines is, where they have one. */
  readonly reachName?: string
  readonly levels?: readonly ChartLevel[]
  readonly posts?: readonly ChartPost[]
  readonly flags?: readonly ChartFlag[]
  readonly stops: readonly ChartStop[]
  readonly table: ChartRows
}

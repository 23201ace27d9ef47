import type { PageItem } from '../drawing/page'
import type { Table } from '../model/table'

/** Words over what follows; 2 is a part of 1. */
export interface HeadingPiece {
  readonly as: 'heading'
  readonly text: string
  readonly level: 1 | 2
}

/** `caution` stands at the step where the work can hurt; `big` is read from afar; `note` is small. */
export interface WordsPiece {
  readonly as: 'words'
  readonly text: string
  readonly tone: 'plain' | 'big' | 'note' | 'caution'
  /** Never the last of a page: what it leads to follows it. */
  readonly isLead?: true
}

/** A table; it runs on over pages under its repeated head. */
export interface TablePiece {
  readonly as: 'table'
  readonly table: Table
  /** A box to tick before each row but sums. */
  readonly hasTicks: boolean
}

/** What is done in an order, each with a box to tick. */
export interface StepsPiece {
  readonly as: 'steps'
  readonly steps: readonly {
    /** Stays the same while the step is about the same thing. */
    readonly key: string
    readonly text: string
    /** What may hurt at this very step. */
    readonly caution?: string
  }[]
}

/** A drawing as it lies in its room. */
export interface Drawn {
  readonly heightMm: number
  /** Placed in mm of paper from the lower left corner of the figure, which the page moves to its place. */
  readonly items: readonly PageItem[]
  /** How it stands in the caption: `1:10`, `full size`, `not to scale`. */
  readonly scaleWords: string
  /** Of a drawing to scale whose items are placed in mm of paper: how many mm one of them stands for, so that CAD has it at its true size. */
  readonly ratio?: number
}

export interface FigurePiece {
  readonly as: 'figure'
  readonly caption: string
  /** Draws in a room of paper, mm; a figure is never taller than its room. */
  readonly draw: (room: { readonly widthMm: number; readonly heightMm: number }) => Drawn
}

/** Lines to write on by hand: `Tested by`, `Date`. */
export interface BlanksPiece {
  readonly as: 'blanks'
  readonly labels: readonly string[]
}

/** What follows begins on a new page. */
export interface BreakPiece {
  readonly as: 'page'
}

/** What a paper is made of, in reading order. Page, phone, text and file are writers of the same pieces. */
export type Piece =
  HeadingPiece | WordsPiece | TablePiece | StepsPiece | FigurePiece | BlanksPiece | BreakPiece

export const heading = (text: string, level: 1 | 2 = 1): HeadingPiece => ({ as: 'heading', text, level })

export const words = (text: string, tone: WordsPiece['tone'] = 'plain'): WordsPiece => ({
  as: 'words',
  text,
  tone,
})

/** Few words that stay with what follows them, as a heading does. */
export const lead = (text: string, tone: WordsPiece['tone'] = 'plain'): WordsPiece => ({
  ...words(text, tone),
  isLead: true,
})

export const tableOf = (table: Table, hasTicks = false): TablePiece => ({ as: 'table', table, hasTicks })

/** The tables among pieces, in their order. */
export const tablesIn = (pieces: readonly Piece[]): readonly Table[] =>
  pieces.flatMap((piece) => (piece.as === 'table' ? [piece.table] : []))

import type { TextFile } from '../sheets/sheetFiles'

/** What a question comes to; whoever runs the command writes it. */
export interface Answer {
  /** To be printed; empty where there are files. */
  readonly print: string
  readonly files: readonly TextFile[]
  /** A sentence beside the answer; empty where there is none. */
  readonly note: string
  /** 0: nothing fails; 1: something does; 2: there is no answer, and `note` says why. */
  readonly code: 0 | 1 | 2
}

/** There is no answer, and this is why. */
export const refusal = (sentence: string): Answer => ({ print: '', files: [], note: sentence, code: 2 })

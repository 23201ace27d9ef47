import { onPaper, type PageItem } from '../drawing/page'
import type { Box } from '../geometry/box'
import type { Mark } from '../model/drawing'
import type { Block } from './block'

/** What a flow gives to one page, and what is left of it for the next. All in mm of paper. */
export interface Taken {
  readonly heightMm: number
  readonly draw: (left: number, top: number) => readonly PageItem[]
  readonly rest?: Flow
}

/** A piece of a paper that can be set down on pages. */
export interface Flow {
  /** Bare paper before it, but at the head of a page. */
  readonly gapMm: number
  /** Never the last of a page: what it is about follows it. */
  readonly keepsWithNext?: true
  /** As written in the scale of its page, if it is drawn to one. */
  readonly scaleWords?: string
  /** As much of it as a height holds; undefined where it should rather begin on a new page. Forced, it always gives something. */
  readonly take: (heightMm: number, isForced: boolean) => Taken | undefined
}

/** One page's worth. */
export interface Leaf {
  readonly items: readonly PageItem[]
  readonly scales: readonly string[]
}

export const drawnMarks = (marks: readonly Mark[]): readonly PageItem[] => [
  { marks, placement: onPaper, isPlain: true },
]

export const NEXT_PAGE = 'page'

export type Flowing = Flow | typeof NEXT_PAGE

interface OpenLeaf {
  readonly items: PageItem[]
  readonly scales: string[]
  leftMm: number
}

/** Marks drawn straight on the paper one after another become one item, which keeps files small. */
const gathered = (items: readonly PageItem[]): readonly PageItem[] => {
  const all: PageItem[] = []
  let straight: Mark[] | undefined
  for (const item of items) {
    if (!item.isPlain) {
      all.push(item)
      straight = undefined
    } else if (straight === undefined) {
      straight = [...item.marks]
      all.push({ ...item, marks: straight })
    } else straight.push(...item.marks)
  }
  return all
}

/** Sets flows down over as many leaves of one room as they need, in their order. */
export const flowOver = (flows: readonly Flowing[], room: Box): readonly Leaf[] => {
  const fullMm = room.y1 - room.y0
  const leaves: OpenLeaf[] = []
  let leaf: OpenLeaf | undefined
  const turn = (): OpenLeaf => {
    const next = { items: [], scales: [], leftMm: fullMm }
    leaves.push(next)
    leaf = next
    return next
  }
  const set = (on: OpenLeaf, taken: Taken, gapMm: number, scaleWords?: string): void => {
    const top = room.y0 + on.leftMm - gapMm
    on.items.push(...taken.draw(room.x0, top))
    on.leftMm -= gapMm + taken.heightMm
    if (scaleWords !== undefined) on.scales.push(scaleWords)
  }
  const isFresh = (on: OpenLeaf): boolean => on.items.length === 0

  /** A run of headings with the first of what follows them, on this leaf or the next. */
  const setTogether = (heads: readonly Flow[], body: Flow | undefined): void => {
    const run = body === undefined ? heads : [...heads, body]
    const gaps = run.map(({ gapMm }) => gapMm)
    const takenHeads = heads.flatMap((head) => head.take(fullMm, true) ?? [])
    const headsMm = takenHeads.reduce((sum, { heightMm }) => sum + heightMm, 0)
    const gapsMm = gaps.reduce((sum, gapMm) => sum + gapMm, 0)
    const here = leaf ?? turn()
    const roomHere = here.leftMm - headsMm - gapsMm + (isFresh(here) ? (gaps[0] ?? 0) : 0)
    const first = body?.take(roomHere, false)
    const fits = body === undefined ? roomHere >= 0 : first !== undefined
    const on = fits || isFresh(here) ? here : turn()
    takenHeads.forEach((taken, i) => set(on, taken, isFresh(on) ? 0 : (gaps[i] ?? 0)))
    if (body !== undefined) setBody(body, on, on === here ? first : undefined)
  }

  const setBody = (body: Flow, on: OpenLeaf, first: Taken | undefined): void => {
    const gapMm = isFresh(on) ? 0 : body.gapMm
    const roomMm = on.leftMm - gapMm
    let taken = first ?? body.take(roomMm, false) ?? body.take(roomMm, true)
    let gap = gapMm
    let target = on
    while (taken !== undefined) {
      set(target, taken, gap, body.scaleWords)
      if (taken.rest === undefined) return
      const { rest } = taken
      target = turn()
      gap = 0
      taken = rest.take(fullMm, false) ?? rest.take(fullMm, true)
    }
  }

  let heads: Flow[] = []
  const close = (body: Flow | undefined): void => {
    if (heads.length > 0 || body !== undefined) setTogether(heads, body)
    heads = []
  }
  for (const flow of flows) {
    if (flow === NEXT_PAGE) {
      close(undefined)
      leaf = undefined
    } else if (flow.keepsWithNext) heads.push(flow)
    else close(flow)
  }
  close(undefined)
  return leaves.map(({ items, scales }) => ({ items: gathered(items), scales }))
}

interface StackStyle {
  readonly gapMm: number
  /** Fewest blocks of it that stay together at either end; a whole stack is only ever parted where no page holds it. */
  readonly least: number | 'whole'
  readonly keepsWithNext?: true
  /** Bare paper inside its border, above and below. */
  readonly padMm?: number
  /** What is drawn about each part of it. */
  readonly border?: (left: number, top: number, heightMm: number) => Mark[]
}

const partTaken = (blocks: readonly Block[], { padMm = 0, border }: StackStyle): Taken => {
  const heightMm = 2 * padMm + blocks.reduce((sum, block) => sum + block.heightMm, 0)
  return {
    heightMm,
    draw: (left, top) => {
      let at = top - padMm
      const marks = blocks.flatMap((block) => {
        const drawn = block.draw(left, at)
        at -= block.heightMm
        return drawn
      })
      return drawnMarks([...(border?.(left, top, heightMm) ?? []), ...marks])
    },
  }
}

const countFitting = (blocks: readonly Block[], heightMm: number): number => {
  let left = heightMm
  const over = blocks.findIndex((block) => {
    left -= block.heightMm
    return left < -1e-6
  })
  return over < 0 ? blocks.length : over
}

/** How many blocks stay on this page so that neither side is left with too few; 0 where that can't be. */
const countTaken = (all: number, fits: number, least: StackStyle['least']): number => {
  if (fits >= all) return all
  if (least === 'whole' || fits < least) return 0
  const count = Math.min(fits, all - least)
  return count < least ? 0 : count
}

/** Blocks one below the other, such as the lines of a paragraph. */
export const stackFlow = (blocks: readonly Block[], style: StackStyle): Flow => ({
  gapMm: style.gapMm,
  ...(style.keepsWithNext ? { keepsWithNext: true as const } : {}),
  take: (heightMm, isForced) => {
    const fits = countFitting(blocks, heightMm - 2 * (style.padMm ?? 0))
    const wished = countTaken(blocks.length, fits, style.least)
    const count = wished === 0 && isForced ? Math.max(1, fits) : wished
    if (count === 0) return undefined
    const taken = partTaken(blocks.slice(0, count), style)
    if (count >= blocks.length) return taken
    return { ...taken, rest: stackFlow(blocks.slice(count), style) }
  },
})

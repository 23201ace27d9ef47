import type { Locator, Page } from '@playwright/test'
import { inches } from '../../src/units/length'

/** A place on the floor, inches east and north of the inside south-west corner. */
export type Spot = readonly [east: number, north: number]

/** Keys held during a drag: Control lets nothing line up. */
export type Held = 'Control' | 'Shift' | 'Alt'

/** What a mouse does on the floor plan, in inches of floor. */
export interface Floor {
  readonly paper: Locator
  readonly moveTo: (to: Spot) => Promise<void>
  readonly click: (at: Spot, held?: Held) => Promise<void>
  /** Press, and carry as far as `to`; the button stays down. */
  readonly takeUp: (from: Spot, to: Spot, held?: Held) => Promise<void>
  readonly drop: (held?: Held) => Promise<void>
  readonly drag: (from: Spot, to: Spot, held?: Held) => Promise<void>
  /** Zooms in at a place by turning the wheel, so that a pixel is a smaller part of an inch. */
  readonly lookCloser: (at: Spot) => Promise<void>
  /** A canvas of its own picture: how many different colours it shows. */
  readonly colours: () => Promise<number>
}

const STEPS = 6

/** Where a place on the floor is on the page, px, from what the paper says of itself. */
export const onPage = async (paper: Locator, [east, north]: Spot): Promise<{ x: number; y: number }> => {
  const said = (await paper.getAttribute('data-view')) ?? ''
  const box = await paper.boundingBox()
  const [left, top, pxPerMm] = said.split(',').map(Number)
  if (!box || left === undefined || top === undefined || pxPerMm === undefined)
    throw new Error(`The floor plan does not say where it is: "${said}".`)
  return {
    x: box.x + (inches(east) - left) * pxPerMm,
    y: box.y + (top - inches(north)) * pxPerMm,
  }
}

export const floorOf = (page: Page): Floor => {
  const paper = page.getByRole('application')
  const { mouse, keyboard } = page

  const moveTo = async (to: Spot, steps = STEPS) => {
    const { x, y } = await onPage(paper, to)
    await mouse.move(x, y, { steps })
  }

  const takeUp = async (from: Spot, to: Spot, held?: Held) => {
    await moveTo(from, 1)
    await mouse.down()
    if (held) await keyboard.down(held)
    await moveTo(to)
  }

  const drop = async (held?: Held) => {
    await mouse.up()
    if (held) await keyboard.up(held)
  }

  return {
    paper,
    moveTo,
    takeUp,
    drop,
    drag: async (from, to, held) => {
      await takeUp(from, to, held)
      await drop(held)
    },
    click: async (at, held) => {
      await moveTo(at, 1)
      if (held) await keyboard.down(held)
      await mouse.down()
      await mouse.up()
      if (held) await keyboard.up(held)
    },
    lookCloser: async (at) => {
      const before = await paper.getAttribute('data-view')
      await moveTo(at, 1)
      await mouse.wheel(0, -1000)
      await paper
        .page()
        .waitForFunction(([element, said]) => element?.getAttribute('data-view') !== said, [
          await paper.elementHandle(),
          before,
        ] as const)
    },
    colours: () =>
      paper
        .locator('canvas')
        .first()
        .evaluate((canvas: HTMLCanvasElement) => {
          const pixels = canvas.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height).data
          return new Set(pixels && new Uint32Array(pixels.buffer)).size
        }),
  }
}

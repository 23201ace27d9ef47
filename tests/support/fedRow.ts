import type { Layout } from '../../src/layout/schema'
import type { RackRow } from '../../src/parts/rack-row/schema'
import { bay, type Inches, type Sketch } from './bay'
import type { Main } from '../../src/parts/main/schema'
import type { Sump } from '../../src/parts/sump/schema'

/** Row A of 16 stations and 4 lines, 15 in from the main that a small pump in the pit gives to. */
export const fedRow = (
  values: Omit<Inches<RackRow>, 'id' | 'kind' | 'name' | 'at' | 'microtube'> = {},
  pit: Inches<Sump> = {},
  main: Inches<Main> = {},
): Sketch =>
  bay('60 x 60 ft')
    .row('A', [165, 145], { racks: 2, inlet: 'start', ...values })
    .pit('Pit', { x: [20, 56], y: [20, 134] }, { pump: 'small', ...pit })
    .main(
      'Main',
      [
        [38, 130],
        [300, 130],
      ],
      main,
    )

/** The bay with other tubes in its rows: a sketch in inches would take their stock for a length. */
export const withTubes = (
  sketch: Sketch,
  tubes: Partial<Pick<RackRow, 'microtube' | 'microtubeMm'>>,
): Layout => {
  const layout = sketch.layout()
  return {
    ...layout,
    parts: layout.parts.map((part) => (part.kind === 'rack-row' ? { ...part, ...tubes } : part)),
  }
}

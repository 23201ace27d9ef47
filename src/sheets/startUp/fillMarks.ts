import type { Words } from '../../checks/context'
import { namedMarks } from '../../evaluate/returns/pitTable'
import type { Built } from '../../model/built'
import { levelAt, litresAt, type PitFacts } from '../../model/pitFacts'
import { blank, counted, said, type Table } from '../../model/table'

const WRITTEN = '________'

/** Levels to fill a pit to, from its bottom up, with what it should then have taken and room for what the meter says. */
export const fillMarks = ({ part }: Built, pit: PitFacts, write: Words): Table => ({
  id: `fill-${part}`,
  title: `Fill ${write.name(part)} from its bottom up`,
  columns: [
    { key: 'level', title: 'Mark', unit: 'text' },
    { key: 'heightMm', title: 'Over the bottom', unit: 'mm', isMain: true },
    { key: 'litres', title: 'Holds', unit: 'L' },
    { key: 'meter', title: 'Meter says', unit: 'text' },
  ],
  rows: namedMarks(pit)
    .toReversed()
    .filter(({ depthMm }) => depthMm > 0)
    .map(({ titles, depthMm, litres }) => ({
      key: titles.join('/'),
      cells: [
        said(titles.join(', ')),
        counted(depthMm, write.onTape(depthMm)),
        counted(litres, write.volume(litres)),
        blank(WRITTEN),
      ],
    })),
})

/** A pit, its levels, and what runs home to it when the pumps stop, L. */
export interface StoppedPit {
  readonly built: Built
  readonly pit: PitFacts
  readonly homeL: number
}

/** How much the water rises from its running level with what runs home, mm. */
export const riseMm = ({ pit, homeL }: StoppedPit): number =>
  levelAt(pit, litresAt(pit, pit.runningMm) + homeL) - pit.runningMm

/** Where the water of each pit comes to as the pump stops, and the drain-back mark that it must not pass. */
export const stopMarks = (pits: readonly StoppedPit[], write: Words): Table => ({
  id: 'stop',
  title: 'Stop the pump: where the water comes to',
  columns: [
    { key: 'pit', title: 'Pit', unit: 'text' },
    { key: 'runningMm', title: 'Running mark', unit: 'mm' },
    { key: 'riseMm', title: 'Should rise', unit: 'mm', isMain: true },
    { key: 'mostMm', title: 'At most', unit: 'mm' },
    { key: 'drainBackMm', title: 'That is the drain-back mark', unit: 'mm' },
    { key: 'found', title: 'Found', unit: 'text' },
  ],
  rows: pits.map((stopped) => {
    const { runningMm, drainBackMm, bottomMm } = stopped.pit
    const heights = [runningMm - bottomMm, riseMm(stopped), drainBackMm - runningMm, drainBackMm - bottomMm]
    return {
      key: stopped.built.part,
      cells: [
        said(write.name(stopped.built.part)),
        ...heights.map((mm) => counted(mm, write.onTape(mm))),
        blank(WRITTEN),
      ],
    }
  }),
})

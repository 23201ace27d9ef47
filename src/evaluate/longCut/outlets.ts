import { gutterOf } from '../../catalogue/gutter'
import type { Bay } from '../../checks/context'
import type { Place } from '../../geometry/point'
import type { Built } from '../../model/built'
import { datumAt, type Join, siteLevel } from '../../model/levels'
import type { TroughFacts } from '../../model/troughFacts'
import { invertAt, type Laid } from './drains'
import type { CutOutlet, GutterCut } from './section'

export const gutterCut = ({ gutter }: TroughFacts): GutterCut => {
  const { depthMm, topMm, bottomMm } = gutterOf(gutter)
  return { depthMm, topMm, bottomMm }
}

const outletPlace = (built: Built, line: number): Place | undefined =>
  built.mouths.find((mouth) => mouth.role === 'trough-outlet' && mouth.line === line)?.at

const cutOutlet = (bay: Bay, { run, leg }: Laid, join: Join): CutOutlet[] => {
  const built = bay.builtOf.get(join.from)
  const at = built && outletPlace(built, join.line)
  if (!built?.trough || !at || join.alongMm < leg.alongMm) return []
  const drainInvertMm = invertAt(run, join.alongMm)
  return [
    {
      part: built.part,
      line: join.line,
      drain: run.part,
      sMm: leg.startMm + join.alongMm - leg.alongMm,
      invertMm: siteLevel(bay.levels, built, at),
      gutter: gutterCut(built.trough),
      boreMm: built.trough.outletBoreMm,
      waterMm: bay.returns.troughs.get(built.part)?.outletDepthMm ?? 0,
      tipMm: built.rack && datumAt(bay.levels, built.part, at) + built.rack.tipMm,
      drainCrownMm: drainInvertMm - run.wallMm + run.odMm,
      drainInvertMm,
    },
  ]
}

/** The gutters whose outlets drop into a drain on the section, from its high end down. */
export const cutOutlets = (bay: Bay, laid: readonly Laid[]): readonly CutOutlet[] =>
  laid
    .flatMap((each) =>
      bay.joins
        .filter(({ kind, to }) => kind === 'outlet-to-drain' && to === each.run.part)
        .flatMap((join) => cutOutlet(bay, each, join)),
    )
    .toSorted((a, b) => a.sMm - b.sMm)

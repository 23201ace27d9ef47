import { DURATION } from '../../catalogue/timberFactors'
import { forceOf, lengthOf, ratioOf, stressOf, term } from '../../checks/found'
import type { Term } from '../../model/finding'
import type { Screen } from '../../model/strength'
import {
  bucklingMpa,
  type ColumnWay,
  END_FACTOR,
  SLENDEREST,
  slendernessOf,
  stabilityOf,
} from '../../solvers/timber/column'
import type { Braced, Riser } from './risersBuilt'
import { riserScreen, type Wood } from './risersScreen'

/** Foot to hole is the column: held at both ends where it is braced, else free at the top. */
const columnWay = ({ hole }: Riser, sideMm: number, { isHeld }: Braced): ColumnWay => ({
  lengthMm: hole.centreMm,
  sideMm,
  endFactor: isHeld ? END_FACTOR.pinned : END_FACTOR.cantilever,
})

/** The way in which it buckles first. */
const weakerWay = (riser: Riser) => {
  const along = {
    way: columnWay(riser, riser.alongMm, riser.along),
    isHeld: riser.along.isHeld,
    name: 'along',
  }
  const across = {
    way: columnWay(riser, riser.acrossMm, riser.across),
    isHeld: riser.across.isHeld,
    name: 'across',
  }
  return slendernessOf(along.way) >= slendernessOf(across.way) ? along : across
}

type Weaker = ReturnType<typeof weakerWay>

const slenderTerms = ({ way, isHeld, name }: Weaker): Term[] => [
  term('Foot to hole', lengthOf(way.lengthMm)),
  term(
    `K, ${isHeld ? 'braced' : 'not braced'} ${name === 'along' ? 'along the row' : 'across the row'}`,
    ratioOf(way.endFactor),
  ),
  term(`Side of the board ${name === 'along' ? 'along the row' : 'across the row'}`, lengthOf(way.sideMm)),
  term('Slenderness, K x length over side', ratioOf(slendernessOf(way))),
]

/** How slender a riser is the way that it buckles first; over the limit it is refused whatever it carries. */
export const slendernessScreen = (riser: Riser): Screen => {
  const weaker = weakerWay(riser)
  const slenderness = slendernessOf(weaker.way)
  return riserScreen('riser-slenderness', riser, {
    used: slenderness > SLENDEREST ? Infinity : slenderness / SLENDEREST,
    measured: ratioOf(slenderness),
    limit: ratioOf(SLENDEREST),
    terms: slenderTerms(weaker),
  })
}

/** What a riser carries against what it bears before it buckles; none where it is too slender to be rated at all. */
export const columnScreen = (riser: Riser, { values }: Wood): readonly Screen[] => {
  const weaker = weakerWay(riser)
  const slenderness = slendernessOf(weaker.way)
  if (slenderness > SLENDEREST) return []
  const bucklesAtMpa = bucklingMpa(values.eMinMpa, slenderness)
  const alongMpa = values.alongMpa * DURATION.permanent
  const stability = stabilityOf(bucklesAtMpa, alongMpa)
  const bearsN = stability * alongMpa * riser.alongMm * riser.acrossMm
  const screened = {
    used: riser.carriesN / bearsN,
    measured: forceOf(riser.carriesN),
    limit: forceOf(bearsN),
    terms: [
      ...slenderTerms(weaker),
      term('FcE, where it buckles', stressOf(bucklesAtMpa)),
      term('Fc*, what the wood bears short of that', stressOf(alongMpa)),
      term('CP, what buckling leaves of it', ratioOf(stability)),
      term("Fc' = CP x Fc*", stressOf(stability * alongMpa)),
      term("Bears Fc' x area", forceOf(bearsN)),
      term('The rail hands down at most', forceOf(riser.carriesN)),
    ],
  }
  return [riserScreen('riser-column', riser, screened)]
}

import { type Poly, polys } from '../catalogue/pipe'
import { inches } from '../units/length'

/** The biggest bore that laterals come in, mm: larger pipe does not go along a rack. */
const LATERAL_MOST_MM = inches(1.1)

const biggerThan = ({ family, idMm }: Poly): readonly Poly[] =>
  polys.filter((poly) => poly.family === family && poly.idMm > idMm).toSorted((a, b) => a.idMm - b.idMm)

const BIGGER: ReadonlyMap<string, readonly Poly[]> = new Map(
  polys.map((poly) => [poly.key, biggerThan(poly)]),
)

/** Bigger pipes of the same family, the next size first. */
export const biggerPipes = (stock: string): readonly Poly[] => BIGGER.get(stock) ?? []

/** Bigger pipes of the same family that a lateral may be made of, the next size first. */
export const biggerLaterals = (stock: string): readonly Poly[] =>
  biggerPipes(stock).filter(({ idMm }) => idMm <= LATERAL_MOST_MM)

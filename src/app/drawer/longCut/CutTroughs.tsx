import type { CutBearer, CutLevel, CutOutlet, CutRow, LongCut } from '../../../evaluate/longCut/section'
import type { StopMoment } from '../../../model/stopRun'
import { inches } from '../../../units/length'
import { gutterShape, lineThrough, shapeThrough } from './cutPaths'
import type { CutScale } from './cutScale'

interface TroughsProps {
  readonly cut: LongCut
  readonly scale: CutScale
  readonly moment: StopMoment | undefined
}

/** A drop tube ends so far inside the crown. Common practice, no source. */
const INTO_CROWN_MM = inches(1 / 2)

/** A tower's width where it is broken off, and how much of it is drawn, px. */
const TOWER_MM = inches(3)
const STUB_PX = 18

const shareOf = (shares: StopMoment['towerShare'] | undefined, part: string): number =>
  shares ? (shares.get(part) ?? 0) : 1

/** The lower end of a tower, broken off by a zigzag, and drips that fall from it. */
const towerPath = ({ sMm, levelMm }: CutLevel, { xOf, yOf, pxPerMm }: CutScale): string => {
  const half = Math.max(1.5, (TOWER_MM / 2) * pxPerMm)
  const [x, y] = [xOf(sMm), yOf(levelMm)]
  const top = y - STUB_PX
  // Too narrow for a zigzag, it is broken off along a slant.
  const zigzag =
    half < 3
      ? `L${x + half} ${top - 3}`
      : `L${x - half * 0.3} ${top - 3}L${x + half * 0.3} ${top + 3}L${x + half} ${top}`
  return `M${x - half * 0.6} ${y}L${x - half} ${top}${zigzag}L${x + half * 0.6} ${y}Z`
}

const dripPath = ({ sMm, levelMm }: CutLevel, toMm: number, { xOf, yOf }: CutScale): string =>
  `M${xOf(sMm)} ${yOf(levelMm) + 1}V${Math.max(yOf(levelMm) + 2, yOf(toMm))}`

const tubeRect = (
  sMm: number,
  fromMm: number,
  crownMm: number,
  boreMm: number,
  { xOf, yOf, pxPerMm }: CutScale,
) => {
  const width = Math.max(3, boreMm * pxPerMm)
  const [top, end] = [yOf(fromMm), yOf(crownMm - INTO_CROWN_MM)]
  return { x: xOf(sMm) - width / 2, y: Math.min(top, end), width, height: Math.abs(end - top) }
}

function Outlet({ outlet, scale, moment }: Omit<TroughsProps, 'cut'> & { readonly outlet: CutOutlet }) {
  const { part, sMm, invertMm, gutter, boreMm, tipMm, waterMm, drainCrownMm } = outlet
  const water = waterMm * shareOf(moment?.troughShare, part)
  const drips = shareOf(moment?.towerShare, part)
  return (
    <g>
      <rect className="cut-tube" {...tubeRect(sMm, invertMm, drainCrownMm, boreMm, scale)} />
      {water > 0 && <path className="cut-water" d={gutterShape(outlet, water, scale)} />}
      <path className="cut-gutter" d={gutterShape(outlet, gutter.depthMm, scale)} />
      {tipMm !== undefined && (
        <>
          <path className="cut-tower" d={towerPath({ sMm, levelMm: tipMm }, scale)} />
          {drips > 0.02 && (
            <path
              className="cut-drip"
              style={{ opacity: 0.3 + 0.7 * drips }}
              d={dripPath({ sMm, levelMm: tipMm }, invertMm, scale)}
            />
          )}
        </>
      )}
    </g>
  )
}

/** Invert of the gutter at a place, between its two ends. */
const invertOf = ({ inverts }: CutRow, sMm: number): number => {
  const [high] = inverts
  const low = inverts.at(-1)
  if (!high || !low) return 0
  return high.levelMm + ((low.levelMm - high.levelMm) * (sMm - high.sMm)) / Math.max(1, low.sMm - high.sMm)
}

const rowWater = (row: CutRow, share: number): CutLevel[] => {
  const [deep] = row.water
  const last = row.water.at(-1)
  if (!deep || !last) return []
  const surface = [{ sMm: 0, levelMm: deep.levelMm }, ...row.water, { ...last, sMm: row.toMm }]
  return [
    ...surface.map(({ sMm, levelMm }) => ({ sMm, levelMm: invertOf(row, sMm) + levelMm * share })),
    { sMm: row.toMm, levelMm: invertOf(row, row.toMm) },
    { sMm: 0, levelMm: invertOf(row, 0) },
  ]
}

/** A bearer, flat, and what is shimmed between it and the gutter. */
const bearerPath = ({ sMm, levelMm, shimMm }: CutBearer, { xOf, yOf }: CutScale): string => {
  const [x, top, under] = [xOf(sMm), yOf(levelMm), yOf(levelMm + shimMm)]
  return `M${x - 3} ${top}h6v6h-6ZM${x - 1.5} ${under}h3V${top}h-3Z`
}

function Row({ row, scale, moment }: Omit<TroughsProps, 'cut'> & { readonly row: CutRow }) {
  const lip = row.inverts.map(({ sMm, levelMm }) => ({ sMm, levelMm: levelMm + row.depthMm }))
  const drips = shareOf(moment?.towerShare, row.part)
  return (
    <g>
      {row.drainCrownMm !== undefined && (
        <rect
          className="cut-tube"
          {...tubeRect(row.outletMm, invertOf(row, row.outletMm), row.drainCrownMm, row.boreMm, scale)}
        />
      )}
      <path className="cut-bearer" d={row.bearers.map((bearer) => bearerPath(bearer, scale)).join('')} />
      <path
        className="cut-water"
        d={shapeThrough(scale, rowWater(row, shareOf(moment?.troughShare, row.part)))}
      />
      <path className="cut-tower" d={row.tips.map((tip) => towerPath(tip, scale)).join('')} />
      {drips > 0.02 && (
        <path
          className="cut-drip"
          style={{ opacity: 0.3 + 0.7 * drips }}
          d={row.tips.map((tip) => dripPath(tip, invertOf(row, tip.sMm), scale)).join('')}
        />
      )}
      <path className="cut-gutter" d={shapeThrough(scale, [...row.inverts, ...lip.toReversed()])} />
    </g>
  )
}

/** The row that is cut along, and the gutters that cross over the drain with their tubes. */
export function CutTroughs({ cut, scale, moment }: TroughsProps) {
  return (
    <>
      {cut.row && <Row row={cut.row} scale={scale} moment={moment} />}
      {cut.outlets.map((outlet) => (
        <Outlet key={`${outlet.part}-${outlet.line}`} outlet={outlet} scale={scale} moment={moment} />
      ))}
      {cut.row && <path className="cut-fold" d={foldLine(cut.row, scale)} />}
    </>
  )
}

/** Where the section turns from the row to the drain: the chain line of a cutting plane. */
const foldLine = ({ outletMm }: CutRow, scale: CutScale): string =>
  lineThrough(scale, [
    { sMm: outletMm, levelMm: scale.levelAt(scale.top - 26) },
    { sMm: outletMm, levelMm: scale.levelAt(scale.bottom + 6) },
  ])

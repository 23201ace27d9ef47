import type { CutDrain, CutFooting, CutService, LongCut } from '../../../evaluate/longCut/section'
import { multiples } from '../../../canvas/rulerSteps'
import { groundAt } from '../../../evaluate/longCut/groundAt'
import { bedShape, earthShape, lineThrough, pitShape, trenchShape } from './cutPaths'
import type { CutScale } from './cutScale'
import { digsOf } from './dig'

interface EarthProps {
  readonly cut: LongCut
  readonly scale: CutScale
}

/** Between groups of strokes under the ground line, px. */
const STROKES_EVERY_PX = 42

/** Three short strokes under the ground line: cut earth, by the public convention. */
const earthStrokes = (cut: LongCut, { xOf, yOf, pxPerMm }: CutScale): string => {
  const isOpen = (sMm: number) => cut.pit && sMm >= cut.pit.fromMm && sMm <= cut.pit.toMm
  return multiples(0, cut.endMm, STROKES_EVERY_PX / pxPerMm)
    .filter((sMm) => !isOpen(sMm) && !isOpen(sMm + 20 / pxPerMm))
    .flatMap((sMm) => [6, 11, 16].map((px) => [xOf(sMm) + px, yOf(groundAt(cut, sMm))] as const))
    .map(([x, y]) => `M${x.toFixed(1)} ${(y + 1).toFixed(1)}l-6 7`)
    .join('')
}

/** A line that lies over the floor all the way has no trench. */
const isBuried = (cut: LongCut, { fromMm, toMm, highInvertMm, lowInvertMm }: CutDrain): boolean =>
  highInvertMm < groundAt(cut, fromMm) || lowInvertMm < groundAt(cut, toMm)

/** An upright dimension line with a slanted tick at either end. */
const dimension = (sMm: number, upperMm: number, lowerMm: number, { xOf, yOf }: CutScale): string => {
  const [x, top, foot] = [xOf(sMm), yOf(upperMm), yOf(lowerMm)]
  return `M${x} ${top}V${foot}M${x - 4} ${top + 4}l8-8M${x - 4} ${foot + 4}l8-8`
}

function Footing({ footing, scale }: { readonly footing: CutFooting; readonly scale: CutScale }) {
  const { xOf, yOf, bottom } = scale
  const top = yOf(footing.topMm)
  const foot = Math.min(bottom, yOf(footing.bottomMm))
  return (
    <rect
      className={footing.asideMm > 0 ? 'cut-footing cut-hidden' : 'cut-footing'}
      x={xOf(footing.fromMm)}
      y={top}
      width={Math.max(4, xOf(footing.toMm) - xOf(footing.fromMm))}
      height={Math.max(0, foot - top)}
    />
  )
}

/** A buried line, end on: a ring with a cross in it. */
function Service({ service, scale }: { readonly service: CutService; readonly scale: CutScale }) {
  const [x, y] = [scale.xOf(service.sMm), scale.yOf(service.levelMm)]
  return (
    <g className="cut-service" transform={`translate(${x} ${y})`}>
      <circle r="5" />
      <path d="M-3.5-3.5 3.5 3.5M-3.5 3.5 3.5-3.5" />
    </g>
  )
}

/** Floor, earth, trench with its bed, the hole of the pit, and what else lies in the ground. */
export function CutEarth({ cut, scale }: EarthProps) {
  const { pit, drains, footings, services } = cut
  return (
    <>
      <path className="cut-earth" d={earthShape(cut, scale)} />
      {drains.map((drain) => (
        <g key={drain.part}>
          {isBuried(cut, drain) && <path className="cut-trench" d={trenchShape(cut, drain, scale)} />}
          {isBuried(cut, drain) && <path className="cut-bed" d={bedShape(drain, scale)} />}
        </g>
      ))}
      {footings.map((footing, index) => (
        <Footing key={index} footing={footing} scale={scale} />
      ))}
      {pit && (
        <path
          className="cut-pit-hole"
          d={pitShape(pit, Math.max(pit.facts.rimMm, groundAt(cut, pit.fromMm)), scale)}
        />
      )}
      <path className="cut-earth-strokes" d={earthStrokes(cut, scale)} />
      <path
        className="cut-ground"
        d={lineThrough(
          scale,
          cut.ground.filter(({ sMm }) => !pit || sMm <= pit.fromMm),
        )}
      />
      {pit && (
        <path
          className="cut-ground"
          d={lineThrough(
            scale,
            cut.ground.filter(({ sMm }) => sMm >= pit.toMm),
          )}
        />
      )}
      {digsOf(cut).map(({ part, sMm, floorMm, bottomMm }) => (
        <path key={part} className="cut-dimension" d={dimension(sMm, floorMm, bottomMm, scale)} />
      ))}
      {services.map((service, index) => (
        <Service key={index} service={service} scale={scale} />
      ))}
    </>
  )
}

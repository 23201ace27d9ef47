import { length3, type Place } from '../../geometry/point'
import type { Fitting } from '../../model/built'
import { inches } from '../../units/length'
import { heightAt } from './path'
import type { Main } from './schema'

/** A main that hangs is held this often; one that lies on the floor or on blocks needs no strap. Common practice, no source. */
const APART_MM = inches(24)

/** From this height over the floor on a main hangs. Common practice, no source. */
const HANGS_OVER_MM = inches(12)

/** Shares of a leg between which it hangs, where its ends are so high over the floor; undefined where it never does. */
const hangingShare = (fromMm: number, toMm: number): readonly [number, number] | undefined => {
  if (Math.max(fromMm, toMm) <= HANGS_OVER_MM) return undefined
  if (Math.min(fromMm, toMm) > HANGS_OVER_MM) return [0, 1]
  const crossing = (HANGS_OVER_MM - fromMm) / (toMm - fromMm)
  return fromMm > toMm ? [0, crossing] : [crossing, 1]
}

const along = (a: Place, b: Place, t: number): Place => ({
  x: a.x + (b.x - a.x) * t,
  y: a.y + (b.y - a.y) * t,
  z: a.z + (b.z - a.z) * t,
})

/** One in the middle of each step of 24 in at most, along every leg that hangs. */
export const strapsOf = (part: Main, path: readonly Place[]): Fitting[] =>
  path.slice(1).flatMap((to, index) => {
    const from = path[index] ?? to
    const [low, high] = [part.points[index], part.points[index + 1]]
    const share = low && high && hangingShare(heightAt(part, low), heightAt(part, high))
    if (!share) return []
    const [start, end] = share
    const steps = Math.ceil((length3(from, to) * (end - start)) / APART_MM - 1e-6)
    return Array.from({ length: steps }, (_, step) => ({
      item: `pipe-strap-${part.pipe}`,
      at: along(from, to, start + ((end - start) * (step + 0.5)) / steps),
    }))
  })

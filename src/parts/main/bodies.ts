import { polyOf } from '../../catalogue/pipe'
import { between, type Point } from '../../geometry/point'
import { strip } from '../../geometry/polyline'
import type { Body } from '../../model/built'
import { inches } from '../../units/length'
import { heightAt, type MainPoint } from './path'
import type { Main } from './schema'

/** A leg that rises is taken in pieces of no more rise than this, so that whoever walks under its high end is in nobody's way. */
const MOST_RISE_MM = inches(6)
const MOST_PIECES = 24

/** Heights are kept on the tick: ten pieces of 6 in are ten, not eleven. */
const ROUNDING = 1e-3

interface Raised extends Point {
  readonly heightMm: number
}

const raised = (part: Main, point: MainPoint): Raised => ({ ...point, heightMm: heightAt(part, point) })

const piecesOf = (from: Raised, to: Raised): Raised[] => {
  const rise = to.heightMm - from.heightMm
  const pieces = Math.min(MOST_PIECES, Math.max(1, Math.ceil(Math.abs(rise) / MOST_RISE_MM - ROUNDING)))
  return Array.from({ length: pieces + 1 }, (_, k) => ({
    ...between(from, to, k / pieces),
    heightMm: from.heightMm + (rise * k) / pieces,
  }))
}

/** What a straight rise takes up on the floor: a square as wide as the pipe. */
const squareAt = ({ x, y }: Point, sideMm: number): Point[] => {
  const half = sideMm / 2
  return [
    { x: x - half, y: y - half },
    { x: x + half, y: y - half },
    { x: x + half, y: y + half },
    { x: x - half, y: y + half },
  ]
}

const bodyBetween = (part: Main, odMm: number, from: Raised, to: Raised): Body[] => {
  const band = {
    fromMm: Math.min(from.heightMm, to.heightMm) - odMm / 2,
    toMm: Math.max(from.heightMm, to.heightMm) + odMm / 2,
  }
  const isUpright = from.x === to.x && from.y === to.y
  if (isUpright && from.heightMm === to.heightMm) return []
  const outlines = isUpright ? [squareAt(from, odMm)] : strip([from, to], odMm)
  return outlines.map((outline): Body => ({ part: part.id, role: 'main', outline, ...band }))
}

const legBodies = (part: Main, odMm: number, from: Raised, to: Raised): Body[] => {
  const isUpright = from.x === to.x && from.y === to.y
  const places = isUpright ? [from, to] : piecesOf(from, to)
  return places.slice(1).flatMap((place, k) => bodyBetween(part, odMm, places[k] ?? place, place))
}

/** A strip a leg, as wide and high as the pipe. */
export const mainBodies = (part: Main): Body[] => {
  const { odMm } = polyOf(part.pipe)
  const points = part.points.map((point) => raised(part, point))
  return points.slice(1).flatMap((to, k) => legBodies(part, odMm, points[k] ?? to, to))
}

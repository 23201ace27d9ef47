import { LAMINAR_RE, TURBULENT_RE } from '../solvers/water/friction'

/** A tenth under the published edge: single tubes flip before it where their entry is ragged. Common practice, no source. */
const BAND_FROM_RE = 0.9 * LAMINAR_RE

export const BAND = { fromRe: BAND_FROM_RE, toRe: TURBULENT_RE }

/** Whether water in a tube may run smooth or churned, and nobody can say which. */
export const isBetween = (reynolds: number): boolean => reynolds > BAND.fromRe && reynolds < BAND.toRe

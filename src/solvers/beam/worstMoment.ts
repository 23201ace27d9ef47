import type { Bent, Extreme } from './bent'

export interface PatchedExtreme extends Extreme {
  /** Groups of load that lie on the beam then, ascending. */
  readonly groups: readonly number[]
}

/** The beam under the load that is always there, and under each group that counts, all with the sign that makes worse the more. */
interface Moments {
  readonly always: Bent
  readonly groups: readonly { readonly k: number; readonly bent: Bent }[]
  readonly sign: 1 | -1
}

/** Of the largest moment of any group in a stretch: a group that does less there does nothing. */
const NOTHING = 1e-9

const strongest = (bent: Bent, fromMm: number, toMm: number): number => {
  const { most, least } = bent.moments(fromMm, toMm)
  return Math.max(most.value, -least.value)
}

const counting = (alone: readonly Bent[], fromMm: number, toMm: number): Moments['groups'] => {
  const each = alone.map((bent) => strongest(bent, fromMm, toMm))
  const nothing = NOTHING * Math.max(0, ...each)
  return alone.flatMap((bent, k) => ((each[k] ?? 0) > nothing ? [{ k, bent }] : []))
}

const at = ({ always, groups, sign }: Moments, atMm: number): PatchedExtreme => {
  let value = always.momentAt(atMm)
  const chosen: number[] = []
  for (const { k, bent } of groups) {
    const more = bent.momentAt(atMm)
    if (sign * more <= 0) continue
    value += more
    chosen.push(k)
  }
  return { atMm, value, groups: chosen }
}

/** Where the moment turns between two breaks: the same groups lie there all along, so that its shear is a straight line. */
const turnBetween = ({ always, groups, sign }: Moments, fromMm: number, toMm: number): number[] => {
  const middle = (fromMm + toMm) / 2
  const on = groups.filter(({ bent }) => sign * bent.momentAt(middle) > 0)
  const shearAt = (mm: number): number =>
    on.reduce((sum, { bent }) => sum + bent.shearAt(mm), always.shearAt(mm))
  const [start, half] = [shearAt(fromMm), shearAt(middle)]
  const turn = fromMm + ((middle - fromMm) * start) / (start - half)
  return turn > fromMm && turn < toMm ? [turn] : []
}

/**
 * The worst moment of a stretch over every set of groups, exactly: at each place the groups lie on the beam that make it worse there.
 * Between places where a load starts or the moment of a group changes its sign that is one parabola.
 */
export const worstMoment = (
  always: Bent,
  alone: readonly Bent[],
  [fromMm, toMm]: readonly [number, number],
  sign: 1 | -1,
): PatchedExtreme => {
  const groups = counting(alone, fromMm, toMm)
  const moments: Moments = { always, groups, sign }
  const all = [always, ...groups.map(({ bent }) => bent)].flatMap((bent) => bent.breaks(fromMm, toMm))
  const breaks = [...new Set(all)].toSorted((a, b) => a - b)
  const turns = breaks.slice(1).flatMap((end, i) => turnBetween(moments, breaks[i] ?? end, end))
  return [...breaks, ...turns]
    .map((mm) => at(moments, mm))
    .reduce((top, next) => (sign * next.value > sign * top.value ? next : top))
}

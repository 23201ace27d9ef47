import type { Finding, Quantity, StateWord, Subject, Term } from '../model/finding'
import { stateWords } from '../model/finding'
import type { PartId } from '../model/ids'

/** A length as a quantity, read along a tape: a clearance, a cover, a drop, a gap. */
export const lengthOf = (value: number): Quantity => ({ value, unit: 'mm' })

/** A length that is read in feet where the reader has feet: a run, a piece of stock. */
export const inFeet = (value: number): Quantity => ({ value, unit: 'mm', isInFeet: true })

/** A level above the file's zero, mm, as the crew reads levels. What lies between two levels is a length. */
export const levelOf = (value: number): Quantity => ({ value, unit: 'mm', isLevel: true })

/** A fall as a quantity. */
export const fallOf = (value: number): Quantity => ({ value, unit: 'mm/m' })

/** The flow of a tower as a quantity, litres an hour. */
export const flowOf = (value: number): Quantity => ({ value, unit: 'lph' })

/** The flow of a lateral, a main or a pump as a quantity, litres an hour. */
export const flowTotalOf = (value: number): Quantity => ({ value, unit: 'lph', isTotal: true })

/** A velocity as a quantity, metres a second. */
export const velocityOf = (value: number): Quantity => ({ value, unit: 'm/s' })

/** A share of 1 as a quantity. */
export const shareOf = (value: number): Quantity => ({ value, unit: 'share' })

/** A volume as a quantity, litres. */
export const volumeOf = (value: number): Quantity => ({ value, unit: 'L' })

/** A time as a quantity, minutes. */
export const minutesOf = (value: number): Quantity => ({ value, unit: 'min' })

/** A temperature as a quantity, degrees Celsius. */
export const temperatureOf = (value: number): Quantity => ({ value, unit: 'C' })

/** A mass as a quantity, kilograms. */
export const massOf = (value: number): Quantity => ({ value, unit: 'kg' })

/** A force as a quantity, newtons. */
export const forceOf = (value: number): Quantity => ({ value, unit: 'N' })

/** A stress as a quantity, megapascals. */
export const stressOf = (value: number): Quantity => ({ value, unit: 'MPa' })

/** A pressure on ground as a quantity, kilopascals. */
export const pressureOf = (value: number): Quantity => ({ value, unit: 'kPa' })

/** A moment as a quantity, newton-millimetres. */
export const momentOf = (value: number): Quantity => ({ value, unit: 'Nmm' })

/** One number over another of its kind as a quantity: a slenderness, a factor of safety. */
export const ratioOf = (value: number): Quantity => ({ value, unit: 'ratio' })

export const term = (name: string, quantity: Quantity): Term => ({ name, quantity })

/** The same things under the same rule have the same key, whatever the numbers and the order. */
export const keyOf = (rule: string, parts: readonly PartId[], detail = ''): string =>
  [rule, ...[...parts].sort(), ...(detail ? [detail] : [])].join(' ')

/** Whether the finding of a key is about a part. */
export const isKeyAbout = (key: string, part: PartId): boolean => key.split(' ').slice(1).includes(part)

/** The state of a value that should be at least `need`, and at the very least `least`. */
export const stateFor = (subject: Subject, value: number, need: number, least: number): StateWord => {
  const [good, watch, bad] = stateWords[subject]
  if (value >= need - CLOSE_MM) return good
  return value >= least - CLOSE_MM ? watch : bad
}

/** Lengths closer than this are the same length: sums of ticks carry rounding far below what any tape shows. */
export const CLOSE_MM = 0.01

type Given = Omit<Finding, 'key' | 'facts' | 'terms'> &
  Partial<Pick<Finding, 'facts' | 'terms'>> & { readonly detail?: string }

/** A finding with its key made and its empty lists filled in. */
export const found = ({ detail, ...given }: Given): Finding => ({
  facts: {},
  terms: [],
  ...given,
  key: keyOf(given.rule, given.parts, detail),
})

/** Of findings with one key, the one that measures least: a line of several legs is said once, where it is worst. */
export const leastOfEach = (findings: readonly Finding[]): Finding[] => {
  const least = new Map<string, Finding>()
  for (const finding of findings) {
    const known = least.get(finding.key)
    if (!known || finding.measured.value < known.measured.value) least.set(finding.key, finding)
  }
  return [...least.values()]
}

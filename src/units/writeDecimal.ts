/**
 * A finite number with `least` decimals, and up to `most` where it has more to say: `4.0`, `0.98`, `121`. What rounds to
 * nothing has no sign.
 */
export const writeDecimal = (value: number, least: number, most = least): string => {
  const [whole = '', decimals = ''] = value.toFixed(most).split('.')
  const kept = decimals.slice(0, least) + decimals.slice(least).replace(/0+$/, '')
  const written = kept === '' ? whole : `${whole}.${kept}`
  return Number(written) === 0 ? written.replace('-', '') : written
}

/** Thousands apart by commas, decimals as they are: `1,386`, `31,104.5`. */
export const thousands = (written: number | string): string => {
  const [whole = '', ...decimals] = String(written).split('.')
  return [whole.replace(/\B(?=(\d{3})+$)/g, ','), ...decimals].join('.')
}

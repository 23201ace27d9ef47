/** A day as it stands on a paper: that of an ISO date, or today's. */
export const dayWords = (isoDate?: string): string => {
  const day = isoDate === undefined ? new Date() : new Date(`${isoDate}T12:00:00`)
  return day.toLocaleDateString(undefined, { year: 'numeric', month: 'short', day: 'numeric' })
}

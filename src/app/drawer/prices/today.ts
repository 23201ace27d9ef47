const two = (value: number): string => String(value).padStart(2, '0')

/** The day on the wall where the page is open, as an ISO date. */
export const today = (): string => {
  const now = new Date()
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}

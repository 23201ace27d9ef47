/** Hands a blob to the person as a file, by the browser's own download. */
export const download = (blob: Blob, name: string): void => {
  const address = URL.createObjectURL(blob)
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
  // The download has the blob by then; the address would otherwise keep it for ever.
  setTimeout(() => URL.revokeObjectURL(address), 10_000)
}

/** A title as a file name: what any file system takes, and no more. */
export const fileName = (title: string, ending: string): string => {
  const plain = title
    .normalize('NFKD')
    .replace(/[^a-zA-Z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .toLowerCase()
    .slice(0, 60)
  return `${plain || 'bay'}${ending}`
}

// Imported first, so that an old Node says a sentence instead of failing somewhere inside.
const NEEDED = 20

if (Number(process.versions.node.split('.')[0]) < NEEDED) {
  console.error(
    `Kerf & Fall needs Node ${NEEDED} or newer, and this is Node ${process.versions.node}. Nothing was changed.`,
  )
  process.exit(1)
}

/** Where the build puts the worker, beside the page. */
const WORKER = './offline.js'

/**
 * Has the device keep the program, once the page is idle. Nothing is said where that can't be: a page opened from a folder, a browser
 * with storage switched off, a program that is being worked on.
 */
export const keepOffline = (): void => {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return
  navigator.serviceWorker.register(WORKER).catch(() => undefined)
}

/**
 * Keeps the program on the device, so that it starts where there is no signal. It runs apart from the page, has no imports, and is
 * put beside the page by the build, which writes the two constants before it.
 */

/** Every file of this build, from the page's own folder. */
declare const BUILD_FILES: readonly string[]
/** Different for any two builds that differ. */
declare const BUILD_NAME: string

/** The few things of a worker of this sort that are used; the library of the page's types does not know them. */
interface LifeEvent {
  readonly waitUntil: (work: Promise<unknown>) => void
}
interface AskedEvent {
  readonly request: Request
  readonly respondWith: (answer: Promise<Response>) => void
}
interface WorkerScope {
  readonly addEventListener: {
    (type: 'install' | 'activate', listener: (event: LifeEvent) => void): void
    (type: 'fetch', listener: (event: AskedEvent) => void): void
  }
  readonly location: Location
}

// In a worker of this sort `self` is its scope; the types here are those of a page.
const scope = self as unknown as WorkerScope

const PREFIX = 'kerf-and-fall '
const CACHE = `${PREFIX}${BUILD_NAME}`
const PAGE = './index.html'
/** A weak signal may neither answer nor fail; after so long the kept page is shown, ms. */
const PATIENCE_MS = 3000

const keepAll = async (): Promise<void> => {
  const cache = await caches.open(CACHE)
  await cache.addAll(BUILD_FILES.map((file) => new Request(file, { cache: 'no-cache' })))
}

/** What earlier builds kept: no page of theirs is open any more. */
const dropOthers = async (): Promise<void> => {
  const names = await caches.keys()
  const others = names.filter((name) => name.startsWith(PREFIX) && name !== CACHE)
  await Promise.all(others.map((name) => caches.delete(name)))
}

// A server may say that its answers vary by encoding; the file is the same whichever way it came.
const kept = async (request: RequestInfo): Promise<Response | undefined> =>
  (await caches.open(CACHE)).match(request, { ignoreVary: true, ignoreSearch: true })

const later = (ms: number): Promise<undefined> =>
  new Promise((resolve) => setTimeout(() => resolve(undefined), ms))

/** The page itself comes from the network where there is one, so that a new build is not missed. */
const page = async (request: Request): Promise<Response> => {
  const asked = fetch(request).catch(() => undefined)
  const answer = await Promise.race([asked, later(PATIENCE_MS)])
  if (answer?.ok) return answer
  return (await kept(PAGE)) ?? (await asked) ?? Response.error()
}

const file = async (request: Request): Promise<Response> => (await kept(request)) ?? fetch(request)

scope.addEventListener('install', (event) => event.waitUntil(keepAll()))
scope.addEventListener('activate', (event) => event.waitUntil(dropOthers()))
scope.addEventListener('fetch', (event) => {
  const { request } = event
  if (request.method !== 'GET' || new URL(request.url).origin !== scope.location.origin) return
  event.respondWith(request.mode === 'navigate' ? page(request) : file(request))
})

export {}

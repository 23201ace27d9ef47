import { defineConfig } from '@playwright/test'

const PORT = 4199
const address = `http://localhost:${PORT}/`
const isBuildServer = process.env.CI === 'true'

/** Journeys through the built app, in the Chromium that .ci/test.mjs found. `npm run build` comes first. */
export default defineConfig({
  testDir: '.',
  outputDir: '../test-results',
  workers: 2,
  fullyParallel: true,
  retries: 0,
  forbidOnly: isBuildServer,
  // A slow or busy machine proves nothing wrong: only what hangs is stopped.
  timeout: 120_000,
  expect: { timeout: 20_000 },
  reporter: [['list'], ['json', { outputFile: '../.cache/playwright.json' }]],
  use: {
    baseURL: address,
    viewport: { width: 1280, height: 800 },
    // Every journey starts on a device of its own, which would keep the whole program first.
    serviceWorkers: 'block',
    screenshot: 'only-on-failure',
    launchOptions: {
      executablePath: process.env.CHROMIUM_PATH ?? '/usr/bin/chromium',
      args: [
        // A build server's root may not start Chromium's sandbox; the only page it sees is ours.
        '--no-sandbox',
        '--disable-gpu',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
  webServer: {
    command: `npx --no-install vite preview --port ${PORT} --strictPort`,
    cwd: '..',
    url: address,
    reuseExistingServer: !isBuildServer,
  },
})

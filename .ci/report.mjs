// npm run report: what a layout comes to, from the core alone, for scripts and terminals.
import './node.mjs'
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname, join, resolve } from 'node:path'
import { top } from './command.mjs'
import { install } from './install.mjs'

/** npm runs scripts at the top of the checkout; files are named from where the person stands. */
const here = process.env['INIT_CWD'] ?? process.cwd()

const STANDARD_ERROR = 2
const NO_ANSWER = 2

const reasons = {
  ENOENT: 'there is no such file or folder',
  EISDIR: 'it is a folder',
  ENOTDIR: 'a part of its path is no folder',
  EEXIST: 'there is a file of that name',
  EACCES: 'this user may not',
  EPERM: 'this user may not',
  EROFS: 'the disk can only be read',
  ENOSPC: 'the disk is full',
  EDQUOT: 'the disk is full for this user',
  EPIPE: 'whoever was reading has gone',
  ENAMETOOLONG: 'the name is too long',
  ERR_FS_FILE_TOO_LARGE: 'it is larger than any layout',
  ERR_STRING_TOO_LONG: 'it is larger than any layout',
}
const reasonOf = ({ code, message }) => reasons[code] ?? message

class Trouble extends Error {}

const attempt = (what, deed) => {
  try {
    return deed()
  } catch (cause) {
    throw new Trouble(`${what}: ${reasonOf(cause)}.`)
  }
}

/** The core as one module, built in memory: nothing is written, so that any number of reports can run at once. */
const loadCore = async () => {
  const { build } = await import('vite')
  const { output } = await build({
    root: top,
    configFile: false,
    publicDir: false,
    logLevel: 'error',
    ssr: { noExternal: true },
    build: {
      ssr: 'src/report/command.ts',
      write: false,
      minify: false,
      target: 'node20',
      rolldownOptions: { output: { codeSplitting: false } },
    },
  })
  return import(`data:text/javascript;base64,${Buffer.from(output[0].code).toString('base64')}`)
}

const readText = (name) => ({
  name: name === '-' ? 'what came in' : name,
  text: attempt(`${name} could not be read`, () =>
    readFileSync(name === '-' ? 0 : resolve(here, name), 'utf8'),
  ),
})

/** Folder by folder: where a file system lets nobody make any, Node's own way of making all at once never ends. */
const makeFolder = (path) => {
  if (existsSync(path)) return
  makeFolder(dirname(path))
  mkdirSync(path)
}

const writeFiles = (folder, files) => {
  const into = resolve(here, folder)
  attempt(`The folder ${folder} could not be made`, () => makeFolder(into))
  for (const { name, text } of files)
    attempt(`${join(folder, name)} could not be written`, () => writeFileSync(join(into, name), text))
}

const print = (text) =>
  new Promise((settle, refuse) => {
    const lose = (cause) => refuse(new Trouble(`The report could not be printed: ${reasonOf(cause)}.`))
    process.stdout.once('error', lose)
    process.stdout.write(text, (cause) => (cause ? lose(cause) : settle()))
  })

/** The day by this machine's own calendar. */
const today = () => {
  const now = new Date()
  const two = (number) => String(number).padStart(2, '0')
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}

const answerTo = async (core, command) => {
  if (command.does === 'help') return { print: core.helpText(), files: [], note: '', code: 0 }
  if (command.does === 'diff')
    return core.diffAnswer(command, readText(command.before), readText(command.after))
  return core.reportAnswer(command, readText(command.file), today())
}

const main = async () => {
  // What npm says while it installs must not stand before the report.
  if (!(await install(STANDARD_ERROR)))
    throw new Trouble('The packages could not be installed; npm says why above.')
  const core = await loadCore()
  const parsed = core.readArguments(process.argv.slice(2))
  if (!parsed.ok) throw new Trouble(parsed.sentence)
  const answer = await answerTo(core, parsed.command)
  if (answer.files.length > 0) writeFiles(parsed.command.out, answer.files)
  if (answer.print !== '') await print(answer.print)
  if (answer.note !== '') console.error(answer.note)
  process.exitCode = answer.code
}

// 1 would say that the plan fails: whatever else went wrong is no answer either, and is told whole, so that it can be mended.
await main().catch((trouble) => {
  console.error(trouble instanceof Trouble ? trouble.message : trouble)
  process.exitCode = NO_ANSWER
})

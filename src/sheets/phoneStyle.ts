/** Paper by day, the same paper by night; letters and boxes for a hand in a wet glove. Colours of the program's own sheets. */
export const PHONE_STYLE = `
:root { color-scheme: light dark; --paper: #fbf7ee; --sheet: #fefcf6; --ink: #2f2b27; --soft: #57514b; --line: #b9ad98; --mind: #ab2408; --done: #e4eadf; }
@media (prefers-color-scheme: dark) {
  :root { --paper: #262320; --sheet: #2d2a26; --ink: #ece4d4; --soft: #b7ad9f; --line: #6b6255; --mind: #ff8d6e; --done: #37402f; }
}
* { box-sizing: border-box; }
body { margin: 0; background: var(--paper); color: var(--ink); font: 17px/1.4 system-ui, "Segoe UI", Roboto, sans-serif; font-variant-numeric: tabular-nums; }
header, main, footer { max-width: 760px; margin: 0 auto; padding: 12px 14px; }
h1 { margin: 0; font-size: 22px; }
h2 { font-size: 20px; }
h3 { font-size: 18px; }
p { margin: 8px 0; }
.small { color: var(--soft); font-size: 15px; }
.big { font-size: 24px; font-weight: 650; }
details.sheet { margin: 0 0 10px; border: 1px solid var(--line); border-radius: 6px; background: var(--sheet); }
summary { display: flex; min-height: 56px; align-items: center; padding: 8px 12px; gap: 10px; cursor: pointer; font-size: 19px; font-weight: 650; list-style-position: inside; }
summary small { margin-left: auto; color: var(--soft); font-size: 15px; font-weight: 400; text-align: right; }
.inside { padding: 0 12px 12px; }
.mind { display: flex; padding: 8px 10px; border: 2px solid var(--mind); border-radius: 4px; gap: 8px; }
.mind b { color: var(--mind); white-space: nowrap; }
.rows { padding: 0; margin: 0; list-style: none; }
.rows > li { border-top: 1px solid var(--line); }
.row { display: flex; min-height: 52px; align-items: flex-start; padding: 8px 0; gap: 12px; }
label.row { cursor: pointer; }
.row input[type="checkbox"] { width: 44px; height: 44px; flex: none; margin: 0; accent-color: var(--ink); }
.row:has(input:checked) { background: var(--done); }
.cells { display: flex; flex-wrap: wrap; align-items: baseline; gap: 2px 16px; min-width: 0; }
.cells > span { overflow-wrap: anywhere; }
.cells i { color: var(--soft); font-size: 14px; font-style: normal; }
.main { width: 100%; font-size: 24px; font-weight: 650; }
.main i { display: block; font-weight: 400; }
.sum { font-weight: 650; }
.drawing { overflow: auto; margin: 10px 0; border: 1px solid var(--line); background: #fbf7ee; }
.drawing svg { display: block; width: 1000px; height: auto; }
figure { margin: 0; }
.write { display: block; margin: 10px 0; }
.write input { display: block; width: 100%; min-height: 48px; border: 1px solid var(--line); border-radius: 4px; background: var(--paper); color: inherit; font: inherit; }
:focus-visible { outline: 3px solid #1d5ea8; outline-offset: 2px; }
`

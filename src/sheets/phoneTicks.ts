/**
 * Keeps ticks and written words on the phone, by bay and issue, and counts them. It is a text, since the page must stand alone; it
 * touches nothing but its own boxes and fields.
 */
export const PHONE_TICKS = `
(() => {
  const name = document.documentElement.dataset.papers;
  const note = document.getElementById('keeps');
  let kept = {};
  const refuse = () => { note.hidden = false; };
  try { kept = JSON.parse(localStorage.getItem(name) || '{}'); } catch { refuse(); }
  const keep = () => { try { localStorage.setItem(name, JSON.stringify(kept)); } catch { refuse(); } };
  const boxes = [...document.querySelectorAll('input[data-key]')];
  const count = (sheet) => {
    const all = [...sheet.querySelectorAll('input[type=checkbox]')];
    const told = sheet.querySelector('summary small');
    if (all.length > 0) told.textContent = all.filter((box) => box.checked).length + ' of ' + all.length + ' done';
  };
  for (const box of boxes) {
    const key = box.dataset.key;
    if (box.type === 'checkbox') box.checked = kept[key] === true;
    else box.value = typeof kept[key] === 'string' ? kept[key] : '';
    box.addEventListener('input', () => {
      kept[key] = box.type === 'checkbox' ? box.checked : box.value;
      if (!kept[key]) delete kept[key];
      keep();
      const sheet = box.closest('details.sheet');
      if (sheet) count(sheet);
    });
  }
  for (const sheet of document.querySelectorAll('details.sheet')) count(sheet);
})();
`

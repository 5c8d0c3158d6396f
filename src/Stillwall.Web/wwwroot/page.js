// What markup cannot do by itself: places that the policy forbids as attributes, keys in fields, the theme, jumps, reconnecting.
const root = document.documentElement;

// Places on drawings come as data-x and data-y in drawing units of the view around them.
function place(element) {
  const box = element.closest('[data-width]');
  if (!box) return;
  element.style.left = 100 * element.dataset.x / box.dataset.width + '%';
  element.style.top = 100 * element.dataset.y / box.dataset.height + '%';
}
function shape(box) { box.style.aspectRatio = box.dataset.width + ' / ' + box.dataset.height; }
// The figures of a table or of a drawing are one stop of the Tab key; arrows go from one to the next, in a table up and down within their column.
const together = '.tbl, .canvas', asks = '.fig, .why';
function rove(table) {
  const figures = [...table.querySelectorAll(asks)], stop = figures.find(f => f.getAttribute('tabindex') === '0') ?? figures[0];
  for (const figure of figures) { const at = figure === stop ? '0' : '-1'; if (figure.getAttribute('tabindex') !== at) figure.setAttribute('tabindex', at); }
}
function settle(node) {
  if (node.nodeType !== 1) return;
  node.querySelectorAll(together).forEach(rove);
  if (node.matches(together)) rove(node);
  if (node.matches('[data-width]')) shape(node);
  if (node.matches('[data-x]')) place(node);
  node.querySelectorAll('[data-width]').forEach(shape);
  node.querySelectorAll('[data-x]').forEach(place);
}
settle(document.body);
new MutationObserver(changes => {
  for (const change of changes) {
    if (change.type === 'childList') { change.addedNodes.forEach(settle); const table = change.target.closest?.(together); if (table) rove(table); }
    else if (change.attributeName === 'data-x' || change.attributeName === 'data-y') place(change.target);
    else { shape(change.target); change.target.querySelectorAll('[data-x]').forEach(place); }
  }
}).observe(document.body, { subtree: true, childList: true, attributes: true, attributeFilter: ['data-x', 'data-y', 'data-width', 'data-height'] });

document.addEventListener('keydown', event => {
  const figure = event.target.closest?.(asks), table = figure?.closest(together), cell = figure?.closest('td, th');
  if (!table || !event.key.startsWith('Arrow')) return;
  const figures = [...table.querySelectorAll(asks)], at = figures.indexOf(figure);
  const column = cell ? figures.filter(f => f.closest('td, th')?.cellIndex === cell.cellIndex) : figures, row = column.indexOf(figure);
  const to = { ArrowLeft: figures[at - 1], ArrowRight: figures[at + 1], ArrowUp: column[row - 1], ArrowDown: column[row + 1] }[event.key];
  event.preventDefault();
  to?.focus();
});
document.addEventListener('focusin', event => {
  const figure = event.target.closest?.(asks), table = figure?.closest(together);
  if (!table) return;
  for (const other of table.querySelectorAll(asks)) if (other !== figure && other.getAttribute('tabindex') === '0') other.setAttribute('tabindex', '-1');
  figure.setAttribute('tabindex', '0');
});

// Arrows step a number, Shift ten times as far; the unit behind it stays.
document.addEventListener('keydown', event => {
  const field = event.target.closest?.('input[data-step]');
  if (field && (event.key === 'ArrowUp' || event.key === 'ArrowDown')) {
    event.preventDefault();
    const parts = /^\s*([-+−]?\d*[.,]?\d+)(.*)$/s.exec(field.value);
    if (!parts) return;
    const comma = parts[1].includes(','), step = field.dataset.step * (event.shiftKey ? 10 : 1) * (event.key === 'ArrowUp' ? 1 : -1);
    const value = Number((Number(parts[1].replace(',', '.').replace('−', '-')) + step).toFixed(6)).toString();
    field.value = (comma ? value.replace('.', ',') : value) + parts[2];
    field.dispatchEvent(new Event('input', { bubbles: true }));
  } else if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'z' && !event.target.closest?.('input, textarea')) {
    event.preventDefault();
    document.querySelector(event.shiftKey ? '[data-redo]' : '[data-undo]')?.click();
  }
});
document.addEventListener('focusin', event => { if (event.target.matches?.('input[data-step]')) event.target.select(); });

// A form that only chooses a file sends it at once.
document.addEventListener('change', ({ target }) => {
  if (target.matches?.('input[type=file][data-send]') && target.files.length) target.form.requestSubmit();
});

// Theme.
const isDark = () => root.dataset.theme ? root.dataset.theme === 'dark' : matchMedia('(prefers-color-scheme: dark)').matches;
function nameTheme() {
  document.querySelectorAll('[data-theme-button]').forEach(b => {
    const text = isDark() ? b.dataset.light : b.dataset.dark;
    if (b.textContent !== text) b.textContent = text;
  });
}
// What a link names is opened, brought into sight and takes the focus.
function goTo(place) {
  place.closest('details')?.setAttribute('open', '');
  place.scrollIntoView({ block: 'nearest' });
  const takesFocus = place.matches('[tabindex], a, button, input') ? place : place.querySelector('h1, h2, h3, button, a') ?? place;
  takesFocus.focus({ preventScroll: true });
}
document.addEventListener('click', event => {
  if (event.target.closest?.('[data-theme-button]')) {
    root.dataset.theme = isDark() ? 'light' : 'dark';
    localStorage.setItem('theme', root.dataset.theme);
    nameTheme();
  }
  if (event.target.closest?.('[data-reload]')) location.reload();
  const jump = event.target.closest?.('a[data-jump]');
  if (jump) {
    const to = document.getElementById(jump.dataset.jump);
    if (to) {
      event.preventDefault();
      jump.closest('[popover]')?.hidePopover();
      goTo(to);
    }
  }
});
nameTheme();
matchMedia('(prefers-color-scheme: dark)').addEventListener('change', nameTheme);
new MutationObserver(nameTheme).observe(document.body, { subtree: true, childList: true });

// Hovering or focusing a finding thickens the size it names.
function point(event, on) {
  const finding = event.target.closest?.('[data-names]');
  if (finding) document.querySelectorAll(`[data-key="${CSS.escape(finding.dataset.names)}"]`).forEach(f => f.classList.toggle('named', on));
}
for (const [name, on] of [['mouseover', true], ['mouseout', false], ['focusin', true], ['focusout', false]]) {
  document.addEventListener(name, event => point(event, on));
}

// The program is lost and comes back.
const lost = document.getElementById('components-reconnect-modal');
lost?.addEventListener('components-reconnect-state-changed', event => {
  if (event.detail.state === 'show') lost.showModal();
  else if (event.detail.state === 'hide') lost.close();
  else if (event.detail.state === 'rejected') location.reload();
});

// What an address names within a page is where the reader begins, what stands above it opened.
export function beginAt(id) {
  document.getElementById('why-sheet')?.hidePopover();
  const to = document.getElementById(id);
  to?.closest('details')?.setAttribute('open', '');
  to?.scrollIntoView({ block: 'center' });
  to?.focus({ preventScroll: true });
}

export function beginAtHead() {
  scrollTo(0, 0);
  document.querySelector('h1')?.focus({ preventScroll: true });
}

// For the pour: the screen stays awake, a sound and a buzz.
let lock, sound;
export async function stayAwake(on) {
  try {
    if (on) {
      lock = await navigator.wakeLock?.request('screen');
    } else {
      await lock?.release();
      lock = undefined;
    }
  } catch { /* not granted: the maker keeps it awake */ }
}
export function signal(isLast) {
  navigator.vibrate?.(isLast ? [400, 100, 400] : 200);
  sound ??= new AudioContext();
  const tone = sound.createOscillator(), level = sound.createGain();
  tone.frequency.value = isLast ? 880 : 660;
  level.gain.setValueAtTime(.2, sound.currentTime);
  level.gain.exponentialRampToValueAtTime(.001, sound.currentTime + .5);
  tone.connect(level).connect(sound.destination);
  tone.start();
  tone.stop(sound.currentTime + .5);
}

// What stands in a room is moved over its plan: by the pointer, or by arrow keys a tenth of a metre at a time;
// the field it names is told by how much, in units of the drawing.
function moved(mover, x, y) {
  const field = document.getElementById(mover.dataset.move);
  if (!field || (!x && !y)) return;
  field.value = x + ' ' + y;
  field.dispatchEvent(new Event('change', { bubbles: true }));
}
document.addEventListener('pointerdown', event => {
  const mover = event.target.closest?.('[data-move]');
  if (!mover) return;
  const turn = mover.ownerSVGElement.getScreenCTM().inverse(), at = e => new DOMPoint(e.clientX, e.clientY).matrixTransform(turn), start = at(event);
  const go = e => { const to = at(e); mover.setAttribute('transform', `translate(${to.x - start.x} ${to.y - start.y})`); };
  const end = e => {
    for (const [kind, heard] of [['pointermove', go], ['pointerup', end], ['pointercancel', end]]) document.removeEventListener(kind, heard);
    mover.removeAttribute('transform');
    const to = at(e);
    if (e.type === 'pointerup') moved(mover, to.x - start.x, to.y - start.y);
  };
  event.preventDefault();
  mover.focus();
  for (const [kind, heard] of [['pointermove', go], ['pointerup', end], ['pointercancel', end]]) document.addEventListener(kind, heard);
});
document.addEventListener('keydown', event => {
  const mover = event.target.closest?.('[data-move]'), step = event.shiftKey ? 50 : 10;
  const by = { ArrowLeft: [-step, 0], ArrowRight: [step, 0], ArrowUp: [0, -step], ArrowDown: [0, step] }[event.key];
  if (!mover || !by) return;
  event.preventDefault();
  moved(mover, ...by);
});

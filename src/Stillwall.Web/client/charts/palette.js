// Colours of the page as the canvas needs them: read resolved from the root, again whenever the theme changes.
const NAMES = ['page', 'sheet', 'ink', 'ink2', 'rule', 'faint', 'ply', 'wash', 'cast', 'castline', 'pencil', 'holds', 'tight', 'fails', 'unknown'];

export function palette() {
  const style = getComputedStyle(document.documentElement);
  return Object.fromEntries(NAMES.map(name => [name, style.getPropertyValue(`--${name}`).trim() || '#000']));
}

// Light, whatever the theme: for paper.
function paperPalette() {
  const root = document.documentElement;
  const before = root.dataset.theme;
  root.dataset.theme = 'light';
  const colours = palette();
  if (before === undefined) {
    delete root.dataset.theme;
  } else {
    root.dataset.theme = before;
  }

  return colours;
}

// Calls back with the colours at every change of theme, and for paper before and after printing; returns what ends that.
export function watchTheme(changed) {
  const media = matchMedia('(prefers-color-scheme: dark)');
  let isPaper = false;
  const screen = () => isPaper || changed(palette());
  const observer = new MutationObserver(screen);
  const before = () => { isPaper = true; changed(paperPalette()); };
  const after = () => { isPaper = false; screen(); };
  observer.observe(document.documentElement, { attributes: true, attributeFilter: ['data-theme'] });
  media.addEventListener('change', screen);
  addEventListener('beforeprint', before);
  addEventListener('afterprint', after);
  return () => {
    observer.disconnect();
    media.removeEventListener('change', screen);
    removeEventListener('beforeprint', before);
    removeEventListener('afterprint', after);
  };
}

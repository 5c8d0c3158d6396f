// Numbers as people read them: one decimal for decibels, three digits for the rest, a true minus.
export function number(value, unit) {
  const text = unit === 'dB' ? value.toFixed(1) : digits(value, 3);
  return minus(Number(text) === 0 ? text.replace('-', '') : text);
}

export const frequency = hertz => hertz < 100 ? hertz.toFixed(1).replace(/\.0$/, '') : hertz.toFixed(0);

export const tick = value => minus(String(Number(value.toPrecision(6))));

export const minus = text => text.replace('-', '\u2212');

function digits(value, count) {
  const size = Math.abs(value);
  const decimals = size < 1e-9 ? 0 : Math.max(0, count - 1 - Math.floor(Math.log10(size)));
  return decimals > 0 ? value.toFixed(Math.min(decimals, 8)).replace(/\.?0+$/, '') : value.toFixed(0);
}

// Figures inside words stand in the face for numbers, their units with them; what a figure is, the page says.
let figure;

export const figuresAre = pattern => { figure = new RegExp(pattern, 'gu'); };

export function runs(text) {
  const parts = [];
  let from = 0;
  for (const found of text.matchAll(figure)) {
    if (found.index > from) {
      parts.push({ text: text.slice(from, found.index), figure: false });
    }

    parts.push({ text: found[0], figure: true });
    from = found.index + found[0].length;
  }

  if (from < text.length) {
    parts.push({ text: text.slice(from), figure: false });
  }

  return parts;
}

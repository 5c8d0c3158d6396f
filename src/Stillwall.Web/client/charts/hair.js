// The cross-hair: a point on the line that the pointer or the arrow keys move, and what is read off there.
import { mainSeries, valueAt } from './unpack.js';
import { frequency, number } from './numbers.js';

const STEPS_PER_DECADE = 120, STEPS = 200;

export class Hair {
  constructor(root, out, words) {
    this.root = root;
    this.out = out;
    this.words = words;
    this.upright = piece('i', 'hair-v');
    this.level = piece('i', 'hair-h');
    this.point = piece('i', 'hair-pt');
    for (const [name, value] of Object.entries({ role: 'slider', tabindex: '0', 'aria-label': words.crossHair, 'aria-orientation': 'horizontal' })) {
      this.point.setAttribute(name, value);
    }

    this.box = piece('div', 'hair');
    this.box.append(this.upright, this.level, this.point);
    this.point.addEventListener('keydown', event => this.key(event));
    this.at = null;
  }

  // Takes its place over a plot; the place on the axis is kept where the axis still has it.
  over(plot) {
    plot.append(this.box);
    plot.addEventListener('pointermove', event => this.pointer(event, plot));
    plot.addEventListener('pointerdown', event => this.pointer(event, plot));
    plot.addEventListener('pointerleave', () => this.rest());
  }

  show(chart) {
    const other = this.chart?.name !== chart.name;
    this.chart = chart;
    this.stops = stopsOf(chart);
    const { low, high } = chart.across;
    if (other || this.kept === undefined || this.kept < low || this.kept > high) {
      this.kept = this.restOf(chart);
    }

    this.to(this.at ?? this.kept);
  }

  // At rest on the lowest note of a double bass, the second that the axis names; on the first point that holds; or in the middle.
  restOf({ across }) {
    const good = this.stops?.find(s => s.mark === 'holds');
    if (good) {
      return good.x;
    }

    const note = across.notes.filter(n => n.x > across.low && n.x < across.high)[1];
    return note ? note.x : across.log ? Math.sqrt(across.low * across.high) : (across.low + across.high) / 2;
  }

  // Where on the picture it is when nobody moves it; labels keep off there.
  restOn(place) {
    const main = mainSeries(this.chart).map(m => valueAt(m.x, m.y, this.kept, this.chart.across.log)).find(v => v !== null);
    return this.stops || main === undefined ? null : place(this.kept, main);
  }

  rest() {
    this.at = null;
    this.to(this.kept);
  }

  pointer(event, plot) {
    const { left, width } = plot.getBoundingClientRect();
    this.at = this.fromShare((event.clientX - left) / width);
    this.to(this.at);
  }

  key(event) {
    const turn = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1, PageUp: 10, PageDown: -10 }[event.key];
    const end = { Home: -Infinity, End: Infinity }[event.key];
    if (turn === undefined && end === undefined) {
      return;
    }

    event.preventDefault();
    this.at = null;
    this.kept = end !== undefined ? this.fromShare(end < 0 ? 0 : 1) : this.stepped(turn * (event.shiftKey ? 10 : 1));
    this.to(this.kept);
    this.kept = this.x;
  }

  stepped(count) {
    if (this.stops) {
      const now = nearest(this.stops, this.x, this.chart.across.log);
      return this.stops[Math.min(this.stops.length - 1, Math.max(0, now + Math.sign(count)))].x;
    }

    const { low, high, log } = this.chart.across;
    return log ? this.x * Math.pow(10, count / STEPS_PER_DECADE) : this.x + (high - low) * count / STEPS;
  }

  fromShare(share) {
    const { low, high, log } = this.chart.across;
    const inside = Math.min(1, Math.max(0, share));
    return log ? low * Math.pow(high / low, inside) : low + (high - low) * inside;
  }

  share(x, axis) {
    return axis.log ? Math.log(x / axis.low) / Math.log(axis.high / axis.low) : (x - axis.low) / (axis.high - axis.low);
  }

  to(x) {
    const { across, up } = this.chart;
    const read = this.stops ? this.readStop(x) : this.readLine(Math.min(across.high, Math.max(across.low, x)));
    this.box.hidden = read === null;
    this.out.hidden = read === null;
    if (read === null) {
      this.x = x;
      return;
    }

    this.x = read.x;
    const left = `${100 * this.share(read.x, across)}%`;
    const top = `${100 * (1 - Math.min(1, Math.max(0, this.share(read.y, up))))}%`;
    Object.assign(this.upright.style, { left });
    Object.assign(this.level.style, { top, width: left });
    Object.assign(this.point.style, { left, top });
    const { low, high } = across;
    for (const [name, value] of Object.entries({ min: low, max: high, now: Number(read.x.toFixed(2)), text: read.words.join(', ') })) {
      this.point.setAttribute(`aria-value${name}`, String(value));
    }

    this.out.replaceChildren(piece('i'), ...read.parts);
  }

  readStop(x) {
    const stop = this.stops[nearest(this.stops, x, this.chart.across.log)];
    return stop ? this.told(stop.x, stop.y, stop) : null;
  }

  readLine(x) {
    const { series, across } = this.chart;
    for (const main of mainSeries(this.chart)) {
      const y = valueAt(main.x, main.y, x, across.log);
      if (y !== null) {
        const band = series.find(s => s.shape === 'area' && s.role === 'band');
        const [low, high] = band ? [valueAt(band.x, band.y, x, across.log), valueAt(band.x, band.upper, x, across.log)] : [null, null];
        const former = series.filter(s => s.role === 'pencil').map(s => valueAt(s.x, s.y, x, across.log)).find(v => v !== null) ?? null;
        return this.told(x, y, { low, high, former });
      }
    }

    return null;
  }

  // The numbers for the eye, and the same in words for the ear.
  told(x, y, { low = null, high = null, former = null, name = '', mark = '' }) {
    const { across, up } = this.chart;
    const where = across.unit === 'Hz'
      ? `${across.tickLabels.length ? nearestLabel(across, x) : frequency(x)} Hz` : `${number(x, across.unit)} ${across.unit}`.trim();
    const what = `${number(y, up.unit)} ${up.unit}`.trim();
    const parts = [...(name ? [piece('span', 'nm', name)] : []), piece('b', '', where), piece('b', '', what)];
    const words = [...(name ? [name] : []), where, what];
    if (mark && mark !== 'point') {
      words.push(mark);
    }

    if (low !== null) {
      const span = `${this.words.band} ${number(low, up.unit)} ${this.words.to} ${number(high, up.unit)}`;
      parts.push(piece('span', 'bd', span));
      words.push(span);
    }

    if (former !== null) {
      const before = `${this.words.before} ${number(former, up.unit)}`;
      parts.push(piece('span', 'penc', before));
      words.push(before);
    }

    return { x, y, parts, words };
  }
}

// Bars are read bar by bar, a cloud of points point by point; a line anywhere.
function stopsOf(chart) {
  const bars = mainSeries(chart).find(s => s.shape === 'bars');
  if (bars) {
    const doubt = chart.series.find(s => s.shape === 'strokes');
    return Array.from(bars.x, (x, i) => {
      const k = doubt ? Array.from(doubt.x).findIndex(d => Math.abs(d / x - 1) < 1e-3) : -1;
      return { x, y: bars.y[i], low: k < 0 ? null : doubt.y[k], high: k < 0 ? null : doubt.upper[k] };
    });
  }

  return chart.across.unit === 'Hz' ? null : chart.landmarks.map(l => ({ x: l.x, y: l.y, name: l.name, mark: l.mark })).sort((a, b) => a.x - b.x);
}

function nearest(stops, x, isLog) {
  const away = s => isLog ? Math.abs(Math.log(s.x / x)) : Math.abs(s.x - x);
  return stops.reduce((best, s, i) => away(s) < away(stops[best]) ? i : best, 0);
}

const nearestLabel = (across, x) => across.tickLabels[nearest(across.ticks.map(t => ({ x: t })), x, across.log)];

function piece(tag, name, text) {
  const element = document.createElement(tag);
  if (name) {
    element.className = name;
  }

  if (text) {
    element.textContent = text;
  }

  return element;
}

// A chart of one question: lines and axes by uPlot, hatching, marks and labels on top, the cross-hair over it.
import uPlot from 'uplot';
import { palette, watchTheme } from './charts/palette.js';
import { unpack } from './charts/unpack.js';
import { fonts, labels } from './charts/labels.js';
import { limit } from './charts/hatch.js';
import { bars, mark, strokes } from './charts/marks.js';
import { Hair } from './charts/hair.js';
import { across } from './charts/across.js';
import { figuresAre, tick } from './charts/numbers.js';

const NOTES = 19, AXIS = 18;

// root holds the plot, out the read-out; words are those of the cross-hair, figure is the pattern of a figure inside words.
export async function mount(root, out, words, figure) {
  figuresAre(figure);
  await Promise.all(['400 12px "Atkinson Hyperlegible"', '400 11px "IBM Plex Mono"', '500 12px "IBM Plex Mono"'].map(f => document.fonts.load(f)));
  return new QuestionChart(root, out, words);
}

class QuestionChart {
  constructor(root, out, words) {
    this.root = root;
    this.hair = new Hair(root, out, words);
    this.colours = palette();
    this.hidden = new Set();
    this.ends = [watchTheme(colours => this.repaint(colours))];
    this.sizer = new ResizeObserver(() => this.resize());
    this.sizer.observe(root);
    this.ends.push(() => this.sizer.disconnect());
  }

  // Resolves when the chart has been painted, so that whoever sends the next one sends the latest.
  draw(layout, bytes, hidden) {
    this.hidden = new Set(hidden);
    this.chart = unpack(layout, bytes);
    this.show();
    return painted();
  }

  show() {
    const { series, across: axis, up } = this.chart;
    const shape = JSON.stringify([series.map(s => [s.shape, s.role]), axis.log, up.log, axis.notes.length > 0]);
    const data = uPlot.join(this.tables());
    if (shape !== this.shape || !this.plot) {
      this.shape = shape;
      this.plot?.destroy();
      this.plot = new uPlot(this.options(), data, this.root);
      this.hair.over(this.plot.over);
    } else {
      this.plot.batch(() => {
        this.plot.setData(data);
        this.plot.redraw(true, true);
      });
    }

    this.hair.show(this.visible());
  }

  // A series that is switched off is neither drawn nor labelled nor read.
  visible() {
    return { ...this.chart, series: this.chart.series.filter(s => !this.hidden.has(s.key)) };
  }

  tables() {
    const on = s => !this.hidden.has(s.key);
    const none = s => new Float32Array(s.count).fill(NaN);
    const joined = this.chart.series.filter(isJoined).map(s => {
      const [y, upper] = on(s) ? [s.y, s.upper] : [none(s), none(s)];
      return s.shape === 'area' ? [Array.from(s.x), gaps(y), gaps(upper)] : [Array.from(s.x), gaps(y)];
    });
    return joined.length ? joined : [[[this.chart.across.low, this.chart.across.high], [null, null]]];
  }

  options() {
    const { across: axis, up } = this.chart;
    const { width, height } = this.size();
    const series = [{}], bands = [];
    for (const s of this.chart.series.filter(isJoined)) {
      if (s.shape === 'area') {
        bands.push({ series: [series.length + 1, series.length], fill: () => this.alpha(this.colours.ink, 0.2) });
        series.push(this.line('none'), this.line('none'));
      } else {
        series.push(this.line(s.role));
      }
    }

    if (series.length === 1) {
      series.push(this.line('none'));
    }

    return {
      width, height, series, bands, pxAlign: 0, legend: { show: false }, cursor: { show: false }, select: { show: false }, padding: [9, 10, 0, 0],
      scales: {
        x: { time: false, distr: axis.log ? 3 : 1, range: () => [this.chart.across.low, this.chart.across.high] },
        y: { distr: up.log ? 3 : 1, range: () => [this.chart.up.low, this.chart.up.high] },
      },
      axes: [
        { ...this.axis('across'), size: axis.notes.length ? AXIS + NOTES : AXIS + 2, gap: 5 },
        { ...this.axis('up'), size: (u, values) => Math.max(30, ...(values ?? []).map(v => (v?.length ?? 0) * 6.7 + 8)), gap: 6 },
      ],
      hooks: { drawAxes: [u => this.under(u)], draw: [u => this.above(u)] },
    };
  }

  axis(which) {
    return {
      stroke: () => this.colours.ink2, font: fonts.axis, ticks: { show: false }, border: { show: true, stroke: () => this.colours.ink, width: 1.5 },
      grid: { stroke: () => this.colours.faint, width: 1 },
      splits: () => this.chart[which].ticks, filter: (u, splits) => splits,
      values: u => which === 'across' ? [] : this.numbersUp(u),
    };
  }

  // The unit stands at the highest number; one that would run into the next is left out.
  numbersUp(u) {
    const { ticks, tickLabels, unit } = this.chart.up;
    const words = ticks.map((t, i) => (tickLabels[i] ?? tick(t)) + (i === ticks.length - 1 && unit ? ` ${unit}` : ''));
    let free = -Infinity;
    for (let i = ticks.length - 1; i >= 0; i--) {
      const at = u.valToPos(ticks[i], 'y');
      if (at < free) {
        words[i] = null;
      } else {
        free = at + 13;
      }
    }

    return words;
  }

  line(role) {
    const [colour, width] = { main: ['ink', 2.2], second: ['ink2', 1], pencil: ['pencil', 1], band: ['ink2', 1] }[role] ?? [null, 0];
    const [stroke, dash] = [() => colour ? this.colours[colour] : 'transparent', role === 'second' ? [7, 3] : undefined];
    return { stroke, width, points: { show: false }, spanGaps: false, dash };
  }

  under(u) {
    this.pen(u, pen => {
      for (const series of this.visible().series.filter(s => s.shape === 'bars')) {
        bars(pen, series, this.colours);
      }

      for (const { edge, region } of this.chart.limits) {
        const inside = p => ({ x: Math.min(pen.width, Math.max(0, p.x)), y: Math.min(pen.height, Math.max(0, p.y)) });
        limit(pen, edge.map(p => pen.place(p.x, p.y)), region.map(p => inside(pen.place(p.x, p.y))), this.colours.fails);
      }
    });
  }

  above(u) {
    this.pen(u, pen => {
      const { ctx, place, height } = pen;
      const drawn = this.visible().series;
      drawn.filter(s => s.shape === 'strokes').forEach(s => strokes(pen, s, this.colours));
      ctx.strokeStyle = this.colours.ink2;
      ctx.lineWidth = 1;
      ctx.setLineDash([4, 3]);
      for (const rule of this.chart.rules) {
        const { x } = place(rule.x, 0);
        ctx.beginPath();
        ctx.moveTo(x, 0);
        ctx.lineTo(x, height);
        ctx.stroke();
      }

      ctx.setLineDash([]);
      across(pen, this.chart.across, this.colours);
      for (const landmark of this.chart.landmarks) {
        mark(ctx, place(landmark.x, landmark.y), landmark.mark, this.colours);
      }

      labels({ ...pen, rest: this.hair.restOn(place) }, this.chart, drawn, this.colours);
    });
  }

  // Drawing in px with the corner of the plot as origin, whatever the screen's pixels are.
  pen(u, act) {
    const { ctx, bbox } = u;
    const ratio = uPlot.pxRatio;
    ctx.save();
    ctx.scale(ratio, ratio);
    ctx.translate(bbox.left / ratio, bbox.top / ratio);
    act({ ctx, width: bbox.width / ratio, height: bbox.height / ratio, place: (x, y) => ({ x: u.valToPos(x, 'x'), y: u.valToPos(this.inScale(y), 'y') }) });
    ctx.restore();
  }

  // A logarithm has no zero.
  inScale(y) {
    return this.chart.up.log ? Math.max(y, this.chart.up.low * 1e-3) : y;
  }

  alpha(colour, share) {
    return `color-mix(in srgb, ${colour} ${share * 100}%, transparent)`;
  }

  size() {
    const { clientWidth, clientHeight } = this.root;
    return { width: Math.max(120, clientWidth), height: Math.max(100, clientHeight) };
  }

  resize() {
    if (this.plot) {
      const { width, height } = this.size();
      if (width !== this.plot.width || height !== this.plot.height) {
        this.plot.setSize({ width, height });
      }
    }
  }

  repaint(colours) {
    this.colours = colours;
    this.plot?.redraw(false, true);
  }

  dispose() {
    this.ends.forEach(end => end());
    this.plot?.destroy();
    this.plot = null;
  }
}

const isJoined = series => series.shape === 'line' || series.shape === 'area';

const gaps = values => Array.from(values, v => Number.isFinite(v) ? v : null);

const painted = () => new Promise(done => {
  const end = () => { clearTimeout(late); done(); };
  const late = setTimeout(end, 100);
  requestAnimationFrame(end);
});

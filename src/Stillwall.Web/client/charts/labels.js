// Labels: on the lines, not in a legend. Points first, then limits, upright lines, and last what the lines are.
import { Placer } from './placer.js';
import { runs } from './numbers.js';

const SIZE = 12, HEIGHT = 13, DEEP = 12;

const WORDS = '"Atkinson Hyperlegible", Verdana, sans-serif', NUMBERS = '"IBM Plex Mono", monospace';

export const fonts = {
  text: `400 ${SIZE}px ${WORDS}`, italic: `italic 400 ${SIZE}px ${WORDS}`, figure: `500 ${SIZE}px ${NUMBERS}`,
  small: `400 11px ${WORDS}`, axis: `11px ${NUMBERS}`,
};

export function labels(pen, chart, drawn, colours) {
  const { ctx, width, height, place } = pen;
  const placer = new Placer(width, height);
  for (const series of drawn) {
    avoid(placer, series, pen);
  }

  for (const limit of chart.limits) {
    avoidHatch(placer, limit, place);
  }

  if (pen.rest) {
    placer.avoidLine([{ x: pen.rest.x, y: 0 }, { x: pen.rest.x, y: height }], 3);
    placer.avoidLine([{ x: 0, y: pen.rest.y }, pen.rest], 1);
  }

  for (const rule of chart.rules) {
    placer.avoidLine([place(rule.x, 0), place(rule.x, 0)].map((p, i) => ({ x: p.x, y: i * height })), 10);
  }

  for (const landmark of chart.landmarks) {
    const at = place(landmark.x, landmark.y);
    placer.avoidBox({ left: at.x - 5, right: at.x + 5, top: at.y - 5, bottom: at.y + 5 });
  }

  const write = (text, places, colour, options = {}) => {
    const parts = measured(ctx, text, options.font ?? fonts.text);
    const spot = text && placer.place(places, { width: parts.width, height: HEIGHT }, options.mayDrop);
    if (spot) {
      draw(ctx, parts, spot, colour, colours.sheet);
    }
  };
  const corners = [{ x: 6, y: 8, align: 'start' }, { x: width - 6, y: 8, align: 'end' }, { x: 6, y: height - 9, align: 'start' }];
  write(axisWords(chart.up), corners, colours.ink2, { font: fonts.small, mayDrop: true });
  for (const landmark of [...chart.landmarks].sort((a, b) => a.mayDropLabel - b.mayDropLabel)) {
    write(landmark.label, beside(place(landmark.x, landmark.y)), colours.ink, { mayDrop: landmark.mayDropLabel });
  }

  for (const limit of chart.limits) {
    write(limit.name, pastEdge(limit, place), colours.fails);
  }

  for (const rule of chart.rules) {
    write(rule.label, besideRule(place(rule.x, 0).x, height), colours.ink2);
  }

  for (const series of [...drawn].reverse().filter(s => s.name && s.shape !== 'bars' && s.shape !== 'area')) {
    const pencil = series.role === 'pencil';
    const colour = pencil ? colours.pencil : series.role === 'main' ? colours.ink : colours.ink2;
    write(series.name, alongLine(series, drawn, pen), colour, { font: pencil ? fonts.italic : fonts.text, mayDrop: series.role !== 'main' });
  }
}

// The small words at the head of the axis up; its unit stands at its highest number.
const axisWords = axis => axis.label;

function avoid(placer, series, { place, height }) {
  if (series.shape === 'line') {
    placer.avoidLine(pathOf(series, place), series.role === 'main' ? 10 : 5);
  } else if (series.shape === 'bars' || series.shape === 'strokes') {
    for (let i = 0; i < series.count; i++) {
      const low = place(series.x[i], series.y[i]);
      const end = series.shape === 'bars' ? height : place(series.x[i], series.upper[i]).y;
      for (const x of series.shape === 'bars' ? [-20, -10, 0, 10, 20] : [0]) {
        placer.avoidLine([{ x: low.x + x, y: low.y }, { x: low.x + x, y: end }], 8);
      }
    }
  }
}

// The edge of a limit, and lines along it within the hatch.
function avoidHatch(placer, limit, place) {
  const [edge, region] = [limit.edge, limit.region].map(points => points.map(p => place(p.x, p.y)));
  placer.avoidLine(edge, 12);
  for (let i = 1; i < edge.length; i++) {
    const [a, b] = [edge[i - 1], edge[i]];
    const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
    const [nx, ny] = [-(b.y - a.y) / length, (b.x - a.x) / length];
    const side = isWithin(region, (a.x + b.x) / 2 + nx, (a.y + b.y) / 2 + ny) ? 1 : -1;
    for (const far of [DEEP / 3, DEEP * 0.75]) {
      placer.avoidLine([a, b].map(p => ({ x: p.x + side * far * nx, y: p.y + side * far * ny })), 4);
    }
  }
}

function isWithin(ring, x, y) {
  let inside = false;
  for (let i = 0, j = ring.length - 1; i < ring.length; j = i++) {
    const [a, b] = [ring[i], ring[j]];
    if (a.y > y !== b.y > y && x < (b.x - a.x) * (y - a.y) / (b.y - a.y) + a.x) {
      inside = !inside;
    }
  }

  return inside;
}

const pathOf = (series, place, values = series.y) => Array.from(series.x, (x, i) => place(x, values[i]));

function beside(at) {
  const places = [];
  for (const far of [10, 22, 38]) {
    for (const [x, y, align] of [
      [9, far, 'start'], [9, -far, 'start'], [-9, -far, 'end'], [-9, far, 'end'],
      [0, -far - 4, 'middle'], [0, far + 4, 'middle'], [10, 0, 'start'], [-10, 0, 'end'],
    ]) {
      places.push({ x: at.x + x, y: at.y + y, align });
    }
  }

  return places;
}

// Past the hatch, at one of several places along the edge; before it where there is no room past it.
function pastEdge(limit, place) {
  const edge = limit.edge.map(p => place(p.x, p.y));
  const mean = points => points.reduce((sum, p) => sum + p.y, 0) / points.length;
  const side = mean(limit.region.map(p => place(p.x, p.y))) > mean(edge) ? 1 : -1;
  const [from, to] = [Math.min(...edge.map(p => p.x)), Math.max(...edge.map(p => p.x))];
  const places = [];
  for (const far of [DEEP + 10, DEEP + 24, DEEP + 40, DEEP + 62, -11, -24, DEEP + 90, DEEP + 124, DEEP + 160]) {
    for (const share of [0.42, 0.3, 0.55, 0.15, 0.7, 0.85, 0.02]) {
      const x = from + share * (to - from);
      places.push({ x, y: heightAt(edge, x) + side * far, align: 'start' });
    }
  }

  return places;
}

function besideRule(x, height) {
  return [0.14, 0.25, 0.4, 0.55, 0.7, 0.85].map(share => height * (1 - share))
    .flatMap(y => [{ x: x + 6, y, align: 'start' }, { x: x - 6, y, align: 'end' }]);
}

function alongLine(series, drawn, { place, width, height }) {
  const path = pathOf(series, place, series.shape === 'strokes' ? series.upper : series.y).filter(p => p.x >= 0 && p.x <= width && p.y >= 0 && p.y <= height);
  if (path.length < 2) {
    return [];
  }

  const others = drawn.filter(s => s !== series && s.shape === 'line').map(s => pathOf(s, place)).filter(p => p.length > 1);
  const [from, to] = [path[0].x, path[path.length - 1].x];
  const between = (other, x) => Math.abs(heightAt(other, x) - heightAt(path, x));
  const apart = share => Math.min(24, ...others.map(other => between(other, from + share * (to - from))));
  const step = share => Math.floor(apart(share) / 3);
  // The main line's name is looked for at the right, where it lies still; the others' where they are farthest apart.
  const shares = series.role === 'main' ? [1, 0.9, 0.8, 0.7, 0.5, 0.3, 0.6, 0.15, 0.4, 0] : [0.25, 0.15, 0.35, 0.5, 0.7, 0.9, 0.6, 0.05, 0.8, 1];
  if (series.role !== 'main') {
    shares.sort((a, b) => step(b) - step(a));
  }

  const fars = [10, 22, 36, 56];
  // The main line's name rather goes a little farther away than to another place; the others' rather stay near.
  const pairs = series.role === 'main' ? shares.flatMap(share => fars.map(far => [share, far])) : fars.flatMap(far => shares.map(share => [share, far]));
  return pairs.flatMap(([share, far]) => {
    const x = from + share * (to - from);
    const y = heightAt(path, x);
    return ['end', 'start', 'middle'].flatMap(align => {
      const aside = align === 'start' ? 6 : align === 'end' ? -3 : 0;
      return [{ x: x + aside, y: y - far, align }, { x: x + aside, y: y + far, align }];
    });
  });
}

function heightAt(line, x) {
  let k = 1;
  while (k < line.length - 1 && line[k].x < x) {
    k++;
  }

  const [a, b] = [line[k - 1], line[k]];
  return b.x === a.x ? a.y : a.y + (b.y - a.y) * Math.min(1, Math.max(0, (x - a.x) / (b.x - a.x)));
}

function measured(ctx, text, font) {
  let width = 0;
  const parts = runs(text ?? '').map(run => {
    ctx.font = run.figure && font === fonts.text ? fonts.figure : font;
    const part = { text: run.text, font: ctx.font, at: width };
    width += ctx.measureText(run.text).width;
    return part;
  });
  return { parts, width };
}

// On a ground of the sheet's colour, so that a line beneath does not run through the letters.
function draw(ctx, { parts }, spot, colour, ground) {
  ctx.textAlign = 'left';
  ctx.textBaseline = 'middle';
  ctx.lineJoin = 'round';
  for (const pass of ['ground', 'text']) {
    for (const part of parts) {
      ctx.font = part.font;
      if (pass === 'ground') {
        ctx.lineWidth = 4;
        ctx.strokeStyle = ground;
        ctx.strokeText(part.text, spot.x + part.at, spot.y + 0.5);
      } else {
        ctx.fillStyle = colour;
        ctx.fillText(part.text, spot.x + part.at, spot.y + 0.5);
      }
    }
  }
}


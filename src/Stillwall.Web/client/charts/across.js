// Numbers along the foot of a chart, the unit at the last, and under them what places on the axis mean.
import { fonts } from './labels.js';
import { tick } from './numbers.js';

const NUMBERS = 11, NOTES = 28, OVERHANG = 9;

export function across(pen, axis, colours) {
  const { ctx } = pen;
  ctx.fillStyle = ctx.strokeStyle = colours.ink2;
  ctx.textAlign = 'center';
  ctx.textBaseline = 'middle';
  ctx.lineWidth = 1;
  numbers(pen, axis);
  notes(pen, axis);
}

// The ends come first; a number that would run into another is left out.
function numbers({ ctx, place, width, height }, { ticks, tickLabels, unit, low, high }) {
  ctx.font = fonts.axis;
  const words = ticks.map((t, i) => (tickLabels[i] ?? tick(t)) + (i === ticks.length - 1 && unit ? ` ${unit}` : ''));
  const taken = [];
  for (const i of [ticks.length - 1, ...ticks.keys()]) {
    const half = ctx.measureText(words[i]).width / 2;
    const at = Math.min(width + OVERHANG - half, place(Math.min(high, Math.max(low, ticks[i])), 0).x);
    if (taken.every(([from, to]) => at + half < from || at - half > to)) {
      taken.push([at - half - 4, at + half + 4]);
      ctx.fillText(words[i], at, height + NUMBERS);
    }
  }
}

// Each with a small stroke; a note that would run into the one before is left out.
function notes({ ctx, place, width, height }, axis) {
  ctx.font = fonts.small;
  let free = -30;
  for (const note of axis.notes) {
    const half = ctx.measureText(note.text).width / 2;
    const { x } = place(note.x, 0);
    const centre = Math.min(width + OVERHANG - half, Math.max(half - 30, x));
    if (x < 0 || x > width || centre - half < free) {
      continue;
    }

    free = centre + half + 10;
    ctx.fillText(note.text, centre, height + NOTES);
    ctx.beginPath();
    ctx.moveTo(x, height);
    ctx.lineTo(x, height + 5);
    ctx.stroke();
  }
}

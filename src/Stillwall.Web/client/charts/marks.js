// Marks on a chart: points, verdicts by shape, bars and strokes of doubt.
export function mark(ctx, at, kind, colours) {
  const colour = { holds: colours.holds, tight: colours.tight, fails: colours.fails, unknown: colours.unknown }[kind] ?? colours.ink;
  ctx.fillStyle = kind === 'holds' || kind === 'fails' ? colour : colours.sheet;
  ctx.strokeStyle = colour;
  ctx.lineWidth = 1.5;
  ctx.beginPath();
  if (kind === 'fails') {
    ctx.moveTo(at.x, at.y - 6);
    ctx.lineTo(at.x + 5.5, at.y + 4);
    ctx.lineTo(at.x - 5.5, at.y + 4);
    ctx.closePath();
  } else {
    ctx.arc(at.x, at.y, kind === 'point' ? 3 : 4.6, 0, 2 * Math.PI);
  }

  ctx.fill();
  ctx.stroke();
  if (kind === 'tight') {
    ctx.fillStyle = colour;
    ctx.beginPath();
    ctx.arc(at.x, at.y, 4.6, -Math.PI / 2, Math.PI / 2);
    ctx.fill();
  }
}

// A third-octave is a twentieth of a decade to either side; a tenth of that is left free between bars.
const REACH = Math.pow(10, 0.9 / 20);

export function bars(pen, series, colours) {
  const { ctx, place, height } = pen;
  ctx.fillStyle = colours.cast;
  ctx.strokeStyle = colours.castline;
  ctx.lineWidth = 1;
  for (let i = 0; i < series.count; i++) {
    const [left, right] = [place(series.x[i] / REACH, 0).x, place(series.x[i] * REACH, 0).x];
    const top = Math.min(height, Math.max(0, place(series.x[i], series.y[i]).y));
    ctx.beginPath();
    ctx.rect(left, top, right - left, height - top);
    ctx.fill();
    ctx.stroke();
  }
}

export function strokes(pen, series, colours) {
  const { ctx, place, height } = pen;
  ctx.strokeStyle = colours.ink2;
  ctx.lineWidth = 1.4;
  ctx.beginPath();
  for (let i = 0; i < series.count; i++) {
    const [low, high] = [place(series.x[i], series.y[i]), place(series.x[i], series.upper[i])];
    const [bottom, top] = [Math.min(low.y, height), Math.max(high.y, 0)];
    for (const [fromX, fromY, toX, toY] of [[0, bottom, 0, top], [-4, top, 4, top], [-4, bottom, 4, bottom]]) {
      ctx.moveTo(low.x + fromX, fromY);
      ctx.lineTo(low.x + toX, toY);
    }
  }

  ctx.stroke();
}

// A limit: its edge, and hatching 12 px deep along it on the side that is wrong.
const DEEP = 12, APART = 6 * Math.SQRT2;

export function limit(pen, edge, region, colour) {
  const { ctx, width, height } = pen;
  if (edge.length < 2) {
    return;
  }

  ctx.save();
  clip(ctx, [rectangle(width, height)]);
  ctx.save();
  clip(ctx, [region]);
  clip(ctx, along(edge));
  ctx.strokeStyle = colour;
  ctx.globalAlpha = 0.75;
  ctx.lineWidth = 1;
  ctx.beginPath();
  for (let x = -height; x < width; x += APART) {
    ctx.moveTo(x, height);
    ctx.lineTo(x + height, 0);
  }

  ctx.stroke();
  ctx.restore();
  ctx.strokeStyle = colour;
  ctx.lineWidth = 1.5;
  ctx.beginPath();
  edge.forEach((p, i) => i ? ctx.lineTo(p.x, p.y) : ctx.moveTo(p.x, p.y));
  ctx.stroke();
  ctx.restore();
}

// What lies within the depth of the edge, as pieces that turn the same way, so that together they make one area.
function along(edge) {
  const pieces = [];
  for (let i = 1; i < edge.length; i++) {
    const [a, b] = [edge[i - 1], edge[i]];
    const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
    const [nx, ny] = [-(b.y - a.y) / length * DEEP, (b.x - a.x) / length * DEEP];
    pieces.push([{ x: a.x + nx, y: a.y + ny }, { x: b.x + nx, y: b.y + ny }, { x: b.x - nx, y: b.y - ny }, { x: a.x - nx, y: a.y - ny }]);
  }

  return pieces;
}

function clip(ctx, rings) {
  ctx.beginPath();
  for (const ring of rings) {
    ring.forEach((p, i) => i ? ctx.lineTo(p.x, p.y) : ctx.moveTo(p.x, p.y));
    ctx.closePath();
  }

  ctx.clip();
}

const rectangle = (width, height) => [{ x: 0, y: 0 }, { x: width, y: 0 }, { x: width, y: height }, { x: 0, y: height }];

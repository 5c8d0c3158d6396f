// Bodies come as a head in JSON and, for each, its corners, triangles, sharp edges and round edges one behind the other.
export function unpackBodies(buffer) {
  const length = new DataView(buffer).getUint32(0, true);
  const { bodies } = JSON.parse(new TextDecoder().decode(new Uint8Array(buffer, 4, length)));
  let at = 4 + length;
  const take = (Kind, count) => {
    const part = new Kind(buffer, at, count);
    at += count * 4;
    return part;
  };
  return bodies.map(head => ({
    ...head,
    points: take(Float32Array, head.points * 3),
    triangles: take(Uint32Array, head.triangles * 3),
    sharp: take(Uint32Array, head.sharp * 2),
    round: take(Uint32Array, head.round * 4),
  }));
}

export function normalOf({ points, triangles }, index) {
  const [a, b, c] = [0, 1, 2].map(k => triangles[index * 3 + k] * 3);
  const [[ux, uy, uz], [vx, vy, vz]] = [b, c].map(to => [0, 1, 2].map(k => points[to + k] - points[a + k]));
  const normal = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
  const size = Math.hypot(...normal) || 1;
  return normal.map(n => n / size);
}

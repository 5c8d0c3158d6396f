// The numbers of a chart come as one run of 32-bit floats in the order in which the layout names them:
// for each series its x, its y and, where it has them, its upper y; for each limit edge x and y, region x and y.
export function unpack(layout, bytes) {
  const floats = new Float32Array(bytes.slice().buffer);
  let at = 0;
  const take = count => floats.subarray(at, at += count);
  const series = layout.series.map(s => ({ ...s, x: take(s.count), y: take(s.count), upper: s.hasUpper ? take(s.count) : null }));
  const limits = layout.limits.map(l => ({ ...l, edge: points(take(l.edge), take(l.edge)), region: points(take(l.region), take(l.region)) }));
  return { ...layout, series, limits };
}

const points = (x, y) => Array.from(x, (value, i) => ({ x: value, y: y[i] }));

// The value of a line at x, straight between its points on the axis as it is drawn; null beyond its ends.
export function valueAt(x, y, at, isLog) {
  const last = x.length - 1;
  const slack = Math.abs(at) * 1e-6;
  if (last < 0 || at < x[0] - slack || at > x[last] + slack) {
    return null;
  }

  let low = 0, high = last;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (x[middle] <= at) {
      low = middle;
    } else {
      high = middle;
    }
  }

  const share = high === low ? 0 : isLog ? Math.log(at / x[low]) / Math.log(x[high] / x[low]) : (at - x[low]) / (x[high] - x[low]);
  return y[low] + (y[high] - y[low]) * Math.min(1, Math.max(0, share));
}

export const lines = chart => chart.series.filter(s => s.shape === 'line');
export const mainSeries = chart => chart.series.filter(s => s.role === 'main');

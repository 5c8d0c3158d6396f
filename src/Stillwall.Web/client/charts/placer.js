// Finds room for labels: each takes the cheapest of its places; those placed first have the choice.
// A label over another cannot be read at all; over a line it can, on its own ground.
const OUTSIDE = 5000, OVER_LABEL = 1000, MOVED = 40;

export class Placer {
  constructor(width, height) {
    this.width = width;
    this.height = height;
    this.taken = [];
    this.spots = [];
  }

  // A line that labels had better leave free, at a price for each pixel.
  avoidLine(points, price) {
    for (let i = 1; i < points.length; i++) {
      const [a, b] = [points[i - 1], points[i]];
      const steps = Math.max(1, Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / 3));
      for (let k = 0; k < steps && steps < 2000; k++) {
        this.spots.push({ x: a.x + (b.x - a.x) * k / steps, y: a.y + (b.y - a.y) * k / steps, price: price * 3 });
      }
    }
  }

  avoidBox(box) {
    this.taken.push(box);
  }

  // Places are { x, y, align }: y is the middle of the line of text. Null where none is free and the label may be left out.
  place(places, size, mayDrop = false) {
    let best = null;
    places.forEach((place, rank) => {
      const { moved, box } = this.inward(boxOf(place, size));
      const cost = this.cost(box) + rank * 2 + (moved ? MOVED : 0);
      if (best === null || cost < best.cost) {
        best = { cost, box };
      }
    });
    if (best === null || best.cost >= OUTSIDE || (mayDrop && best.cost >= OVER_LABEL)) {
      return null;
    }

    this.taken.push(best.box);
    return { x: best.box.left, y: (best.box.top + best.box.bottom) / 2 };
  }

  inward(box) {
    const across = box.left < 2 ? 2 - box.left : Math.min(0, this.width - 2 - box.right);
    const down = box.top < 1 ? 1 - box.top : Math.min(0, this.height - 1 - box.bottom);
    const shifted = { left: box.left + across, right: box.right + across, top: box.top + down, bottom: box.bottom + down };
    return { moved: across !== 0 || down !== 0, box: shifted };
  }

  cost(box) {
    const near = { left: box.left - 3, right: box.right + 3, top: box.top - 1, bottom: box.bottom + 1 };
    let sum = box.left < 0 || box.right > this.width || box.top < 0 || box.bottom > this.height ? OUTSIDE : 0;
    for (const other of this.taken) {
      if (overlap(near, other)) {
        sum += OVER_LABEL;
      }
    }

    for (const spot of this.spots) {
      if (spot.x > near.left && spot.x < near.right && spot.y > near.top && spot.y < near.bottom) {
        sum += spot.price;
      }
    }

    return sum;
  }
}

function boxOf(place, size) {
  const left = place.align === 'start' ? place.x : place.align === 'end' ? place.x - size.width : place.x - size.width / 2;
  return { left, right: left + size.width, top: place.y - size.height / 2, bottom: place.y + size.height / 2 };
}

export const overlap = (a, b) => a.left < b.right && a.right > b.left && a.top < b.bottom && a.bottom > b.top;

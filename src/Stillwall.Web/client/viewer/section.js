// A cut through everything: what lies before the plane is left away, and what it passes through is filled.
// Where the surfaces before and behind a point of the plane do not come in pairs, the plane is inside of something: counted in the stencil.
import * as THREE from 'three';

const AXES = { width: new THREE.Vector3(-1, 0, 0), depth: new THREE.Vector3(0, 1, 0), height: new THREE.Vector3(0, 0, -1) };
const CAST_COUNT = 1, CAST_CAP = 1.1, SKIN_COUNT = 2, SKIN_CAP = 2.1, GRAIN = 24;

export class Section {
  constructor(scene) {
    this.scene = scene;
    this.plane = new THREE.Plane(new THREE.Vector3(0, 0, -1), 0);
    this.counters = [];
    this.isOn = false;
    this.castCap = this.cap(CAST_CAP);
    this.skinCap = this.cap(SKIN_CAP);
    this.hasCast = true;
  }

  cap(order) {
    const material = new THREE.MeshBasicMaterial({
      side: THREE.DoubleSide, stencilWrite: true, stencilRef: 0, stencilFunc: THREE.NotEqualStencilFunc,
      stencilFail: THREE.ReplaceStencilOp, stencilZFail: THREE.ReplaceStencilOp, stencilZPass: THREE.ReplaceStencilOp,
    });
    const cap = new THREE.Mesh(new THREE.PlaneGeometry(1, 1), material);
    cap.renderOrder = order;
    cap.frustumCulled = false;
    cap.visible = false;
    cap.onAfterRender = renderer => renderer.clearStencil();
    this.scene.add(cap);
    return cap;
  }

  fill(bodies, cast) {
    this.clear();
    bodies.forEach(body => this.count(body.surface, body.group, SKIN_COUNT));
    if (cast) {
      const surface = new THREE.BufferGeometry();
      surface.setAttribute('position', new THREE.BufferAttribute(cast.points, 3));
      surface.setIndex(new THREE.BufferAttribute(cast.triangles, 1));
      this.castSurface = surface;
      this.count(surface, this.scene, CAST_COUNT);
    }
  }

  // Behind counts up, before counts down; neither is seen.
  count(surface, parent, order) {
    for (const [side, step] of [[THREE.BackSide, THREE.IncrementWrapStencilOp], [THREE.FrontSide, THREE.DecrementWrapStencilOp]]) {
      const counter = new THREE.Mesh(surface, new THREE.MeshBasicMaterial({
        side, depthWrite: false, depthTest: false, colorWrite: false, clippingPlanes: [this.plane],
        stencilWrite: true, stencilFunc: THREE.AlwaysStencilFunc, stencilFail: step, stencilZFail: step, stencilZPass: step,
      }));
      counter.renderOrder = order;
      counter.frustumCulled = false;
      counter.raycast = () => {};
      parent.add(counter);
      this.counters.push({ counter, parent, isCast: order === CAST_COUNT });
    }
  }

  clear() {
    this.counters.forEach(({ counter, parent }) => { parent.remove(counter); counter.material.dispose(); });
    this.counters = [];
    this.castSurface?.dispose();
    this.castSurface = null;
  }

  // The planes that the parts are cut with; none where there is no cut.
  cut(axis, share, box) {
    const normal = AXES[axis];
    this.isOn = normal !== undefined;
    if (this.isOn) {
      const at = box.min.clone().lerp(box.max, share);
      this.plane.setFromNormalAndCoplanarPoint(normal, at);
      const size = box.getSize(new THREE.Vector3()).length() * 1.2;
      for (const cap of [this.castCap, this.skinCap]) {
        cap.scale.set(size, size, 1);
        cap.position.copy(this.plane.projectPoint(box.getCenter(new THREE.Vector3()), new THREE.Vector3()));
        cap.quaternion.setFromUnitVectors(new THREE.Vector3(0, 0, 1), normal);
      }

      this.castCap.material.map?.repeat.set(size / GRAIN, size / GRAIN);
      this.size = size;
    }

    this.show();
    return this.isOn ? [this.plane] : [];
  }

  showCast(on) {
    this.hasCast = on;
    this.show();
  }

  show() {
    this.castCap.visible = this.isOn && this.hasCast && this.castSurface !== null;
    this.skinCap.visible = this.isOn;
    this.counters.forEach(({ counter, isCast }) => { counter.visible = this.isOn && (!isCast || this.hasCast); });
  }

  keeps(point) {
    return !this.isOn || this.plane.distanceToPoint(point) >= 0;
  }

  paint(colours) {
    this.skinCap.material.color.set(colours.ink);
    this.castCap.material.map?.dispose();
    this.castCap.material.map = stipple(colours.cast, colours.castline);
    this.castCap.material.map.repeat.set((this.size ?? GRAIN) / GRAIN, (this.size ?? GRAIN) / GRAIN);
    this.castCap.material.needsUpdate = true;
  }

  remove() {
    this.clear();
    for (const cap of [this.castCap, this.skinCap]) {
      this.scene.remove(cap);
      cap.geometry.dispose();
      cap.material.map?.dispose();
      cap.material.dispose();
    }
  }
}

// Grains on a ground, the same every time: a square of 24 mm that meets itself at its edges.
function stipple(ground, grain) {
  const size = 96;
  const canvas = document.createElement('canvas');
  canvas.width = canvas.height = size;
  const ctx = canvas.getContext('2d');
  ctx.fillStyle = ground;
  ctx.fillRect(0, 0, size, size);
  ctx.fillStyle = grain;
  let seed = 7;
  const next = () => (seed = (seed * 16807) % 2147483647) / 2147483647;
  for (let i = 0; i < 22; i++) {
    const [x, y, radius] = [next() * size, next() * size, 1.6 + next() * 1.8];
    for (const [dx, dy] of [[0, 0], [size, 0], [-size, 0], [0, size], [0, -size]]) {
      ctx.beginPath();
      ctx.arc(x + dx, y + dy, radius, 0, 2 * Math.PI);
      ctx.fill();
    }
  }

  const texture = new THREE.CanvasTexture(canvas);
  texture.wrapS = texture.wrapT = THREE.RepeatWrapping;
  texture.colorSpace = THREE.SRGBColorSpace;
  return texture;
}

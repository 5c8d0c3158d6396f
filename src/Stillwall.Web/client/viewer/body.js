// One part: a flat fill, the edges where it bends, its outline where it is round.
import * as THREE from 'three';
import { outlineInk, outlineOf } from './outline.js';

const FILLS = 3, LINES = 4, HIDDEN = 5;

export class Body {
  constructor(scene, part) {
    this.name = part.name;
    this.apart = new THREE.Vector3(0, part.apartY, part.apartZ);
    this.group = new THREE.Group();
    const surface = new THREE.BufferGeometry();
    surface.setAttribute('position', new THREE.BufferAttribute(part.points, 3));
    surface.setIndex(new THREE.BufferAttribute(part.triangles, 1));
    const edges = new THREE.BufferGeometry();
    edges.setAttribute('position', new THREE.BufferAttribute(endsOf(part), 3));
    edges.setAttribute('lineDistance', new THREE.BufferAttribute(distancesOf(edges.getAttribute('position')), 1));
    this.surface = surface;
    const behind = { polygonOffset: true, polygonOffsetFactor: 1, polygonOffsetUnits: 1 };
    this.fill = new THREE.Mesh(surface, new THREE.MeshBasicMaterial({ ...behind, side: THREE.DoubleSide }));
    this.edges = new THREE.LineSegments(edges, new THREE.LineBasicMaterial());
    this.behind = new THREE.LineSegments(edges, new THREE.LineDashedMaterial({ dashSize: 3, gapSize: 2, depthFunc: THREE.GreaterDepth, depthWrite: false }));
    this.round = new THREE.LineSegments(outlineOf(part), outlineInk());
    this.fill.name = part.name;
    for (const [object, order] of [[this.fill, FILLS], [this.edges, LINES], [this.round, LINES], [this.behind, HIDDEN]]) {
      object.renderOrder = order;
      object.frustumCulled = false;
      this.group.add(object);
    }

    this.behind.visible = false;
    scene.add(this.group);
    this.scene = scene;
  }

  get parts() {
    return [this.fill, this.edges, this.round, this.behind];
  }

  spread(share) {
    this.group.position.copy(this.apart).multiplyScalar(share);
    this.group.updateMatrixWorld(true);
  }

  box() {
    if (!this.surface.boundingBox) {
      this.surface.computeBoundingBox();
    }

    return this.surface.boundingBox.clone().translate(this.group.position);
  }

  clip(planes) {
    this.parts.forEach(part => { part.material.clippingPlanes = planes; });
  }

  showHidden(on) {
    this.behind.visible = on;
  }

  mark(on) {
    this.isMarked = on;
  }

  paint(colours) {
    const ink = new THREE.Color(this.isMarked ? colours.ply : colours.ink);
    this.fill.material.color.set(this.isMarked ? colours.wash : colours.sheet);
    this.edges.material.color.copy(ink);
    this.behind.material.color.set(colours.ink2);
    this.round.material.uniforms.ink.value.copy(ink);
  }

  // Faces are set back by their slope, so that they do not hide the lines that bound them: by a pixel's worth, but less where pixels are
  // large, since behind a skin of 2 mm there are other lines.
  seenAlong(view, pixelMm) {
    this.round.material.uniforms.along.value.copy(view);
    this.fill.material.polygonOffsetFactor = Math.min(1, Math.max(0.2, 0.6 / pixelMm));
  }

  remove() {
    this.scene.remove(this.group);
    this.parts.forEach(part => { part.geometry.dispose(); part.material.dispose(); });
  }
}

function endsOf({ sharp, points }) {
  const ends = new Float32Array(sharp.length * 3);
  for (let i = 0; i < sharp.length; i++) {
    ends.set(points.subarray(sharp[i] * 3, sharp[i] * 3 + 3), i * 3);
  }

  return ends;
}

function distancesOf(position) {
  const distances = new Float32Array(position.count);
  const [a, b] = [new THREE.Vector3(), new THREE.Vector3()];
  for (let i = 0; i < position.count; i += 2) {
    distances[i + 1] = a.fromBufferAttribute(position, i).distanceTo(b.fromBufferAttribute(position, i + 1));
  }

  return distances;
}

// The parts in their places, turned by hand: paper, ink lines and flat fills, drawn only when something changed.
import * as THREE from 'three';
import { OrbitControls } from 'three/examples/jsm/controls/OrbitControls.js';
import { palette, watchTheme } from './charts/palette.js';
import { unpackBodies } from './viewer/unpack.js';
import { Body } from './viewer/body.js';
import { Section } from './viewer/section.js';

const LOOKS = { corner: [0.62, -1, 0.55], front: [0, -1, 0], right: [1, 0, 0], above: [0, -1e-4, 1], behind: [-0.62, 1, 0.55] };
const TURN = Math.PI / 36, ZOOM = 1.15, MARGIN = 1.12;

// Null where the browser has no WebGL.
export function mount(canvas, dotnet) {
  try {
    return new PartsViewer(canvas, dotnet);
  } catch {
    return null;
  }
}

class PartsViewer {
  constructor(canvas, dotnet) {
    this.canvas = canvas;
    this.dotnet = dotnet;
    // The picture is kept between two frames, so that it can be printed.
    this.renderer = new THREE.WebGLRenderer({ canvas, antialias: true, stencil: true, preserveDrawingBuffer: true, powerPreference: 'low-power' });
    this.renderer.localClippingEnabled = true;
    this.renderer.autoClearStencil = true;
    this.scene = new THREE.Scene();
    this.camera = new THREE.OrthographicCamera(-1, 1, 1, -1, 0.1, 10);
    this.camera.up.set(0, 0, 1);
    this.controls = new OrbitControls(this.camera, canvas);
    this.controls.enableDamping = false;
    this.controls.addEventListener('change', () => this.ask());
    this.heed(false);
    this.bodies = [];
    this.apart = 0;
    this.colours = palette();
    this.section = new Section(this.scene);
    this.ends = [watchTheme(colours => { this.repaint(colours); this.paint(); })];
    this.sizer = new ResizeObserver(() => this.resize());
    this.sizer.observe(canvas.parentElement);
    this.ends.push(() => this.sizer.disconnect());
    this.listen(canvas, 'focus', () => this.heed(true));
    this.listen(canvas, 'blur', () => this.heed(false));
    this.listen(canvas, 'keydown', event => this.key(event));
    this.listen(canvas, 'pointerdown', event => { this.pressed = [event.clientX, event.clientY]; });
    this.listen(canvas, 'pointerup', event => this.click(event));
    this.listen(canvas, 'webglcontextrestored', () => this.ask());
  }

  listen(target, name, act) {
    target.addEventListener(name, act);
    this.ends.push(() => target.removeEventListener(name, act));
  }

  // Wheel and fingers belong to the page until the view has been clicked.
  heed(on) {
    this.controls.enableZoom = on;
    this.canvas.style.touchAction = on ? 'none' : 'pan-y';
  }

  // Fetches the parts; the view stays where it is when they change. Answers with the number of parts, 0 where there are none.
  async load(path) {
    const ticket = this.ticket = {};
    const answer = await fetch(path, { cache: 'no-store' });
    if (!answer.ok || this.ticket !== ticket) {
      return answer.ok ? this.bodies.length : 0;
    }

    const parts = unpackBodies(await answer.arrayBuffer());
    const isFirst = this.bodies.length === 0;
    this.bodies.forEach(body => body.remove());
    this.bodies = parts.filter(p => !p.isCast).map(p => new Body(this.scene, p));
    this.section.fill(this.bodies, parts.find(p => p.isCast));
    this.repaint(this.colours);
    this.cut(this.axis ?? 'none', this.share ?? 0.5);
    this.spread(this.apart);
    this.pick(this.picked ?? null);
    if (isFirst) {
      this.resize();
      this.look('corner');
    }

    return this.bodies.length;
  }

  // 0 is together, 1 all the way apart.
  spread(share) {
    this.apart = share;
    this.bodies.forEach(body => body.spread(share));
    this.section.showCast(share === 0);
    this.fit(false);
    this.ask();
  }

  cut(axis, share) {
    [this.axis, this.share] = [axis, share];
    const planes = this.section.cut(axis, share, this.box());
    this.bodies.forEach(body => body.clip(planes));
    this.ask();
  }

  hidden(on) {
    this.bodies.forEach(body => body.showHidden(on));
    this.ask();
  }

  pick(name) {
    this.picked = name;
    this.bodies.forEach(body => body.mark(body.name === name));
    this.paintBodies();
    this.ask();
  }

  look(name) {
    const direction = new THREE.Vector3(...LOOKS[name]).normalize();
    this.controls.target.copy(this.box().getCenter(new THREE.Vector3()));
    this.camera.position.copy(this.controls.target).addScaledVector(direction, this.reach() * 2);
    this.camera.zoom = 1;
    this.fit(true);
    this.controls.update();
    this.ask();
  }

  box() {
    const box = new THREE.Box3();
    this.bodies.forEach(body => box.union(body.box()));
    return box.isEmpty() ? new THREE.Box3(new THREE.Vector3(0, 0, 0), new THREE.Vector3(1, 1, 1)) : box;
  }

  reach() {
    return this.box().getSize(new THREE.Vector3()).length() || 1;
  }

  // Makes everything fit at zoom 1: the view's half height covers what is seen from the present direction.
  fit(isNewLook) {
    const box = this.box();
    const centre = box.getCenter(new THREE.Vector3());
    const shift = centre.clone().sub(this.controls.target);
    this.controls.target.add(shift);
    this.camera.position.add(shift);
    this.camera.lookAt(this.controls.target);
    this.camera.updateMatrixWorld();
    const view = this.camera.matrixWorldInverse;
    let [wide, high] = [1, 1];
    for (let i = 0; i < 8; i++) {
      const corner = new THREE.Vector3(i & 1 ? box.max.x : box.min.x, i & 2 ? box.max.y : box.min.y, i & 4 ? box.max.z : box.min.z).applyMatrix4(view);
      [wide, high] = [Math.max(wide, Math.abs(corner.x)), Math.max(high, Math.abs(corner.y))];
    }

    const half = Math.max(high, wide / this.aspect) * MARGIN;
    if (isNewLook || half > this.half * 0.98 || this.camera.zoom === 1) {
      this.half = half;
    }

    this.frame();
  }

  frame() {
    const far = this.reach() * 4;
    const beside = this.half * this.aspect;
    Object.assign(this.camera, { left: -beside, right: beside, top: this.half, bottom: -this.half, near: -far, far: far * 2 });
    this.camera.updateProjectionMatrix();
  }

  get aspect() {
    return Math.max(0.2, this.canvas.clientWidth / Math.max(1, this.canvas.clientHeight));
  }

  resize() {
    const { clientWidth, clientHeight } = this.canvas.parentElement;
    if (clientWidth > 0 && clientHeight > 0) {
      this.renderer.setPixelRatio(Math.min(2, devicePixelRatio));
      this.renderer.setSize(clientWidth, clientHeight, false);
      this.half ??= 1;
      this.fit(false);
      this.ask();
    }
  }

  key(event) {
    const turns = { ArrowLeft: [1, 0], ArrowRight: [-1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] }[event.key];
    const zoom = { '+': ZOOM, '=': ZOOM, '-': 1 / ZOOM, _: 1 / ZOOM }[event.key];
    if (turns) {
      this.turn(turns[0] * TURN, turns[1] * TURN);
    } else if (zoom) {
      this.camera.zoom = Math.min(40, Math.max(0.2, this.camera.zoom * zoom));
      this.frame();
    } else if (event.key === '0') {
      this.look('corner');
    } else {
      return;
    }

    event.preventDefault();
    this.controls.update();
    this.ask();
  }

  turn(round, over) {
    const offset = this.camera.position.clone().sub(this.controls.target);
    const sphere = new THREE.Spherical().setFromVector3(new THREE.Vector3(offset.x, offset.z, -offset.y));
    sphere.theta -= round;
    sphere.phi = Math.min(Math.PI - 1e-3, Math.max(1e-3, sphere.phi - over));
    const turned = new THREE.Vector3().setFromSpherical(sphere);
    this.camera.position.copy(this.controls.target).add(new THREE.Vector3(turned.x, -turned.z, turned.y));
  }

  // A press that did not move picks the part under it, or none.
  click(event) {
    if (!this.pressed || Math.hypot(event.clientX - this.pressed[0], event.clientY - this.pressed[1]) > 4) {
      return;
    }

    const { left, top, width, height } = this.canvas.getBoundingClientRect();
    const ray = new THREE.Raycaster();
    ray.setFromCamera(new THREE.Vector2((event.clientX - left) / width * 2 - 1, 1 - (event.clientY - top) / height * 2), this.camera);
    const hit = ray.intersectObjects(this.bodies.map(b => b.fill), false).find(h => this.section.keeps(h.point));
    const name = hit ? hit.object.name : null;
    this.pick(name);
    this.dotnet?.invokeMethodAsync('Picked', name);
  }

  repaint(colours) {
    this.colours = colours;
    this.renderer.setClearColor(new THREE.Color(colours.sheet));
    this.section.paint(colours);
    this.paintBodies();
    this.ask();
  }

  paintBodies() {
    this.bodies.forEach(body => body.paint(this.colours));
  }

  ask() {
    this.frameAsked ??= requestAnimationFrame(() => this.paint());
  }

  paint() {
    if (this.frameAsked) {
      cancelAnimationFrame(this.frameAsked);
      this.frameAsked = undefined;
    }

    this.canvas.dataset.drawn = String(Number(this.canvas.dataset.drawn ?? 0) + 1);
    const view = this.camera.getWorldDirection(new THREE.Vector3());
    const pixelMm = 2 * (this.half ?? 1) / this.camera.zoom / Math.max(1, this.canvas.clientHeight);
    this.bodies.forEach(body => body.seenAlong(view, pixelMm));
    this.renderer.render(this.scene, this.camera);
  }

  dispose() {
    this.ticket = null;
    if (this.frameAsked) {
      cancelAnimationFrame(this.frameAsked);
    }

    this.ends.forEach(end => end());
    this.bodies.forEach(body => body.remove());
    this.section.remove();
    this.controls.dispose();
    this.renderer.dispose();
  }
}

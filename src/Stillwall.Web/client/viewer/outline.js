// Lines of a round surface that are drawn only where they are its outline: where one side is seen and the other is not.
import * as THREE from 'three';
import { normalOf } from './unpack.js';

const VERTEX = `
#include <clipping_planes_pars_vertex>
attribute vec3 first;
attribute vec3 second;
uniform vec3 along;
void main() {
  vec4 mvPosition = modelViewMatrix * vec4(position, 1.0);
  #include <clipping_planes_vertex>
  gl_Position = dot(first, along) * dot(second, along) > 0.0 ? vec4(2.0, 2.0, 2.0, 1.0) : projectionMatrix * mvPosition;
}`;

const FRAGMENT = `
#include <clipping_planes_pars_fragment>
uniform vec3 ink;
void main() {
  #include <clipping_planes_fragment>
  gl_FragColor = vec4(ink, 1.0);
  #include <colorspace_fragment>
}`;

export function outlineOf(body) {
  const count = body.round.length / 4;
  const [position, first, second] = [0, 1, 2].map(() => new Float32Array(count * 6));
  for (let i = 0; i < count; i++) {
    const [one, other] = [normalOf(body, body.round[i * 4 + 2]), normalOf(body, body.round[i * 4 + 3])];
    for (const end of [0, 1]) {
      const at = i * 6 + end * 3;
      const corner = body.round[i * 4 + end] * 3;
      position.set(body.points.subarray(corner, corner + 3), at);
      first.set(one, at);
      second.set(other, at);
    }
  }

  const geometry = new THREE.BufferGeometry();
  for (const [name, values] of Object.entries({ position, first, second })) {
    geometry.setAttribute(name, new THREE.BufferAttribute(values, 3));
  }

  return geometry;
}

export const outlineInk = () => new THREE.ShaderMaterial({
  vertexShader: VERTEX, fragmentShader: FRAGMENT, clipping: true,
  uniforms: { along: { value: new THREE.Vector3(0, 1, 0) }, ink: { value: new THREE.Color() } },
});

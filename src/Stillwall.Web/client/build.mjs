// Bundles the page's client: node build.mjs <folder of the sources> <folder with node_modules> <folder to write to>.
import { createRequire } from 'node:module';
import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';

const [sources, packages, out] = process.argv.slice(2).map(path => resolve(path));
const require = createRequire(join(packages, 'package.json'));
const { build } = require('esbuild');

// What the page writes in: text in two weights, numbers in three.
const FACES = [
  ['Atkinson Hyperlegible', 'atkinson-hyperlegible', [400, 700]],
  ['IBM Plex Mono', 'ibm-plex-mono', [400, 500, 600]],
];

async function scripts() {
  await build({
    absWorkingDir: sources,
    entryPoints: ['chart.js', 'chart.css', 'viewer.js', 'viewer.css', 'audio.js', 'recorder.js'].map(name => join(sources, name)),
    outdir: out,
    bundle: true,
    minify: true,
    format: 'esm',
    target: 'es2022',
    nodePaths: [join(packages, 'node_modules')],
    legalComments: 'none',
    logLevel: 'warning',
  });
}

// One face for each weight; the ranges say which letters the file has, so that others fall to the next font.
function fonts() {
  mkdirSync(join(out, 'fonts'), { recursive: true });
  const rules = FACES.flatMap(([family, name, weights]) => {
    const root = join(packages, 'node_modules', '@fontsource', name);
    const range = JSON.parse(readFileSync(join(root, 'unicode.json'), 'utf8')).latin;
    copyFileSync(join(root, 'LICENSE'), join(out, 'fonts', `${name}.licence.txt`));
    return weights.map(weight => {
      const file = `${name}-latin-${weight}-normal.woff2`;
      copyFileSync(join(root, 'files', file), join(out, 'fonts', file));
      return `@font-face{font-family:"${family}";font-weight:${weight};font-style:normal;font-display:swap;`
        + `src:url(fonts/${file}) format("woff2");unicode-range:${range}}`;
    });
  });
  writeFileSync(join(out, 'fonts.css'), rules.join('\n') + '\n');
}

// The packages' licences go with what is made of them.
function licences() {
  const text = ['uplot', 'three'].map(name => `${name}\n\n${readFileSync(join(packages, 'node_modules', name, 'LICENSE'), 'utf8').trim()}\n`);
  writeFileSync(join(out, 'licences.txt'), text.join('\n'));
}

mkdirSync(out, { recursive: true });
await scripts();
fonts();
licences();

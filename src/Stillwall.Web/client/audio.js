// The proof's bench: brings a recording to the program, or plays the sweep and records it.
const LEAD = 1, TAIL = 1.5, CLIP = 0.99, QUIET = 0.003, SILENT = 1e-5;

// WAV, one channel, 32-bit float: the samples as they came.
export function wav(blocks, rate) {
  const count = blocks.reduce((n, b) => n + b.length, 0), bytes = new ArrayBuffer(58 + 4 * count), view = new DataView(bytes);
  const text = (at, s) => { for (let i = 0; i < s.length; i++) view.setUint8(at + i, s.charCodeAt(i)); };
  text(0, 'RIFF'); view.setUint32(4, 50 + 4 * count, true); text(8, 'WAVEfmt '); view.setUint32(16, 18, true);
  view.setUint16(20, 3, true); view.setUint16(22, 1, true); view.setUint32(24, rate, true); view.setUint32(28, 4 * rate, true);
  view.setUint16(32, 4, true); view.setUint16(34, 32, true); view.setUint16(36, 0, true);
  text(38, 'fact'); view.setUint32(42, 4, true); view.setUint32(46, count, true); text(50, 'data'); view.setUint32(54, 4 * count, true);
  let at = 58;
  for (const block of blocks) for (const sample of block) { view.setFloat32(at, sample, true); at += 4; }
  return bytes;
}

// A browser that does not say that its processing is off may have it on.
export function processed(settings) {
  return ['echoCancellation', 'noiseSuppression', 'autoGainControl'].filter(name => settings[name] !== false);
}

async function send(address, body, words) {
  try {
    const answer = await fetch(address, { method: 'POST', headers: { 'Content-Type': 'audio/wav' }, body });
    if (answer.ok) return '';
    return (await answer.text()).trim() || words.lost;
  } catch {
    return words.lost;
  }
}

// The day here, as a date is stated.
export function today() {
  const now = new Date(), two = n => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

// Everything that is stated in a form, as the address takes it, with names and lengths of the recordings.
function address(form, parts) {
  const stated = new URLSearchParams();
  for (const field of form.querySelectorAll('[data-stated]')) {
    stated.set(field.name, field.type === 'checkbox' ? (field.checked ? '1' : '') : field.value.trim());
  }
  stated.set('parts', parts.map(([name, length]) => `${name}:${length}`).join(','));
  return `${form.dataset.address}?${stated}`;
}

// The files of a form, one after the other; null where a needed one is missing.
function chosen(form) {
  const parts = [], files = [];
  for (const input of form.querySelectorAll('input[type=file]')) {
    if (input.hasAttribute('data-needed') && !input.files.length) return null;
    for (const file of input.files) { parts.push([input.dataset.part, file.size]); files.push(file); }
  }
  return { parts, body: new Blob(files) };
}

async function record(form, say, meter, words, stopped) {
  const open = { audio: { echoCancellation: false, noiseSuppression: false, autoGainControl: false, channelCount: 1 } };
  const stream = await navigator.mediaDevices.getUserMedia(open);
  let context;
  try {
    const on = processed(stream.getAudioTracks()[0].getSettings());
    if (on.length) return { trouble: words.processed.replace('{0}', on.join(', ')) };
    const played = await (await fetch(form.dataset.signal)).arrayBuffer();
    context = new AudioContext({ sampleRate: Number(form.dataset.rate), latencyHint: 'playback' });
    await context.audioWorklet.addModule(new URL('./recorder.js', import.meta.url));
    const sound = await context.decodeAudioData(played), blocks = [];
    const recorder = new AudioWorkletNode(context, 'recorder', { numberOfOutputs: 0, channelCount: 1, channelCountMode: 'explicit' });
    let peak = 0, clipped = false;
    recorder.port.onmessage = event => {
      blocks.push(event.data);
      const now = event.data.reduce((most, x) => Math.max(most, Math.abs(x)), 0);
      peak = Math.max(peak, now);
      meter.value = Math.max(0, 1 + Math.log10(Math.max(now, 1e-3)) / 3);
      if (now >= CLIP && !clipped) { clipped = true; say(words.clipped, true); }
    };
    context.createMediaStreamSource(stream).connect(recorder);
    await context.resume();
    const player = new AudioBufferSourceNode(context, { buffer: sound });
    player.connect(context.destination);
    const begin = context.currentTime + LEAD;
    player.start(begin);
    say(words.playing);
    while (context.currentTime < begin + sound.duration + TAIL && !stopped()) await new Promise(done => setTimeout(done, 50));
    if (stopped()) return { trouble: words.stopped };
    if (peak < SILENT) return { trouble: words.silent };
    return { body: wav(blocks, context.sampleRate), note: clipped ? words.clipped : peak < QUIET ? words.quiet : '' };
  } finally {
    stream.getTracks().forEach(track => track.stop());
    await context?.close();
    meter.value = 0;
  }
}

export function mount(form, words) {
  const said = form.querySelector('[role=status]'), meter = form.querySelector('meter');
  const play = form.querySelector('[data-play]'), stop = form.querySelector('[data-stop]');
  const gone = new AbortController(), listen = { signal: gone.signal };
  let stopping = false;
  const say = (text, isTrouble) => { said.textContent = text; said.classList.toggle('flt', !!isTrouble); };
  const busy = on => { for (const b of form.querySelectorAll('button, input[type=file]')) if (b !== stop) b.disabled = on; if (stop) stop.hidden = !on; };
  const bring = async ({ parts, body }, note) => {
    say(words.reading);
    const trouble = await send(address(form, parts), body, words);
    say(trouble || note || words.done, trouble || note);
  };
  const doing = async work => {
    busy(true);
    try {
      await work();
    } catch (e) {
      say(e.name === 'NotAllowedError' ? words.refused : e.name === 'NotFoundError' ? words.none : words.failed.replace('{0}', e.message), true);
    } finally {
      busy(false);
    }
  };
  form.addEventListener('submit', event => {
    event.preventDefault();
    const brought = chosen(form);
    if (!brought) { say(words.noFile, true); return; }
    doing(() => bring(brought));
  }, listen);
  play?.addEventListener('click', () => doing(async () => {
    stopping = false;
    if (!navigator.mediaDevices) { say(words.none, true); return; }
    if (stop) stop.hidden = false;
    const { trouble, body, note } = await record(form, say, meter, words, () => stopping);
    if (trouble) say(trouble, true); else await bring({ parts: [['recording', body.byteLength]], body }, note);
  }), listen);
  stop?.addEventListener('click', () => { stopping = true; }, listen);
  return { dispose: () => { stopping = true; gone.abort(); } };
}

// Hands on every sample of the first channel, in blocks of a twentieth of a second or so.
class Recorder extends AudioWorkletProcessor {
  block = new Float32Array(2048);
  filled = 0;

  process([input]) {
    const samples = input[0];
    // Before the microphone runs there is nothing, and nothing is missed: it is before the lead.
    if (!samples) return true;
    for (const sample of samples) {
      this.block[this.filled++] = sample;
      if (this.filled === this.block.length) {
        this.port.postMessage(this.block, [this.block.buffer]);
        this.block = new Float32Array(2048);
        this.filled = 0;
      }
    }
    return true;
  }
}
registerProcessor('recorder', Recorder);

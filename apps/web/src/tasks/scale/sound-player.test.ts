import { beforeEach, describe, expect, it } from 'vitest';
import { soundPlayer } from './sound-player.ts';

interface Ramp {
  readonly to: number;
  readonly at: number;
}

/** As much of an audio context as the player touches, which writes down what is asked of it. */
class WrittenContext {
  sampleRate = 48_000;
  currentTime = 10;
  destination = {};
  isRunning = false;
  sources: {
    started: boolean;
    stoppedAt: number | undefined;
    onended: (() => void) | null;
    ramps: Ramp[];
  }[] = [];
  private ramps: Ramp[] = [];
  async resume() {
    this.isRunning = true;
  }
  createBuffer(_channels: number, length: number) {
    return { length, copyToChannel() {} };
  }
  createGain() {
    const ramps: Ramp[] = [];
    this.ramps = ramps;
    this.sources.at(-1)!.ramps = ramps;
    return {
      gain: {
        value: 1,
        setValueAtTime() {},
        linearRampToValueAtTime: (to: number, at: number) => ramps.push({ to, at }),
      },
      connect() {},
    };
  }
  createBufferSource() {
    const written = {
      started: false,
      stoppedAt: undefined as number | undefined,
      onended: null as (() => void) | null,
      ramps: this.ramps,
      buffer: undefined as unknown,
      connect: (next: unknown) => next,
      start() {
        written.started = true;
      },
      stop(at: number) {
        written.stoppedAt = at;
      },
    };
    this.sources.push(written);
    return written;
  }
}

let context: WrittenContext;
const samples = new Float32Array(10);
const player = () => soundPlayer(context as unknown as AudioContext);
beforeEach(() => {
  context = new WrittenContext();
});

describe('soundPlayer()', () => {
  it('plays one sound at a time: the next fades the one before out', () => {
    const sound = player();
    sound.play(0, samples);
    sound.play(1, samples);
    expect(context.isRunning).toBe(true);
    expect(context.sources.map(({ started }) => started)).toEqual([true, true]);
    expect(context.sources[0]!.ramps).toEqual([{ to: 0, at: context.sources[0]!.stoppedAt }]);
    expect(context.sources[0]!.stoppedAt).toBeGreaterThan(context.currentTime);
    expect(sound.playing.get()).toBe(1);
  });

  it('is silent after a stop, and after the sound has ended by itself', () => {
    const sound = player();
    sound.play(0, samples);
    sound.stop();
    expect(sound.playing.get()).toBeUndefined();
    sound.play(1, samples);
    // The end of the sound that was stopped says nothing about the one that plays.
    context.sources[0]!.onended?.();
    expect(sound.playing.get()).toBe(1);
    context.sources[1]!.onended?.();
    expect(sound.playing.get()).toBeUndefined();
  });
});

import { type Observable, observable } from '../../parts/observable.ts';

/** Long enough that a stop does not click [s]. */
const FADE_S = 0.05;

export interface SoundPlayer {
  /** Which sound is playing; undefined in silence. */
  readonly playing: Observable<number | undefined>;
  readonly sampleRate: number;
  /** Plays one sound in place of whatever is playing. */
  play(which: number, samples: Float32Array<ArrayBuffer>): void;
  stop(): void;
}

/** Plays sounds one at a time; what comes next takes over softly. Only made when somebody asks to hear something. */
export function soundPlayer(context: AudioContext = new AudioContext()): SoundPlayer {
  const playing = observable<number | undefined>(undefined);
  let ending: (() => void) | undefined;

  function stop(): void {
    ending?.();
    ending = undefined;
    playing.set(undefined);
  }

  return {
    playing,
    sampleRate: context.sampleRate,
    play(which, samples) {
      stop();
      // A browser keeps sound off until somebody has touched the page; this is that touch.
      void context.resume();
      const buffer = context.createBuffer(1, samples.length, context.sampleRate);
      buffer.copyToChannel(samples, 0);
      const source = context.createBufferSource();
      const gain = context.createGain();
      source.buffer = buffer;
      source.connect(gain).connect(context.destination);
      const end = () => {
        const now = context.currentTime;
        gain.gain.setValueAtTime(gain.gain.value, now);
        gain.gain.linearRampToValueAtTime(0, now + FADE_S);
        source.stop(now + FADE_S);
      };
      source.onended = () => {
        if (ending === end) {
          ending = undefined;
          playing.set(undefined);
        }
      };
      ending = end;
      playing.set(which);
      source.start();
    },
    stop,
  };
}

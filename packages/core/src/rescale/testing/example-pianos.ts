import grand from '../../../../../examples/grand/truth.json' with { type: 'json' };
import vertical from '../../../../../examples/vertical/truth.json' with { type: 'json' };
import type { ScaleNote } from '../../scale/index.ts';
import { hertz, metres } from '../../units/index.ts';

/** A row of an example's truth: what the invented piano is, before anybody measured it. */
interface TruthNote {
  readonly key: number;
  readonly section: string;
  readonly bridge: string;
  readonly strings: number;
  readonly winding: string;
  readonly frequency_hz: number;
  readonly wireDiameter_m: number;
  readonly speakingLength_m: number;
  readonly layers: readonly { readonly wireDiameter_m: number }[];
  readonly bareFront_m: number;
  readonly bareBack_m: number;
}

function scaleOf(notes: readonly TruthNote[]): ScaleNote[] {
  return notes.map((note): ScaleNote => {
    const speakingLength = metres(note.speakingLength_m);
    const wire = metres(note.wireDiameter_m);
    const bare = { bareFront: metres(note.bareFront_m), bareBack: metres(note.bareBack_m) };
    return {
      key: note.key,
      section: note.section,
      bridge: note.bridge,
      strings: note.strings as 1 | 2 | 3,
      frequency: hertz(note.frequency_hz),
      string:
        note.winding === 'plain'
          ? { kind: 'plain', speakingLength, diameter: wire }
          : {
              kind: 'wound',
              speakingLength,
              coreDiameter: wire,
              layers: note.layers.map((layer) => ({
                wireDiameter: metres(layer.wireDiameter_m),
                ...bare,
              })),
            },
    };
  });
}

/** The two invented pianos of examples/, as whole scales. */
export const examplePianos: readonly { readonly name: string; readonly notes: readonly ScaleNote[] }[] = [
  { name: 'grand', notes: scaleOf(grand.notes) },
  { name: 'vertical', notes: scaleOf(vertical.notes) },
];

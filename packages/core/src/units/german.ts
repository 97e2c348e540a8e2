import type { Catalogue } from '../words/index.ts';

export const german: Catalogue = {
  "Cannot read a note as a name like A0, C#4 or Bb3, or a key number from 1 to 88, is needed{letter, select, H { (H is read only where German note names are asked for)} other {}}: found '{text}'":
    'Der Ton lässt sich nicht lesen: Nötig ist ein Name wie A0, C#4 oder Bb3 oder eine Tastennummer von 1 bis 88{letter, select, H { (H wird nur gelesen, wo deutsche Tonnamen verlangt sind)} other {}}; gefunden: „{text}“.',
  "Cannot read a note as a German B is already flat and takes no sharp; write H or B: found '{text}'":
    'Der Ton lässt sich nicht lesen: Ein deutsches B ist schon erniedrigt und nimmt kein Kreuz; H oder B schreiben. Gefunden: „{text}“.',
  "Cannot read a note as it must lie from A0 (key 1) to C8 (key 88): found '{text}', which would be key {key}":
    'Der Ton lässt sich nicht lesen: Er muss von A0 (Taste 1) bis C8 (Taste 88) liegen; gefunden: „{text}“, das wäre Taste {key}.',
};

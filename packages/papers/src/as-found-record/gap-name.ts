import { type Language, type Message, message } from '@becket/core';

/** What comes before the stroke in the names of gaps, by which they are accepted. */
const things: ReadonlyMap<string, Message> = new Map<string, Message>([
  ['piano', message('[name of a gap] piano')],
  ['sections', message('[name of a gap] sections')],
  ['stringing', message('[name of a gap] stringing')],
  ['windings', message('[name of a gap] windings')],
  ['wire-diameter', message('[name of a gap] wire-diameter')],
  ['core-diameter', message('[name of a gap] core-diameter')],
  ['inner-layer-diameter', message('[name of a gap] inner-layer-diameter')],
  ['over-all-diameter', message('[name of a gap] over-all-diameter')],
  ['speaking-length', message('[name of a gap] speaking-length')],
  ['bare-front', message('[name of a gap] bare-front')],
  ['bare-back', message('[name of a gap] bare-back')],
  ['front-length', message('[name of a gap] front-length')],
  ['back-length', message('[name of a gap] back-length')],
  ['pin-diameter', message('[name of a gap] pin-diameter')],
  ['pin-length', message('[name of a gap] pin-length')],
  ['pin-height', message('[name of a gap] pin-height')],
  ['pin-coils', message('[name of a gap] pin-coils')],
  ['pressure-bar-height', message('[name of a gap] pressure-bar-height')],
  ['strike-line-spacing', message('[name of a gap] strike-line-spacing')],
  ['bridge-spacing', message('[name of a gap] bridge-spacing')],
  ['loops', message('[name of a gap] loops')],
  ['bearing', message('[name of a gap] bearing')],
  ['felts', message('[name of a gap] felts')],
  ['punchings', message('[name of a gap] punchings')],
  ['dampers', message('[name of a gap] dampers')],
  ['bars', message('[name of a gap] bars')],
  ['hitch-pins', message('[name of a gap] hitch-pins')],
  ['stamps', message('[name of a gap] stamps')],
  ['loop-to-winding', message('[name of a gap] loop-to-winding')],
  ['winding-length', message('[name of a gap] winding-length')],
  ['pitch-offset', message('[name of a gap] pitch-offset')],
  ['soundboard-crown', message('[name of a gap] soundboard-crown')],
  ['relative-humidity', message('[name of a gap] relative-humidity')],
  ['temperature', message('[name of a gap] temperature')],
]);

/**
 * The name of a gap in the language of a paper; in English it is the name that the journal keeps. One that a later program
 * gave stays as it is.
 */
export function gapName(name: string, { say }: Language): string {
  const [thing = '', ...place] = name.split('/');
  const words = things.get(thing);
  if (words === undefined) return name;
  const wholePiano = things.get('piano');
  const where = place.map((one) => {
    if (one === 'no section') return say('no section');
    return one === 'piano' && wholePiano !== undefined ? say(wholePiano) : one;
  });
  return [say(words), ...where].join('/');
}

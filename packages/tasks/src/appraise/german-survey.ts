import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  'the whole piano': 'das ganze Instrument',
  'it grew by {by} mm{day, select, unknown {} other { since {day}}}; readings agree within {error} mm.':
    '{day, select, unknown {} other {seit {day} }}um {by} mm gewachsen; Messwerte stimmen auf {error} mm überein.',
  'it is judged graver{day, select, unknown {} other { since {day}}}; it was not measured both times.':
    '{day, select, unknown {} other {seit {day} }}schwerer beurteilt; nicht beide Male gemessen.',
  'it is judged graver{day, select, unknown {} other { since {day}}}.':
    '{day, select, unknown {} other {seit {day} }}schwerer beurteilt.',
  'as before{day, select, unknown {} other { since {day}}}, by eye: it was not measured both times.':
    '{day, select, unknown {} other {seit {day} }}unverändert, nach Augenschein: nicht beide Male gemessen.',
  'as before{day, select, unknown {} other { since {day}}}: {by} mm apart, and readings agree within {error} mm.':
    '{day, select, unknown {} other {seit {day} }}unverändert: {by} mm Unterschied, und Messwerte stimmen auf {error} mm überein.',
  'it reads {by} mm shorter{day, select, unknown {} other { since {day}}}: was it mended, or measured another way?':
    '{day, select, unknown {} other {seit {day} }}{by} mm kürzer gemessen: ausgebessert oder anders gemessen?',
  'it was seen{day, select, unknown {} other { on {day}}} and is sound now.':
    '{day, select, unknown {früher} other {am {day}}} gesehen, jetzt in Ordnung.',
  'sound, as{day, select, unknown {} other { on {day}}}.':
    'in Ordnung, wie {day, select, unknown {zuvor} other {am {day}}}.',
  'new: it was looked at before and nothing was noted.': 'neu: früher angesehen, und nichts war vermerkt.',
  'the earlier survey does not speak of it.': 'die frühere Begutachtung sagt nichts dazu.',
  'noted{day, select, unknown {} other { on {day}}} and not looked at again.':
    '{day, select, unknown {früher} other {am {day}}} vermerkt und nicht wieder angesehen.',
  'it could not be seen this time.': 'diesmal nicht zu sehen.',
  'there is nothing to compare it with.': 'es gibt nichts zum Vergleichen.',
  'Cannot copy the survey: an earlier job is needed, this job itself was found. Choose another one.':
    'Die Begutachtung lässt sich nicht übernehmen: Ein früherer Auftrag ist nötig, gewählt ist dieser Auftrag selbst. Einen anderen wählen.',
  'Cannot copy the survey of ‘{title}’: at least one line is needed, it has none. Choose another job.':
    'Die Begutachtung von „{title}“ lässt sich nicht übernehmen: Mindestens eine Zeile ist nötig, sie hat keine. Einen anderen Auftrag wählen.',
  'Cannot copy the survey of ‘{title}’: one made before this job was opened on {day} is needed, a line of {found} was found. Choose the earlier job.':
    'Die Begutachtung von „{title}“ lässt sich nicht übernehmen: Sie muss älter sein als dieser Auftrag, eröffnet am {day}; eine Zeile ist vom {found}. Den früheren Auftrag wählen.',
  'copied from the survey of {day}': 'übernommen aus der Begutachtung vom {day}',
  'Cannot copy the survey of ‘{title}’: a job of the same piano is needed, serial number {found} was found and not {needed}. Choose another job, or correct the serial number.':
    'Die Begutachtung von „{title}“ lässt sich nicht übernehmen: Ein Auftrag desselben Instruments ist nötig, gefunden wurde die Seriennummer {found} statt {needed}. Einen anderen Auftrag wählen oder die Seriennummer berichtigen.',
  "Cannot keep ‘{what}’: a note from {first} to {last} is needed, {found} was found. Check the note, or the piano's compass.":
    '„{what}“ wird nicht gespeichert: Ein Ton von {first} bis {last} ist nötig, gefunden wurde {found}. Den Ton oder den Umfang des Instruments prüfen.',
  "Cannot keep ‘{what}’: a section of this piano is needed ({sections}), '{found}' was found. Choose one, or the whole piano.":
    '„{what}“ wird nicht gespeichert: Ein Abschnitt dieses Instruments ist nötig ({sections}), gefunden wurde „{found}“. Einen davon wählen oder das ganze Instrument.',
  'none is described': 'keiner ist beschrieben',
  'Cannot tie that photo to ‘{what}’: a photo of this job is needed, none of that name was found. Add the photo first.':
    'Das Foto lässt sich nicht mit „{what}“ verbinden: Ein Foto dieses Auftrags ist nötig, keines dieses Namens wurde gefunden. Zuerst das Foto aufnehmen.',
  'Cannot correct this line of ‘{what}’: it is not in the survey any more. Look at the survey again, then note it anew.':
    'Diese Zeile zu „{what}“ lässt sich nicht berichtigen: Sie steht nicht mehr in der Begutachtung. Die Begutachtung noch einmal ansehen und neu eintragen.',
};

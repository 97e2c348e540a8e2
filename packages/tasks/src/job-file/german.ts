import type { Catalogue } from '@becket/core';

/** The messages of this folder in German. */
export const german: Catalogue = {
  "Cannot bring in '{file}': a file of at most {most} MB is needed, one of {found} MB was found. Choose a file that Becket saved.":
    '„{file}“ lässt sich nicht einlesen: Eine Datei bis {most} MB ist nötig, gefunden wurde eine mit {found} MB. Eine von Becket gespeicherte Datei wählen.',
  "Cannot bring in '{file}': a job saved as a file is needed, no entry was found in it. Choose a file that Becket saved.":
    '„{file}“ lässt sich nicht einlesen: Ein als Datei gespeicherter Auftrag ist nötig, kein Eintrag wurde darin gefunden. Eine von Becket gespeicherte Datei wählen.',
  "Cannot bring in '{file}': the entries of one job are needed, those of several were found. Bring each job in from its own file.":
    '„{file}“ lässt sich nicht einlesen: Die Einträge eines Auftrags sind nötig, gefunden wurden die mehrerer. Jeden Auftrag aus seiner eigenen Datei übernehmen.',
  "Cannot bring in '{file}': a zip with a whole {journal} is needed, {found}. Save the job again where it came from; nothing was brought in.":
    '„{file}“ lässt sich nicht einlesen: Ein Zip mit vollständigem {journal} ist nötig; {found}. Den Auftrag dort noch einmal speichern, wo er herkam; nichts wurde übernommen.',
  'a zip without one was found': 'gefunden wurde ein Zip ohne dieses',
  'one that is {problem} was found': 'das gefundene ist {problem}',
  'cut off': 'abgeschnitten',
  damaged: 'beschädigt',
  'too large': 'zu groß',
  'not readable': 'nicht lesbar',
  'the file is cut off': 'die Datei ist abgeschnitten',
  '{count, plural, one {# photo in it is} other {# photos in it are}} damaged':
    '{count, plural, one {# Foto darin ist} other {# Fotos darin sind}} beschädigt',
  '{count} further lines could not be read': '{count} weitere Zeilen waren nicht lesbar',
  '{lost} of its {wanted} photos {lost, plural, one {is} other {are}} neither in it nor here':
    '{lost} seiner {wanted} Fotos {lost, plural, one {ist} other {sind}} weder darin noch hier',
  "{count} whole entries of '{file}' were brought in, but not everything: {problems}. Keep the file, and save the job again where it came from.":
    '{count} vollständige Einträge aus „{file}“ wurden übernommen, aber nicht alles: {problems}. Die Datei aufheben und den Auftrag dort noch einmal speichern, wo er herkam.',
};

import type { Catalogue } from '@becket/core';

/** What the commands about a job say: from opening it to saving it as a file, and the two that need none. */
export const german: Catalogue = {
  'id of the job': 'Kennung des Auftrags',
  why: 'warum',
  // jobs, new, demo, describe
  'list the jobs, the one last worked on first': 'die Aufträge auflisten, der zuletzt bearbeitete zuerst',
  'No job yet.': 'Noch kein Auftrag.',
  job: 'Auftrag',
  title: 'Titel',
  entries: 'Einträge',
  'last entry': 'letzter Eintrag',
  sealed: 'versiegelt',
  'open a job': 'einen Auftrag anlegen',
  'what the job is called': 'wie der Auftrag heißt',
  'what the piano is': 'Bauform: grand ist ein Flügel, vertical ein Klavier',
  'lowest and highest note': 'tiefster und höchster Ton',
  'the pitch the strings are meant for, A4': 'Stimmhöhe, für die die Saiten gedacht sind, A4',
  'whose piano it is': 'wem das Instrument gehört',
  'who made the piano': 'wer das Instrument gebaut hat',
  "Cannot open a job with the compass '{compass}': the lowest note has to come first, as in A0-C8.":
    'Mit dem Umfang „{compass}“ lässt sich kein Auftrag anlegen: Der tiefste Ton steht vorn, wie in A0-C8.',
  'The piano is not described yet: do so with becket describe, or on the screen; next time with --form.':
    'Das Instrument ist noch nicht beschrieben: mit becket describe nachholen oder am Bildschirm; beim nächsten Mal mit --form.',
  "Cannot open a job at this pitch: 380 to 480 Hz for A4 is needed, '{text}' was found.":
    'Mit dieser Stimmhöhe lässt sich kein Auftrag anlegen: Nötig sind 380 bis 480 Hz für A4, gefunden wurde „{text}“.',
  'open a job of an invented grand, with its readings and a visit to it, to try things on':
    'einen Auftrag mit einem erfundenen Flügel zum Ausprobieren anlegen, mit Messwerten und einem Besuch',
  'with new wire, torque and passes as well, ready to be handed over':
    'auch mit neuem Draht, Drehmomenten und Durchgängen, bereit zum Übergeben',
  'describe the piano from a JSON file: what it is, its sections, its unisons, what was seen':
    'das Instrument aus einer JSON-Datei beschreiben: was es ist, seine Abschnitte, seine Chöre, was zu sehen war',
  'the description; examples/grand/job.json is one': 'die Beschreibung; examples/grand/job.json ist eine',
  'Described: {sections} sections, the stringing of {notes} notes, {things} things seen.':
    'Beschrieben: {sections} Abschnitte, der Bezug von {notes} Tönen, {things} Beobachtungen.',
  // bring-in
  'bring a CSV of readings into a job, all of it or nothing':
    'eine CSV mit Messwerten in einen Auftrag einlesen, ganz oder gar nicht',
  'the CSV': 'die CSV',
  'JSON: what each column means; guessed from the column names without it':
    'JSON: was jede Spalte bedeutet; ohne Angabe nach den Spaltennamen erraten',
  'print the mapping that would be used, as JSON, and stop':
    'nur ausgeben, wie die Spalten gelesen würden, als JSON',
  'JSON: cells to correct or to leave out, each with its reason':
    'JSON: Zellen, die berichtigt oder weggelassen werden, jede mit Grund',
  "use another value in a cell: 'row:column=value'; may be given again":
    'in einer Zelle einen anderen Wert nehmen: „Zeile:Spalte=Wert“; mehrmals möglich',
  "leave a cell out: 'row:column'; may be given again":
    'eine Zelle weglassen: „Zeile:Spalte“; mehrmals möglich',
  'why cells are corrected or left out': 'warum Zellen berichtigt oder weggelassen werden',
  'say what would be brought in, and store nothing': 'sagen, was eingelesen würde, und nichts speichern',
  'In question: {sentence}': 'Fraglich: {sentence}',
  '{readings} readings of {notes} notes {was, select, tried {would be} other {were}} brought in, from {rows} rows; {questions} cells are in question.':
    '{readings} Messwerte von {notes} Tönen {was, select, tried {würden eingelesen} other {wurden eingelesen}}, aus {rows} Zeilen; fragliche Zellen: {questions}.',
  'Cannot correct or leave out a cell without a reason: give it with --reason.':
    'Ohne Grund wird keine Zelle berichtigt oder weggelassen: Den Grund mit --reason nennen.',
  "Cannot find the cell '{text}': {form, select, value {'row:column=value'} other {'row:column'}} is needed, with a column of {columns}, or its number.":
    'Die Zelle „{text}“ ist nicht zu finden: Nötig ist {form, select, value {„Zeile:Spalte=Wert“} other {„Zeile:Spalte“}}, mit einer Spalte aus {columns} oder ihrer Nummer.',
  // show, strip-check
  'show a job: the piano, its sections, and every note as found':
    'einen Auftrag zeigen: das Instrument, seine Abschnitte und jeden Ton, wie vorgefunden',
  '{title}: {readings} readings, {seal}': '{title}: {readings} Messwerte, {seal}',
  'not sealed': 'nicht versiegelt',
  'sealed on {moment} by {name}': 'versiegelt am {moment} von {name}',
  note: 'Ton',
  winding: 'Umspinnung',
  wound: 'umsponnen',
  missing: 'fehlt',
  'wire mm': 'Draht mm',
  'over all mm': 'außen mm',
  'length mm': 'Länge mm',
  'name what the record still lacks before the strings come off; status 1 while a gap is open':
    'nennen, was der Aufnahme vor dem Absaiten noch fehlt; Status 1, solange eine Lücke offen ist',
  'accept a gap by its name; may be given again': 'eine Lücke mit ihrem Namen hinnehmen; mehrmals möglich',
  'why the gaps are accepted': 'warum die Lücken hingenommen werden',
  'seal the record when the check is passed': 'die Aufnahme versiegeln, wenn die Prüfung bestanden ist',
  'Cannot accept a gap without a reason: give it with --reason.':
    'Ohne Grund wird keine Lücke hingenommen: Den Grund mit --reason nennen.',
  'Passed.': 'Bestanden.',
  'Not passed: {gaps, plural, one {# gap is} other {# gaps are}} open.':
    'Nicht bestanden: {gaps, plural, one {# Lücke ist} other {# Lücken sind}} offen.',
  '{gaps, plural, one {# gap was} other {# gaps were}} accepted by name.':
    '{gaps, plural, one {# Lücke wurde} other {# Lücken wurden}} namentlich hingenommen.',
  'Sealed on {moment} by {name}, digest {digest}.': 'Versiegelt am {moment} von {name}, Prüfsumme {digest}.',
  // sizes, scale
  'tell the wire sizes that the readings speak for, with odds, and which string to measure next':
    'die Drahtstärken nennen, für die die Messwerte sprechen, wie sicher sie sind und welche Saite als nächste zu messen ist',
  'the way of numbering, when you know it': 'die Nummerierung der Stärken, wenn sie bekannt ist',
  'No size can be told yet: describe which notes are plain, and read or bring in at least one wire.':
    'Noch lässt sich keine Stärke nennen: beschreiben, welche Töne blanke Saiten haben, und mindestens einen Draht messen oder einlesen.',
  doubtful: 'zweifelhaft',
  'readings mm': 'Messwerte mm',
  size: 'Stärke',
  'new mm': 'neu mm',
  odds: 'sicher zu',
  'or else': 'oder sonst',
  US: 'US',
  metric: 'metrisch',
  'numbering: {lattice} ({odds})': 'Nummerierung: {lattice} ({odds})',
  'wear and zero: {bias} µm (95 %: {low} to {high} µm); scatter {scatter} µm':
    'Abnutzung und Nullpunkt: {bias} µm (95 %: {low} bis {high} µm); Streuung {scatter} µm',
  'notes expected wrong: {notes}': 'voraussichtlich falsch: {notes} Töne',
  'compute the scale as found: tension, break share, inharmonicity, loads':
    'die vorgefundene Mensur berechnen: Zugkraft, Anteil an der Bruchlast, Inharmonizität, Lasten',
  "JSON: the shop's own limits, {shape}; common practice without it":
    'JSON: eigene Grenzen der Werkstatt, {shape}; ohne Angabe gängige Praxis',
  'where wire strength comes from: {tables}': 'woher die Festigkeit des Drahts kommt: {tables}',
  'tension N': 'Zugkraft N',
  'break share %': 'Bruchanteil %',
  'section {name}: {strings} strings, {load} kN': 'Abschnitt {name}: {strings} Saiten, {load} kN',
  'bridge {name}: {strings} strings, {load} kN': 'Steg {name}: {strings} Saiten, {load} kN',
  'total: {strings} strings, {load} kN': 'zusammen: {strings} Saiten, {load} kN',
  'Break share by {table}. {remark}': 'Anteil an der Bruchlast nach {table}. {remark}',
  '{sentence} (too near its limit to be sure: measure again)':
    '{sentence} (zu nahe an der Grenze, um sicher zu sein: noch einmal messen)',
  'not computed: {note}: {problem}': 'nicht berechnet: {note}: {problem}',
  '{quantities} missing': 'es fehlt: {quantities}',
  'not described how it is strung': 'nicht beschrieben, wie er bezogen ist',
  'Cannot use the limits in {path}: {shape} is needed for names of {names}.':
    'Die Grenzen in {path} lassen sich nicht verwenden: Nötig ist {shape} zu Namen aus {names}.',
  "Cannot use the limit '{name}' in {path}: a name of {names} is needed.":
    'Die Grenze „{name}“ in {path} lässt sich nicht verwenden: Nötig ist ein Name aus {names}.',
  // papers, export, bring-in-job
  'make the papers of a job, as PDF and as CSV': 'die Papiere eines Auftrags erstellen, als PDF und als CSV',
  'only this one': 'nur dieses',
  'only this format': 'nur dieses Format',
  'unit of length that stands first': 'Längeneinheit, die vorn steht',
  'where the files are put': 'wohin die Dateien kommen',
  'Making {paper}, {format} …': '{paper}, {format} wird erstellt …',
  'save a job as one file: a zip with its journal and its photos':
    'einen Auftrag als eine Datei sichern: ein Zip mit Journal und Fotos',
  "where to; a file named after the job's title in this folder without it":
    'wohin; ohne Angabe eine Datei mit dem Titel des Auftrags, in diesem Ordner',
  '{photos, plural, one {# photo is} other {# photos are}} not in this store, or damaged; the file is without them. Export the job from the device that took them.':
    '{photos, plural, one {# Foto ist} other {# Fotos sind}} nicht in diesem Speicher oder beschädigt und fehlen in der Datei. Den Auftrag von dem Gerät aus sichern, das sie aufgenommen hat.',
  '{file}: {entries} entries, {photos} photos, {size} MB':
    '{file}: {entries} Einträge, {photos} Fotos, {size} MB',
  'Cannot write {file}: the system does not allow it ({problem}). Name another file with --to, or make room.':
    '{file} lässt sich nicht schreiben: Das System erlaubt es nicht ({problem}). Mit --to eine andere Datei nennen oder Platz schaffen.',
  'bring in a job that was saved as a file, zip or JSON Lines; what is here already stays as it is':
    'einen als Datei gesicherten Auftrag einlesen, Zip oder JSON Lines; was schon da ist, bleibt, wie es ist',
  '{job}: {entries, plural, one {# entry} other {# entries}} and {photos, plural, one {# photo} other {# photos}} were not here before':
    '{job}: {entries, plural, one {# Eintrag} other {# Einträge}} und {photos, plural, one {# Foto} other {# Fotos}} waren noch nicht da',
  // compute, serve
  'answer calculations, one JSON object a line; the kinds are in docs/reference/compute.md':
    'Berechnungen beantworten, ein JSON-Objekt je Zeile; die Arten stehen in docs/reference/compute.md',
  'JSON Lines; standard input without it or with -': 'JSON Lines; ohne Angabe oder mit - die Standardeingabe',
  'share the lines among n threads, up to {most} here; without it one thread, which starts at once':
    'die Zeilen auf n Threads verteilen, hier bis zu {most}; ohne Angabe ein Thread, der sofort beginnt',
  "a whole number of threads from 1 to 64 is needed: found '{text}'.":
    'Nötig ist eine ganze Zahl von 1 bis 64 Threads; gefunden: „{text}“.',
  'serve the screens and the jobs to this computer, until Ctrl+C':
    'die Bildschirme und Aufträge für diesen Rechner bereitstellen, bis Strg+C',
  'address to listen on; only this computer can reach 127.0.0.1':
    'Adresse, auf der gelauscht wird; 127.0.0.1 erreicht nur dieser Rechner',
  'port to listen on; 0 takes any that is free': 'Port, auf dem gelauscht wird; 0 nimmt irgendeinen freien',
  'put an invented piano in a store that has no job yet':
    'ein erfundenes Instrument in einen Speicher legen, der noch keinen Auftrag hat',
  'Becket is at {address}': 'Becket ist unter {address}',
  'Stop it with Ctrl+C.': 'Mit Strg+C beenden.',
  "Cannot serve: a port from 0 to 65535 is needed, '{text}' was found.":
    'Der Server startet nicht: Nötig ist ein Port von 0 bis 65535, gefunden wurde „{text}“.',
};
